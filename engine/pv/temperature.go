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

// Mounting is how modules are fixed: it decides how warm they get.
type Mounting uint8

const (
	Rack   Mounting = iota // air all about: CellFaiman in a wind of 1 m/s
	Close                  // on rails close to the roof: CellCloseRoof
	InRoof                 // in the place of the covering: CellInRoof
)

// CellC returns the cell temperature, degC, by a mounting.
func (m Mounting) CellC(irradiance, airC float64) float64 {
	switch m {
	case Close:
		return CellCloseRoof(irradiance, airC)
	case InRoof:
		return CellInRoof(irradiance, airC)
	}
	return CellFaiman(irradiance, airC, 1)
}

// CellInRoof returns the cell temperature of modules with no air behind them, degC:
// T = T_a + 0.0538 G (facade integrated; Nordmann & Clavadetscher 2003 in the table of
// Skoplaki & Palyvos 2009, from memory).
func CellInRoof(irradiance, airC float64) float64 { return airC + 0.0538*irradiance }

// CellCloseRoof returns the cell temperature of modules close to a roof, degC:
// T = T_a + 0.034 G.
func CellCloseRoof(irradiance, airC float64) float64 { return airC + 0.034*irradiance }
