// Package tank simulates a stratified hot-water storage tank as a short stack
// of layers, driven by events instead of time steps.
//
// Every litre loses heat to the room at the same rate, so all layers share one
// time constant tau = C/UA and each temperature is written as
//
//	T_i = A + D x_i,   D = e^(-t/tau),   A relaxing to the room with tau
//
// A layer that is not heated keeps its x_i, whatever the length of the night.
// With G = 1/D a layer heated by P_i watts obeys
//
//	x_i(G2) = x_i(G1) + (P_i tau/C_i)(G2 - G1)
//
// so the instants at which a layer reaches the one above it, or a thermostat
// its set point, are linear in G; a logarithm is needed only to turn the
// instant of a trip back into seconds. Between events nothing is approximated.
//
// What is approximated, and by how much, is said where it happens: neighbours
// within [NearK] are merged when water moves, and conduction between layers
// runs once a stretch ([Tank.Exchange]).
//
// One volumetric heat capacity holds for all water ([HeatCapacity]); the error
// of a rise from 15 to 60 degC is 0.07 % (IAPWS-IF97 enthalpies, computed).
package tank

import "math"

// HeatCapacity is the volumetric heat capacity of water in J/(L K). Water at
// 40 degC and 1 atm has 4146, at 10 degC 4194 (IAPWS-IF97, computed); 4180 is
// the figure of the European tapping-profile tests (Reg. (EU) 812/2013).
const HeatCapacity = 4180.0

// Limits of the numerics.
const (
	MaxLayers = 32    // the stack never holds more layers than this between calls
	NearK     = 0.1   // neighbours closer than this are merged when water moves, K
	atSetK    = 1e-9  // a sensor this close to its set point stands on it, K
	sliverL   = 1e-9  // volumes below this are not kept as layers of their own, L
	stackRoom = 160   // room of the work array
	stackTop  = 150   // where a stack is placed in it, leaving room to grow down
	renormAtD = 0.125 // D below this is folded back into x
)

// leastMixed is the least well-mixed volume at an inlet that is not 0, L.
const leastMixed = 0.001

// Params are the fixed properties of a tank.
type Params struct {
	Litres             float64 // volume, L, > 0
	LossWPerK          float64 // UA to the room, W/K, > 0
	InletMixedLitres   float64 // well-mixed volume at the inlet, L: 0, or 0.001 to Litres/2
	HeatCapacityJPerLK float64 // 0 means HeatCapacity
	Geometry           Geometry
	Resolve            bool // conduction cuts boundary layers into slabs, see Exchange: slower
}

// Layer is a body of water of one temperature.
type Layer struct{ Litres, TempC float64 }

// layer is a body of water with what conduction remembers of the step at its foot, see
// Exchange.
type layer struct {
	v, x    float64
	aged    float64 // thickness of its boundary layers, L; below 0: less the seconds from the last Exchange to when the step was made
	step    float64 // x above less x below, after the last Exchange
	stirred float64 // s of the present stretch in which the element heated just above the foot
}

// Ledger counts what crossed the tank's boundary, in joules. Enthalpies are
// referred to water at 0 degC.
type Ledger struct {
	HeatJ  float64 // from the element
	LossJ  float64 // to the room, integrated from the tank's mean temperature
	DrawnJ float64 // enthalpy of the water that left at the top
	ColdJ  float64 // enthalpy of the water that entered at the bottom
}

// Tank is a tank at one instant. The zero Tank is not usable; see [New].
type Tank struct {
	p        Params
	capJPerK float64 // C of all the water
	tau      float64 // C/UA, s
	perUA    float64 // 1/UA, K/W
	perG     float64 // tau over the heat capacity of a litre: K L/W per unit of G
	perV     float64 // 1/Litres
	perVm    float64 // 1/InletMixedLitres
	perLitre float64 // J/(L K)
	roomC    float64
	a, d, g  float64 // T = a + d x, g = 1/d
	meanX    float64 // volume mean of x, carried along on its own
	lo, hi   int     // the stack is s[lo:hi], bottom to top
	s        [stackRoom]layer
	ledger   Ledger
	forced   int // merges forced by MaxLayers
	err      error
	ahead    *Tank // its water comes in at the bottom instead of cold; see FedBy
	heating  heating
	since    float64            // s since the last Exchange
	half     float64            // of the last Exchange's stretch, s
	held     bool               // a thermostat has kept its set point since
	sweep    [stackRoom]float64 // work space of Exchange and HeatTwo
	joints   [stackRoom]joint   // work space of Exchange
	area     [33]float64        // cross-sections by height, m2, filled when first needed
}

// New returns a tank filled with water of one temperature. It panics if a
// parameter is outside its range: callers pass validated input.
func New(p Params, tempC, roomC float64) *Tank {
	t := new(Tank)
	t.Reset(p, tempC, roomC)
	return t
}

// Reset makes t the tank that [New] would return, without allocating.
func (t *Tank) Reset(p Params, tempC, roomC float64) {
	if !(p.Litres > 0) || !(p.LossWPerK > 0) || !inletOK(p) {
		panic("tank: parameters out of range")
	}
	t.p = p
	t.perLitre = p.perLitre()
	t.capJPerK = p.Litres * t.perLitre
	t.tau = p.Tau()
	t.perUA = 1 / p.LossWPerK
	t.perG = t.tau / t.perLitre
	t.perV = 1 / p.Litres
	t.perVm = 0
	if p.InletMixedLitres > 0 {
		t.perVm = 1 / p.InletMixedLitres
	}
	t.roomC = roomC
	t.a, t.d, t.g = roomC, 1, 1
	t.lo, t.hi = stackTop-1, stackTop
	t.s[t.lo] = layer{v: p.Litres, x: tempC - roomC}
	t.since, t.half, t.held = 0, 0, false
	t.meanX = tempC - roomC
	t.ledger = Ledger{}
	t.forced, t.err, t.ahead = 0, nil, nil
	t.area[0] = 0
}

func inletOK(p Params) bool {
	return p.InletMixedLitres == 0 || p.InletMixedLitres >= leastMixed && p.InletMixedLitres <= p.Litres/2
}

// SetRoom sets the temperature of the room from now on, degC.
func (t *Tank) SetRoom(c float64) { t.roomC = c }

// Ledger returns what crossed the boundary since New, Reset or ClearLedger.
func (t *Tank) Ledger() Ledger { return t.ledger }

// ClearLedger sets all counts to zero.
func (t *Tank) ClearLedger() { t.ledger = Ledger{} }

// ForcedMerges returns how many pairs were merged because the stack was full.
func (t *Tank) ForcedMerges() int { return t.forced }

// Err returns the first error of the run, nil if there was none. See [EventError].
func (t *Tank) Err() error { return t.err }

func (t *Tank) temp(i int) float64 { return t.a + t.d*t.s[i].x }

// xOf is the inverse of temp.
func (t *Tank) xOf(tempC float64) float64 { return (tempC - t.a) * t.g }

// ContentJ returns the heat in the tank above 0 degC, J, summed over the layers.
func (t *Tank) ContentJ() float64 {
	sum := 0.0
	for _, l := range t.s[t.lo:t.hi] {
		sum += l.v * l.x
	}
	return t.perLitre * (t.a*t.p.Litres + t.d*sum)
}

// MeanC returns the volume-mean temperature that the loss is integrated from.
func (t *Tank) MeanC() float64 { return t.a + t.d*t.meanX }

// Len returns the number of layers.
func (t *Tank) Len() int { return t.hi - t.lo }

// At returns layer i, counted from the bottom.
func (t *Tank) At(i int) Layer { return Layer{t.s[t.lo+i].v, t.temp(t.lo + i)} }

// renormalise folds D into x, so that D and G stay near one.
func (t *Tank) renormalise() {
	for i := t.lo; i < t.hi; i++ {
		t.s[i].x *= t.d
		t.s[i].step *= t.d
	}
	t.meanX *= t.d
	t.d, t.g = 1, 1
}

// Settle renormalises, makes the volumes add up to the tank's litres to the
// last bit and takes the mean afresh from the layers. It returns by how many
// joules the carried mean and the layers had drifted apart: the error that a
// wrong layer operation would show. Call it at midnight.
func (t *Tank) Settle() (driftJ float64) {
	t.renormalise()
	sum, heat := 0.0, 0.0
	for i := t.hi - 1; i > t.lo; i-- {
		sum += t.s[i].v
	}
	t.s[t.lo].v = t.p.Litres - sum
	for _, l := range t.s[t.lo:t.hi] {
		heat += l.v * l.x
	}
	mean := heat / t.p.Litres
	driftJ = (mean - t.meanX) * t.capJPerK
	t.meanX = mean
	return driftJ
}

// Span is a length of time with its factors of relaxation, so that a caller who
// meets the same spans again does not compute them again.
type Span struct {
	Seconds  float64
	Up, Down float64 // e^(dt/tau) and its inverse
}

// Span returns dt seconds as a span of a tank with these parameters.
func (p Params) Span(dt float64) Span {
	up, down := expUpDown(dt / p.Tau())
	return Span{dt, up, down}
}

// Tau is the time constant C/UA of a tank with these parameters, s.
func (p Params) Tau() float64 { return p.Litres * p.perLitre() / p.LossWPerK }

func (p Params) perLitre() float64 {
	if p.HeatCapacityJPerLK == 0 {
		return HeatCapacity
	}
	return p.HeatCapacityJPerLK
}

// SpanOf returns dt seconds as a span of this tank.
func (t *Tank) SpanOf(dt float64) Span {
	up, down := expUpDown(dt / t.tau)
	return Span{dt, up, down}
}

// expUpDown returns e^u and e^-u for u >= 0. Small arguments use the (4,4) Pade
// approximant, whose relative error is below 1e-13 for u <= 0.5 and below 1e-16
// for u <= 0.2: in WebAssembly math.Exp takes four times as long as natively.
func expUpDown(u float64) (up, down float64) {
	if u > 0.5 {
		up = math.Exp(u)
		return up, 1 / up
	}
	even, odd := padeExp(u)
	return (even + odd) / (even - odd), (even - odd) / (even + odd)
}

// padeExp returns the even and odd part of the numerator of the (4,4) Pade
// approximant of e^u: e^u = (even+odd)/(even-odd).
func padeExp(u float64) (even, odd float64) {
	u2 := u * u
	return 1680 + u2*(180+u2), u * (840 + 20*u2)
}
