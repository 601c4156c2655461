package pv

import (
	"fmt"
	"math"
)

// Datasheet is what the sheet of a module states at standard test conditions.
type Datasheet struct {
	OpenCircuitV  float64
	ShortCircuitA float64
	MaximumV      float64 // at maximum power
	MaximumA      float64
	VoltagePerK   float64 // change of the open circuit's voltage, V/K, below 0
	CurrentPerK   float64 // change of the short circuit's current, A/K
	Cells         int     // in series
}

// Value names a line of a datasheet.
type Value int

// The lines that can be refused.
const (
	OpenCircuit Value = iota
	ShortCircuit
	MaximumVoltage
	MaximumCurrent
	VoltageChange
	CurrentChange
	CellCount
)

// DatasheetError says which value of a datasheet no module can have beside the
// others, and what is allowed for it.
type DatasheetError struct {
	Value    Value
	Got      float64
	Min, Max float64
}

func (e *DatasheetError) Error() string {
	return fmt.Sprintf("pv: datasheet value %d: %g is not between %g and %g", e.Value, e.Got, e.Min, e.Max)
}

// Ideality factors that a module of silicon can have, with room to spare.
const (
	leastIdeality = 0.7
	mostIdeality  = 2.2
)

// Open-circuit voltages that a cell of silicon can have.
const (
	leastCellV = 0.45
	mostCellV  = 0.80
)

// warmerK is how much warmer the cells are at which the change of the open circuit's
// voltage is met.
const warmerK = 2.0

// Module finds the five parameters that meet the five statements of the sheet: both
// ends of the curve, the point of maximum power and that it is one, and the change of
// the open circuit's voltage (De Soto, Klein & Beckman 2006). For a given ideality and
// series resistance three of them are linear; the other two are closed one inside the
// other. It returns a *DatasheetError where no module can have those values.
func (s Datasheet) Module() (Module, error) {
	if err := s.check(); err != nil {
		return Module{}, err
	}
	if m, ok := s.fit(); ok {
		return m, nil
	}
	return Module{}, s.blame()
}

// fit closes in on the ideality at which the open circuit's voltage changes with
// temperature as the sheet says; ok is false where there is none.
func (s Datasheet) fit() (found Module, ok bool) {
	perIdeality := float64(s.Cells) * boltzmannV * standardK
	return root(leastIdeality, mostIdeality, 36, func(ideality float64) (off float64, m Module, ok bool) {
		m, ok = s.withThermal(ideality * perIdeality)
		if !ok {
			return 0, m, false
		}
		warm := m.At(StandardWm2, StandardC+warmerK)
		return warm.OpenCircuitV() - s.OpenCircuitV - warmerK*s.VoltagePerK, m, true
	})
}

// withThermal finds the module of one thermal voltage: the series resistance at which
// power is at its maximum where the sheet says.
func (s Datasheet) withThermal(thermalV float64) (m Module, ok bool) {
	most := (s.OpenCircuitV - s.MaximumV) / s.MaximumA
	return root(0, most*(1-1e-9), 24, func(ohms float64) (off float64, m Module, ok bool) {
		m, ok = s.linear(thermalV, ohms)
		if !ok {
			return 0, m, false
		}
		u := s.MaximumV + s.MaximumA*ohms
		_, slope := m.at(u)
		return s.MaximumA + slope*(u-2*s.MaximumA*ohms), m, true
	})
}

// root finds where a function changes its sign between lo and hi, looking from lo in
// that many steps, and returns the module there.
func root(lo, hi float64, steps int, of func(float64) (off float64, m Module, ok bool)) (m Module, ok bool) {
	var before, from float64
	known := false
	for i := 0; i <= steps; i++ {
		at := lo + (hi-lo)*float64(i)/float64(steps)
		off, _, good := of(at)
		if good && known && (off <= 0) != (before <= 0) {
			a, b := from, at
			for range 60 {
				mid := (a + b) / 2
				off, here, good := of(mid)
				if !good {
					return m, false
				}
				m = here
				if (off <= 0) == (before <= 0) {
					a = mid
				} else {
					b = mid
				}
			}
			return m, m.ShuntOhm > 0
		}
		before, from, known = off, at, good
	}
	return m, false
}

// blame looks for the one value that could be another and make the sheet possible.
func (s Datasheet) blame() error {
	for _, c := range []struct {
		value Value
		at    func(*Datasheet) *float64
		lo    float64
		hi    float64
	}{
		{VoltageChange, func(s *Datasheet) *float64 { return &s.VoltagePerK }, -0.005 * s.OpenCircuitV, -0.001 * s.OpenCircuitV},
		{MaximumCurrent, func(s *Datasheet) *float64 { return &s.MaximumA }, 0.6 * s.ShortCircuitA, s.ShortCircuitA},
		{MaximumVoltage, func(s *Datasheet) *float64 { return &s.MaximumV }, 0.6 * s.OpenCircuitV, s.OpenCircuitV},
	} {
		got := *c.at(&s)
		least, most := math.Inf(1), math.Inf(-1)
		const steps = 20
		for i := range steps + 1 {
			other := s
			v := c.lo + (c.hi-c.lo)*float64(i)/steps
			*c.at(&other) = v
			if other.check() != nil {
				continue
			}
			if _, ok := other.fit(); ok {
				least, most = math.Min(least, v), math.Max(most, v)
			}
		}
		if least <= most {
			return &DatasheetError{Value: c.value, Got: got, Min: least, Max: most}
		}
	}
	return &DatasheetError{Value: VoltageChange, Got: s.VoltagePerK, Min: -0.0035 * s.OpenCircuitV, Max: -0.0022 * s.OpenCircuitV}
}

// linear solves the two ends of the curve and the current at maximum power for
// saturation, shunt and light; ok is false where the saturation would not be positive.
// The shunt may come out negative on the way to a solution, but not in one.
func (s Datasheet) linear(thermalV, seriesOhm float64) (m Module, ok bool) {
	open := math.Exp(s.OpenCircuitV / thermalV)
	short := math.Exp(s.ShortCircuitA * seriesOhm / thermalV)
	atMost := s.MaximumV + s.MaximumA*seriesOhm
	most := math.Exp(atMost / thermalV)
	a11, a12 := open-short, s.OpenCircuitV-s.ShortCircuitA*seriesOhm
	a21, a22 := open-most, s.OpenCircuitV-atMost
	det := a11*a22 - a12*a21
	saturation := (s.ShortCircuitA*a22 - s.MaximumA*a12) / det
	shunt := (a11*s.MaximumA - a21*s.ShortCircuitA) / det
	if !(saturation > 0) || math.IsInf(saturation, 1) || math.IsNaN(shunt) {
		return m, false
	}
	m.Diode = Diode{
		LightA:      saturation*(open-1) + shunt*s.OpenCircuitV,
		SaturationA: saturation, SeriesOhm: seriesOhm, ShuntOhm: 1 / shunt, ThermalV: thermalV,
	}
	m.LightPerK = s.CurrentPerK
	return m, true
}

// check refuses values that no module has whatever the others are.
func (s Datasheet) check() error {
	for _, c := range []struct {
		value         Value
		got, min, max float64
	}{
		{OpenCircuit, s.OpenCircuitV, 0.1, 1000},
		{ShortCircuit, s.ShortCircuitA, 0.001, 1000},
		// At maximum power both lie above half of the ends and below them.
		{MaximumVoltage, s.MaximumV, 0.5 * s.OpenCircuitV, 0.99 * s.OpenCircuitV},
		{MaximumCurrent, s.MaximumA, 0.5 * s.ShortCircuitA, 0.999 * s.ShortCircuitA},
		{VoltageChange, s.VoltagePerK, -0.01 * s.OpenCircuitV, -0.0005 * s.OpenCircuitV},
		{CurrentChange, s.CurrentPerK, -0.002 * s.ShortCircuitA, 0.003 * s.ShortCircuitA},
		{CellCount, float64(s.Cells), math.Ceil(s.OpenCircuitV / mostCellV), math.Floor(s.OpenCircuitV / leastCellV)},
	} {
		if !(c.got >= c.min && c.got <= c.max) {
			return &DatasheetError{Value: c.value, Got: c.got, Min: c.min, Max: c.max}
		}
	}
	return nil
}
