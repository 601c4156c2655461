package visit

import "math"

// Outcome is what a reading comes to. No outcome says that something is in order.
type Outcome int8

// Outcomes.
const (
	Within   Outcome = iota // what the model expects
	Lower                   // than expected
	Higher                  // than expected
	NoJudge                 // cannot be judged in this light
	Reversed                // do not connect
)

// Light below which currents and voltages are not judged, W/m2 (assumptions).
const (
	leastAmpsWm2  = 400.0
	leastVoltsWm2 = 100.0
)

// The narrowest bands (assumptions).
const (
	leastVoltsBand = 0.03
	leastAmpsBand  = 0.05
)

// JudgeReading compares a reading, V, A or W, with what is expected. off is by what share it lies below or
// above, 0 where it is within or not judged.
func JudgeReading(q Quantity, reading, expected float64, band Band, g Given) (o Outcome, off float64) {
	switch {
	case q.Volts() && reading < 0:
		return Reversed, 0
	case expected <= 0, q.Volts() && g.Wm2 < leastVoltsWm2, !q.Volts() && g.Wm2 < leastAmpsWm2,
		q == ShortAmps && g.AmpsAreLight, q == OpenVolts && g.VoltsAreCells: // by itself
		return NoJudge, 0
	}
	off = reading/expected - 1
	switch least, most := Limits(q, expected, band); {
	case reading < least:
		return Lower, -off
	case reading > most:
		return Higher, off
	}
	return Within, 0
}

// Limits are the least and the most that a meter may read where a value is expected: the band and
// the meter's own error, their squares added, and no less than 3 % of volts or 5 % of others.
func Limits(q Quantity, expected float64, band Band) (least, most float64) {
	meter, narrow := meterVolts, leastVoltsBand
	switch {
	case q.Watts():
		meter, narrow = math.Hypot(meterVolts, meterAmps), leastAmpsBand
	case !q.Volts() && expected > 0:
		meter, narrow = math.Hypot(meterAmps, clampA/expected), leastAmpsBand
	}
	return expected * (1 - math.Max(narrow, math.Hypot(band.Below, meter))), expected * (1 + math.Max(narrow, math.Hypot(band.Above, meter)))
}

// Missing is what a string's open circuit looks like where it is lower than expected.
type Missing struct {
	Modules  int  // as if so many were missing or shorted
	Reversed int  // or so many connected the wrong way round
	Thirds   int  // as if so many thirds of a module were bypassed
	Untold   bool // thirds cannot be told apart by this voltage
}

// MissingOf compares volts of a string of modules with what is expected: shares of its modules,
// and thirds of one where the band lets them be told apart.
func MissingOf(volts, expected float64, inString int, band Band) (m Missing) {
	if expected <= 0 || inString == 0 || volts >= expected {
		return m
	}
	half := math.Max(leastVoltsBand, math.Hypot(band.Below, meterVolts))
	third := 1 / (3 * float64(inString))
	m.Untold = third <= half
	short := 1 - volts/expected
	if short < third/2 || m.Untold && short < half {
		return m
	}
	step := third
	if m.Untold {
		step *= 3
	}
	n := int(math.Round(short / step))
	if m.Untold {
		n *= 3
	}
	if n%3 != 0 {
		m.Thirds = n
		return m
	}
	m.Modules = n / 3
	if m.Modules%2 == 0 {
		m.Reversed = m.Modules / 2
	}
	return m
}
