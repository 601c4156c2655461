// Package cells is a second storage tank for tests, made in another way than package
// tank and sharing no code with it: many equal cells moved by whole cells (the rest is
// carried to the next draw), short steps, inversions mixed after each. Only tests use it.
package cells

import "math"

const (
	heatCapacity = 4180.0 // J/(L K)
	boilingC     = 100.0
)

// Tank is a tank of equal cells.
type Tank struct {
	C        []float64 // degC, bottom to top
	Litres   float64
	UA       float64 // W/K
	RoomC    float64
	Zone     float64   // well-mixed litres at the inlet
	Conducts []float64 // W/K from each cell to the one above; nil: nothing is conducted
	Ahead    *Tank     // its top cell comes in instead of cold water; cells of the same size

	carry  float64 // litres drawn and not yet moved
	kept   []float64
	ratio  []float64
	blocks []block
}

// New returns a tank of n cells at one temperature.
func New(n int, litres, ua, roomC, tempC float64) *Tank {
	t := &Tank{C: make([]float64, n), Litres: litres, UA: ua, RoomC: roomC}
	for i := range t.C {
		t.C[i] = tempC
	}
	return t
}

// Conduct gives the tank, a cylinder standing or lying, a conductivity in W/(m K) of its
// horizontal cross-sections.
func (t *Tank) Conduct(k, lengthToDiameter float64, lying bool) {
	n := len(t.C)
	diameter := math.Cbrt(4 * t.Litres / 1000 / (math.Pi * lengthToDiameter))
	length := lengthToDiameter * diameter
	t.Conducts = make([]float64, n-1)
	level := func(share float64) float64 { // height in m below which that share of the water is
		if !lying {
			return share * length
		}
		lo, hi := 0.0, math.Pi // half the angle of the segment
		for range 60 {
			if mid := (lo + hi) / 2; (mid-math.Sin(mid)*math.Cos(mid))/math.Pi < share {
				lo = mid
			} else {
				hi = mid
			}
		}
		return diameter / 2 * (1 - math.Cos(lo))
	}
	for i := range t.Conducts {
		area := math.Pi / 4 * diameter * diameter
		if lying {
			h := level(float64(i+1) / float64(n))
			area = length * 2 * math.Sqrt(h*(diameter-h))
		}
		t.Conducts[i] = k * area / (level((float64(i)+1.5)/float64(n)) - level((float64(i)+0.5)/float64(n)))
	}
}

func (t *Tank) cellL() float64 { return t.Litres / float64(len(t.C)) }

// Content is the heat above 0 degC, J.
func (t *Tank) Content() (joules float64) {
	for _, c := range t.C {
		joules += c * t.cellL() * heatCapacity
	}
	return joules
}

// Step lets dt pass without heating and returns what was lost, J.
func (t *Tank) Step(dt float64) (lost float64) {
	f := math.Exp(-dt * t.UA / (t.Litres * heatCapacity))
	before, after := 0.0, 0.0
	for i, c := range t.C {
		t.C[i] = t.RoomC + (c-t.RoomC)*f
		before += c
		after += t.C[i]
	}
	if t.Conducts != nil {
		t.conduct(dt)
	}
	return (before - after) * t.cellL() * heatCapacity
}

// conduct is one implicit step: (1 + c_below + c_above) T' - c_below T'_below - c_above T'_above = T.
func (t *Tank) conduct(dt float64) {
	n := len(t.C)
	if len(t.ratio) != n {
		t.ratio = make([]float64, n)
	}
	per := dt / (t.cellL() * heatCapacity)
	lower, below, share := 0.0, 0.0, 0.0
	for i := range n {
		upper := 0.0
		if i < n-1 {
			upper = per * t.Conducts[i]
		}
		inv := 1 / (1 + upper + lower*(1-share))
		below = (t.C[i] + lower*below) * inv
		share = upper * inv
		t.C[i], t.ratio[i], lower = below, share, upper
	}
	for i := n - 2; i >= 0; i-- {
		t.C[i] += t.ratio[i] * t.C[i+1]
	}
}

// Warm heats for dt with an element between two heights, or at one, as far as the sensor's
// set point allows, and returns the joules taken.
func (t *Tank) Warm(dt, powerW, setC, low, high, sensor float64) (taken float64) {
	cj := t.cellL() * heatCapacity
	if powerW <= 0 {
		return 0
	}
	from, to := t.index(low), t.index(high)
	if to <= from {
		to = from + 1
	}
	at := t.index(sensor)
	if t.C[at] >= setC {
		return 0
	}
	taken = powerW * dt
	if at == from && to == from+1 {
		// All water above stands at or over the set point once the lowest does.
		need := 0.0
		for _, c := range t.C[from:] {
			need += math.Max(0, setC-c) * cj
		}
		taken = math.Min(taken, need)
		t.heat(taken, from, to)
		return taken
	}
	// As much as fits below the set point at the sensor and below boiling, by bisection.
	t.kept = append(t.kept[:0], t.C...)
	t.heat(taken, from, to)
	over := func() bool { return t.C[at] > setC || t.C[to-1] > boilingC }
	if over() {
		lo, hi := 0.0, taken
		for range 25 {
			taken = (lo + hi) / 2
			copy(t.C, t.kept)
			t.heat(taken, from, to)
			if over() {
				hi = taken
			} else {
				lo = taken
			}
		}
	}
	return taken
}

func (t *Tank) index(fraction float64) int { return int(fraction*float64(len(t.C)) + 1e-6) }

type block struct {
	sum float64
	n   int
}

// heat spreads joules over the cells from..to and mixes colder water above
// warmer (pool of adjacent violators).
func (t *Tank) heat(joules float64, from, to int) {
	each := joules / float64(to-from) / (t.cellL() * heatCapacity)
	stack := t.blocks[:0]
	for i := from; i < len(t.C); i++ {
		c := t.C[i]
		if i < to {
			c += each
		}
		stack = append(stack, block{c, 1})
		for n := len(stack); n > 1 && stack[n-2].sum*float64(stack[n-1].n) > stack[n-1].sum*float64(stack[n-2].n); n-- {
			stack[n-2].sum += stack[n-1].sum
			stack[n-2].n += stack[n-1].n
			stack = stack[:n-1]
		}
	}
	i := from
	for _, s := range stack {
		for range s.n {
			t.C[i] = s.sum / float64(s.n)
			i++
		}
	}
	t.blocks = stack
}

// Got is what a draw was given.
type Got struct {
	HotL, HeatJ, ShortJ, CoolL float64
}

// Draw serves litres at useC from the top, cell by cell; a cell leaves when all of it has
// been served. What is more than tolK too cool counts as cool.
func (t *Tank) Draw(litres, useC, coldC, tolK float64, got *Got) {
	if useC <= coldC {
		return
	}
	for litres > 1e-12 {
		top := t.C[len(t.C)-1]
		frac := 1.0
		if top > useC {
			frac = (useC - coldC) / (top - coldC)
		}
		served := math.Min(litres, (t.cellL()-t.carry)/frac)
		got.ShortJ += served * heatCapacity * math.Max(0, useC-top)
		if top < useC-tolK {
			got.CoolL += served
		}
		litres -= served
		t.take(served*frac, top, coldC, got)
	}
}

// Run takes litres of tank water as they are.
func (t *Tank) Run(litres, coldC float64, got *Got) {
	for litres > 1e-12 {
		some := math.Min(litres, t.cellL()-t.carry)
		litres -= some
		t.take(some, t.C[len(t.C)-1], coldC, got)
	}
}

func (t *Tank) take(hot, top, coldC float64, got *Got) {
	got.HotL += hot
	got.HeatJ += hot * heatCapacity * (top - coldC)
	t.carry += hot
	if t.carry >= t.cellL()*(1-1e-9) {
		t.carry = 0
		t.shift(coldC)
	}
}

// shift moves the stack up by one cell and lets a cell of cold water in.
func (t *Tank) shift(coldC float64) {
	if t.Ahead != nil {
		in := t.Ahead.C[len(t.Ahead.C)-1]
		t.Ahead.shift(coldC)
		coldC = in
		defer t.heat(0, 0, 1) // what comes in may be warmer than what is there
	}
	n := int(t.Zone/t.cellL() + 0.5)
	if n == 0 {
		copy(t.C[1:], t.C)
		t.C[0] = coldC
		return
	}
	mean := 0.0
	for _, c := range t.C[:n] {
		mean += c / float64(n)
	}
	e := math.Exp(-1 / float64(n))
	up := coldC + (mean-coldC)*float64(n)*(1-e)
	copy(t.C[n+1:], t.C[n:])
	t.C[n] = up
	for i := range n {
		t.C[i] = coldC + (mean-coldC)*e
	}
}

// Usable is how many litres at useC it gives in one go before the tap falls below useC
// less tolK; the inlet zone's thinning aside.
func (t *Tank) Usable(useC, coldC, tolK float64) (sum float64) {
	for i := len(t.C) - 1; i >= 0 && t.C[i] >= useC-tolK; i-- {
		sum += t.cellL() * math.Max(1, (t.C[i]-coldC)/(useC-coldC))
	}
	return sum
}
