package pv

// CellFaiman returns the cell temperature of modules on an open rack, degC, for
// irradiance in the plane (W/m2), air temperature (degC) and wind at the module
// (m/s; 1 when unknown). Faiman 2008: T = T_a + G/(25 + 6.84 v).
func CellFaiman(irradiance, airC, windMs float64) float64 {
	return CellFaimanWith(irradiance, airC, windMs, 25, 6.84)
}

// CellFaimanWith is CellFaiman with other coefficients, W/(m2 K) and J/(m3 K).
func CellFaimanWith(irradiance, airC, windMs, u0, u1 float64) float64 {
	return airC + irradiance/(u0+u1*windMs)
}

// CellNOCT returns the cell temperature from the nominal operating one, which is
// stated for 800 W/m2 and 20 degC: T = T_a + G (NOCT - 20)/800. Ross 1980.
func CellNOCT(irradiance, airC, noctC float64) float64 {
	return airC + irradiance*(noctC-20)/800
}

// CellCloseRoof returns the cell temperature of modules close to a roof, degC:
// T = T_a + 0.034 G.
func CellCloseRoof(irradiance, airC float64) float64 { return airC + 0.034*irradiance }
