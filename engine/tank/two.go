package tank

// Supply is an element with its thermostat and the power on offer to it.
type Supply struct {
	PowerW     float64
	Element    Element
	Thermostat *Thermostat
}

// HeatTwo lets a span pass with two elements at work at once and returns the joules that
// each took. The upper element's lower end is not below the lower's. Where both could
// keep one layer at its set point, the lower goes first.
func (t *Tank) HeatTwo(s Span, lower, upper *Supply) (lowerJ, upperJ float64) {
	h := twoHeating{t: t, of: [2]*Supply{lower, upper}}
	t.cutAt(lower.Element.Low * t.p.Litres)
	most := 8 * (t.Len() + 8)
	if lower.Thermostat.Mode == Cycle || upper.Thermostat.Mode == Cycle {
		most += 2 * int(s.Seconds)
	}
	for ; ; most-- {
		if most == 0 {
			t.err = &EventError{t.Len(), s.Seconds}
			t.RestSpan(s)
			return h.joules[0], h.joules[1]
		}
		h.decide()
		if h.part() {
			continue
		}
		if used := h.advance(s); used < s.Seconds {
			s = t.SpanOf(s.Seconds - used)
			continue
		}
		return h.joules[0], h.joules[1]
	}
}

// twoHeating is one call of HeatTwo.
type twoHeating struct {
	t      *Tank
	of     [2]*Supply
	sensor [2]int     // the layers that the thermostats feel
	power  [2]float64 // that the elements take now, W
	kept   [2]bool    // their layer stands at the set point
	top    [2]int     // the highest layers that they reach
	joules [2]float64
}

// shareIn is the part of an element's power between two heights, L.
func (s *Supply) shareIn(foot, top, litres float64) float64 {
	low, high := s.Element.Low*litres, s.Element.High*litres
	if high == low {
		if foot <= low+sliverL && low+sliverL < top {
			return 1
		}
		return 0
	}
	return larger(0, lesser(top, high)-larger(foot, low)) / (high - low)
}

// decide says what each element takes from now on.
func (h *twoHeating) decide() {
	t := h.t
	var share, foot [2]float64 // of each element in its sensor's layer; where that begins
	for k, s := range h.of {
		th := s.Thermostat
		h.sensor[k], foot[k] = t.indexAt(th.Sensor * t.p.Litres)
		share[k] = s.shareIn(foot[k], foot[k]+t.s[h.sensor[k]].v, t.p.Litres)
		temp := t.temp(h.sensor[k])
		h.kept[k] = false
		on := temp < th.SetC-atSetK
		if th.Mode == Cycle {
			on = th.feel(temp)
		} else {
			h.kept[k] = !on && temp <= th.SetC+atSetK
		}
		h.power[k] = 0
		if on {
			h.power[k] = s.PowerW
		}
	}
	for k, s := range h.of {
		if !h.kept[k] {
			continue
		}
		l := &t.s[h.sensor[k]]
		other := h.of[1-k].shareIn(foot[k], foot[k]+l.v, t.p.Litres) * h.power[1-k]
		need := t.lossW(l.v, s.Thermostat.SetC) - other
		switch {
		case need <= 0:
			h.kept[k] = false
		case share[k] == 0 || need >= share[k]*s.PowerW:
			h.kept[k] = false
			h.power[k] = s.PowerW
		default:
			h.power[k] = need / share[k]
		}
	}
	h.limit()
}

// limit lets the cut-outs act on the highest layers that the elements reach.
func (h *twoHeating) limit() {
	t := h.t
	for k, s := range h.of {
		var foot float64
		h.top[k], foot = t.indexAt(larger(s.Element.High*t.p.Litres-2*sliverL, s.Element.Low*t.p.Litres))
		l := &t.s[h.top[k]]
		cutC := s.Thermostat.cut()
		over := t.temp(h.top[k]) - cutC
		if over < -atSetK || h.power[k] == 0 {
			continue
		}
		most := 0.0
		share := s.shareIn(foot, foot+l.v, t.p.Litres)
		if over <= atSetK && share > 0 {
			other := h.of[1-k].shareIn(foot, foot+l.v, t.p.Litres) * h.power[1-k]
			most = larger(0, t.lossW(l.v, cutC)-other) / share
		}
		if most < h.power[k] {
			h.power[k] = most
			h.kept = [2]bool{} // what they counted on is not there
		}
	}
}

// part cuts the layer about the upper element where the water above it would become
// warmer than that below, and tells whether it did: the water below is then warmed by
// the lower element alone.
func (h *twoHeating) part() bool {
	t := h.t
	height := h.of[1].Element.Low * t.p.Litres
	i, foot := t.indexAt(height)
	if height-foot <= sliverL || h.power[1] == 0 {
		return false
	}
	top := foot + t.s[i].v
	over := h.power[1]*h.of[1].shareIn(height, top, t.p.Litres) + h.power[0]*h.of[0].shareIn(height, top, t.p.Litres)
	under := h.power[0] * h.of[0].shareIn(foot, height, t.p.Litres)
	if over*(height-foot) <= under*(top-height)*(1+1e-9) {
		return false
	}
	t.splitLower(i, height-foot)
	return true
}

// advance heats until a layer reaches the one above it, a thermostat switches or the
// span ends, and returns the seconds used.
func (h *twoHeating) advance(s Span) float64 {
	t := h.t
	next, merge, trip := t.g*s.Up, -1, -1
	cut := -1
	perG := t.perG
	rates := t.sweep[t.lo:t.hi] // of x, K per unit of G
	foot := 0.0
	for i := t.lo; i < t.hi; i++ {
		v := t.s[i].v
		rates[i-t.lo] = perG / v * (h.power[0]*h.of[0].shareIn(foot, foot+v, t.p.Litres) + h.power[1]*h.of[1].shareIn(foot, foot+v, t.p.Litres))
		foot += v
	}
	for i := range rates[:len(rates)-1] {
		if rates[i] > rates[i+1] {
			if at := t.g + (t.s[t.lo+i+1].x-t.s[t.lo+i].x)/(rates[i]-rates[i+1]); at < next {
				next, merge = at, t.lo+i
			}
		}
	}
	var level [2]float64
	for k, s := range h.of {
		th, i := s.Thermostat, h.sensor[k]
		temp, rate := t.temp(i), rates[i-t.lo]
		level[k] = th.SetC
		if th.Mode == Cycle && !th.On {
			level[k] -= th.DifferentialK
		}
		if away := temp - level[k]; away > atSetK || away < -atSetK {
			rises := rate > level[k]-t.roomC // and not only relaxes, at the level
			if at := t.crossing(t.s[i].x, rate, level[k]); at > t.g && at < next && rises == (away < 0) {
				next, merge, trip = at, -1, k
			}
		}
	}
	for k, s := range h.of {
		th, i := s.Thermostat, h.top[k]
		if over := t.temp(i) - th.cut(); over > atSetK || over < -atSetK {
			rate := rates[i-t.lo]
			if at := t.crossing(t.s[i].x, rate, th.cut()); at > t.g && at < next && (rate > th.cut()-t.roomC) == (over < 0) {
				next, merge, trip, cut = at, -1, -1, k
			}
		}
	}
	for i, r := range rates {
		t.s[t.lo+i].x += r * larger(0, next-t.g)
	}
	if merge >= 0 || trip >= 0 || cut >= 0 {
		s = t.until(larger(next, t.g), s)
	}
	for k, of := range h.of {
		height := of.Element.Low * t.p.Litres
		if i, foot := t.indexAt(height); h.power[k] > 0 && atHeight(foot, height) {
			t.stir(i, s.Seconds)
			t.held = t.held || h.kept[k]
		}
	}
	t.powered(s, h.power[0]+h.power[1])
	for k := range h.of {
		h.joules[k] += h.power[k] * s.Seconds
		if h.kept[k] {
			t.s[h.sensor[k]].x = t.xOf(h.of[k].Thermostat.SetC)
		}
	}
	if trip >= 0 {
		t.s[h.sensor[trip]].x = t.xOf(level[trip])
	}
	if cut >= 0 {
		t.s[h.top[cut]].x = t.xOf(h.of[cut].Thermostat.cut())
	}
	if merge >= 0 {
		t.mergeUp(merge)
	}
	return s.Seconds
}
