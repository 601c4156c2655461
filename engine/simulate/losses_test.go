package simulate

import (
	"math"
	"testing"

	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Assumed losses are the published ones but for the cable, which is reckoned; with it they come
// to the published total of some 14 %. Version 1 has dirt and mismatch alone.
func TestLosses_Dobos(t *testing.T) {
	var b struct {
		Parts map[string]float64
		Total float64
	}
	published.Block(t, "pv.json", "losses", &b)
	s := scenario.Defaults(scenario.LatestVersion)
	left := 1.0
	for name, pct := range map[string]float64{"soiling": s.SoilPct, "shading": s.ShadePct, "mismatch": s.MismatchPct, "connections": s.ConnectPct,
		"light-induced degradation": s.FirstLightPct, "nameplate": s.PlatePct, "availability": s.DownPct} {
		want, ok := b.Parts[name]
		if !ok || pct != want {
			t.Errorf("%s: %g %%, published %g", name, pct, want)
		}
		left *= 1 - pct/100
	}
	if all := 100 * (1 - left*(1-b.Parts["wiring"]/100)); len(b.Parts) != 8 || math.Abs(all-b.Total) > 0.005 {
		t.Errorf("%.3f %% with the cable, published %.2f", all, b.Total)
	}
	p := prepared(t, func(*scenario.Scenario) {})
	if lost := p.LightLost(); math.Abs(lost-(1-left)) > 1e-12 {
		t.Errorf("%g of the light is lost, by hand %g", lost, 1-left)
	}
	one, _ := scenario.Decode("v=1")
	if q := prepared(t, func(s *scenario.Scenario) { *s = one }); math.Abs(q.LightLost()-(1-0.97*0.98)) > 1e-12 {
		t.Errorf("version 1 loses %g", q.LightLost())
	}
}

// Modules with less air behind them give less; how much less follows from the coefficient of
// their power, some -0.35 %/K, and the light's mean temperature rise.
func TestMounting_Property(t *testing.T) {
	base := prepared(t, func(s *scenario.Scenario) { s.Mount = 0 })
	last := base.Potential.MaximumJ
	prev := base
	for mount := int8(1); mount <= 2; mount++ {
		s := base.Scenario
		s.Mount = mount
		p, err := Prepare(&s, nil, prev)
		if err != nil {
			t.Fatal(err)
		}
		if p.Potential.MaximumJ >= last*0.999 || p.Potential.MaximumJ < 0.9*base.Potential.MaximumJ {
			t.Errorf("mounting %d gives %.1f kWh, on a rack %.1f", mount, p.Potential.MaximumJ/JPerKWh, base.Potential.MaximumJ/JPerKWh)
		}
		if p.Wiring().HotV >= prev.Wiring().HotV {
			t.Errorf("mounting %d: hot strings give %g V", mount, p.Wiring().HotV)
		}
		last, prev = p.Potential.MaximumJ, p
	}
}

// The loss in W/K and in kWh a day are one figure by every way to give it, and 200 hours of
// cooling, e^(-t/tau), give the loss that they came from.
func TestStandingLoss_Analytic(t *testing.T) {
	near := func(what string, p *Prepared, want float64) {
		wPerK, kWh := p.StandingLoss()
		if math.Abs(wPerK-want) > 1e-9*want || math.Abs(kWh-want*45*24/1000) > 1e-9 || wPerK != p.tankParams.LossWPerK {
			t.Errorf("%s: %.6f W/K and %.6f kWh a day, by hand %.6f W/K", what, wPerK, kWh, want)
		}
	}
	near("a figure", prepared(t, func(s *scenario.Scenario) { s.LossKWh = 2.16 }), 2)
	near("jacket and pipes", prepared(t, func(s *scenario.Scenario) { s.LossKWh, s.Jacket, s.PipeLossW = 2.16, 1, 0.4 }), 1.9)
	near("class C", prepared(t, func(s *scenario.Scenario) { s.LossBy = 4 }), (16.66+8.33*math.Pow(200, 0.4))/45)
	near("the limit", prepared(t, func(s *scenario.Scenario) { s.LossBy = scenario.LossMEPS }), 2.17*1000/24/55)
	for _, hours := range []float64{1, 48.5, 200} {
		p := prepared(t, func(s *scenario.Scenario) {
			s.LossBy, s.EveningC, s.MorningC, s.RoomC, s.NightH = scenario.LossOvernight, 60, 40, 20, hours
		})
		if bad := p.Scenario.Problems(); len(bad) > 0 {
			t.Errorf("%g h: %v", hours, bad)
		}
		near("a night", p, 200*tank.HeatCapacity*math.Ln2/(hours*3600))
	}
	s := scenario.Defaults(scenario.LatestVersion)
	s.NightH = 200.5
	if len(s.Problems()) != 1 {
		t.Error("200.5 h are taken")
	}
}

// A house without uses: nobody's water runs cool, nothing is delivered, what heats it is lost or
// stays in it, with every kind of elements and rules.
func TestNoUses_Property(t *testing.T) {
	for _, link := range []string{"v=2&uses=none", "v=2&uses=none&backup=all0000&elements=tanks", "v=2&uses=none&elements=both&rule=sun&rescue=12", "v=2&uses=none&rule=satisfied&heatup=weekly&awaydays=20", "v=2&uses=none&modules=0&backup=none0000"} {
		s, problems := scenario.Decode(link)
		if len(problems) > 0 {
			t.Fatal(link, problems)
		}
		p := prepared(t, func(to *scenario.Scenario) { *to = s })
		y, ws, d := year(t, p, s.Backup), new(Workspace), new(Day)
		f := &y.Total
		if f.CoolUses != 0 || f.CoolDays != 0 || f.DeliveredJ != 0 || f.ShortfallJ != 0 || f.PipeJ != 0 {
			t.Errorf("%s: %+v", link, *f)
		}
		if off := f.SunJ + f.BoughtJ - f.LostJ - f.StoredJ; math.Abs(off) > 1e-6*math.Max(f.LostJ, 1) {
			t.Errorf("%s: %g J are neither lost nor stored", link, off)
		}
		p.RunDay(s.Backup, 5, scenario.Dull, ws, d)
		b := p.RunBoost(s.Backup, ws)
		h := p.RunHygiene(s.Backup, ws)
		minutes, _ := p.ReadyAfter(48, 5, Left{}, ws)
		for what, v := range map[string]float64{"cost": f.Cost, "fraction": f.SolarFraction(), "full": d.FullL, "boost": b.Cost, "dose": h.LeastDose, "ready": minutes} {
			if math.IsNaN(v) {
				t.Errorf("%s: %s is no number", link, what)
			}
		}
		if len(d.Uses) != 0 || len(d.Trace.Points) < samplesPerDay || b.Presses != 0 {
			t.Errorf("%s: %d uses, %d points, %d presses", link, len(d.Uses), len(d.Trace.Points), b.Presses)
		}
	}
}
