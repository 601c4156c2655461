package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// Houses whose figures follow from their rules. Held at 62 degC all day, every day is a
// heat-up; held at 55, none. Weekly to 65: it takes 125 s a kelvin up to 60 and 32
// minutes more, until about 13:04, and after 16:00 the tank's time constant of 125 h
// keeps it above 60 for 14.8 h, so that two days count; eight days pass at the year's
// end, 7.26 of them without.
func TestHygiene_ByHand(t *testing.T) {
	for name, c := range map[string]struct {
		change       func(*scenario.Scenario)
		b            scenario.Backup
		days         int
		longest, tol float64
	}{
		"held hot":  {func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 62, 62 }, allDay, climate.Days, 0.02, 0.02},
		"held warm": {func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 55, 55 }, allDay, 0, climate.Days, 0},
		"weekly":    {func(s *scenario.Scenario) { s.SetC, s.SunLimitC, s.HeatUp = 55, 55, 1 }, allDay, 104, 7.26, 0.05},
	} {
		p := idle(t, 0, c.change)
		h := p.RunHygiene(c.b, new(Workspace))
		if h.HeatUps != c.days || math.Abs(h.LongestDays-c.longest) > c.tol {
			t.Errorf("%s: %+v", name, h)
		}
	}
	// Below the element of a tank held warm nothing heats: it comes to the room, outside
	// the range; at 55 degC nothing stands in it.
	p := idle(t, 0, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 55, 55 })
	if h := p.RunHygiene(allDay, new(Workspace)); h.GrowHours > 1 || h.GrowLitres > 1 {
		t.Errorf("%+v", h)
	}
	p = idle(t, 0, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 40, 40 })
	if h := p.RunHygiene(allDay, new(Workspace)); math.Abs(h.GrowHours-24) > 1e-6 || math.Abs(h.GrowLitres-0.92*p.Scenario.TankLitres) > 1 {
		t.Errorf("held at 40 degC: %+v", h)
	}
}
