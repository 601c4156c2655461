package tank

import (
	"fmt"
	"math"
)

// Element is a resistance in the water. Heights are fractions of the volume
// below them; a horizontal element has Low == High.
type Element struct {
	Low, High float64 // 0 <= Low <= High < 1
}

// EventError reports an interval that did not come to its end within the
// number of events that the layers allow. It marks a fault of this package.
type EventError struct {
	Layers int
	LeftS  float64
}

func (e *EventError) Error() string {
	return fmt.Sprintf("tank: %d layers, interval not finished with %g s left", e.Layers, e.LeftS)
}

// Heat lets dt seconds pass with powerW watts on offer to the element. It
// returns the joules taken; what was on offer and not taken was refused by the
// thermostat.
func (t *Tank) Heat(dt, powerW float64, el *Element, th *Thermostat) (takenJ float64) {
	if dt <= 0 {
		return 0
	}
	return t.HeatSpan(t.SpanOf(dt), powerW, el, th)
}

// HeatSpan is Heat over a span of this tank.
func (t *Tank) HeatSpan(s Span, powerW float64, el *Element, th *Thermostat) (takenJ float64) {
	if powerW <= 0 {
		t.RestSpan(s)
		return 0
	}
	low := el.Low * t.p.Litres
	bottom := t.cutAt(low)
	if el.High == el.Low && th.Sensor == el.Low && th.Mode == Hold && th.SetC <= th.cut() {
		if taken, done := t.heatPlain(s, powerW, th.SetC, bottom); done {
			return taken
		}
	}
	before := t.ledger.HeatJ
	h := &t.heating
	h.t, h.el, h.th, h.powerW = t, el, th, powerW
	h.low, h.high = low, el.High*t.p.Litres
	h.bottom = bottom
	h.run(s)
	return t.ledger.HeatJ - before
}

// HeatUntil is HeatSpan that ends as soon as the thermostat is satisfied, and also
// returns the seconds that have passed: 0 if it does not call.
func (t *Tank) HeatUntil(s Span, powerW float64, el *Element, th *Thermostat) (takenJ, seconds float64) {
	if powerW <= 0 {
		return 0, 0
	}
	before := t.ledger.HeatJ
	h := &t.heating
	h.t, h.el, h.th, h.powerW = t, el, th, powerW
	h.low, h.high = el.Low*t.p.Litres, el.High*t.p.Litres
	h.bottom = t.cutAt(h.low)
	for events := 4 * (t.Len() + 4); events > 0; events-- {
		h.locate()
		if h.call() != firing {
			return t.ledger.HeatJ - before, seconds
		}
		used := h.fire(s)
		seconds += used
		if used >= s.Seconds {
			return t.ledger.HeatJ - before, seconds
		}
		s = t.SpanOf(s.Seconds - used)
	}
	t.err = &EventError{t.Len(), s.Seconds}
	return t.ledger.HeatJ - before, seconds
}

// heatPlain is the common case cut short: a horizontal element with its sensor,
// which neither trips nor starts to call within the span. done is false, and
// nothing has changed, if it does. Constant power is the ramp
//
//	W = P (G2/G1 - 1),   Loss = P (dt - tau (1 - e^(-dt/tau)))
func (t *Tank) heatPlain(s Span, powerW, setC float64, bottom int) (takenJ float64, done bool) {
	if warm := t.s[bottom].x - t.xOf(setC+atSetK); warm > 0 {
		above := t.temp(bottom) - t.roomC
		if above*s.Down <= setC+atSetK-t.roomC {
			return 0, false
		}
		t.RestSpan(s)
		return 0, true
	}
	joules := powerW * s.Seconds
	r := Ramp{Span: s, W: powerW * (s.Up - 1), Joules: joules, Loss: joules - powerW*t.tau*(1-s.Down), Stirred: t.stirring(s.Seconds)}
	return joules, t.climb(&r, bottom, setC)
}

// heating is one call of Heat. Indices are into the tank's stack.
type heating struct {
	t         *Tank
	el        *Element
	th        *Thermostat
	powerW    float64
	low, high float64            // heights of the element, L
	bottom    int                // lowest heated layer: the one just above the element's lower end
	top       int                // highest layer the element reaches
	sensor    int                // the layer the thermostat feels
	cutC      float64            // where the cut-out acts on the highest layer reached
	share     [stackRoom]float64 // of the power, by layer from bottom to top
}

func (h *heating) run(s Span) {
	t := h.t
	most := 4 * (t.Len() + 4)
	if h.th.Mode == Cycle { // it switches as often as it must, no oftener than every second
		most += int(s.Seconds)
	}
	for events := most; ; events-- {
		if events == 0 {
			t.err = &EventError{t.Len(), s.Seconds}
			t.RestSpan(s)
			return
		}
		h.locate()
		var used float64
		switch h.call() {
		case satisfied:
			used = h.rest(s)
		case holding:
			used = h.hold(s, h.sensor, h.th.SetC)
		case tripped:
			used = h.cool(s)
		case limited:
			used = h.hold(s, h.top, h.cutC)
		default:
			used = h.fire(s)
		}
		if used >= s.Seconds {
			return
		}
		s = t.SpanOf(s.Seconds - used)
	}
}

// until returns the part of a span that ends when G has come to at.
func (t *Tank) until(at float64, s Span) Span {
	up := at / t.g
	return Span{lesser(t.tau*math.Log(up), s.Seconds), up, 1 / up}
}

// locate finds the layers that the element and the sensor touch.
func (h *heating) locate() {
	t := h.t
	if h.el.High == h.el.Low {
		h.top = h.bottom
		h.share[0] = 1
	} else {
		h.spread()
	}
	h.cutC = h.th.cut()
	h.sensor = h.bottom
	if h.th.Sensor > h.el.Low {
		h.sensor, _ = t.indexAt(h.th.Sensor * t.p.Litres)
	}
}

// spread shares the power over the layers spanned in proportion to litres.
func (h *heating) spread() {
	t := h.t
	from := h.low
	for i := h.bottom; ; i++ {
		to := from + t.s[i].v
		h.top = i
		if to >= h.high-sliverL || i == t.hi-1 {
			h.share[i-h.bottom] = (h.high - from) / (h.high - h.low)
			return
		}
		h.share[i-h.bottom] = (to - from) / (h.high - h.low)
		from = to
	}
}

// shareOf is the part of the power that layer i takes.
func (h *heating) shareOf(i int) float64 {
	if i < h.bottom || i > h.top {
		return 0
	}
	return h.share[i-h.bottom]
}

// lossW is the loss of litres at a temperature, W.
func (t *Tank) lossW(litres, tempC float64) float64 {
	return t.p.LossWPerK * litres / t.p.Litres * (tempC - t.roomC)
}

// cool waits with the element off until the highest layer it reaches has cooled to the
// cut-out or the span ends, and returns the seconds used.
func (h *heating) cool(s Span) float64 {
	t := h.t
	at := t.crossing(t.s[h.top].x, 0, h.cutC)
	if !(at > t.g && at < t.g*s.Up) || t.temp(h.top) <= h.cutC+atSetK {
		t.RestSpan(s)
		return s.Seconds
	}
	part := t.until(at, s)
	t.RestSpan(part)
	t.s[h.top].x = t.xOf(h.cutC)
	return part.Seconds
}

// rest waits with the element off until the thermostat calls or the span ends,
// and returns the seconds used.
func (h *heating) rest(s Span) float64 {
	t := h.t
	on := h.th.SetC
	if h.th.Mode == Cycle {
		on -= h.th.DifferentialK
	}
	at := t.crossing(t.s[h.sensor].x, 0, on)
	if !(at > t.g && at < t.g*s.Up) || t.temp(h.sensor) <= on+atSetK {
		t.RestSpan(s)
		return s.Seconds
	}
	part := t.until(at, s)
	t.RestSpan(part)
	t.s[h.sensor].x = t.xOf(on)
	return part.Seconds
}

// fire heats with full power until thermostat or cut-out trips or the interval ends.
// Layers that reach the one above them merge on the way: the power does not
// change there, so no time is needed.
func (h *heating) fire(s Span) float64 {
	t := h.t
	perG := h.powerW * t.perG
	g, gEnd := t.g, t.g*s.Up
	for events := 4 * (t.Len() + 4); ; events-- {
		if events == 0 {
			t.err = &EventError{t.Len(), s.Seconds}
			break
		}
		next, merge, trip, level := gEnd, -1, -1, 0.0
		rate := perG * h.share[0] / t.s[h.bottom].v
		for i := h.bottom; i <= h.top; i++ {
			above := 0.0
			if i < h.top {
				above = perG * h.share[i+1-h.bottom] / t.s[i+1].v
			}
			if i < t.hi-1 && rate > above {
				if at := g + (t.s[i+1].x-t.s[i].x)/(rate-above); at < next {
					next, merge, trip = at, i, -1
				}
			}
			if i == h.sensor {
				if rate > h.th.SetC-t.roomC {
					if at := larger(g, t.crossingFrom(g, t.s[i].x, rate, h.th.SetC)); at < next {
						next, merge, trip, level = at, -1, i, h.th.SetC
					}
				}
			}
			if i == h.top && (i != h.sensor || h.cutC < h.th.SetC) {
				if rate > h.cutC-t.roomC {
					if at := larger(g, t.crossingFrom(g, t.s[i].x, rate, h.cutC)); at < next {
						next, merge, trip, level = at, -1, i, h.cutC
					}
				}
			}
			rate = above
		}
		if next > g {
			for i := h.bottom; i <= h.top; i++ {
				t.s[i].x += perG * h.share[i-h.bottom] / t.s[i].v * (next - g)
			}
			g = next
		}
		if merge >= 0 {
			h.join(merge)
			h.locate()
			continue
		}
		if trip < 0 {
			break
		}
		part := t.until(g, s)
		t.stir(h.bottom, part.Seconds)
		t.powered(part, h.powerW)
		t.s[trip].x = t.xOf(level)
		return part.Seconds
	}
	t.stir(h.bottom, s.Seconds)
	t.powered(s, h.powerW)
	return s.Seconds
}

// hold keeps a layer, the sensor's or the highest, at a level: the element replaces its
// loss until a hotter layer above has cooled to it, a colder one below has risen to
// it, the other of the two comes to its own level, or the interval ends. It returns the
// seconds used.
func (h *heating) hold(s Span, kept int, levelC float64) float64 {
	t := h.t
	powerW := t.lossW(t.s[kept].v, levelC) / h.shareOf(kept)
	perG := powerW * t.perG
	next, merge, trip := t.g*s.Up, -1, -1
	soonest := func(at float64, lower int) {
		if at >= t.g && at < next {
			next, merge = at, lower
		}
	}
	rate := func(i int) float64 { return perG * h.shareOf(i) / t.s[i].v }
	for i := h.bottom; i <= max(h.top, kept+1) && i < t.hi; i++ {
		switch {
		case i == kept:
			continue
		case i == kept-1:
			if rate(i) > levelC-t.roomC { // it rises to the level; it may stand there already
				soonest(larger(t.g, t.crossing(t.s[i].x, rate(i), levelC)), i)
			}
			continue
		case i == kept+1:
			soonest(t.crossing(t.s[i].x, rate(i), levelC), kept)
		}
		if i+1 < t.hi && rate(i) > rate(i+1) {
			soonest(t.g+(t.s[i+1].x-t.s[i].x)/(rate(i)-rate(i+1)), i)
		}
	}
	other, otherC := h.top, h.cutC
	if kept == h.top {
		other, otherC = h.sensor, h.th.SetC
	}
	if other != kept && rate(other) > otherC-t.roomC {
		if at := larger(t.g, t.crossing(t.s[other].x, rate(other), otherC)); at < next {
			next, merge, trip = at, -1, other
		}
	}
	for i := h.bottom; i <= h.top; i++ {
		if i != kept {
			t.s[i].x += rate(i) * (next - t.g)
		}
	}
	if merge >= 0 || trip >= 0 {
		s = t.until(next, s)
	}
	t.stir(h.bottom, s.Seconds)
	t.held = true
	t.powered(s, powerW)
	t.s[kept].x = t.xOf(levelC)
	if trip >= 0 {
		t.s[trip].x = t.xOf(otherC)
	}
	if merge >= 0 {
		h.join(merge)
	}
	return s.Seconds
}

// join merges layer i into the one above it and keeps track of the bottom.
func (h *heating) join(i int) {
	h.t.mergeUp(i)
	h.bottom++
}

// crossing returns the G at which a layer of that x, rising at rate per unit of
// G, stands at level, degC: with a = (A - T_a)/D,
//
//	a + x + rate (G - g) = (level - T_a) G
//
// The result is before the present G, or not finite, if it never does.
func (t *Tank) crossing(x, rate, level float64) float64 { return t.crossingFrom(t.g, x, rate, level) }

func (t *Tank) crossingFrom(g, x, rate, level float64) float64 {
	a := (t.a - t.roomC) * t.g
	return (a + x - rate*g) / (level - t.roomC - rate)
}
