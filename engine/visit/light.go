package visit

import (
	"fmt"
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// LightOf is the light, W/m2, in which so many equal strings pass an amperage shorted, with cells
// of a temperature, degC: 1000 I / (N Isc (1 + alpha (T - 25))), Isc as old as the modules are.
func LightOf(p *simulate.Prepared, strings int, amps, cellC float64) float64 {
	return pv.StandardWm2 * amps / (float64(strings) * p.AgeFactor() * p.Scenario.ShortA * (1 + p.Scenario.AmpsPct/100*(cellC-pv.StandardC)))
}

// Cell temperatures between which CellOf looks, degC: a module missing from a short string reads
// like cells far above what sun can do.
const coldestCellC, hottestCellC = -45.0, 85.0

// CellError says that no cell temperature gives a voltage.
type CellError struct{ Volts, Least, Most float64 }

func (e *CellError) Error() string {
	return fmt.Sprintf("open circuit of %g V: in this light it can be %.0f to %.0f V", e.Volts, e.Least, e.Most)
}

// CellOf is the cell temperature, degC, at which a house's strings have an open circuit's voltage in
// a light, W/m2; a *CellError where none from -45 to 85 degC has.
func CellOf(p *simulate.Prepared, volts, wm2 float64) (cellC float64, err error) {
	open := func(c float64) float64 { return p.Metered(wm2, c).OpenCircuitV() }
	lo, hi := coldestCellC, hottestCellC
	if most, least := open(lo), open(hi); math.IsNaN(volts) || volts > most || volts < least || wm2 <= 0 {
		return 0, &CellError{volts, least, most}
	}
	for range 60 {
		if mid := (lo + hi) / 2; open(mid) > volts {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2, nil
}

// backK is how much warmer cells are than their back in full sun, K (King 2004, open rack glass to
// polymer, from memory).
const backK = 3.0

// CellOfBack is the cells' temperature by a sensor on their back; modules in the covering have no
// cooler back.
func CellOfBack(s *scenario.Scenario, backC, wm2 float64) float64 {
	if pv.Mounting(s.Mount) == pv.InRoof {
		return backC
	}
	return backC + backK*wm2/pv.StandardWm2
}

// CellOfAir is that by the air and the mounting, see pv.Mounting.
func CellOfAir(s *scenario.Scenario, airC, wm2 float64) float64 {
	return pv.Mounting(s.Mount).CellC(wm2, airC)
}
