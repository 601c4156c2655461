package climate

// ClockOver is the clock that is offsetH hours ahead of UTC at noon of each day of RefYear.
// The least offset is the standard one, whatever a country calls it: Morocco's summer time
// is then all year but the month of fasting. ok is false where the year has more than two
// offsets or the clock is changed more than twice.
func ClockOver(offsetH *[Days]float64) (c Clock, ok bool) {
	c.OffsetH = offsetH[0]
	for _, h := range offsetH {
		c.OffsetH = min(c.OffsetH, h)
	}
	for day, h := range offsetH {
		switch before := offsetH[(day+Days-1)%Days]; {
		case h > before:
			c.From, c.ShiftH = day, h-c.OffsetH
		case h < before:
			c.To = day
		}
	}
	for day, h := range offsetH {
		if c.At(day) != h {
			return Clock{}, false
		}
	}
	return c, true
}
