package simulate

import "suncask/engine/tank"

// sunDay is a day's power at the element with its running integrals from
// midnight to every full hour, so that a stretch of hours costs two look-ups:
//
//	w = integral of P dG,   j = integral of P dt,   q = integral of D w dt
//
// with G = e^(t/tau), D = 1/G and t from midnight.
type sunDay struct {
	power   [24]float64
	w, j, q [25]float64
	lit     [25]float64 // s with power
}

// clock holds G and D at the full hours, and instants between.
type clock struct {
	tau  float64
	g, d [25]float64
	// quarters are the quarter hours of a day.
	quarters [97]event
}

func (c *clock) set(p tank.Params) {
	for h := range c.g {
		s := p.Span(float64(h) * 3600)
		c.g[h], c.d[h] = s.Up, s.Down
	}
	c.tau = p.Tau()
	for i := range c.quarters {
		c.quarters[i] = timed(p, event{at: float64(i) * lookEveryS})
	}
}

// integrate fills the running integrals. Within an hour of power P
//
//	w(t) = w_h + P (G - G_h),   q(t) = q_h + (w_h - P G_h) tau (D_h - D) + P (t - t_h)
func (s *sunDay) integrate(c *clock) {
	for h, p := range s.power {
		s.w[h+1] = s.w[h] + p*(c.g[h+1]-c.g[h])
		s.j[h+1] = s.j[h] + p*3600
		s.lit[h+1] = s.lit[h]
		if p > 0 {
			s.lit[h+1] += 3600
		}
		s.q[h+1] = s.q[h] + (s.w[h]-p*c.g[h])*c.tau*(c.d[h]-c.d[h+1]) + p*3600
	}
}

// between returns the ramp from one event of the day to a later one.
func (s *sunDay) between(c *clock, from, to *event, r *tank.Ramp) {
	w0, j0, q0 := s.upTo(c, from)
	w1, j1, q1 := s.upTo(c, to)
	r.Span = from.spanTo(to)
	r.W = (w1 - w0) * from.down
	r.Joules = j1 - j0
	r.Loss = q1 - q0 - w0*c.tau*(from.down-to.down)
}

// litFrom is for how many seconds from an instant to an event the sun has power.
func (s *sunDay) litFrom(at float64, to *event) float64 {
	if at >= to.at {
		return 0
	}
	return s.litTo(to.at) - s.litTo(at)
}

func (s *sunDay) litTo(at float64) float64 {
	h := min(int(at/3600), 23)
	if s.power[h] == 0 {
		return s.lit[h]
	}
	return s.lit[h] + at - float64(h)*3600
}

func (s *sunDay) upTo(c *clock, e *event) (w, j, q float64) {
	h := e.hour
	if h >= 24 {
		return s.w[24], s.j[24], s.q[24]
	}
	p := s.power[h]
	if p == 0 {
		return s.w[h], s.j[h], s.q[h] + s.w[h]*c.tau*(c.d[h]-e.down)
	}
	dt := e.at - float64(h)*3600
	return s.w[h] + p*(e.up-c.g[h]), s.j[h] + p*dt, s.q[h] + (s.w[h]-p*c.g[h])*c.tau*(c.d[h]-e.down) + p*dt
}
