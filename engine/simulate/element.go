package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Where a rule looks at how much water is ready it does so this often, s; a rescue that
// is not on looks every hour.
const (
	lookEveryS = 900.0
	hourS      = 3600.0
)

// slackL is how far below an asked volume rounding may bring one that is just reached, L:
// the litres above an element are asked for by default and are a sum of layers.
const slackL = 1e-6

// turn is who may have the element now.
type turn struct {
	open   int32 // windows that are open
	out    bool  // no grid
	boosts int32 // presses at work
	heatUp bool  // the weekly heat-up is on
	rescue bool  // the grid helps out until there is water enough again
}

// pass lets the time from one event to the next go by.
func (r *dayRun) pass(now *turn, sun *sunDay, from, to *event, price rate, f *Flows) {
	p := r.p
	grid := !now.out && !r.away
	switch {
	case now.heatUp && grid:
		r.buy(&r.heatUp, sun, from, to, price, f)
	case now.boosts > 0 && grid, now.open > 0 && grid && (p.apart || p.Scenario.Rule == scenario.WholeWindow):
		r.buy(&r.backup, sun, from, to, price, f)
	case now.open > 0 && grid:
		every := hourS
		if p.Scenario.Rule == scenario.SunFirst {
			every = lookEveryS
		}
		r.pieces(sun, from, to, &every, func(a, b *event, sunW float64) { r.contest(sun, a, b, sunW, price, f) })
	case grid && p.Scenario.RescueL > 0:
		every := lookEveryS
		r.pieces(sun, from, to, &every, func(a, b *event, _ float64) {
			ready := r.usable(r.coldC)
			now.rescue = ready < p.Scenario.RescueL-slackL || now.rescue && ready < p.Scenario.RescueL+rescueMoreL-slackL
			every = hourS
			if now.rescue {
				every = lookEveryS
				r.buy(&r.backup, sun, a, b, price, f)
				return
			}
			r.shine(sun, a, b, f)
		})
	default:
		r.shine(sun, from, to, f)
	}
}

// rescueMoreL is how much more water than asked a rescue makes ready, L.
const rescueMoreL = 20.0

// buy lets the grid have the element; what the sun could have given meanwhile is
// displaced, unless it has an element that works at the same time.
func (r *dayRun) buy(th *tank.Thermostat, sun *sunDay, from, to *event, price rate, f *Flows) {
	if r.p.apart {
		got := r.beside(th, sun, from, to, f)
		f.buy(got, price)
		return
	}
	got := r.ws.tank.HeatSpan(from.spanTo(to), r.p.backupW, &r.p.backupElement, th)
	f.buy(got, price)
	f.DisplacedJ += sun.joules(from, to)
}

// contest decides a piece of the window in which the sun's power is constant between
// sun and grid.
func (r *dayRun) contest(sun *sunDay, from, to *event, sunW float64, price rate, f *Flows) {
	s := &r.p.Scenario
	sunFirst := s.Rule == scenario.SunFirst && sunW > 0 && (sunW >= r.p.backupW || r.usable(r.coldC) >= s.KeepL-slackL)
	// The grid's thermostat calls until its set point is reached, then the sun has the
	// element where it is strong enough to keep the water there.
	if !sunFirst {
		if fired := r.fire(from, to, price, f); fired != nil {
			f.DisplacedJ += sun.joules(from, fired)
			from = fired
		}
		if sunW < r.keepW() {
			r.buy(&r.backup, sun, from, to, price, f)
			return
		}
	}
	r.shine(sun, from, to, f)
}

// fire heats with the grid until its thermostat is satisfied, at most until to, and
// returns when that was; nil if it did not call.
func (r *dayRun) fire(from, to *event, price rate, f *Flows) *event {
	t := &r.ws.tank
	span := from.spanTo(to)
	got, used := t.HeatUntil(span, r.p.backupW, &r.p.backupElement, &r.backup)
	if used <= 0 {
		return nil
	}
	f.buy(got, price)
	if used >= span.Seconds {
		return to
	}
	r.mid = r.p.timed(event{at: from.at + used})
	return &r.mid
}

// keepW is the power that keeps the water about the backup's thermostat at its set
// point, W.
func (r *dayRun) keepW() float64 {
	return r.p.tankParams.LossWPerK * (1 - r.p.backupElement.Low) * math.Max(0, r.backup.SetC-r.roomC)
}

// pieces cuts a stretch at full hours, or oftener, so that the sun's power is constant in
// each. do may change how often, from the piece after the next on.
func (r *dayRun) pieces(sun *sunDay, from, to *event, every *float64, do func(a, b *event, sunW float64)) {
	a, b := &r.piece[0], &r.piece[1]
	*a = *from
	for a.at < to.at {
		*b = *to
		if next := (math.Floor(a.at / *every + 1e-9) + 1) * *every; next < to.at {
			*b = r.p.clock.quarters[int(next/lookEveryS+0.5)]
		}
		do(a, b, sun.power[min(a.hour, 23)])
		*a = *b
	}
}

// joules is the sun's energy between two events, J.
func (s *sunDay) joules(from, to *event) float64 { return s.joulesTo(to) - s.joulesTo(from) }

func (s *sunDay) joulesTo(e *event) float64 {
	if e.hour >= 24 {
		return s.j[24]
	}
	return s.j[e.hour] + s.power[e.hour]*(e.at-float64(e.hour)*3600)
}

// isAway tells whether nobody is at home on a day of the year.
func isAway(s *scenario.Scenario, day int) bool {
	first := climate.FirstDay(int(s.AwayFrom))
	return (day-first+climate.Days)%climate.Days < s.AwayDays
}

// weekly tells whether the weekly heat-up falls on a day of the year: every seventh.
func weekly(s *scenario.Scenario, day int) bool { return s.HeatUp == 1 && day%7 == 6 }
