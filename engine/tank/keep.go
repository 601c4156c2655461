package tank

// Kept is a tank's condition at any instant, to the last bit.
type Kept struct {
	roomC, a, d, g, meanX, since, half float64
	lo, hi                             int
	s                                  [stackRoom]layer
	ledger                             Ledger
	forced                             int
	held                               bool
	err                                error
}

// Keep stores the tank's condition.
func (t *Tank) Keep(to *Kept) {
	to.roomC, to.a, to.d, to.g, to.meanX, to.since, to.half = t.roomC, t.a, t.d, t.g, t.meanX, t.since, t.half
	to.lo, to.hi, to.ledger, to.forced, to.err, to.held = t.lo, t.hi, t.ledger, t.forced, t.err, t.held
	copy(to.s[t.lo:t.hi], t.s[t.lo:t.hi])
}

// Back puts the tank back into the condition that Keep stored.
func (t *Tank) Back(from *Kept) {
	t.roomC, t.a, t.d, t.g, t.meanX, t.since, t.half = from.roomC, from.a, from.d, from.g, from.meanX, from.since, from.half
	t.lo, t.hi, t.ledger, t.forced, t.err, t.held = from.lo, from.hi, from.ledger, from.forced, from.err, from.held
	copy(t.s[t.lo:t.hi], from.s[t.lo:t.hi])
}
