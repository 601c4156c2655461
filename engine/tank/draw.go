package tank

// Draw is one use, or a part of one: litres at UseC at the tap, hot water mixed
// with cold as needed. PipeLitres of tank water, whatever its
// temperature, leave before it and stay in the pipe.
type Draw struct {
	PipeLitres float64
	Litres     float64
	UseC       float64
	ToleranceK float64 // water delivered below UseC by more than this counts as cool
}

// Served says what one use got; draws add to it.
type Served struct {
	HotLitres    float64 // from the tank, those in the pipe included
	HeatJ        float64 // at the tap, above cold water
	PipeJ        float64 // left in the pipe, above cold water
	ShortfallJ   float64 // heat missing to the use temperature
	CoolLitres   float64
	BeforeLitres float64 // litres delivered before the first cool one
}

// Draw serves a use with cold water of coldC and adds to got. Water leaves at the top as plug flow and cold water enters
// at the bottom. The draw is an instant; a caller with a long draw splits it.
// A use that asks for no more than cold water takes nothing from the tank. Less
// than a microlitre left over by rounding is let go.
func (t *Tank) Draw(d *Draw, coldC float64, got *Served) {
	if d.UseC <= coldC {
		got.BeforeLitres += d.Litres
		return
	}
	span := d.UseC - coldC
	cool := d.UseC - d.ToleranceK
	slug := t.slug()
	pipe, left := d.PipeLitres, d.Litres
	for pipe > 0 || left > 0 {
		taken, heat, inPipe := 0.0, 0.0, 0.0
		for pipe > 0 && slug-taken > sliverL {
			top := &t.s[t.hi-1]
			take := least(pipe, top.v, slug-taken)
			pipe -= take
			taken += take
			heat += take * top.x
			inPipe += t.perLitre * take * (t.a + t.d*top.x - coldC)
			t.shrinkTop(take)
		}
		for left > 0 && slug-taken > sliverL {
			top := &t.s[t.hi-1]
			temp := t.a + t.d*top.x
			// Hot litres per litre at the tap: (T_u - T_c)/(T - T_c), or all of it.
			hot := 1.0
			if temp > d.UseC {
				hot = span / (temp - coldC)
			}
			want := left * hot
			served := left
			take := least(want, top.v, slug-taken)
			if take < want {
				served = take / hot
			}
			if left -= served; left < sliverL {
				left = 0
			}
			if temp < d.UseC {
				got.ShortfallJ += t.perLitre * served * (d.UseC - temp)
			}
			if temp < cool {
				got.CoolLitres += served
			} else if got.CoolLitres == 0 {
				got.BeforeLitres += served
			}
			taken += take
			heat += take * top.x
			if rest := top.v - take; rest > sliverL {
				top.v = rest
			} else {
				t.shrinkTop(take)
			}
		}
		got.HotLitres += taken
		got.PipeJ += inPipe
		got.HeatJ += t.pass(taken, heat, coldC) - inPipe
	}
}

// least is min for numbers that are not NaN, without its care for the others.
func least(a, b, c float64) float64 {
	if b < a {
		a = b
	}
	if c < a {
		return c
	}
	return a
}

// slug is the most that leaves before cold water is let in.
func (t *Tank) slug() float64 {
	most := t.p.Litres
	if t.p.InletMixedLitres > 0 {
		most = t.p.InletMixedLitres / 2
	}
	if t.ahead != nil { // what comes in may be warmer than what is there, and mix with it all
		most = lesser(most, t.p.Litres/aheadSlugs)
	}
	return most
}

// shrinkTop takes v litres off the top layer, and the layer itself when nothing
// is left of it. A sliver goes to the layer below, so that volume stays exact.
func (t *Tank) shrinkTop(v float64) {
	top := &t.s[t.hi-1]
	top.v -= v
	if top.v > sliverL {
		return
	}
	if t.hi-1 > t.lo {
		below := &t.s[t.hi-2]
		if top.v != 0 {
			sum := below.v + top.v
			below.x += (top.x - below.x) * (top.v / sum)
			below.v = sum
		}
		t.hi--
		return
	}
	if top.v <= 0 {
		t.hi--
	}
}

// pass books v litres that left with that sum of v x, lets as much cold water
// in and returns the heat that left above cold water.
func (t *Tank) pass(v, sumVX, coldC float64) float64 {
	if v == 0 {
		return 0
	}
	outJ := t.perLitre * (v*t.a + t.d*sumVX)
	inJ := t.perLitre * v * coldC
	t.ledger.DrawnJ += outJ
	if t.ahead != nil {
		t.meanX -= sumVX * t.perV
		t.fillFromAhead(v, coldC)
		return outJ - inJ
	}
	xc := t.xOf(coldC)
	t.ledger.ColdJ += inJ
	t.meanX += (v*xc - sumVX) * t.perV
	t.fill(v, xc)
	return outJ - inJ
}

// fill lets v litres of cold water in at the bottom. With an inlet zone of V_m
// litres the zone ends at
//
//	x_c + (x_m - x_c) e^(-v/V_m)
//
// and pushes up one layer of v litres at
//
//	x_c + (x_m - x_c) (V_m/v) (1 - e^(-v/V_m))
func (t *Tank) fill(v, xc float64) {
	vm := t.p.InletMixedLitres
	if vm == 0 {
		t.pushBottom(layer{v: v, x: xc})
	} else {
		zone := t.s[t.lo]
		if !atHeight(zone.v, vm) {
			zone = t.gather(vm)
		}
		// v <= V_m/2. With u = v/V_m the Pade approximant gives (1 - e^-u)/u
		// without a division by u.
		u := v * t.perVm
		even, odd := padeExp(u)
		inv := 1 / (even + odd)
		stay, gonePerU := (even-odd)*inv, (1680+40*u*u)*inv
		above := zone.x - xc
		t.s[t.lo] = layer{v: v, x: xc + above*gonePerU}
		t.pushBottom(layer{v: zone.v, x: xc + above*stay})
		// The usual case, without a call: in order, and not near the layer above.
		if fresh := t.lo + 1; above > 0 && fresh+1 < t.hi && (t.s[fresh+1].x-t.s[fresh].x)*t.d >= NearK && t.hi-t.lo <= MaxLayers {
			return
		}
	}
	t.stackUp()
	if t.hi-t.lo > MaxLayers {
		t.fit(-1)
	}
}

// gather mixes the lowest vm litres into one layer, which it returns.
func (t *Tank) gather(vm float64) layer {
	i := t.cutAt(vm)
	for t.lo < i-1 {
		t.mergeUp(t.lo)
	}
	return t.s[i-1]
}

// stackUp restores the order of the lowest layers after water came in: warm
// water under colder rises and mixes, and the layer just pushed up joins the
// one above it if they are closer than NearK.
func (t *Tank) stackUp() {
	for t.hi-t.lo > 1 && t.s[t.lo].x > t.s[t.lo+1].x {
		t.mergeUp(t.lo)
	}
	fresh := t.lo
	if t.p.InletMixedLitres > 0 {
		fresh++
	}
	for fresh+1 < t.hi && t.s[fresh].x > t.s[fresh+1].x {
		fresh = t.mergeUp(fresh)
	}
	if fresh+1 < t.hi && (t.s[fresh+1].x-t.s[fresh].x)*t.d < NearK {
		t.mergeUp(fresh)
	}
}
