package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// Water colder by 3 K is the house whose months are overtyped so much colder, and asks for
// more heat.
func TestWithColdWater_OvertypedMonths(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	means := climate.MonthMeans(&p.Weather.ColdC)
	typed := prepared(t, func(s *scenario.Scenario) {
		f := scenario.FieldOf(scenario.MonthColdC)
		for m, c := range means {
			s.ColdC.Known[m], s.ColdC.Value[m] = true, f.Snap(c-3)
		}
	})
	b := p.Scenario.Backup
	now, colder := year(t, p, b).Total, year(t, p.WithColdWater(-3), b).Total
	want := year(t, typed, b).Total
	if math.Abs(colder.BoughtJ/want.BoughtJ-1) > 0.01 || !(colder.BoughtJ > now.BoughtJ) {
		t.Errorf("bought %.1f kWh, overtyped %.1f, now %.1f", colder.BoughtJ/JPerKWh, want.BoughtJ/JPerKWh, now.BoughtJ/JPerKWh)
	}
	if got := p.ColdWaterC() - p.WithColdWater(-3).ColdWaterC(); math.Abs(got-3) > 1e-9 {
		t.Errorf("colder by %g K", got)
	}
}
