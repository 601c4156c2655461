package tank

// Rest lets dt seconds pass without heating.
func (t *Tank) Rest(dt float64) {
	if dt > 0 {
		t.RestSpan(t.SpanOf(dt))
	}
}

// RestSpan is Rest over a span of this tank.
func (t *Tank) RestSpan(s Span) {
	t.ledger.LossJ += t.capJPerK * (t.a + t.d*t.meanX - t.roomC) * (1 - s.Down)
	t.relax(s)
}

// relax moves A, D and G by the factors of one span; x stays.
func (t *Tank) relax(s Span) {
	t.a = t.roomC + (t.a-t.roomC)*s.Down
	t.d *= s.Down
	t.g *= s.Up
	t.since += s.Seconds
	if t.d < renormAtD {
		t.renormalise()
	}
}

// powered accounts for a span of constant total power (W); the layers' x have
// been moved by the caller. Loss is the integral of UA (T_mean - T_room), with
// T_mean relaxing to T_room + P tau/C = T_room + P/UA:
//
//	UA [ (T_m0 - T_a - P/UA) tau (1 - e^(-dt/tau)) + (P/UA) dt ]
func (t *Tank) powered(s Span, powerW float64) {
	rise := powerW * t.perUA
	joules := powerW * s.Seconds
	above := t.a + t.d*t.meanX - t.roomC
	t.ledger.LossJ += t.capJPerK*(above-rise)*(1-s.Down) + joules
	t.ledger.HeatJ += joules
	t.meanX += rise * t.g * (s.Up - 1)
	t.relax(s)
}
