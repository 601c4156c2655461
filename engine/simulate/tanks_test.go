package simulate

import (
	"math"
	"testing"

	"suncask/engine/scenario"
)

// Two elements at once: from 10 to 14 the lower warms the water below the upper with the
// sun's 500 W while the grid keeps that above at 60 degC, as long as the lower is cooler.
func TestTogether_HandComputedDay(t *testing.T) {
	p := idle(t, 500, func(s *scenario.Scenario) {
		s.Elements, s.UpperPct, s.SetC, s.SunLimitC = scenario.TwoTogether, 60, 60, 75
	})
	f, ws := p.day(t, allDay, 3)
	keepW := p.tankParams.LossWPerK * 0.4 * 40
	if f.SunJ != 500*4*3600 || f.DisplacedJ != 0 {
		t.Errorf("the sun gave %.0f J, displaced %.0f", f.SunJ, f.DisplacedJ)
	}
	// Below: cools to 10 o'clock, is heated over 52 % of the tank, reaches the upper.
	from := p.heated(0).after(60, 10*3600)
	part := heated{p.tankParams.Tau(), p.roomC, 500 / (p.tankParams.LossWPerK * 0.52)}
	meets := part.until(from, 60)
	if meets > 4*3600 {
		t.Fatal("the lower water does not reach 60 degC")
	}
	// Then all 92 % above the lower element warm together, above 60, until 14; the grid
	// rests until they are back at 60, for longer than the day.
	peak := p.heated(500).after(60, 4*3600-meets)
	end := p.heated(0).after(peak, 10*3600)
	bought := keepW * (10*3600 + meets)
	if end < 60 {
		rest := p.heated(0).until(peak, 60)
		bought += p.tankParams.LossWPerK * 0.4 * 40 * (10*3600 - rest)
		end = 60
	}
	top := ws.tank.At(ws.tank.Len() - 1)
	if math.Abs(f.BoughtJ/bought-1) > 1e-6 || math.Abs(top.TempC-end) > 1e-6 {
		t.Errorf("bought %.0f J, by hand %.0f; top %.4f degC, by hand %.4f", f.BoughtJ, bought, top.TempC, end)
	}
}

// The sun's own tank: without draws each tank is a tank by itself, and what is drawn from
// the second comes from the first.
func TestTwoTanks_HandComputedDay(t *testing.T) {
	p := idle(t, 500, func(s *scenario.Scenario) {
		s.Elements, s.SetC, s.SunLimitC, s.SunTankL, s.SunTankKWh = scenario.TwoTanks, 60, 85, 150, 1.5
	})
	f, ws := p.day(t, allDay, 3)
	keepW := p.tankParams.LossWPerK * 0.92 * 40
	if math.Abs(f.BoughtJ/(86400*keepW)-1) > 1e-9 || f.SunJ != 500*4*3600 || f.DisplacedJ != 0 {
		t.Errorf("%+v, by hand %.0f J bought", f, 86400*keepW)
	}
	ua := 1.5 * 1000 / 24 / 45
	sun := heated{150 * 4180 / ua, p.roomC, 500 / (ua * 0.92)}
	rest := heated{sun.tau, p.roomC, 0}
	want := rest.after(sun.after(rest.after(60, 10*3600), 4*3600), 10*3600)
	if top := ws.sunTank.At(ws.sunTank.Len() - 1); math.Abs(top.TempC-want) > 1e-6 {
		t.Errorf("the sun's tank ends at %.4f degC, by hand %.4f", top.TempC, want)
	}
	if p.Litres() != 350 {
		t.Errorf("%g L", p.Litres())
	}
}

// A tank ahead that the sun never heats still takes the chill off cold water, and stands
// loss of its own: the house buys no less heat than it uses and loses. With sun it buys
// less than with the same element in one tank only where that loss is made up for; both
// are run, and the balance closes.
func TestTwoTanks_Year(t *testing.T) {
	one := prepared(t, func(s *scenario.Scenario) { s.TankLitres = 300 })
	two := prepared(t, func(s *scenario.Scenario) { s.Elements, s.SunTankL, s.TankLitres = scenario.TwoTanks, 150, 150 })
	a, b := year(t, one, allDay).Total, year(t, two, allDay).Total
	if !(b.BoughtJ < a.BoughtJ) || !(b.SunJ > a.SunJ) {
		t.Errorf("backup all day: one tank %.0f kWh bought, two %.0f", a.BoughtJ/JPerKWh, b.BoughtJ/JPerKWh)
	}
	t.Logf("backup all day: one tank of 300 L buys %.0f kWh, two of 150 L %.0f", a.BoughtJ/JPerKWh, b.BoughtJ/JPerKWh)
	y := new(Year)
	ws := new(Workspace)
	two.RunYear(hours(15, 18), ws, y)
	var d Day
	two.Replay(hours(15, 18), y, 200, ws, &d)
	if math.Abs(d.Flows.BoughtJ-y.Day[200].BoughtJ) > 1 || math.Abs(d.Flows.SunJ-y.Day[200].SunJ) > 1 || len(d.Trace.Ahead(0)) == 0 {
		t.Errorf("replayed %+v, in the year %+v", d.Flows, y.Day[200])
	}
}
