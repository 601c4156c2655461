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

// One cause changed in a house, and what it then buys fed back: that cause alone explains it, with
// the value that it was given, to a step, or with one that buys as much.
func TestReadMeter_FindsTheCause(t *testing.T) {
	houses := 5
	if testing.Short() {
		houses = 2
	}
	r := rand.New(rand.NewPCG(18, 41))
	for house := range houses {
		p := prepared(t, func(s *scenario.Scenario) {
			s.People, s.ShowerMinutes = 1+r.IntN(5), 4+float64(r.IntN(10))/2
			s.TankLitres, s.Modules, s.InString = 150+float64(r.IntN(20))*10, 2+r.IntN(6), 0
			s.Backup.Start = 30 * r.IntN(48)
			s.Backup.End = (s.Backup.Start + 120 + 30*r.IntN(8)) % scenario.DayMinutes
		})
		period := Period{r.IntN(climate.Days), 30 + r.IntN(300)}
		ws, y := new(simulate.Workspace), new(simulate.Year)
		feed := func(q *simulate.Prepared) float64 {
			q.RunYear(q.Scenario.Backup, ws, y)
			return period.of(y)
		}
		changed := func(change func(*scenario.Scenario)) float64 {
			s := p.Scenario
			change(&s)
			q, err := simulate.Prepare(&s, nil, p)
			if err != nil {
				t.Fatal(err)
			}
			return feed(q)
		}
		usual := &reader{p: p}
		_, loss := p.StandingLoss()
		for _, c := range []struct {
			kind CauseKind
			want float64
			step float64
			kWh  float64
		}{
			{CauseShower, p.Scenario.ShowerMinutes + 2, 0.5, changed(func(s *scenario.Scenario) { s.ShowerMinutes += 2 })},
			{CausePeople, float64(p.Scenario.People + 1), 0.1, changed(func(s *scenario.Scenario) { s.People++ })},
			{CauseClock, 60, 15, changed(func(s *scenario.Scenario) { moveHours(&s.Backup, -60) })},
			{CauseAllDay, 0, 1, changed(func(s *scenario.Scenario) { s.Backup = scenario.Backup{AllDay: true} })},
			{CauseStat, p.Scenario.SetC + 6, 1, changed(func(s *scenario.Scenario) { s.SetC += 6 })},
			{CauseLoss, 1.5 * loss, 0.05, changed(func(s *scenario.Scenario) { usual.lose(s, 1.5) })},
			{CauseSun, 0.6, 0.02, changed(func(s *scenario.Scenario) { s.SoilPct = 100 - 0.6*(100-s.SoilPct) })},
			{CauseCold, -3, 0.2, feed(p.WithColdWater(-3))},
		} {
			_, causes, _ := readAll(p, period, c.kWh)
			i := slices.IndexFunc(causes, func(got Cause) bool { return got.Kind == c.kind })
			if i < 0 {
				t.Fatalf("house %d: cause %d is not looked for", house, c.kind)
			}
			got := causes[i]
			if !got.Alone {
				t.Errorf("house %d, cause %d: %.1f kWh are not explained: %+v", house, c.kind, c.kWh, got)
				continue
			}
			if math.Abs(got.Value-c.want) <= c.step || c.kind == CauseAllDay {
				continue
			}
			to, ok := got.Take(p) // another value that buys as much
			as := c.kWh
			switch {
			case c.kind == CauseCold:
				as = feed(p.WithColdWater(got.Value))
			case ok:
				as = changed(func(s *scenario.Scenario) { *s = to })
			}
			if math.Abs(as-c.kWh) > math.Max(1, 0.03*c.kWh) {
				t.Errorf("house %d, cause %d: %.3g instead of %.3g, %.1f kWh instead of %.1f", house, c.kind, got.Value, c.want, as, c.kWh)
			}
		}
	}
}

// A reading that cannot be tells what the cause can make of it.
func TestReadMeter_Impossible(t *testing.T) {
	p := prepared(t, nil)
	_, causes, _ := readAll(p, Period{0, 31}, 5000)
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
