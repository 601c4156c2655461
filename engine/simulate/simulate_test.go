package simulate

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

func prepared(t testing.TB, change func(*scenario.Scenario)) *Prepared {
	t.Helper()
	s := scenario.Defaults(scenario.LatestVersion)
	change(&s)
	if p := s.Problems(); len(p) > 0 {
		t.Fatal(p)
	}
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func year(t testing.TB, p *Prepared, b scenario.Backup) *Year {
	t.Helper()
	y := new(Year)
	p.RunYear(b, new(Workspace), y)
	if y.Err != nil || y.WorstBalance > 1e-9 {
		t.Fatalf("%+v: error %v, balance %g", p.Scenario, y.Err, y.WorstBalance)
	}
	return y
}

func hours(from, to float64) scenario.Backup {
	return scenario.Backup{Start: int(from * 60), End: int(to * 60)}
}

var (
	allDay = scenario.Backup{AllDay: true}
	never  = scenario.Backup{}
)

// randomHouse fills the inputs that shape a year.
func randomHouse(r *rand.Rand) func(*scenario.Scenario) {
	places := []string{"lisbon", "cape-town", "madrid", "nairobi", "mariehamn", "ushuaia", "seville", "pretoria"}
	return func(s *scenario.Scenario) {
		s.Place = places[r.IntN(len(places))]
		s.Uses = scenario.Uses(r.IntN(4))
		s.People = 1 + r.IntN(6)
		s.When = scenario.When(r.IntN(3))
		s.ShowerMinutes = 2 + float64(r.IntN(10))
		s.TankLitres = float64(50 + r.IntN(350))
		s.LossKWh = float64(50+r.IntN(350)) / 100
		s.SetC = float64(45 + r.IntN(25))
		s.SunLimitC = float64(50 + r.IntN(35))
		s.ElementW = float64(500 + 10*r.IntN(300))
		s.Modules = r.IntN(10)
		s.TiltDeg = float64(r.IntN(91))
		s.AzimuthDeg = float64(r.IntN(360))
		if r.IntN(2) == 0 {
			s.LowFrom, s.LowTo = 22*60, 6*60
		}
	}
}

// Every day of every run closes its balance, whatever the house and the hours.
func TestYear_Balance_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	worst := 0.0
	for range 60 {
		p := prepared(t, randomHouse(r))
		b := scenario.Backup{Start: 5 * r.IntN(288), End: 5 * r.IntN(288)}
		if r.IntN(2) == 0 {
			b.Second = scenario.Span{Start: 5 * r.IntN(288), End: 5 * r.IntN(288)}
		}
		if r.IntN(5) == 0 {
			b = allDay
		}
		y := year(t, p, b)
		worst = math.Max(worst, y.WorstBalance)
		f := y.Total
		if off := f.SunJ + f.BoughtJ - f.LostJ - f.DeliveredJ - f.PipeJ - f.StoredJ; math.Abs(off) > 1e-8*(f.SunJ+f.BoughtJ+f.LostJ+f.DeliveredJ) {
			t.Errorf("%+v: flows of the year miss each other by %g J", p.Scenario, off)
		}
		if f.UnusedSunJ < -1e-6 || f.SunJ < 0 || f.BoughtJ < 0 || f.CoolDays > 365 {
			t.Errorf("%+v: %+v", p.Scenario, f)
		}
	}
	t.Logf("worst day's balance of 60 random houses: %.1e of throughput + content", worst)
}

// A day of the year replayed from its midnight gives the same flows to the last
// bit, although it stops every quarter of an hour to be looked at.
func TestReplay_Exact(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) {})
	b := p.Scenario.Backup
	y := year(t, p, b)
	ws, d := new(Workspace), new(Day)
	for _, day := range []int{0, 40, 171, 200, 364} {
		p.Replay(b, y, day, ws, d)
		want := y.Day[day]
		for what, pair := range map[string][2]float64{
			"sun": {d.Flows.SunJ, want.SunJ}, "bought": {d.Flows.BoughtJ, want.BoughtJ}, "cost": {d.Flows.Cost, want.Cost},
			"lost": {d.Flows.LostJ, want.LostJ}, "delivered": {d.Flows.DeliveredJ, want.DeliveredJ},
		} {
			if math.Abs(pair[0]-pair[1]) > 1e-9*(1+math.Abs(pair[1])) {
				t.Errorf("day %d: %s %.12g, year had %.12g", day, what, pair[0], pair[1])
			}
		}
		if d.Flows.CoolUses != want.CoolUses {
			t.Errorf("day %d: %d cool uses, year had %d", day, d.Flows.CoolUses, want.CoolUses)
		}
		if n := len(d.Trace.Points); n < samplesPerDay || d.Trace.Points[n-1].Minute != 1440 {
			t.Errorf("day %d: %d points", day, n)
		}
	}
}

func TestRunDay_Repeats(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) {})
	ws, d := new(Workspace), new(Day)
	varies := 0
	for m := range 12 {
		for sky := scenario.Bright; sky <= scenario.Dull; sky++ {
			p.RunDay(p.Scenario.Backup, m, sky, ws, d)
			f := d.Flows
			if d.Varies {
				// Its mean day still stores next to nothing, and it says that it varies.
				varies++
				if d.Rounds != maxRounds || math.Abs(f.StoredJ) > 5*3600 {
					t.Errorf("month %d, sky %d: %d rounds, stored %.1f J", m, sky, d.Rounds, f.StoredJ)
				}
				continue
			}
			if math.Abs(f.StoredJ) > 3*settledJ {
				t.Errorf("month %d, sky %d: varies %v after %d rounds, stored %.1f J", m, sky, d.Varies, d.Rounds, f.StoredJ)
			}
			if first, last := d.Trace.Points[0].UsableL, d.Trace.Points[len(d.Trace.Points)-1].UsableL; math.Abs(first-last) > 1 {
				t.Errorf("month %d, sky %d: usable litres start at %.2f and end at %.2f", m, sky, first, last)
			}
		}
	}
	t.Logf("%d of 36 days do not repeat", varies)
	if varies > 9 {
		t.Errorf("%d of 36 days do not repeat", varies)
	}
}

func TestPrepare_ReusesStages(t *testing.T) {
	a := prepared(t, func(s *scenario.Scenario) {})
	s := a.Scenario
	s.TankLitres = 150
	b, err := Prepare(&s, nil, a)
	if err != nil || b.Weather != a.Weather || b.sun[99].power != a.sun[99].power {
		t.Errorf("stages not reused: %v", err)
	}
	s.TiltDeg = 60
	c, err := Prepare(&s, nil, b)
	if err != nil {
		t.Fatal(err)
	}
	fresh := prepared(t, func(x *scenario.Scenario) { *x = s })
	if c.sun != fresh.sun || c.sun == b.sun {
		t.Error("another tilt must give the sun of a fresh preparation, and another one than before")
	}
	s.Place = "tongaat-kwazulu-natal"
	var bright *climate.ClearSkyError
	if _, err := Prepare(&s, nil, c); !errors.As(err, &bright) {
		t.Errorf("an impossible record gives %v", err)
	}
}

func TestYear_NoAllocations(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) {})
	ws, y, d := new(Workspace), new(Year), new(Day)
	b := p.Scenario.Backup
	p.RunDay(b, 5, scenario.Typical, ws, d)
	if n := testing.AllocsPerRun(5, func() { p.RunYear(b, ws, y); p.RunDay(b, 5, scenario.Typical, ws, d) }); n > 0 {
		t.Errorf("%g allocations a run", n)
	}
}

// house of the practice tests: a roof that covers at least half of a clear day.
func practice(place string, when scenario.When, people, litres, modules int) func(*scenario.Scenario) {
	return func(s *scenario.Scenario) {
		s.Place, s.When, s.People = place, when, people
		s.TankLitres, s.Modules = float64(litres), modules
		if p, _ := climate.PlaceBySlug(place); p.LatDeg < 0 {
			s.AzimuthDeg = 0
		}
	}
}

type practiceHouse struct {
	place                   string
	people, litres, modules int
}

var practiceHouses = []practiceHouse{
	{"lisbon", 3, 200, 4}, {"lisbon", 4, 250, 5}, {"seville", 2, 150, 3}, {"madrid", 4, 300, 6},
	{"cape-town", 3, 200, 4}, {"pretoria", 4, 200, 4}, {"pretoria", 5, 300, 6}, {"athens", 3, 200, 4},
}

func name(h practiceHouse) string {
	return fmt.Sprintf("%s, %d people, %d L, %d modules", h.place, h.people, h.litres, h.modules)
}

// (a) With backup from mid-afternoon through the night to before the morning
// wash, the house that washes in the morning buys less (common practice, no source).
func TestPractice_MorningWashBuysLess(t *testing.T) {
	for _, h := range practiceHouses {
		b := hours(15, 6)
		am := year(t, prepared(t, practice(h.place, scenario.Mornings, h.people, h.litres, h.modules)), b).Total.BoughtJ
		pm := year(t, prepared(t, practice(h.place, scenario.Evenings, h.people, h.litres, h.modules)), b).Total.BoughtJ
		t.Logf("%s: morning %.0f kWh, evening %.0f kWh, margin %.1f %%", name(h), am/JPerKWh, pm/JPerKWh, 100*(pm-am)/pm)
		if am >= pm {
			t.Errorf("%s: morning wash buys %.0f kWh, evening %.0f", name(h), am/JPerKWh, pm/JPerKWh)
		}
	}
}

// (b) Where the house washes in the evening and the sun covers half of a clear
// day's need, two hours ending at sunrise buy more than two ending before the
// evening wash (common practice, no source).
func TestPractice_SunriseHoursBuyMore(t *testing.T) {
	for _, h := range practiceHouses {
		p := prepared(t, practice(h.place, scenario.Evenings, h.people, h.litres, h.modules))
		ws, d := new(Workspace), new(Day)
		for m := range 12 {
			p.RunDay(never, m, scenario.Bright, ws, d)
			if need := d.Flows.DeliveredJ + d.Flows.ShortfallJ + d.Flows.LostJ; d.Flows.SunJ < 0.5*need {
				t.Errorf("%s: month %d: the sun covers %.0f %% of a clear day, the condition asks for half", name(h), m+1, 100*d.Flows.SunJ/need)
			}
		}
		// Sunrise of the equinox on the local clock, to five minutes.
		rise := math.Round((p.Weather.Sun[79].Noon-6)*12) / 12
		early := year(t, p, hours(rise-2, rise)).Total.BoughtJ
		late := year(t, p, hours(16.75, 18.75)).Total.BoughtJ
		t.Logf("%s: ending at sunrise %.0f kWh, before the evening wash %.0f kWh, margin %.1f %%", name(h), early/JPerKWh, late/JPerKWh, 100*(early-late)/late)
		if early <= late {
			t.Errorf("%s: sunrise hours buy %.0f kWh, evening hours %.0f", name(h), early/JPerKWh, late/JPerKWh)
		}
	}
}

// (c) Backup kept off from before the morning wash until mid-afternoon buys less
// than backup all day (common practice, no source).
func TestPractice_PauseBuysLess(t *testing.T) {
	for _, h := range practiceHouses {
		for _, when := range []scenario.When{scenario.Mornings, scenario.Evenings, scenario.Both} {
			p := prepared(t, practice(h.place, when, h.people, h.litres, h.modules))
			pause, all := year(t, p, hours(15, 6)).Total.BoughtJ, year(t, p, allDay).Total.BoughtJ
			t.Logf("%s, wash %d: paused %.0f kWh, all day %.0f kWh, margin %.1f %%", name(h), when, pause/JPerKWh, all/JPerKWh, 100*(all-pause)/all)
			if pause >= all {
				t.Errorf("%s: paused %.0f kWh, all day %.0f", name(h), pause/JPerKWh, all/JPerKWh)
			}
		}
	}
}

// (d) More array power at every hour never raises bought energy (common practice,
// no source): more modules of the same kind give at least as much each hour.
func TestPractice_MorePowerNeverBuysMore(t *testing.T) {
	for _, h := range practiceHouses {
		for _, b := range []scenario.Backup{hours(15, 18), hours(22, 6), hours(4, 6)} {
			last, first := math.Inf(1), 0.0
			for n := 0; n <= 10; n++ {
				p := prepared(t, practice(h.place, scenario.Both, h.people, h.litres, n))
				bought := year(t, p, b).Total.BoughtJ
				if bought > last {
					t.Errorf("%s, hours %+v: %d modules buy %.3f kWh more than %d", name(h), b, n, (bought-last)/JPerKWh, n-1)
				}
				if n == 0 {
					first = bought
				}
				last = bought
			}
			t.Logf("%s, hours %+v: %.0f kWh without modules, %.0f with ten", name(h), b, first/JPerKWh, last/JPerKWh)
		}
	}
}

// With two prices the bill is each band's energy at its price: hours inside the
// low band cost the low price, hours outside the other, and a window across an
// edge what its parts cost.
func TestYear_TwoPrices_Analytic(t *testing.T) {
	two := func(s *scenario.Scenario) { s.Price, s.LowPrice, s.LowFrom, s.LowTo = 0.3, 0.1, 22*60, 6*60 }
	p := prepared(t, two)
	for _, c := range []struct {
		b           scenario.Backup
		least, most float64
	}{
		{hours(23, 2), 0.1, 0.1}, {hours(15, 18), 0.3, 0.3}, {hours(20, 23.5), 0.1, 0.3}, {hours(4, 8), 0.1, 0.3},
	} {
		f := year(t, p, c.b).Total
		mean := f.Cost / (f.BoughtJ / JPerKWh)
		if mean < c.least-1e-9 || mean > c.most+1e-9 || c.least < c.most && (mean < c.least+1e-3 || mean > c.most-1e-3) {
			t.Errorf("%+v: mean price %.4f, want between %g and %g", c.b, mean, c.least, c.most)
		}
	}
	flat := year(t, prepared(t, func(s *scenario.Scenario) { s.Price = 0.3 }), hours(20, 23.5)).Total
	if banded := year(t, p, hours(20, 23.5)).Total; math.Abs(banded.BoughtJ/flat.BoughtJ-1) > 1e-9 {
		t.Errorf("a price changes what is bought: %g and %g J", banded.BoughtJ, flat.BoughtJ)
	}
}

// Two windows are their union: cut in two, overlapping or nested they buy what
// the one window does, wherever midnight falls.
func TestYear_TwoWindows_Union(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	span := func(from, to float64) scenario.Span { return scenario.Span{Start: int(from * 60), End: int(to * 60)} }
	for _, c := range []struct {
		name   string
		whole  scenario.Backup
		first  scenario.Backup
		second scenario.Span
	}{
		{"cut in two", hours(15, 19), hours(15, 17), span(17, 19)},
		{"overlapping", hours(15, 19), hours(15, 18), span(16, 19)},
		{"nested", hours(15, 19), hours(15, 19), span(16, 17)},
		{"over midnight", hours(22, 6), hours(22, 1), span(0.5, 6)},
		{"cut at midnight", hours(22, 6), hours(22, 0), span(0, 6)},
		{"none and one", hours(15, 18), never, span(15, 18)},
	} {
		c.first.Second = c.second
		one, two := year(t, p, c.whole).Total, year(t, p, c.first).Total
		if math.Abs(one.BoughtJ/two.BoughtJ-1) > 1e-9 || one.CoolUses != two.CoolUses {
			t.Errorf("%s: %.6f kWh in one window, %.6f in two", c.name, one.BoughtJ/JPerKWh, two.BoughtJ/JPerKWh)
		}
	}
	apart := hours(15, 16)
	apart.Second = span(4, 5)
	if sum, one := year(t, p, apart).Total.BoughtJ, year(t, p, hours(15, 16)).Total.BoughtJ; sum <= one {
		t.Errorf("a second window apart buys nothing: %g and %g J", sum, one)
	}
}
