package simulate

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// From cold to the thermostat takes the heat of the water above the element over the power,
// by the grid and by a sun of a bright day that is put there by hand; the loss of a well
// insulated tank adds little. A bigger tank is not hot within a day.
func TestHeatTimes_HandComputed(t *testing.T) {
	for _, c := range []struct {
		litres, lower, setC, sunC float64
		toC                       float64
		elements                  scenario.Elements
	}{
		{100, 10, 55, 75, 55, scenario.OneElement}, {100, 80, 60, 50, 50, scenario.OneElement}, {100, 5, 45, 75, 45, scenario.TwoInTurn}, {90, 5, 45, 75, 45, scenario.TwoTanks},
	} {
		p := prepared(t, func(s *scenario.Scenario) {
			s.TankLitres, s.SunTankL, s.LowerPct, s.SetC, s.SunLimitC, s.Elements, s.UpperPct = c.litres, 100, c.lower, c.setC, c.sunC, c.elements, 60
			s.LossKWh, s.SunTankKWh, s.ElementW = 0.2, 0.2, 1500
		})
		bright := &p.sky[5][scenario.Bright].power
		*bright = [24]float64{9: 500, 10: 1000, 11: 1000, 12: 1000, 13: 1000, 14: 500}
		h := p.HeatTimes(5, new(Workspace))
		rise := c.toC - p.skyColdC[5]
		grid := c.litres * (1 - p.backupElement.Low) * tank.HeatCapacity * rise / 1500 / 60
		if !h.GridOK || h.ToC != c.toC || h.GridMinutes < grid-1e-6 || h.GridMinutes > 1.01*grid {
			t.Errorf("%+v: %.2f min by the grid, by hand %.2f", c, h.GridMinutes, grid)
		}
		litres := c.litres
		if c.elements == scenario.TwoTanks {
			litres = 100
		}
		joules := litres * (1 - c.lower/100) * tank.HeatCapacity * rise
		sun := 60 + (joules-500*3600)/1000/60 // within the hours of 1000 W
		if joules < 500*3600 {
			sun = joules / 500 / 60
		}
		if !h.SunOK || h.SunFrom != 9*60 || h.SunMinutes < sun-1e-6 || h.SunMinutes > 1.02*sun || sun > 300 {
			t.Errorf("%+v: %.2f min by the sun from %g on, by hand %.2f", c, h.SunMinutes, h.SunFrom, sun)
		}
	}
	p := prepared(t, func(s *scenario.Scenario) { s.TankLitres, s.ElementW = 1000, 1500 })
	if h := p.HeatTimes(0, new(Workspace)); h.GridOK || h.SunOK {
		t.Errorf("1000 L within a day: %+v", h)
	}
	p = prepared(t, func(s *scenario.Scenario) { s.Modules = 0 })
	if h := p.HeatTimes(0, new(Workspace)); !h.GridOK || h.SunOK || h.SunFrom != 0 || math.IsNaN(h.SunMinutes) {
		t.Errorf("without modules: %+v", h)
	}
}
