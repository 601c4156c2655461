package simulate

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// A cold tank without loss is ready after the heat for its water above the element, which
// warms as one: litres times heat capacity times rise over power.
func TestReadyAfter_Analytic(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.LossKWh, s.RoomC, s.SupplyV = 0.2, 17, 207
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	if want := 2000 * 0.9 * 0.9; math.Abs(p.BackupW()-want) > 1e-9 {
		t.Fatalf("%g W at nine tenths of the voltage, want %g", p.BackupW(), want)
	}
	cold := p.skyColdC[0]
	above := s.TankLitres * (1 - s.LowerPct/100)
	want := above * tank.HeatCapacity * (p.Scenario.ShowerC - ToleranceK - cold) / p.BackupW() / 60
	got, ok := p.ReadyAfter(48, 0, Left{}, new(Workspace))
	if !ok || got < want-0.01 || got > want+3 {
		t.Errorf("ready after %g min, by hand %.1f and less than 3 for loss and whole minutes", got, want)
	}
	if _, ok := p.ReadyAfter(5000, 0, Left{}, new(Workspace)); ok {
		t.Error("5000 L from a tank of 200")
	}
	// Half warm it takes as much less as it is nearer.
	warm := cold + 12
	want *= (p.Scenario.ShowerC - ToleranceK - warm) / (p.Scenario.ShowerC - ToleranceK - cold)
	if got, ok = p.ReadyAfter(48, 0, Left{TempC: warm}, new(Workspace)); !ok || got < want-0.01 || got > want+3 {
		t.Errorf("at %g degC ready after %g min, by hand %.1f", warm, got, want)
	}
}

// Litres drawn mix hot water with cold in the shares (Tu - Tc)/(T - Tc), so a heated tank gives
// its hot litres times (T - Tc)/(Tu - Tc): with less used a shower is left, with more one waits.
func TestReadyAfter_Used(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.LossKWh = 0.2
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	p.tankParams.InletMixedLitres = 0
	cold := p.skyColdC[0]
	gives := s.TankLitres * (1 - s.LowerPct/100) * (s.SetC - cold) / (s.ShowerC - cold)
	for _, c := range []struct {
		used  float64
		waits bool
	}{{gives - 48 - 4, false}, {gives - 48 + 4, true}, {gives, true}} {
		if minutes, ok := p.ReadyAfter(48, 0, Left{UsedL: c.used}, new(Workspace)); !ok || minutes > 0 != c.waits {
			t.Errorf("%.0f of %.0f L used: %g min, %v", c.used, gives, minutes, ok)
		}
	}
	most, _ := p.ReadyAfter(48, 0, Left{}, new(Workspace))
	before := 0.0
	for used := 20.0; used < gives+100; used += 20 {
		minutes, ok := p.ReadyAfter(48, 0, Left{UsedL: used}, new(Workspace))
		if !ok || minutes < before || minutes > most+1 {
			t.Errorf("%.0f L used: %g min after %g, from cold %g", used, minutes, before, most)
		}
		before = minutes
	}
}

func TestHeatingMinutes(t *testing.T) {
	for _, c := range []struct {
		b       scenario.Backup
		out     scenario.Span
		minutes float64
	}{
		{scenario.Backup{Start: 900, End: 1080}, scenario.Span{}, 180},
		{scenario.Backup{Start: 900, End: 1080}, scenario.Span{Start: 960, End: 1020}, 120},
		{scenario.Backup{Start: 1380, End: 60}, scenario.Span{}, 120},
		{scenario.Backup{Start: 1380, End: 60, Second: scenario.Span{Start: 30, End: 90}}, scenario.Span{}, 150},
		{scenario.Backup{AllDay: true}, scenario.Span{Start: 1400, End: 20}, 1380},
		{scenario.Backup{}, scenario.Span{}, 0},
		{scenario.Backup{Start: -60, StartFrom: scenario.Sunset, End: 60, EndFrom: scenario.Sunset}, scenario.Span{}, 120},
	} {
		s := scenario.Defaults(scenario.LatestVersion)
		s.OutFrom, s.OutTo = c.out.Start, c.out.End
		p, err := Prepare(&s, nil, nil)
		if err != nil {
			t.Fatal(err)
		}
		if got := p.HeatingMinutes(c.b, 100); math.Abs(got-c.minutes) > 5 {
			t.Errorf("%+v without %+v: %g min, want %g", c.b, c.out, got, c.minutes)
		}
	}
}
