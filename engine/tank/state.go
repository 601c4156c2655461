package tank

// State is a tank's condition at a settled instant, small enough to keep one
// for every midnight of a year. It belongs to the Params it was saved from.
type State struct {
	n           int
	roomC       float64
	a           float64
	meanX       float64
	since, half float64
	held        bool
	s           [MaxLayers]layer
}

// Save stores the tank's condition. Call it after Settle, so that Load restores
// it to the last bit.
func (t *Tank) Save(to *State) {
	t.fit(-1)
	to.n = t.hi - t.lo
	to.roomC, to.a, to.meanX, to.since, to.half, to.held = t.roomC, t.a, t.meanX, t.since, t.half, t.held
	copy(to.s[:], t.s[t.lo:t.hi])
}

// Load puts the tank back into a saved condition and clears its ledger.
func (t *Tank) Load(from *State) {
	t.lo, t.hi = stackTop-from.n, stackTop
	copy(t.s[t.lo:t.hi], from.s[:from.n])
	t.roomC, t.a, t.meanX, t.since, t.half, t.held = from.roomC, from.a, from.meanX, from.since, from.half, from.held
	t.d, t.g = 1, 1
	t.ledger = Ledger{}
}
