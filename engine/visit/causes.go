package visit

import (
	"cmp"
	"math"
	"slices"
	"sort"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// CauseKind is something that may explain a meter's reading by itself.
type CauseKind int8

// Causes.
const (
	CauseShower  CauseKind = iota // minutes
	CausePeople                   //
	CauseClock                    // minutes by which the device's clock is ahead
	CauseAllDay                   // the grid may heat all day; no value
	CauseStat                     // degC of the grid's thermostat
	CauseLoss                     // kWh in 24 h at scenario.LossTestK
	CauseSun                      // part of the light that the modules turn into power, of what is reckoned with
	CauseCold                     // K by which cold water is warmer
	CauseWeather                  // kWh of the drawn years; no value
	CauseMeter                    // kWh a day that the meter sees beside the tank
	CauseKinds
)

// Cause is what would explain a reading if it alone were otherwise.
type Cause struct {
	Kind           CauseKind
	Assumed, Value float64 // in the kind's unit
	Alone          bool    // it can explain the reading; else the value is that which comes nearest
	Far            float64 // how far the value is from what is assumed, in half widths of how well that is known
	Least, Most    float64 // kWh between which it can bring the reading
}

// CompareCauses orders them by how near they are, those that cannot explain a reading alone last.
func CompareCauses(a, b Cause) int {
	if a.Alone != b.Alone {
		if a.Alone {
			return -1
		}
		return 1
	}
	return cmp.Compare(a.Far, b.Far)
}

// A range is cut into so many parts, and the part in which the reading lies halved so often: to a
// thousandth of the range. Where it lies in none, the parts beside the nearest trial are halved, in
// case that what is bought turns there.
const rangeParts, halvings, closer = 8, 7, 3

// Ranges in which causes are looked for, beside those of fields.
const (
	shortShower, longShower = 1.0, 15.0
	clockRange, clockStep   = 180, 30 // minutes
	leastStat, mostStat     = 40.0, 80.0
	leastLoss, mostLoss     = 0.3, 3.0 // of the loss
	coldRange               = 8.0      // K
	allDayFar               = 2.0      // a switch left on is as unlikely as that
	enough                  = 0.01     // of the reading: nearer is met
	enoughKWh               = 0.5
)

// cause looks for one; ok is false where the house has not what it is about.
func (r *reader) cause(kind CauseKind) (c Cause, ok bool) {
	s := &r.p.Scenario
	c = Cause{Kind: kind}
	switch kind {
	case CauseShower:
		if s.Uses != scenario.Habits {
			return c, false
		}
		c.Assumed = s.ShowerMinutes
		r.solve(&c, shortShower, math.Max(longShower, s.ShowerMinutes), showerShare*s.ShowerMinutes, func(s *scenario.Scenario, v float64) { s.ShowerMinutes = v })
	case CausePeople:
		if s.Uses != scenario.Habits {
			return c, false
		}
		r.people(&c)
	case CauseClock:
		if !moves(&s.Backup) {
			return c, false
		}
		r.clock(&c)
	case CauseAllDay:
		if s.Backup.AllDay {
			return c, false
		}
		kWh, _ := r.with(func(s *scenario.Scenario) { s.Backup = scenario.Backup{AllDay: true} })
		c.Least, c.Most, c.Far = math.Min(kWh, r.meter.Expected), math.Max(kWh, r.meter.Expected), allDayFar
		c.Alone = r.met(kWh) || math.Abs(kWh-r.read) < (r.meter.Most-r.meter.Least)/2
	case CauseStat:
		c.Assumed = s.SetC
		r.solve(&c, math.Min(leastStat, s.SetC), math.Max(mostStat, s.SetC), statBandK, func(s *scenario.Scenario, v float64) { s.SetC = v })
	case CauseLoss:
		_, c.Assumed = r.p.StandingLoss()
		r.solve(&c, leastLoss*c.Assumed, mostLoss*c.Assumed, lossShare*c.Assumed, func(s *scenario.Scenario, v float64) { r.lose(s, v/c.Assumed) })
	case CauseSun:
		if s.AllModules() == 0 {
			return c, false
		}
		c.Assumed = 1
		clean := 1 - s.SoilPct/100
		r.solve(&c, 0, 1/clean, lightShare, func(s *scenario.Scenario, v float64) { s.SoilPct = 100 * (1 - v*clean) })
	case CauseCold:
		r.search(&c, -coldRange, coldRange, coldBandK, func(v float64) (float64, bool) { return r.run(r.p.WithColdWater(v)), true })
	case CauseWeather:
		if len(r.drawn) == 0 {
			return c, false
		}
		c.Least, c.Most = r.drawn[0], r.drawn[0]
		for _, kWh := range r.drawn {
			c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
		}
		c.Alone = c.Least <= r.read && r.read <= c.Most
		half := (c.Most - c.Least) / 2
		if half > 0 {
			c.Far = math.Abs(r.read-r.meter.Expected) / half
		}
	case CauseMeter:
		c.Least, c.Most = r.meter.Expected, math.Inf(1)
		c.Value = math.Max(0, r.read-r.meter.Expected) / float64(r.period.Days)
		c.Alone = r.read >= r.meter.Expected
		c.Far = c.Value / besideKWh
	}
	return c, true
}

// met tells whether kWh are the reading.
func (r *reader) met(kWh float64) bool { return r.near(math.Abs(kWh - r.read)) }

// explains tells whether a cause explains the reading, its value so many kWh off: it meets it, or
// what is bought passes it between values and comes nearest with another than what is assumed.
func (r *reader) explains(c *Cause, nearest float64, passed bool) bool {
	return r.near(nearest) || passed && c.Value != c.Assumed
}

// near tells whether so many kWh off the reading meet it.
func (r *reader) near(kWh float64) bool { return kWh <= math.Max(enoughKWh, enough*r.read) }

// solve looks for a value of a changed house.
func (r *reader) solve(c *Cause, lo, hi, half float64, change func(*scenario.Scenario, float64)) {
	r.search(c, lo, hi, half, func(v float64) (float64, bool) {
		return r.with(func(s *scenario.Scenario) { change(s, v) })
	})
}

// trial is a value and what it buys, kWh.
type trial struct{ value, kWh float64 }

// search cuts a range into parts, for what is bought need not rise or fall all the way: draws move
// the hours in which the tank is cool. It halves the part nearest to what is assumed over which the
// reading lies, and takes what came nearest to the reading of all that was simulated.
func (r *reader) search(c *Cause, lo, hi, half float64, of func(float64) (float64, bool)) {
	expected := r.meter.Expected
	c.Value, c.Least, c.Most = c.Assumed, expected, expected
	nearest := math.Abs(expected - r.read)
	try := func(v float64) (kWh float64, ok bool) {
		if kWh, ok = of(v); !ok {
			return kWh, false
		}
		c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
		if off := math.Abs(kWh - r.read); off < nearest {
			nearest, c.Value = off, v
		}
		return kWh, true
	}
	trials := []trial{{c.Assumed, expected}}
	for i := 0; i <= rangeParts && !r.ended; i++ {
		v := lo + (hi-lo)*float64(i)/rangeParts
		if v == c.Assumed {
			continue
		}
		if kWh, ok := try(v); ok {
			trials = append(trials, trial{v, kWh})
		}
	}
	if r.met(expected) { // nothing is to be explained
		c.Value, c.Alone = c.Assumed, true
		return
	}
	a, b, ok := around(trials, c.Assumed, r.read)
	for i := 0; !ok && i < closer && !r.near(nearest) && !r.ended; i++ {
		at := slices.IndexFunc(trials, func(t trial) bool { return t.value == c.Value })
		for _, beside := range [2]int{at - 1, at + 1} {
			if beside < 0 || beside >= len(trials) {
				continue
			}
			mid := (trials[at].value + trials[beside].value) / 2
			if kWh, ok := try(mid); ok {
				trials = append(trials, trial{mid, kWh})
			}
		}
		a, b, ok = around(trials, c.Assumed, r.read)
	}
	for i := 0; ok && i < halvings && !r.ended; i++ {
		mid := (a.value + b.value) / 2
		if kWh, _ := try(mid); (kWh < r.read) == (a.kWh < r.read) {
			a = trial{mid, kWh}
		} else {
			b = trial{mid, kWh}
		}
	}
	c.Alone = r.explains(c, nearest, ok)
	c.Far = math.Abs(c.Value-c.Assumed) / half
}

// around finds two neighbours of which one buys less than a reading and one no less, the nearest to
// what is assumed.
func around(trials []trial, assumed, kWh float64) (a, b trial, ok bool) {
	sort.Slice(trials, func(i, k int) bool { return trials[i].value < trials[k].value })
	away := func(t trial) float64 { return math.Abs(t.value - assumed) }
	for i := range len(trials) - 1 {
		low, high := trials[i], trials[i+1]
		if (low.kWh < kWh) == (high.kWh < kWh) {
			continue
		}
		if !ok || math.Max(away(low), away(high)) < math.Max(away(a), away(b)) {
			a, b, ok = low, high, true
		}
	}
	return a, b, ok
}

// people looks for how many come nearest, from those assumed to both sides.
func (r *reader) people(c *Cause) {
	assumed := r.p.Scenario.People
	expected := r.meter.Expected
	c.Assumed, c.Value, c.Least, c.Most = float64(assumed), float64(assumed), expected, expected
	nearest := math.Abs(expected - r.read)
	crossed := false
	last, most := [2]float64{expected, expected}, int(scenario.FieldOf(scenario.People).Max)
	for away := 1; away < most && !crossed && !r.near(nearest) && !r.ended; away++ {
		for side, n := range [2]int{assumed + away, assumed - away} {
			if n < 1 || n > most {
				continue
			}
			kWh, ok := r.with(func(s *scenario.Scenario) { s.People = n })
			if !ok {
				continue
			}
			c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
			if off := math.Abs(kWh - r.read); off < nearest {
				nearest, c.Value = off, float64(n)
			}
			crossed = crossed || (last[side] < r.read) != (kWh < r.read)
			last[side] = kWh
		}
	}
	c.Alone = r.explains(c, nearest, crossed)
	c.Far = math.Abs(c.Value-c.Assumed) / peopleBand
}

// clock looks for the shift nearest to none that meets the reading: what is bought turns more than
// once in a day, and jumps where hours come to lie beside a use. A jump over the reading meets it
// only where nothing else does.
func (r *reader) clock(c *Cause) {
	c.Least, c.Most = r.meter.Expected, r.meter.Expected
	if r.met(r.meter.Expected) {
		c.Alone = true
		return
	}
	nearest := math.Abs(r.meter.Expected - r.read)
	at := func(minutes float64) float64 { // a clock that is ahead acts early
		minutes = math.Trunc(minutes)
		kWh, ok := r.with(func(s *scenario.Scenario) { moveHours(&s.Backup, -int(minutes)) })
		if !ok {
			return r.meter.Expected
		}
		c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
		if off := math.Abs(kWh - r.read); off < nearest {
			nearest, c.Value = off, minutes
		}
		return kWh
	}
	last := [2]float64{r.meter.Expected, r.meter.Expected} // ahead, behind
	met, crossed := false, false
	for away := float64(clockStep); away <= clockRange && !met && !r.ended; away += clockStep {
		for side, sign := range [2]float64{1, -1} {
			kWh := at(sign * away)
			if (last[side]-r.read)*(kWh-r.read) <= 0 {
				crossed = true
				r.between(sign*(away-clockStep), sign*away, last[side], at)
			}
			last[side] = kWh
			if met = r.near(nearest); met {
				break
			}
		}
	}
	c.Alone = r.explains(c, nearest, crossed)
	c.Far = math.Abs(c.Value) / clockMin
}

// between halves minutes between which what is bought passes the reading; first is what the first
// of them buy.
func (r *reader) between(from, to, first float64, at func(float64) float64) {
	for range 4 {
		if mid := (from + to) / 2; (at(mid)-r.read)*(first-r.read) > 0 {
			from = mid
		} else {
			to = mid
		}
	}
}

// Take is the house with a cause's value; ok is false for causes that no field holds, and for
// values that their field does not take.
func (c *Cause) Take(p *simulate.Prepared) (s scenario.Scenario, ok bool) {
	s = p.Scenario
	number := func(id scenario.FieldID, v float64) bool {
		f := scenario.FieldOf(id)
		v = f.Snap(v)
		if !c.Alone || f.Check(v) != nil {
			return false
		}
		f.Set(&s, v)
		s.Known = s.Known.With(id)
		return true
	}
	switch c.Kind {
	case CauseShower:
		ok = number(scenario.ShowerMinutes, c.Value)
	case CausePeople:
		ok = number(scenario.People, c.Value)
	case CauseStat:
		ok = number(scenario.SetC, c.Value)
	case CauseLoss:
		if ok = number(scenario.LossKWh, c.Value); ok {
			s.LossBy, s.Jacket, s.PipeLossW = scenario.LossFigure, 0, 0
			s.Known = s.Known.With(scenario.LossBy)
		}
	case CauseSun:
		ok = number(scenario.SoilPct, 100*(1-c.Value*(1-s.SoilPct/100)))
	case CauseClock: // until it is set
		if ok = c.Alone; ok {
			const step = 5
			moveHours(&s.Backup, -int(math.Round(c.Value/step))*step)
			s.Known = s.Known.With(scenario.BackupHours)
			if s.Backup.Second.Start != s.Backup.Second.End {
				s.Known = s.Known.With(scenario.SecondHours)
			}
		}
	case CauseAllDay:
		if ok = c.Alone; ok {
			s.Backup = scenario.Backup{AllDay: true}
			s.Known = s.Known.With(scenario.BackupHours)
		}
	}
	s.Settle()
	return s, ok
}
