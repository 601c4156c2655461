package tank

// indexAt returns the layer that holds the height z (litres from the bottom)
// and the litres below that layer. A height on a boundary belongs to the layer
// above it; the top belongs to the top layer.
func (t *Tank) indexAt(z float64) (i int, below float64) {
	for i = t.lo; i < t.hi-1; i++ {
		next := below + t.s[i].v
		if next > z+sliverL {
			break
		}
		below = next
	}
	return i, below
}

// cutAt makes a layer boundary at the height z and returns the index of the
// layer just above it.
func (t *Tank) cutAt(z float64) int {
	i, below := t.indexAt(z)
	lower := z - below
	if lower <= sliverL {
		return i
	}
	return t.splitLower(i, lower)
}

// splitLower cuts the lower v litres off layer i as a layer of its own and
// returns the index of the upper part.
func (t *Tank) splitLower(i int, v float64) int {
	if t.lo == 0 {
		i += t.recentre()
	}
	t.lo--
	for j := t.lo; j < i; j++ {
		t.s[j] = t.s[j+1]
	}
	t.s[i-1].v = v
	t.s[i].aged, t.s[i].step, t.s[i].stirred = 0, 0, 0 // there is no step yet
	t.s[i].v -= v
	return i
}

// recentre moves the stack up in its array and returns by how many places.
func (t *Tank) recentre() int {
	n := t.hi - t.lo
	to := stackTop - n
	copy(t.s[to:stackTop], t.s[t.lo:t.hi])
	by := to - t.lo
	t.lo, t.hi = to, stackTop
	return by
}

// mergeUp joins layer i into the one above it by the volume mean and returns
// the index of the joint layer.
func (t *Tank) mergeUp(i int) (up int) {
	up = i + 1
	t.s[up].under(&t.s[i])
	for ; i > t.lo; i-- { // few: cheaper than copy, in WebAssembly by far
		t.s[i] = t.s[i-1]
	}
	t.lo++
	return up
}

// under takes the layer below into this one.
func (l *layer) under(below *layer) {
	v := l.v + below.v
	l.x += (below.x - l.x) * (below.v / v)
	l.v, l.aged, l.step, l.stirred = v, below.aged, below.step, below.stirred
}

// pushBottom puts a new layer under the stack.
func (t *Tank) pushBottom(l layer) {
	if t.lo == 0 {
		t.recentre()
	}
	t.s[t.lo].aged = -t.since
	t.lo--
	t.s[t.lo] = l
}

// fit merges pairs until at most MaxLayers are left, always the pair that loses
// least: V1 V2/(V1+V2) dT^2. Pairs that meet at the height keep or at the top of the
// inlet zone are spared. Every merge is counted.
func (t *Tank) fit(keep float64) {
	for t.hi-t.lo > MaxLayers {
		best, least := -1, 0.0
		height := 0.0
		for i := t.lo; i < t.hi-1; i++ {
			a, b := t.s[i], t.s[i+1]
			height += a.v
			if atHeight(height, keep) || atHeight(height, t.p.InletMixedLitres) {
				continue
			}
			dx := b.x - a.x
			if cost := a.v * b.v / (a.v + b.v) * dx * dx; best < 0 || cost < least {
				best, least = i, cost
			}
		}
		t.mergeUp(best)
		t.forced++
	}
}

func atHeight(z, at float64) bool { return z > at-sliverL && z < at+sliverL }
