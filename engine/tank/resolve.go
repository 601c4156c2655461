package tank

import "math"

// How [Params.Resolve] cuts boundary layers into slabs.
const (
	slabPart  = 0.25     // of the boundary layer's thickness
	slabLeast = 1.0 / 40 // of the tank
	slabsMost = 4
	steepK    = 1.0 // no slabs at steps below this, K
)

// beyond is the share of its heat that a boundary layer holds farther than z of its
// thicknesses from its edge: ierfc(sqrt(pi) z/2)/ierfc(0), to 0.02.
func beyond(z float64) float64 { return math.Exp(-z * (1.546 + 0.524*z)) }

// resolve cuts the boundary layers of thick layers into slabs and puts the heat that just
// went through a step where it is. Without it a layer is one temperature to its far end,
// which matters where much water lies below an element and comes up to it a day later.
func (t *Tank) resolve(dt float64) {
	n := t.hi - t.lo
	if t.lo < stackTop-2*MaxLayers {
		t.recentre()
	}
	for i := n - 1; i >= 1 && t.lo > 2*slabsMost; i-- {
		j := &t.joints[i]
		at := t.lo + i
		if j.l == 0 || t.s[at].x-t.s[at-1].x < steepK*t.g {
			continue
		}
		l := j.l
		if t.s[at].stirred < dt/2-roundS {
			at = t.slabsAbove(at, l, j.heat)
		}
		t.slabsBelow(at, l, j.heat)
	}
}

// slabs returns into how many slabs of which volume the edge of a layer of v litres is
// cut where the boundary layer is l thick.
func (t *Tank) slabs(v, l float64) (n int, each float64) {
	each = larger(l*slabPart, t.p.Litres*slabLeast)
	for n = min(slabsMost, int(2*l/each+0.5)); n > 0 && (float64(n)+0.5)*each >= v; {
		n--
	}
	return n, each
}

// slabsBelow cuts the layer below the step at a layer's foot, into which heat (K L) went.
func (t *Tank) slabsBelow(at int, l, heat float64) {
	v := t.s[at-1].v
	n, each := t.slabs(v, l)
	if n == 0 {
		return
	}
	before := t.s[at-1].x - heat/v
	rest := v - float64(n)*each
	for k := n; k > 0; k-- { // from the far end on
		here := each
		if k == n {
			here = rest
		}
		t.splitLower(at-1, here)
	}
	t.s[at-1-n].x = before + heat*beyond(float64(n)*each/l)/rest
	for k := range n {
		t.s[at-1-k].x = before + heat*(beyond(float64(k)*each/l)-beyond(float64(k+1)*each/l))/each
	}
	t.age(at-n, at, l)
}

// slabsAbove is slabsBelow for the layer above, which gave the heat; it returns where
// that layer's foot is now.
func (t *Tank) slabsAbove(at int, l, heat float64) int {
	v := t.s[at].v
	n, each := t.slabs(v, l)
	if n == 0 {
		return at
	}
	before := t.s[at].x + heat/v
	rest := v - float64(n)*each
	for range n {
		t.splitLower(at, each)
	}
	foot := at - n
	for k := range n {
		t.s[foot+k].x = before - heat*(beyond(float64(k)*each/l)-beyond(float64(k+1)*each/l))/each
	}
	t.s[at].x = before - heat*beyond(float64(n)*each/l)/rest
	t.age(foot, at, l)
	return foot
}

// age gives the steps at the feet of layers from..to boundary layers of that thickness.
func (t *Tank) age(from, to int, l float64) {
	for i := from; i <= to; i++ {
		t.s[i].aged, t.s[i].step = l, t.s[i].x-t.s[i-1].x
	}
}
