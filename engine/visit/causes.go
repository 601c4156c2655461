package visit

import (
	"cmp"
	"math"

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

// halvings is how often a range is halved: to a thousandth of it.
const halvings = 10

// Ranges in which causes are looked for, beside those of fields.
const (
	shortShower, longShower = 1.0, 15.0
	mostPeople              = 10
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
func (r *reader) met(kWh float64) bool {
	return math.Abs(kWh-r.read) <= math.Max(enoughKWh, enough*r.read)
}

// solve looks for a value of a changed house.
func (r *reader) solve(c *Cause, lo, hi, half float64, change func(*scenario.Scenario, float64)) {
	r.search(c, lo, hi, half, func(v float64) (float64, bool) {
		return r.with(func(s *scenario.Scenario) { change(s, v) })
	})
}

// search halves a range, in which what is bought rises or falls all the way, until the reading is
// met.
func (r *reader) search(c *Cause, lo, hi, half float64, of func(float64) (float64, bool)) {
	a, ok1 := of(lo)
	b, ok2 := of(hi)
	c.Least, c.Most = math.Min(a, b), math.Max(a, b)
	c.Alone = ok1 && ok2 && c.Least <= r.read && r.read <= c.Most
	switch {
	case c.Alone:
		rises := b > a
		for i := 0; i < halvings && !r.ended; i++ {
			mid := (lo + hi) / 2
			kWh, _ := of(mid)
			if (kWh < r.read) == rises {
				lo = mid
			} else {
				hi = mid
			}
		}
		c.Value = (lo + hi) / 2
	case math.Abs(a-r.read) < math.Abs(b-r.read):
		c.Value = lo
	default:
		c.Value = hi
	}
	if r.met(r.meter.Expected) { // nothing is to be explained
		c.Value, c.Alone = c.Assumed, true
	}
	c.Far = math.Abs(c.Value-c.Assumed) / half
}

// people looks for how many come nearest.
func (r *reader) people(c *Cause) {
	assumed := r.p.Scenario.People
	c.Assumed = float64(assumed)
	nearest := math.Abs(r.meter.Expected - r.read)
	c.Value, c.Least, c.Most = c.Assumed, r.meter.Expected, r.meter.Expected
	by := 1 // whoever lives there beside those assumed buys more
	if r.read < r.meter.Expected {
		by = -1
	}
	last := r.meter.Expected
	for n := assumed + by; n >= 1 && n <= mostPeople && !r.ended; n += by {
		kWh, _ := r.with(func(s *scenario.Scenario) { s.People = n })
		c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
		if off := math.Abs(kWh - r.read); off < nearest {
			nearest, c.Value = off, float64(n)
		}
		if (kWh-r.read)*float64(by) >= 0 {
			c.Alone = nearest <= math.Abs(kWh-last)/2+enoughKWh
			break
		}
		last = kWh
	}
	c.Alone = c.Alone || r.met(r.meter.Expected)
	c.Far = math.Abs(c.Value-c.Assumed) / peopleBand
}

// clock looks for the shift nearest to none that meets the reading: what is bought turns more than
// once in a day.
func (r *reader) clock(c *Cause) {
	c.Least, c.Most = r.meter.Expected, r.meter.Expected
	if r.met(r.meter.Expected) {
		c.Alone = true
		return
	}
	at := func(minutes float64) float64 { // a clock that is ahead acts early
		kWh, _ := r.with(func(s *scenario.Scenario) { moveHours(&s.Backup, -int(minutes)) })
		c.Least, c.Most = math.Min(c.Least, kWh), math.Max(c.Most, kWh)
		return kWh
	}
	nearest := math.Abs(r.meter.Expected - r.read)
	last := [2]float64{r.meter.Expected, r.meter.Expected} // ahead, behind
	for away := clockStep; away <= clockRange && !r.ended; away += clockStep {
		for side, sign := range [2]float64{1, -1} {
			kWh := at(sign * float64(away))
			if off := math.Abs(kWh - r.read); off < nearest {
				nearest, c.Value = off, sign*float64(away)
			}
			if (last[side]-r.read)*(kWh-r.read) <= 0 {
				c.Value, c.Alone = r.between(sign*float64(away-clockStep), sign*float64(away), last[side], at), true
				c.Far = math.Abs(c.Value) / clockMin
				return
			}
			last[side] = kWh
		}
	}
	c.Far = math.Abs(c.Value) / clockMin
}

// between halves minutes between which the reading is met; first is what the first of them buy.
func (r *reader) between(from, to, first float64, at func(float64) float64) float64 {
	for range 4 {
		if mid := (from + to) / 2; (at(mid)-r.read)*(first-r.read) > 0 {
			from = mid
		} else {
			to = mid
		}
	}
	return to
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
