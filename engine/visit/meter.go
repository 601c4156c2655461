package visit

import (
	"fmt"
	"iter"
	"math"

	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Period is a stretch of days of any year: from the beginning of a day (0 to 364), so many days (1
// to 365), over New Year too.
type Period struct{ From, Days int }

// PeriodError says that two dates are no period: the second comes after the first, a year after it
// at most.
type PeriodError struct{ From, To int }

func (e *PeriodError) Error() string {
	return fmt.Sprintf("visit: from %d to %d are not 1 to %d days", e.From, e.To, climate.Days)
}

// PeriodOf is the time between two readings, dates as yyyymmdd; a *PeriodError where there is none
// between them, or one of them is no date. 29 February counts as the day before, 366 days as 365.
func PeriodOf(from, to int) (p Period, err error) {
	a, ok1 := dayNumber(from)
	b, ok2 := dayNumber(to)
	if !ok1 || !ok2 || b-a < 1 || b-a > climate.Days+1 {
		return Period{}, &PeriodError{from, to}
	}
	month := from / 100 % 100
	p.From = climate.FirstDay(month-1) + min(from%100, climate.DaysIn[month-1]) - 1
	p.Days = min(b-a, climate.Days)
	return p, nil
}

// dayNumber counts days of the calendar.
func dayNumber(date int) (n int, ok bool) {
	year, month, day := date/10000, date/100%100, date%100
	if year < 1 || month < 1 || month > 12 || day < 1 {
		return 0, false
	}
	leap := year%4 == 0 && (year%100 != 0 || year%400 == 0)
	last := climate.DaysIn[month-1]
	n = (year-1)*365 + (year-1)/4 - (year-1)/100 + (year-1)/400 + climate.FirstDay(month-1) + day
	if leap && month == 2 {
		last++
	}
	if leap && month > 2 {
		n++
	}
	return n, day <= last
}

// of sums what is bought in the period, kWh.
func (p Period) of(y *simulate.Year) (kWh float64) {
	for i := range p.Days {
		kWh += y.Day[(p.From+i)%climate.Days].BoughtJ / simulate.JPerKWh
	}
	return kWh
}

// Meter is what the backup's own meter should have counted in a period, kWh.
type Meter struct {
	Expected  float64 // of the typical year
	Least     float64 // of what would be no wonder, see ReadMeter
	Most      float64
	MinuteKWh float64 // that one minute of shower more makes; 0 where uses are not from habits
}

// How well it is known what houses hang on, half widths (assumptions).
const (
	showerShare = 0.20 // of the minutes of a shower
	lossShare   = 0.20 // of the standing loss
	statBandK   = 3.0
	coldBandK   = 2.0
	clockMin    = 15
	lightShare  = 0.10 // of what the modules turn into power
	besideKWh   = 0.2  // a day, what a meter sees beside the tank
	peopleBand  = 0.5
)

// drawnYears is how many years are drawn for the weather of a period.
const drawnYears = 20

// MeterPart is something that ReadMeter worked out: all nil is a step.
type MeterPart struct {
	Meter *Meter
	Cause *Cause
}

// reader simulates years of a house as it may be.
type reader struct {
	p      *simulate.Prepared
	file   *climate.Record
	period Period
	read   float64
	ws     simulate.Workspace
	year   simulate.Year

	meter Meter
	drawn []float64 // kWh of drawn years
	step  func() bool
	ended bool
}

// run is what a prepared house buys in the period.
func (r *reader) run(q *simulate.Prepared) float64 {
	if r.ended {
		return 0
	}
	q.RunYear(q.Scenario.Backup, &r.ws, &r.year)
	r.ended = !r.step()
	return r.period.of(&r.year)
}

// with is what the house buys changed; ok is false where no such house can be.
func (r *reader) with(change func(*scenario.Scenario)) (kWh float64, ok bool) {
	s := r.p.Scenario
	change(&s)
	q, err := simulate.Prepare(&s, r.file, r.p)
	if err != nil || r.ended {
		return 0, false
	}
	return r.run(q), true
}

// ReadMeter compares what a meter counted in a period, kWh, with what the house should have bought,
// then looks for what would explain it. What is no wonder lies between the tenth and the ninetieth
// hundredth of drawn years, and what minutes of showers, loss, thermostat, cold water and the clock
// move, each by itself, the squares added. Causes come in the order of Causes, some hundred years in
// all. file is the house's weather record or nil.
func ReadMeter(p *simulate.Prepared, file *climate.Record, period Period, kWh float64) iter.Seq[MeterPart] {
	return func(yield func(MeterPart) bool) {
		r := &reader{p: p, file: file, period: period, read: kWh}
		r.step = func() bool { return yield(MeterPart{}) }
		r.expect()
		if r.ended || !yield(MeterPart{Meter: &r.meter}) {
			return
		}
		for kind := range CauseKinds {
			c, ok := r.cause(kind)
			if r.ended || ok && !yield(MeterPart{Cause: &c}) {
				return
			}
		}
	}
}

// expect works out what is expected.
func (r *reader) expect() {
	p, s := r.p, &r.p.Scenario
	expected := r.run(p)
	r.meter.Expected = expected
	squares := 0.0
	edges := func(lo, hi float64, ok bool) {
		if ok {
			squares += (hi - lo) * (hi - lo) / 4
		}
	}
	both := func(change func(s *scenario.Scenario, by float64)) (lo, hi float64, ok bool) {
		lo, ok1 := r.with(func(s *scenario.Scenario) { change(s, -1) })
		hi, ok2 := r.with(func(s *scenario.Scenario) { change(s, 1) })
		return lo, hi, ok1 && ok2
	}
	if s.Uses == scenario.Habits {
		lo, hi, ok := both(func(s *scenario.Scenario, by float64) { s.ShowerMinutes *= 1 + by*showerShare })
		edges(lo, hi, ok)
		r.meter.MinuteKWh = (hi - lo) / (2 * showerShare * s.ShowerMinutes)
	}
	edges(both(func(s *scenario.Scenario, by float64) { r.lose(s, 1+by*lossShare) }))
	edges(both(func(s *scenario.Scenario, by float64) { s.SetC += by * statBandK }))
	edges(r.run(p.WithColdWater(-coldBandK)), r.run(p.WithColdWater(coldBandK)), true)
	if moves(&s.Backup) {
		edges(both(func(s *scenario.Scenario, by float64) { moveHours(&s.Backup, int(by)*clockMin) }))
	}
	below, above := 0.0, 0.0
	if many, err := p.Years(drawnYears, plan.YearSpreadPct); err == nil {
		for i := 0; i < many.Len() && !r.ended; i++ {
			r.drawn = append(r.drawn, r.run(p.With(many.Year(i))))
		}
		below = math.Max(0, expected-plan.Quantile(r.drawn, 0.1))
		above = math.Max(0, plan.Quantile(r.drawn, 0.9)-expected)
	}
	r.meter.Least = math.Max(0, expected-math.Sqrt(squares+below*below))
	r.meter.Most = expected + math.Sqrt(squares+above*above)
}

// lose makes the whole standing loss so many times what it is.
func (r *reader) lose(s *scenario.Scenario, times float64) {
	wPerK, _ := r.p.StandingLoss()
	s.LossBy, s.Jacket, s.PipeLossW = scenario.LossFigure, 0, 0
	s.LossKWh = LabelLoss(wPerK) * times
}

// moves tells whether a clock that is wrong moves hours.
func moves(b *scenario.Backup) bool {
	first := b.Start != b.End && !b.FollowsSun()
	return !b.AllDay && (first || b.Second.Start != b.Second.End)
}

// moveHours moves hours by minutes: those that follow the sun have no clock, and none stay none.
func moveHours(b *scenario.Backup, minutes int) {
	wrap := func(m int) int { return ((m+minutes)%scenario.DayMinutes + scenario.DayMinutes) % scenario.DayMinutes }
	if !b.FollowsSun() {
		b.Start, b.End = wrap(b.Start), wrap(b.End)
	}
	if b.Second.Start != b.Second.End {
		b.Second.Start, b.Second.End = wrap(b.Second.Start), wrap(b.Second.End)
	}
}
