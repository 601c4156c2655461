// Package pv turns light and heat on photovoltaic modules into power in a
// resistive heating element.
package pv

// StandardWm2 and StandardC are the standard test conditions of module ratings
// (IEC 60904-3).
const (
	StandardWm2 = 1000.0
	StandardC   = 25.0
)

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

// Losses are the parts of an array's power that stay, each 0 to 1.
type Losses struct{ Soiling, Mismatch, Cable, Age float64 }

// DefaultLosses are assumptions (common practice, no source).
var DefaultLosses = Losses{Soiling: 0.97, Mismatch: 0.98, Cable: 0.985, Age: 1}

// Factor is the product of the parts.
func (l Losses) Factor() float64 { return l.Soiling * l.Mismatch * l.Cable * l.Age }

// Array is a number of equal modules on one plane.
type Array struct {
	RatedW float64 // all modules together at standard test conditions
	PerK   float64 // relative change of power per kelvin of cell temperature, about -0.0035
	Losses Losses
}

// MaximumPowerW returns the power at the maximum power point, W, linear in
// irradiance: the lower efficiency in weak light (3 % at 200 W/m2) is neglected.
func (a Array) MaximumPowerW(irradiance, cellC float64) float64 {
	return max(0, a.RatedW*irradiance/StandardWm2*(1+a.PerK*(cellC-StandardC))*a.Losses.Factor())
}

// Ohms returns an element's resistance from its rating plate: R = U2/P.
func Ohms(ratedW, ratedV float64) float64 { return ratedV * ratedV / ratedW }

// Converter is a tracking converter between the array and the element.
type Converter struct {
	Efficiency float64 // 0 to 1
	StartW     float64 // below this array power nothing flows
	MaxOutV    float64 // highest output voltage
}

// IntoElement returns the power that reaches an element of that resistance, W:
// what the array offers, less the converter's loss, at most V2/R.
func (c Converter) IntoElement(arrayW, ohms float64) float64 {
	if arrayW < c.StartW {
		return 0
	}
	return min(arrayW*c.Efficiency, c.MaxOutV*c.MaxOutV/ohms)
}
