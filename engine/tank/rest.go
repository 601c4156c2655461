package tank

// Rest lets dt seconds pass without heating.
func (t *Tank) Rest(dt float64) {
	if dt <= 0 {
		return
	}
	up, down := t.decayOver(dt)
	t.ledger.LossJ += t.capJPerK * (t.a + t.d*t.meanX - t.roomC) * (1 - down)
	t.relax(up, down)
}

// relax moves A, D and G by the factors of one interval; x stays.
func (t *Tank) relax(up, down float64) {
	t.a = t.roomC + (t.a-t.roomC)*down
	t.d *= down
	t.g *= up
	if t.d < renormAtD {
		t.renormalise()
	}
}

// stretch accounts for dt seconds of constant total power (W), which end at
// G = gEnd; the layers' x have been moved by the caller. Loss is the integral
// of UA (T_mean - T_room), with T_mean relaxing to T_room + P tau/C:
//
//	UA [ (T_m0 - T_a - P tau/C) tau (1 - e^(-dt/tau)) + (P tau/C) dt ]
func (t *Tank) stretch(dt, powerW, gEnd float64) {
	g0 := t.g
	rise := powerW * t.tau / t.capJPerK
	down := g0 / gEnd
	above := t.a + t.d*t.meanX - t.roomC
	t.ledger.LossJ += t.capJPerK*(above-rise)*(1-down) + t.p.LossWPerK*rise*dt
	t.ledger.HeatJ += powerW * dt
	t.meanX += rise * (gEnd - g0)
	t.a = t.roomC + (t.a-t.roomC)*down
	t.g = gEnd
	t.d = 1 / gEnd
	if t.d < renormAtD {
		t.renormalise()
	}
}
