package simulate

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Showers warmer by k kelvin that never run cool take V c k more, whatever the tank does; and
// of a tank that is hot throughout V (T - T_c)/(T_u - T_c) litres are ready.
func TestShowerC_Analytic(t *testing.T) {
	at := func(showerC float64) (*Prepared, *Year) {
		p := prepared(t, func(s *scenario.Scenario) { s.ShowerC, s.TankLitres, s.ElementW, s.CutOutC = showerC, 300, 3000, 95 })
		return p, year(t, p, scenario.Backup{AllDay: true})
	}
	p, cool := at(37.5)
	q, warm := at(43)
	s := &p.Scenario
	litres := float64(s.People) * s.ShowerMinutes * s.ShowerFlow * 365
	want := litres * tank.HeatCapacity * 5.5
	if got := warm.Total.DeliveredJ - cool.Total.DeliveredJ; math.Abs(got/want-1) > 1e-9 || warm.Total.CoolUses > 0 {
		t.Errorf("5.5 K take %.3f kWh a year, by hand %.3f; %d cool uses", got/JPerKWh, want/JPerKWh, warm.Total.CoolUses)
	}
	ws := new(Workspace)
	for _, p := range []*Prepared{p, q} {
		r, coldC := p.start(scenario.Backup{}, ws), 10.0
		p.tankParams.InletMixedLitres = 0
		p.fill(ws, 60)
		want := p.Scenario.TankLitres * (60 - coldC) / (p.Scenario.ShowerC - coldC)
		if got := r.usable(coldC); math.Abs(got-want) > 1e-9 {
			t.Errorf("showers of %g degC: %g L ready, by hand %g", p.Scenario.ShowerC, got, want)
		}
	}
}
