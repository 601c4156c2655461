package view

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/ui/curve"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// ivLights are the lights of the strings' chart, W/m2, with modules in air of ivAirC.
var ivLights = [...]float64{1000, 500, 200}

const (
	ivAirC   = 20.0
	ivPoints = 40
)

// IV returns the data of the strings' chart; valid until the next call.
func (v *View) IV(s *state.Store) *curve.Data {
	c := &v.chart
	c.Clear(curve.IVAxes, curve.IVSeries)
	mostV, mostA := 1.0, 0.1
	for i, g := range ivLights {
		cellC := pv.Mounting(s.Scenario.Mount).CellC(g, ivAirC)
		volts, amps := s.Prepared.IVCurve(g, cellC, ivPoints)
		for k := range volts {
			c.Series[i] = append(c.Series[i], curve.Point{X: volts[k], Y: amps[k]})
			mostV, mostA = math.Max(mostV, volts[k]), math.Max(mostA, amps[k])
		}
		at, _ := s.Prepared.Working(g, cellC)
		c.Series[curve.WorkPoints] = append(c.Series[curve.WorkPoints], curve.Point{X: at.Volts, Y: at.Amps})
	}
	c.Axes[0] = curve.Axis{Max: curve.Nice(mostA)}
	c.Across = curve.Axis{Max: curve.Nice(mostV)}
	// A straight element meets the curves where they work; a converter's does not.
	if s.Scenario.Coupling != scenario.Converter {
		ohms := s.Prepared.ElementOhms()
		end := math.Min(c.Across.Max, c.Axes[0].Max*ohms)
		c.Series[curve.ElementLine] = append(c.Series[curve.ElementLine], curve.Point{}, curve.Point{X: end, Y: end / ohms})
	}
	return c
}

// IVTwin is the strings' chart in words.
func (v *View) IVTwin(s *state.Store) string {
	var at [len(ivLights)]string
	var volts, amps, fit float64
	for i, g := range ivLights {
		p, ohms := s.Prepared.Working(g, pv.Mounting(s.Scenario.Mount).CellC(g, ivAirC))
		share := 0.0
		if p.MaximumW > 0 {
			share = 100 * p.Volts * p.Amps / p.MaximumW
		}
		at[i] = format.Number(share, 0)
		if i == 0 {
			volts, amps, fit = p.Volts, p.Amps, ohms
		}
	}
	least, most := pv.OhmsRange(s.Scenario.ElementW, s.Scenario.ElementV)
	text := v.Words.Text(words.IVTwin, format.Number(volts, 0), format.Number(amps, 1), at[0], at[1], at[2],
		format.Number(s.Prepared.ElementOhms(), 1), format.Number(fit, 1), format.Number(least, 1), format.Number(most, 1))
	y := s.Prepared.Yields()
	if y.BestJ == 0 {
		return text
	}
	kWh := func(joules float64) string { return kWh(joules, 0) }
	return text + " " + v.Words.Text(words.YieldsText, format.Number(y.BestOhms, 1), kWh(y.BestJ), kWh(y.StraightJ), kWh(y.TrackedJ))
}
