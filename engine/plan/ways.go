package plan

import (
	"cmp"
	"math"
	"slices"
	"sort"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Way of setting the hours.
type Way int8

const (
	ByClock    Way = iota // one window, the same all year
	BySun                 // edges that follow the sun
	TwoWindows            // by the clock
	EachMonth             // a window for each month
	ManyYears             // one window for many drawn years
	WayCount
)

// ways offers the best hours of each kind, for the house as it is.
func (t *trial) ways() {
	clock, some := t.byClock()
	if !some {
		return
	}
	t.bySun(clock)
	t.twoWindows(clock)
	t.eachMonth(clock)
	t.manyYears()
}

// hours offers hours with their year.
func (t *trial) hours(way Way, b scenario.Backup) {
	s := t.p.Scenario
	s.Backup = b
	s.Known = s.Known.With(scenario.BackupHours, scenario.SecondHours)
	t.p.RunYear(b, &t.ws, &t.year)
	t.offer(&Offer{Way: way, To: s, Year: t.year.Total})
}

func (t *trial) byClock() (w Window, some bool) {
	if w, some = t.seek(NewGrid(t.p, scenario.Span{})); !some {
		return w, false
	}
	t.hours(ByClock, w.Backup(scenario.Span{}))
	return w, !t.over
}

// climber looks for better hours by small moves of their edges.
type climber struct {
	*trial
	known map[scenario.Backup]Outcome
}

func (t *trial) climber() *climber { return &climber{t, map[scenario.Backup]Outcome{}} }

// at is the outcome of hours; it is simulated when it is first asked for.
func (c *climber) at(b scenario.Backup) Outcome {
	o, ok := c.known[b]
	if !ok && !c.over {
		c.p.RunYear(b, &c.ws, &c.year)
		o = Outcome{Cost: c.year.Total.Cost, CoolUses: c.year.Total.CoolUses}
		c.known[b] = o
		c.step()
	}
	return o
}

// compare orders hours: the promise, then cost.
func (c *climber) compare(a, b scenario.Backup) int {
	x, y := c.at(a), c.at(b)
	accept := int32(c.accept)
	return cmp.Or(cmp.Compare(max(0, x.CoolUses-accept), max(0, y.CoolUses-accept)), cmp.Compare(x.Cost, y.Cost))
}

// climbs is from how many hours the small moves begin: with half of them two windows are found
// that one is as good as.
const climbs = 6

// climb moves from the best few of the given hours, in ever smaller steps.
func (c *climber) climb(from []scenario.Backup, moves func(b scenario.Backup, minutes int) []scenario.Backup) scenario.Backup {
	sort.SliceStable(from, func(i, j int) bool { return c.compare(from[i], from[j]) < 0 })
	best := from[0]
	for _, b := range from[:min(climbs, len(from))] {
		for minutes := 60; minutes >= StepMinutes && !c.over; {
			better := false
			for _, next := range moves(b, minutes) {
				if c.compare(next, b) < 0 {
					b, better = next, true
					break
				}
			}
			if !better {
				minutes /= 2
			}
		}
		if c.compare(b, best) < 0 {
			best = b
		}
	}
	return best
}

// bySun lets the edges follow solar noon or sunset: both, or the start alone.
func (t *trial) bySun(clock Window) {
	c := t.climber()
	b := clock.Backup(scenario.Span{})
	if b.AllDay || b.Start == b.End {
		return // there is nothing to follow
	}
	var from []scenario.Backup
	for _, pair := range [...][2]scenario.Anchor{{scenario.SolarNoon, scenario.SolarNoon}, {scenario.SolarNoon, scenario.Sunset}, {scenario.Sunset, scenario.Sunset}, {scenario.SolarNoon, scenario.Clock}, {scenario.Clock, scenario.Sunset}} {
		s := t.counted(b, pair[0], pair[1])
		from = append(from, s)
		for _, by := range [...]int{-60, 60} {
			from = append(from, shifted(s, by, 0), shifted(s, 0, by), shifted(s, by, by))
		}
	}
	from = slices.DeleteFunc(from, func(b scenario.Backup) bool { return !allowed(b) })
	if len(from) == 0 {
		return
	}
	best := c.climb(from, func(b scenario.Backup, m int) []scenario.Backup {
		list := []scenario.Backup{shifted(b, m, 0), shifted(b, 0, -m), shifted(b, m, m), shifted(b, -m, -m), shifted(b, -m, 0), shifted(b, 0, m)}
		return slices.DeleteFunc(list, func(b scenario.Backup) bool { return !allowed(b) })
	})
	t.hours(BySun, best)
}

// equinox is the day on which hours by the clock and by the sun are the same at first.
const equinox = 79

// counted is hours by the clock with their edges counted from marks of the sun.
func (t *trial) counted(b scenario.Backup, start, end scenario.Anchor) scenario.Backup {
	less := func(minute int, from scenario.Anchor) int {
		return minute - int(math.Round(t.p.Mark(from, equinox)/StepMinutes))*StepMinutes
	}
	if b.End <= b.Start && end != scenario.Clock {
		b.End += scenario.DayMinutes
	}
	return scenario.Backup{Start: less(b.Start, start), End: less(b.End, end), StartFrom: start, EndFrom: end}
}

// shifted moves the edges by minutes.
func shifted(b scenario.Backup, start, end int) scenario.Backup {
	b.Start += start
	b.End += end
	return b
}

// allowed tells whether hours are ones that a scenario may have.
func allowed(b scenario.Backup) bool {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Backup = b
	return len(s.Problems()) == 0
}

// twoWindows adds a second window to the best one, or to a shorter one; it offers them
// where they are better than one.
func (t *trial) twoWindows(clock Window) {
	c := t.climber()
	one := clock.Backup(scenario.Span{})
	from := []scenario.Backup{one}
	for _, less := range [...]int{0, 4, 8} {
		first := clock
		if first.Steps = max(0, clock.Steps-less); first.Steps == Places {
			first.Steps = 0
		}
		for start := 0; start < Places; start += 4 {
			from = append(from, first.Backup(scenario.Span{Start: start * StepMinutes, End: (start + 4) % Places * StepMinutes}))
		}
	}
	best := c.climb(from, func(b scenario.Backup, m int) (list []scenario.Backup) {
		for _, by := range [...]int{m, -m} {
			list = append(list, around(b, by, 0, 0, 0), around(b, 0, by, 0, 0), around(b, 0, 0, by, 0), around(b, 0, 0, 0, by),
				around(b, by, by, 0, 0), around(b, 0, 0, by, by), around(b, by, 0, 0, by), around(b, 0, -by, by, 0))
		}
		return list
	})
	if c.compare(best, one) < 0 && best.Second.Start != best.Second.End {
		t.hours(TwoWindows, best)
	}
}

// around moves the edges of two windows round the clock.
func around(b scenario.Backup, start, end, start2, end2 int) scenario.Backup {
	b.Start, b.End = wrap(b.Start+start), wrap(b.End+end)
	b.Second.Start, b.Second.End = wrap(b.Second.Start+start2), wrap(b.Second.End+end2)
	return b
}

// monthHours are hours with what each month comes to under them, all year.
type monthHours struct {
	b    scenario.Backup
	cost [12]float64
	cool [12]int32
}

// eachMonth gives each month hours of its own: of all that are tried for the whole year,
// the cheapest without a cool use in that month; then, as long as the promise allows, those
// that save most for a cool use. The year with all of them is simulated; where even the most
// careful ones spoil each other, every month keeps the one window.
func (t *trial) eachMonth(clock Window) {
	var tried []monthHours
	seen := map[Window]bool{}
	try := func(w Window) bool {
		if w = w.normal(); seen[w] {
			return true
		}
		seen[w] = true
		h := monthHours{b: w.Backup(scenario.Span{})}
		t.p.RunYear(h.b, &t.ws, &t.year)
		for m := range 12 {
			h.cost[m], h.cool[m] = t.year.Month[m].Cost, t.year.Month[m].CoolUses
		}
		tried = append(tried, h)
		return t.step()
	}
	if !try(clock) {
		return
	}
	for _, steps := range [...]int{0, 2, 4, 6, 8, 12, 16, 24, 40, Places} {
		for start := 0; start < Places; start += 4 {
			if !try(Window{start, steps}) {
				return
			}
		}
	}
	for _, by := range [...]int{2, 1} {
		for m := range 12 {
			w := windowOf(tried[cheapestIn(tried, m, 0)].b)
			for _, move := range [...]Window{{by, 0}, {-by, 0}, {0, by}, {0, -by}, {by, -by}, {-by, by}} {
				if next := (Window{w.Start + move.Start, w.Steps + move.Steps}); next.Steps >= 0 && next.Steps <= Places && !try(next) {
					return
				}
			}
		}
	}
	for accept := int32(t.accept); accept >= 0 && !t.over; accept-- {
		months := together(tried, accept)
		t.p.RunMonths(&months, &t.ws, &t.year)
		kept := t.year.Total.CoolUses <= int32(t.accept)
		if !kept && accept == 0 {
			for m := range months {
				months[m] = clock.Backup(scenario.Span{})
			}
			t.p.RunMonths(&months, &t.ws, &t.year)
		}
		if kept || accept == 0 {
			s := t.p.Scenario
			t.offer(&Offer{Way: EachMonth, To: s, Months: &months, Year: t.year.Total})
			return
		}
		t.step()
	}
}

// windowOf is the window of hours that keep the clock.
func windowOf(b scenario.Backup) Window {
	return Window{b.Start / StepMinutes, b.Length() / StepMinutes}.normal()
}

// cheapestIn is the index of the hours that cost a month least with at most so many cool
// uses; where there are none, of those with fewest.
func cheapestIn(tried []monthHours, m int, accept int32) int {
	best := 0
	for i := range tried {
		a, b := &tried[i], &tried[best]
		over, overBest := max(0, a.cool[m]-accept), max(0, b.cool[m]-accept)
		if over < overBest || over == overBest && a.cost[m] < b.cost[m] {
			best = i
		}
	}
	return best
}

// together chooses hours for all months, with at most so many cool uses in the year if it
// can be.
func together(tried []monthHours, accept int32) (months [12]scenario.Backup) {
	var at [12]int
	left := accept
	for m := range 12 {
		at[m] = cheapestIn(tried, m, 0)
		left -= tried[at[m]].cool[m]
	}
	for left > 0 {
		bestM, bestI, bestGain := -1, 0, 0.0
		for m := range 12 {
			now := &tried[at[m]]
			for i := range tried {
				more := tried[i].cool[m] - now.cool[m]
				if more < 1 || more > left {
					continue
				}
				if gain := (now.cost[m] - tried[i].cost[m]) / float64(more); gain > bestGain {
					bestM, bestI, bestGain = m, i, gain
				}
			}
		}
		if bestM < 0 {
			break
		}
		left -= tried[bestI].cool[bestM] - tried[at[bestM]].cool[bestM]
		at[bestM] = bestI
	}
	for m := range 12 {
		months[m] = tried[at[m]].b
	}
	return months
}

// robustYears is under how many drawn years the one window is sought that is best on
// average.
const robustYears = 10

func (t *trial) manyYears() {
	many, err := t.p.Years(robustYears, YearSpreadPct)
	if err != nil {
		return // a record that cannot be drawn from
	}
	years := make([]*simulate.Prepared, robustYears)
	for i := range years {
		if years[i] = t.p.With(many.Year(i)); !t.step() {
			return
		}
	}
	mean := func(b scenario.Backup) (f simulate.Flows) {
		cool := 0.0
		for _, p := range years {
			p.RunYear(b, &t.ws, &t.year)
			y := &t.year.Total
			f.Cost += y.Cost / robustYears
			f.BoughtJ += y.BoughtJ / robustYears
			f.SunJ += y.SunJ / robustYears
			cool += float64(y.CoolUses) / robustYears
		}
		f.CoolUses = int32(math.Ceil(cool - 1e-9))
		return f
	}
	g := NewGrid(t.p, scenario.Span{})
	g.run = func(w Window, most simulate.Limits) (Outcome, bool) {
		f := mean(w.Backup(scenario.Span{}))
		return Outcome{Cost: f.Cost, CoolUses: f.CoolUses}, f.CoolUses <= most.CoolUses && f.Cost <= most.Cost
	}
	w, ok := t.seek(g)
	if !ok {
		return
	}
	s := t.p.Scenario
	s.Backup = w.Backup(scenario.Span{})
	s.Known = s.Known.With(scenario.BackupHours, scenario.SecondHours)
	t.offer(&Offer{Way: ManyYears, To: s, Year: mean(s.Backup)})
}
