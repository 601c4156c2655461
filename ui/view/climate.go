package view

import (
	"math"

	"suncask/engine/scenario"
	"suncask/ui/curve"
	"suncask/ui/format"
	"suncask/ui/state"
)

// Climate returns the data of the climate's chart: months 1 to 12; valid until the
// next call.
func (v *View) Climate(s *state.Store) *curve.Data {
	c, p := &v.chart, &s.Prepared.Weather.Place
	c.Clear(curve.ClimateAxes, curve.ClimateSeries)
	cold := s.ColdMonths()
	light, low, high := 0.0, 0.0, 0.0
	for m := range 12 {
		add := func(series int, y float64) {
			c.Series[series] = append(c.Series[series], curve.Point{X: float64(m + 1), Y: y})
		}
		add(curve.Light, p.GHI[m])
		air, water := format.Shown(scenario.Celsius, p.TempC[m]), format.Shown(scenario.Celsius, cold[m])
		add(curve.Air, air)
		add(curve.Cold, water)
		light = math.Max(light, p.GHI[m])
		low = math.Min(low, math.Min(air, water))
		high = math.Max(high, math.Max(air, water))
	}
	c.Axes[curve.LightAxis] = curve.Axis{Max: curve.Nice(light)}
	c.Axes[curve.TempAxis] = curve.Axis{Max: curve.Nice(high)}
	if low < 0 {
		c.Axes[curve.TempAxis].Min = -curve.Nice(-low)
	}
	return c
}
