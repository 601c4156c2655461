package visit

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Days between dates against Go's calendar, over leap years too.
func TestPeriodOf_Calendar(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 1))
	date := func(at time.Time) int { return at.Year()*10000 + int(at.Month())*100 + at.Day() }
	for range 2000 {
		a := time.Date(2000+r.IntN(100), 1, 1+r.IntN(366), 0, 0, 0, 0, time.UTC)
		days := r.IntN(380) - 7
		b := a.AddDate(0, 0, days)
		p, err := PeriodOf(date(a), date(b))
		var refused *PeriodError
		switch {
		case days < 1 || days > climate.Days+1:
			if !errors.As(err, &refused) {
				t.Fatalf("%d to %d: %v, %v", date(a), date(b), p, err)
			}
		case err != nil || p.Days != min(days, climate.Days):
			t.Fatalf("%d to %d: %+v, %v, want %d days", date(a), date(b), p, err, days)
		default:
			from := time.Date(2001, a.Month(), a.Day(), 0, 0, 0, 0, time.UTC) // no leap year
			if a.Month() == time.February && a.Day() == 29 {
				from = time.Date(2001, 2, 28, 0, 0, 0, 0, time.UTC)
			}
			if p.From != from.YearDay()-1 {
				t.Fatalf("%d: day %d, want %d", date(a), p.From, from.YearDay()-1)
			}
		}
	}
	for _, bad := range [][2]int{{20260230, 20260301}, {20250229, 20250301}, {20261301, 20270101}, {20260001, 20260201}, {20260100, 20260201}, {0, 20260101}, {-20260101, 20260102}, {20260101, 20260101}, {20260102, 20260101}} {
		if p, err := PeriodOf(bad[0], bad[1]); err == nil {
			t.Errorf("%v became %+v", bad, p)
		}
	}
}

// A year's days are the year's total, and a period over New Year the sum of its two parts.
func TestPeriod_Sums(t *testing.T) {
	p := prepared(t, nil)
	ws, y := new(simulate.Workspace), new(simulate.Year)
	p.RunYear(p.Scenario.Backup, ws, y)
	close(t, "a year", (Period{200, climate.Days}).of(y), y.Total.BoughtJ/simulate.JPerKWh, 1e-9)
	close(t, "over New Year", (Period{304, 92}).of(y), (Period{304, 61}).of(y)+(Period{0, 31}).of(y), 1e-9)
}

func readAll(p *simulate.Prepared, period Period, kWh float64) (m Meter, causes []Cause, steps int) {
	for part := range ReadMeter(p, nil, period, kWh) {
		switch {
		case part.Meter != nil:
			m = *part.Meter
		case part.Cause != nil:
			causes = append(causes, *part.Cause)
		default:
			steps++
		}
	}
	return m, causes, steps
}

// What a house should have bought explains itself: every cause is where it is assumed to be.
func TestReadMeter_Nothing(t *testing.T) {
	p := prepared(t, nil)
	period := Period{304, 92}
	m, _, _ := readAll(p, period, 100)
	again, causes, steps := readAll(p, period, m.Expected)
	if again != m || !(m.Least < m.Expected && m.Expected < m.Most) || m.MinuteKWh <= 0 {
		t.Errorf("%+v, then %+v", m, again)
	}
	for _, c := range causes {
		if c.Kind != CauseAllDay && (!c.Alone || c.Far > 0.3) {
			t.Errorf("cause %d: %+v", c.Kind, c)
		}
	}
	if steps > 140 {
		t.Errorf("%d years", steps)
	}
	t.Logf("November to January: %+v, %d years", m, steps)
}

// fed is a house of which one cause was made otherwise.
type fed struct {
	p      *simulate.Prepared
	period Period
	year   simulate.Year
	ws     simulate.Workspace
}

func (f *fed) buys(q *simulate.Prepared) float64 {
	q.RunYear(q.Scenario.Backup, &f.ws, &f.year)
	return f.period.of(&f.year)
}

// with is what the house buys with a cause's value.
func (f *fed) with(t *testing.T, kind CauseKind, v float64) float64 {
	t.Helper()
	s := f.p.Scenario
	switch kind {
	case CauseShower:
		s.ShowerMinutes = v
	case CausePeople:
		s.People = int(v)
	case CauseClock:
		moveHours(&s.Backup, -int(v))
	case CauseAllDay:
		s.Backup = scenario.Backup{AllDay: true}
	case CauseStat:
		s.SetC = v
	case CauseLoss:
		s.LossBy, s.Jacket, s.PipeLossW, s.LossKWh = scenario.LossFigure, 0, 0, v
	case CauseSun:
		s.SoilPct = 100 - v*(100-s.SoilPct)
	case CauseCold:
		return f.buys(f.p.WithColdWater(v))
	}
	q, err := simulate.Prepare(&s, nil, f.p)
	if err != nil {
		t.Fatal(err)
	}
	return f.buys(q)
}

// randomFed is a random house and a period of it.
func randomFed(t *testing.T, r *rand.Rand) *fed {
	p := prepared(t, func(s *scenario.Scenario) {
		s.People, s.ShowerMinutes, s.SetC = 1+r.IntN(6), 3+float64(r.IntN(16))/2, float64(48+r.IntN(20))
		s.TankLitres, s.Modules, s.InString = 100+float64(r.IntN(30))*10, 1+r.IntN(8), 0
		s.Rule = scenario.Rule(r.IntN(3))
		s.Backup.Start = 30 * r.IntN(48)
		s.Backup.End = (s.Backup.Start + 60 + 30*r.IntN(12)) % scenario.DayMinutes
		if r.IntN(3) == 0 {
			s.Backup.Second.Start = (s.Backup.End + 120) % scenario.DayMinutes
			s.Backup.Second.End = (s.Backup.End + 240) % scenario.DayMinutes
		}
		if r.IntN(5) == 0 {
			s.Elements = scenario.TwoTanks
		}
		s.Settle()
	})
	return &fed{p: p, period: Period{r.IntN(climate.Days), 20 + r.IntN(346)}}
}

// One cause changed in a random house, and what it then buys fed back: that cause alone explains it,
// with the value that it was given, to a step, or with another that buys as much to 1 %, half a kWh
// at least (no outside truth: the house is asked back what it said).
func TestReadMeter_FindsTheCause(t *testing.T) {
	houses := 50
	if testing.Short() {
		houses = 3
	}
	r := rand.New(rand.NewPCG(2, 99))
	for house := range houses {
		f := randomFed(t, r)
		s := &f.p.Scenario
		_, loss := f.p.StandingLoss()
		people := s.People + 1
		if s.People > 2 && r.IntN(2) == 0 {
			people = s.People - 1
		}
		expected := f.buys(f.p)
		for _, c := range []struct {
			kind       CauseKind
			want, step float64
		}{
			{CauseShower, math.Max(1.5, s.ShowerMinutes+6*r.Float64()-2), 0.5},
			{CausePeople, float64(people), 0.1},
			{CauseClock, float64(15 * (r.IntN(21) - 10)), 15},
			{CauseAllDay, 0, 1},
			{CauseStat, s.SetC + float64(r.IntN(13)-6), 1},
			{CauseLoss, loss * (0.5 + 2*r.Float64()), 0.05},
			{CauseSun, 0.2 + 0.75*r.Float64(), 0.02},
			{CauseCold, 10*r.Float64() - 5, 0.2},
		} {
			kWh := f.with(t, c.kind, c.want)
			asked := &reader{p: f.p, period: f.period, read: kWh, step: func() bool { return true }}
			asked.meter.Expected = expected
			got, ok := asked.cause(c.kind)
			if !ok || !got.Alone || got.Least > expected || got.Most < expected {
				t.Errorf("house %d, cause %d: %.1f kWh instead of %.1f are not explained: %+v", house, c.kind, kWh, expected, got)
				continue
			}
			as := f.with(t, c.kind, got.Value)
			if math.Abs(got.Value-c.want) > c.step && math.Abs(as-kWh) > math.Max(0.5, 0.01*kWh) {
				t.Errorf("house %d, cause %d: %.4g instead of %.4g makes %.2f kWh instead of %.2f", house, c.kind, got.Value, c.want, as, kWh)
			}
		}
	}
}

// A cause that is as it is assumed to be explains no reading that differs: one between those of three
// people and of four is not explained by three.
func TestReadMeter_AssumedExplainsNothing(t *testing.T) {
	f := &fed{p: prepared(t, nil), period: Period{304, 92}}
	expected, more := f.buys(f.p), f.with(t, CausePeople, float64(f.p.Scenario.People+1))
	for _, part := range []float64{0.2, 0.4, 0.7} {
		kWh := expected + part*(more-expected)
		_, causes, _ := readAll(f.p, f.period, kWh)
		for _, c := range causes {
			if c.Kind < CauseWeather && c.Kind != CauseAllDay && c.Alone && c.Value == c.Assumed {
				t.Errorf("%.1f kWh instead of %.1f: %+v", kWh, expected, c)
			}
		}
	}
}

// A cause that is taken is in the house, to half a step of its field, and marked as known.
func TestCause_Take(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.Backup.Second = scenario.Span{Start: 60, End: 120} })
	for _, c := range []struct {
		Cause
		field scenario.FieldID
		want  float64
		step  float64
	}{
		{Cause{Kind: CauseShower, Value: 7.3}, scenario.ShowerMinutes, 7.3, 0.5},
		{Cause{Kind: CausePeople, Value: 4}, scenario.People, 4, 0},
		{Cause{Kind: CauseStat, Value: 63.4}, scenario.SetC, 63.4, 1},
		{Cause{Kind: CauseLoss, Value: 2.713}, scenario.LossKWh, 2.713, 0.01},
		{Cause{Kind: CauseSun, Value: 0.8}, scenario.SoilPct, 100 - 0.8*(100-p.Scenario.SoilPct), 0.5},
	} {
		c.Alone = true
		s, ok := c.Take(p)
		if got := scenario.FieldOf(c.field).Get(&s); !ok || math.Abs(got-c.want) > c.step/2+1e-9 || !s.Known.Has(c.field) {
			t.Errorf("cause %d: %g instead of %g, known %v, %v", c.Kind, got, c.want, s.Known.Has(c.field), ok)
		}
	}
	ahead := Cause{Kind: CauseClock, Value: 90, Alone: true} // 15:00 to 18:00 comes at 13:30, 1:00 at 23:30
	s, ok := ahead.Take(p)
	if b := s.Backup; !ok || b.Start != 810 || b.End != 990 || b.Second != (scenario.Span{Start: 1410, End: 30}) || !s.Known.Has(scenario.BackupHours) || !s.Known.Has(scenario.SecondHours) {
		t.Errorf("a clock 90 minutes ahead: %+v, %v", b, ok)
	}
	left := Cause{Kind: CauseAllDay, Alone: true}
	if s, ok := left.Take(p); !ok || !s.Backup.AllDay {
		t.Errorf("left on: %+v, %v", s.Backup, ok)
	}
	for _, kind := range []CauseKind{CauseCold, CauseWeather, CauseMeter} {
		none := Cause{Kind: kind, Value: 1, Alone: true}
		if s, ok := none.Take(p); ok || s != p.Scenario {
			t.Errorf("cause %d is taken", kind)
		}
	}
	dark := Cause{Kind: CauseSun, Value: 0.1, Alone: true} // more than the field holds
	if _, ok := dark.Take(p); ok {
		t.Error("dirt that takes nine tenths is taken")
	}
}

// Hours that follow the sun have no clock that could be wrong; a second span beside them has.
func TestMoves_HoursThatFollowTheSun(t *testing.T) {
	for _, c := range []struct {
		b    scenario.Backup
		want bool
	}{
		{scenario.Backup{Start: 900, End: 1080}, true},
		{scenario.Backup{AllDay: true}, false},
		{scenario.Backup{}, false},
		{scenario.Backup{Start: -120, End: 60, StartFrom: scenario.Sunset, EndFrom: scenario.Sunset}, false},
		{scenario.Backup{Start: -120, End: 60, StartFrom: scenario.Sunset, EndFrom: scenario.Sunset, Second: scenario.Span{Start: 60, End: 120}}, true},
	} {
		moved := c.b
		moveHours(&moved, 15)
		if got := moves(&c.b); got != c.want || !c.b.AllDay && c.b != (scenario.Backup{}) && got != (moved != c.b) {
			t.Errorf("%+v: %v, moved to %+v", c.b, got, moved)
		}
	}
}

// A reading that cannot be tells what the cause can make of it.
func TestReadMeter_Impossible(t *testing.T) {
	p := prepared(t, nil)
	_, causes, steps := readAll(p, Period{0, 31}, 5000)
	if steps > 200 { // nothing is met, so everything is tried
		t.Errorf("%d years", steps)
	}
	slices.SortFunc(causes, CompareCauses)
	for _, c := range causes {
		if alone := c.Kind == CauseMeter; c.Alone != alone || !alone && (c.Most >= 5000 || c.Least > c.Most) {
			t.Errorf("5000 kWh in January: %+v", c)
		}
		if to, ok := c.Take(p); ok || c.Kind == CauseMeter && to != p.Scenario {
			t.Errorf("cause %d is taken", c.Kind)
		}
	}
	if causes[0].Kind != CauseMeter {
		t.Errorf("first cause %d", causes[0].Kind)
	}
	// Somebody who stops listening ends the work.
	n := 0
	for range ReadMeter(p, nil, Period{0, 31}, 100) {
		if n++; n == 5 {
			break
		}
	}
}
