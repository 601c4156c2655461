package dial

// Number is one beside something of the dial, and the end of its leader there.
type Number struct{ X, Y, ToX, ToY float64 }

// Numbers are those of the day's rim, a petal at noon, the backup hours at a minute, the price ring,
// uses at another, the pool and the middle.
func Numbers(window, use float64) [7]Number {
	mark := func(minute, r, to float64) (m Number) {
		m.X, m.Y = at(minute, r)
		m.ToX, m.ToY = at(minute, to)
		return m
	}
	noon := DayMinutes / 2.0
	return [7]Number{
		mark(95, (staveR+rimR)/2, (staveR+rimR)/2),
		mark(noon-40, drawR, rimR+petalR/2),
		mark(window, drawR, (windowR+rimR)/2),
		mark(185, priceR, priceR),
		mark(use, poolR-10, drawR),
		mark(noon-150, (hubR+poolR)/2, (hubR+poolR)/2),
		mark(noon, poolR-22, hubR/2),
	}
}
