package tank

import "math"

// steepK is the step between two layers above which Exchange resolves them, K.
const steepK = 1.0

// ExchangeEveryS is how often conduction is to run. In the six houses of the tests
// every two hours agrees with a tank of 400 cells to 0.45 % of the heat moved, every
// hour to 0.36 %, every three hours to over 1 %. This interval and slabs were chosen
// on those houses, as the cheapest pair within 0.5 %.
const ExchangeEveryS = 7200.0

// slabs is the number of slabs that Exchange resolves a tank into at a step.
const slabs = 30

// sharpGain makes up for the implicit step at a sharp step of temperature, where
// it carries rho c sqrt(alpha dt)/2 instead of rho c sqrt(alpha dt/pi) per kelvin.
const sharpGain = 4 / math.Pi

// Exchange lets dt seconds of conduction between the layers happen at once. It
// is one implicit step, which keeps the order of the temperatures and the heat;
// its error is that of the step and of slabs a thirtieth of the tank thick. Call
// it only at fixed clock times, so that other events do not change the result.
// keep is a height (fraction of the volume) across which near neighbours are
// not merged: that of the lowest element.
func (t *Tank) Exchange(dt, keep float64) {
	if t.p.Geometry.ConductivityWPerMK == 0 || dt <= 0 || t.hi-t.lo == 1 && t.s[t.lo].v == t.p.Litres {
		return
	}
	if t.area[0] == 0 {
		t.setAreas()
	}
	t.resolve()
	t.conduct(dt)
	t.joinNear(keep * t.p.Litres)
	t.fit(keep * t.p.Litres)
}

// resolve cuts a slab off thick layers at either side of a steep step and gives a
// step that had to be resolved its sharpGain. One pass from the bottom into the work
// space, then back.
func (t *Tank) resolve() {
	slab := t.p.Litres / slabs
	thick := 1.5 * slab
	steep := steepK * t.g
	src := t.s[t.lo:t.hi]
	n := 0
	stepBelow, cutBelow := false, false // of the layer below: its step up, its cut there
	for i := range src {
		v, x := src[i].v, src[i].x
		stepAbove := i+1 < len(src) && src[i+1].x-x > steep
		upper := 0.0
		if stepAbove && v > thick {
			upper = slab
			v -= slab
		}
		gain := 1.0 // of the step below
		if stepBelow && cutBelow {
			gain = sharpGain
		}
		if stepBelow && v > thick {
			t.fine[n], t.gain[n] = layer{slab, x}, sharpGain
			n++
			v -= slab
			gain = 1
		}
		t.fine[n], t.gain[n] = layer{v, x}, gain
		n++
		if upper > 0 {
			t.fine[n], t.gain[n] = layer{upper, x}, 1
			n++
		}
		stepBelow, cutBelow = stepAbove, upper > 0
	}
	t.lo, t.hi = stackTop-n, stackTop
	copy(t.s[t.lo:t.hi], t.fine[:n])
}

// conduct solves C dT/dt = sum G (T_j - T_i) over dt by the backward Euler
// method: (C + dt L) x' = C x, tridiagonal, by elimination from the bottom.
// The conductance of two neighbours is k A over the distance of their centres,
// half of each one's thickness V/(1000 A).
func (t *Tank) conduct(dt float64) {
	s := t.s[t.lo:t.hi]
	gain := t.gain[:len(s)]
	up := t.sweep[:len(s)] // coupling to the layer above, L; then the ratio of the sweep
	w := t.p.Geometry.ConductivityWPerMK * dt * 2000 / t.perLitre
	last := len(s) - 1
	for i := range last {
		up[i] = w * gain[i+1] / (s[i].v + s[i+1].v)
	}
	up[last] = 0
	t.widen(s, up[:last])
	lower, ratio, below := 0.0, 0.0, 0.0
	for i := range s {
		l := &s[i]
		upper := up[i]
		inv := 1 / (l.v + upper + lower*(1-ratio))
		below = (l.v*l.x + lower*below) * inv
		ratio = upper * inv
		l.x, up[i], lower = below, ratio, upper
	}
	for i := last - 1; i >= 0; i-- {
		s[i].x += up[i] * s[i+1].x
	}
}

// widen multiplies couplings by the square of their cross-section.
func (t *Tank) widen(s []layer, up []float64) {
	if t.p.Geometry.Orientation == Upright {
		square := t.area[0] * t.area[0]
		for i := range up {
			up[i] *= square
		}
		return
	}
	height := 0.0
	for i := range up {
		height += s[i].v
		area := t.areaAt(height)
		up[i] *= area * area
	}
}

// setAreas tabulates the cross-section by height, m2.
func (t *Tank) setAreas() {
	for i := range t.area {
		f := min(max(float64(i)/float64(len(t.area)-1), 1e-3), 1-1e-3)
		t.area[i] = t.p.Geometry.areaM2(t.p.Litres, f)
		if t.p.Geometry.Orientation == Upright {
			return
		}
	}
}

// areaAt is the cross-section of a lying tank at a height in litres, m2.
func (t *Tank) areaAt(height float64) float64 {
	at := height * t.perV * float64(len(t.area)-1)
	i := min(int(at), len(t.area)-2)
	return t.area[i] + (at-float64(i))*(t.area[i+1]-t.area[i])
}

// joinNear merges neighbours closer than NearK, except at the height keep.
func (t *Tank) joinNear(keep float64) {
	near := NearK * t.g
	foot := t.p.Litres // of layer i
	for i := t.hi - 1; i > t.lo; i-- {
		foot -= t.s[i].v
		for i > t.lo && t.s[i].x-t.s[i-1].x < near && !atHeight(foot, keep) {
			foot -= t.s[i-1].v
			t.mergeUp(i - 1)
		}
	}
}
