package tank

import "math"

// Conduction between layers. Heat that crosses a step of temperature builds a boundary
// layer at either side of it, whose thickness l grows as that of the error-function
// profile does,
//
//	l^2 = pi alpha age,   flow = k A step/(l_below + l_above)
//
// (two half-spaces; Carslaw & Jaeger 1959, 2.4 and 2.5), so that heat flows as sqrt(age)
// without the profile being resolved. A step that grows has younger heat in its boundary
// layer: with l^2 step^3 kept over the change, steps that grow as any power of time have
// their exact flow within 1 % (Duhamel's integral). Water above an element at work is
// mixed by it and has no boundary layer.
//
// Each layer carries l and the size of the step at its foot and for how long of the
// present stretch the water above that was stirred. Between calls of Exchange nothing is conducted.

const (
	// faintK is the step below which two layers conduct as their middles do, or as new
	// boundary layers where they are thicker, K.
	faintK = 2.0
	// blendK joins neighbours that conduction has brought this near, K.
	blendK = 0.2
	// roundS is what rounding may take from the seconds of half a stretch.
	roundS = 1.0
	// thinL is the least distance over which heat is conducted, L: slivers would only cost
	// digits.
	thinL = 0.01
	// edgeRest is the thickness, of an insulated layer's, that its mean is from its edge
	// in the end: 4/pi^2.
	edgeRest = 4 / (math.Pi * math.Pi)
)

// Exchange lets the conduction of a stretch of dt seconds happen, of which this is the
// middle: one step of a theta method in the layers' heat, whose theta makes two layers
// alone exact, so that heat is kept. Call it only at instants that do not depend on who
// watches. keep is a height (fraction of the volume) across which near neighbours are not
// joined: that of the lowest element.
func (t *Tank) Exchange(dt, keep float64) {
	if t.p.Geometry.ConductivityWPerMK == 0 || dt <= 0 {
		return
	}
	if t.hi-t.lo > 1 {
		if t.area[0] == 0 {
			t.setAreas()
		}
		t.couple(dt)
		t.solve()
		if t.p.Resolve {
			t.resolve(dt)
		}
		t.blend(keep * t.p.Litres)
	}
	for i := t.lo; i < t.hi; i++ {
		t.s[i].stirred = 0
	}
	t.s[t.lo].aged = 0
	t.since, t.half, t.held = 0, dt/2, false
	t.fit(keep * t.p.Litres)
}

// joint is what Exchange knows of the step at a layer's foot.
type joint struct {
	now  float64 // litres that exchange their heat at the step's beginning: (1 - theta) u
	then float64 // and at its end: theta u
	l    float64 // the boundary layers' thickness afterwards, L; 0: none
	heat float64 // that went down through it, K L
}

// couple fills the joints. Lengths are in litres of the local cross-section A, so that
// the diffusivity is k A (1000 A)/(rho c) L^2/s.
func (t *Tank) couple(dt float64) {
	s := t.s[t.lo:t.hi]
	j := t.joints[:len(s)]
	upright := t.p.Geometry.Orientation == Upright
	perArea := 1000 * t.p.Geometry.ConductivityWPerMK / t.perLitre
	spread := perArea * t.area[0] * t.area[0]
	reach := math.Sqrt(math.Pi * spread * dt)
	faint := faintK * t.g
	height, half, perHalf := 0.0, dt/2-roundS, 2/dt
	last := len(s) - 1
	for i := 1; i <= last; i++ {
		a, b := &s[i-1], &s[i]
		if !upright {
			height += a.v
			area := t.areaAt(height)
			spread = perArea * area * area
			reach = math.Sqrt(math.Pi * spread * dt)
		}
		step := b.x - a.x
		if step < faint {
			apart := lesser(a.v/2, reach)
			if b.stirred < half {
				apart += lesser(b.v/2, reach)
			}
			j[i] = joint{then: spread * dt / larger(apart, thinL)}
			continue
		}
		// A step made since the last call lives from then to the stretch's end.
		life, l2, l0 := dt, 0.0, 0.0
		if b.aged < 0 {
			life = t.since + b.aged + dt/2
		} else if b.aged > 0 && b.step > 0 {
			// Far from the step it is larger than between the means, by what the boundary
			// layers hold.
			wide := b.step * (a.v*b.v + (2/math.Pi)*b.aged*(a.v+b.v))
			grown := wide / (wide + (step-b.step)*a.v*b.v)
			l2 = b.aged * b.aged * grown * grown * grown
			l0 = math.Sqrt(l2)
		}
		l2 += math.Pi * spread * life
		l1 := math.Sqrt(l2)
		l := (l0 + l1) / 2 // the mean of 1/l over the stretch is 1/l
		apart := lesser(l, a.v/2)
		if i == 1 {
			apart = edge(l, l0, l1, a.v)
		}
		if idle := dt/2 - b.stirred; idle > roundS {
			above := lesser(l, b.v/2)
			if i == last {
				above = edge(l, l0, l1, b.v)
			}
			apart += above * idle * perHalf
		}
		apart = larger(apart, thinL)
		// u = spread life/apart, y = u (1/v_a + 1/v_b), theta = (3 + y)/(6 + y).
		through := spread * life
		product, sum := apart*a.v*b.v, through*(a.v+b.v)
		per := through / (apart * (6*product + sum))
		j[i] = joint{now: 3 * product * per, then: (3*product + sum) * per, l: l1}
		if t.held && b.stirred >= half {
			// What is held does not cool meanwhile as it does here until it is heated again.
			more := 1 + (j[i].now+j[i].then)/(2*b.v)
			j[i].now, j[i].then = j[i].now*more, j[i].then*more
		}
	}
}

// edge is how far, in litres, the mean of a layer of v litres whose other end is insulated
// is from its edge while the boundary layer grows from l0 to l1, l in the harmonic mean:
// l - 2 l^2/(pi v), and 4/pi^2 v in the end.
func edge(l, l0, l1, v float64) float64 {
	mean := (l1*l1 + l0*(l1+l0)) / (3 * l)
	if mean < v*(math.Pi/4) {
		behind := v - (2/math.Pi)*mean
		return l * behind / (behind + (2/math.Pi)*l)
	}
	return v * edgeRest
}

// solve brings the layers' heat to the stretch's end: tridiagonal, by elimination from the
// bottom.
func (t *Tank) solve() {
	s := t.s[t.lo:t.hi]
	j := t.joints[:len(s)]
	ratio := t.sweep[:len(s)]
	last := len(s) - 1
	lower, share, below, gone, heat := 0.0, 0.0, 0.0, 0.0, 0.0
	for i := range s {
		l := &s[i]
		upper, come := 0.0, 0.0
		if i < last {
			upper = j[i+1].then
			come = j[i+1].now * (s[i+1].x - l.x)
			j[i+1].heat = come
		}
		held := l.v * l.x
		heat += held
		inv := 1 / (l.v + upper + lower*(1-share))
		below = (held + come - gone + lower*below) * inv
		share = upper * inv
		l.x, ratio[i] = below, share
		lower, gone = upper, come
	}
	above := s[last].x
	heat -= s[last].v * above
	for i := last; i > 0; i-- {
		x := s[i-1].x + ratio[i-1]*above
		s[i-1].x = x
		heat -= s[i-1].v * x
		step := above - x
		j[i].heat += j[i].then * step
		s[i].aged, s[i].step = j[i].l, step
		above = x
	}
	// What rounding took of the heat, where it matters least.
	most := &s[0]
	if s[last].v > most.v {
		most = &s[last]
	}
	most.x += heat / most.v
}

// blend joins neighbours that are near, but across the height keep, and any out of order.
func (t *Tank) blend(keep float64) {
	near := blendK * t.g
	top := t.hi - 1
	foot := t.p.Litres - t.s[top].v // of layer top
	for i := top - 1; i >= t.lo; i-- {
		l := t.s[i]
		step := t.s[top].x - l.x
		if step >= near || step >= 0 && atHeight(foot, keep) {
			if top--; top != i {
				t.s[top] = l
			}
			foot -= l.v
			continue
		}
		foot -= l.v
		t.s[top].under(&l)
		for ; top+1 < t.hi && t.s[top].x > t.s[top+1].x; top++ {
			t.s[top+1].under(&t.s[top])
		}
	}
	t.lo = top
}

// setAreas tabulates the cross-section by height, m2.
func (t *Tank) setAreas() {
	for i := range t.area {
		f := lesser(larger(float64(i)/float64(len(t.area)-1), 1e-3), 1-1e-3)
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

// StretchIn is in how many seconds the present stretch begins, below 0 where it has.
func (t *Tank) StretchIn() float64 { return t.half - t.since }

// stir notes that the element heats just above a layer's foot for the seconds to come.
func (t *Tank) stir(layer int, seconds float64) { t.s[layer].stirred += t.stirring(seconds) }

// stirring is how many of the seconds to come are of the present stretch: those before were
// of the one whose middle the last Exchange was.
func (t *Tank) stirring(seconds float64) float64 {
	return larger(0, lesser(seconds, t.since+seconds-t.half))
}
