// Package tariff knows what a bought kilowatt-hour costs at a local time.
package tariff

// Tariff is a flat price, or two bands of the day with the same hours every day.
// The low band runs from LowFrom to LowTo, minutes after local midnight, and may
// wrap past it; equal edges mean no low band.
type Tariff struct {
	PerKWh         float64 // price outside the low band
	LowPerKWh      float64
	LowFrom, LowTo int
}

// At returns the price at a minute of the day (0 to 1439).
func (t Tariff) At(minute int) float64 {
	low := false
	if t.LowFrom <= t.LowTo {
		low = minute >= t.LowFrom && minute < t.LowTo
	} else {
		low = minute >= t.LowFrom || minute < t.LowTo
	}
	if low {
		return t.LowPerKWh
	}
	return t.PerKWh
}

// Flat tells whether one price holds all day.
func (t Tariff) Flat() bool { return t.LowFrom == t.LowTo || t.LowPerKWh == t.PerKWh }
