package visit

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Expected is what meters should read on a house's strings in one light, with dirt and mismatch
// left out: they only lower it.
type Expected struct {
	OpenV, ShortA                float64 // open and shorted, V and A
	MostV, MostA, MostW          float64 // at most power
	ElementV, ElementA, ElementW float64 // at the element, as the strings are coupled, the sun alone
}

// Quantity names a value of Expected.
type Quantity int8

// Quantities of Expected.
const (
	OpenVolts Quantity = iota
	ShortAmps
	MostVolts
	MostAmps
	MostWatts
	ElementVolts
	ElementAmps
	ElementWatts
	QuantityCount
)

// Of is the value of a quantity.
func (e *Expected) Of(q Quantity) float64 {
	return [QuantityCount]float64{e.OpenV, e.ShortA, e.MostV, e.MostA, e.MostW, e.ElementV, e.ElementA, e.ElementW}[q]
}

// Volts tells whether a quantity is a voltage, Watts whether it is a power; else it is a current.
func (q Quantity) Volts() bool { return q == OpenVolts || q == MostVolts || q == ElementVolts }

// Watts: see Volts.
func (q Quantity) Watts() bool { return q == MostWatts || q == ElementWatts }

// Expect works out what meters should read in a light on all planes, W/m2, and a cell temperature,
// degC (De Soto, Klein & Beckman 2006, through cable and coupling).
func Expect(p *simulate.Prepared, wm2, cellC float64) Expected {
	return expect(p, wm2, cellC, shift{1, 1, 1, 1})
}

// shift is by what factors voltages, currents, and the element's resistance differ from what
// datasheet and plate say, and the light from what is given.
type shift struct{ volts, amps, ohms, light float64 }

func expect(p *simulate.Prepared, wm2, cellC float64, by shift) (e Expected) {
	all := p.Metered(wm2*by.light, cellC)
	for i := range all {
		all[i] = scaled(all[i], by.volts, by.amps)
	}
	e.OpenV = all.OpenCircuitV()
	e.ShortA = all.CurrentA(0)
	e.MostV, e.MostA = all.MaximumPower(0, math.Inf(1))
	e.MostW = e.MostV * e.MostA
	ohms := p.ElementOhms() * by.ohms
	into := p.Coupled(all)
	switch p.Scenario.Coupling {
	case scenario.Direct:
		into = pv.Direct{ElementOhms: ohms, CableOhms: p.CableOhms()}.Into(all)
	case scenario.Converter:
		e.ElementW = into.ElementW
		e.ElementV, e.ElementA = math.Sqrt(e.ElementW*ohms), math.Sqrt(e.ElementW/ohms)
		return e
	}
	if e.ElementW, e.ElementA = into.ElementW, into.Amps; e.ElementA > 0 { // the stage that is switched in
		e.ElementV = e.ElementW / e.ElementA
	}
	return e
}

// scaled is a source whose voltages and currents are so many times another's.
func scaled(d pv.Diode, volts, amps float64) pv.Diode {
	d.LightA *= amps
	d.SaturationA *= amps
	d.SeriesOhm *= volts / amps
	d.ShuntOhm *= volts / amps
	d.ThermalV *= volts
	return d
}

// Half widths, twice the standard deviation, of what expectations hang on, as shares (assumptions;
// datasheets state tolerances of this size).
const (
	sheetVolts   = 0.02
	sheetAmps    = 0.03
	spectrum     = 0.02 // of the light, by its colour and angle
	ohmsMeasured = 0.02
	meterVolts   = 0.01
	meterAmps    = 0.02
	clampA       = 0.1 // what a clamp is off at zero, A
)

// Band is how far below and above an expected value a reading may lie, as shares of it.
type Band struct{ Below, Above float64 }

// Given is the light and heat of the cells that a judgement is made by.
type Given struct {
	Wm2, CellC    float64
	LightShare    float64 // half width of the light, as a share: ByMeter
	CellK         float64 // half width of the cells' temperature, K: SensorK, OpenVoltsK, AirK
	AmpsAreLight  bool    // the light was taken from the short circuit itself
	VoltsAreCells bool    // the cells' temperature was taken from the open circuit itself
	ClearSky      bool    // the light is what a sky without cloud would give
}

// How well light and cells are known: a meter in the plane or a string's own short circuit, a sky without cloud; a sensor on the back, the cells' own open circuit, the air and the mounting.
const (
	ByMeter    = 0.05
	ByClearSky = 0.15
	SensorK    = 2.0
	OpenVoltsK = 3.0
	AirK       = 6.0
)

// Bands are those of all quantities: each thing that is not known well moves them by itself, and
// the squares add up. Dirt and mismatch lower the low side.
func Bands(p *simulate.Prepared, g Given) (bands [QuantityCount]Band) {
	one := shift{1, 1, 1, 1}
	base := Expect(p, g.Wm2, g.CellC)
	var squares [QuantityCount]float64
	add := func(lo, hi Expected) {
		for q := range QuantityCount {
			if v := base.Of(q); v > 0 {
				half := (hi.Of(q) - lo.Of(q)) / 2 / v
				squares[q] += half * half
			}
		}
	}
	both := func(half float64, of func(*shift) *float64) (lo, hi Expected) {
		a, b := one, one
		*of(&a), *of(&b) = 1-half, 1+half
		return expect(p, g.Wm2, g.CellC, a), expect(p, g.Wm2, g.CellC, b)
	}
	add(both(g.LightShare, func(s *shift) *float64 { return &s.light }))
	add(both(spectrum, func(s *shift) *float64 { return &s.light }))
	add(both(sheetVolts, func(s *shift) *float64 { return &s.volts }))
	add(both(sheetAmps, func(s *shift) *float64 { return &s.amps }))
	add(both(ohmsMeasured, func(s *shift) *float64 { return &s.ohms }))
	add(Expect(p, g.Wm2, g.CellC-g.CellK), Expect(p, g.Wm2, g.CellC+g.CellK))
	dirty := expect(p, g.Wm2, g.CellC, shift{1, 1, 1, (1 - p.Scenario.SoilPct/100) * (1 - p.Scenario.MismatchPct/100)})
	for q := range QuantityCount {
		half := math.Sqrt(squares[q])
		bands[q] = Band{half, half}
		if v := base.Of(q); v > 0 {
			bands[q].Below += math.Max(0, 1-dirty.Of(q)/v)
		}
	}
	return bands
}
