package pv

import "math"

// Strings are strings side by side at one voltage, as of several roof planes.
type Strings []Diode

// OpenCircuitV is the highest of the strings' open circuits: no voltage above it can
// be, V.
func (s Strings) OpenCircuitV() (volts float64) {
	for i := range s {
		if s[i].LightA > 0 {
			volts = math.Max(volts, s[i].OpenCircuitV())
		}
	}
	return volts
}

// CurrentA is the sum of the currents at a voltage, A. A string that would take
// current from the others gives none: its blocking diode, or a converter's.
func (s Strings) CurrentA(volts float64) (amps float64) {
	for i := range s {
		if s[i].LightA > 0 {
			amps += math.Max(0, s[i].CurrentA(volts))
		}
	}
	return amps
}

// IntoOhms is the operating point on a resistance.
func (s Strings) IntoOhms(ohms float64) (volts, amps float64) {
	if len(s) == 1 {
		return s[0].IntoOhms(ohms)
	}
	lo, hi := 0.0, s.OpenCircuitV()
	if hi == 0 {
		return 0, 0
	}
	// Current falls with voltage and the load's rises: one crossing.
	for range 60 {
		mid := (lo + hi) / 2
		if s.CurrentA(mid)*ohms > mid {
			lo = mid
		} else {
			hi = mid
		}
	}
	volts = (lo + hi) / 2
	return volts, volts / ohms
}

// MaximumPower is the point of most power with the voltage kept between least and
// most, V.
func (s Strings) MaximumPower(least, most float64) (volts, amps float64) {
	if len(s) == 1 {
		if volts, amps = s[0].MaximumPower(); volts >= least && volts <= most {
			return volts, amps
		}
	}
	open := s.OpenCircuitV()
	lo, hi := least, math.Min(most, open)
	if lo >= hi {
		return 0, 0
	}
	if len(s) == 1 { // power has one peak, outside the window: its nearer edge
		if volts > hi {
			volts = hi
		} else {
			volts = lo
		}
		return volts, math.Max(0, s[0].CurrentA(volts))
	}
	power := func(v float64) float64 { return v * s.CurrentA(v) }
	const golden = 0.6180339887498949
	a, b := hi-golden*(hi-lo), lo+golden*(hi-lo)
	pa, pb := power(a), power(b)
	for range 40 {
		if pa < pb {
			lo, a, pa = a, b, pb
			b = lo + golden*(hi-lo)
			pb = power(b)
		} else {
			hi, b, pb = b, a, pa
			a = hi - golden*(hi-lo)
			pa = power(a)
		}
	}
	volts = (lo + hi) / 2
	return volts, s.CurrentA(volts)
}
