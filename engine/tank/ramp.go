package tank

// Ramp is a span in which the power on offer changes, given by its integrals
// over the span, with G taken relative to the span's start:
//
//	W = integral of P dG            (W)
//	Joules = integral of P dt       (J)
//	Loss = integral of D W(t) dt    (J), W(t) up to t
//
// Layers and mean depend on the power only through these.
type Ramp struct {
	Span
	W, Joules, Loss float64
	Stirred         float64 // s of the present stretch of conduction with power, see Exchange
}

// HeatRamp is HeatSpan over a ramp for a horizontal element with an ideal
// thermostat (Hold) at its height. done is false, and nothing but a cut at the
// element has changed, where the thermostat may act within the span: the caller
// then goes on in pieces of constant power.
func (t *Tank) HeatRamp(r *Ramp, el *Element, setC float64) (done bool) {
	return t.climb(r, t.cutAt(el.Low*t.p.Litres), setC)
}

// climb heats the layer at bottom, and those it reaches, by a ramp, unless it
// would come to setC.
func (t *Tank) climb(r *Ramp, bottom int, setC float64) (done bool) {
	a := (t.a - t.roomC) * t.g
	limit := (setC - t.roomC - atSetK) * t.g
	left := r.W * t.perG * t.g // K L still to come
	// The heated layer joins those above as it reaches them; all layers relax
	// meanwhile, so it is never warmer than its last x is at the start.
	top, v, x := bottom, t.s[bottom].v, t.s[bottom].x
	if a+x >= limit {
		return false
	}
	for top+1 < t.hi {
		above := &t.s[top+1]
		need := (above.x - x) * v
		if need > left {
			break
		}
		left -= need
		x = above.x
		v += above.v
		top++
	}
	x += left / v
	if a+x >= limit {
		return false
	}
	t.s[top] = layer{v, x, t.s[bottom].aged, t.s[bottom].step, t.s[bottom].stirred}
	t.s[top].stirred += r.Stirred
	if gone := top - bottom; gone > 0 {
		for i := bottom - 1; i >= t.lo; i-- {
			t.s[i+gone] = t.s[i]
		}
		t.lo += gone
	}
	// As powered, with the ramp's own integrals.
	above := t.a + t.d*t.meanX - t.roomC
	t.ledger.LossJ += t.capJPerK*above*(1-r.Down) + r.Loss
	t.ledger.HeatJ += r.Joules
	t.meanX += r.W * t.perUA * t.g
	t.relax(r.Span)
	return true
}
