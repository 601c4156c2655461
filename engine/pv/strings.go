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
	amps, _ = s.current(volts)
	return amps
}

// current is CurrentA and its slope.
func (s Strings) current(volts float64) (amps, slope float64) {
	for i := range s {
		if s[i].LightA <= 0 || volts >= s[i].idealOpenV() {
			continue
		}
		u, a := s[i].junction(volts)
		if a > 0 {
			_, k := s[i].at(u)
			amps += a
			slope += k / (1 - s[i].SeriesOhm*k)
		}
	}
	return amps, slope
}

// IntoOhms is the operating point on a resistance.
func (s Strings) IntoOhms(ohms float64) (volts, amps float64) {
	if len(s) == 1 {
		return s[0].IntoOhms(ohms)
	}
	volts, _ = s.behind(ohms, 0)
	if volts == 0 {
		return 0, 0
	}
	return volts, volts / ohms
}

// behind is the operating point on a voltage behind a resistance: no current where the
// strings do not reach it.
func (s Strings) behind(ohms, voltage float64) (volts, amps float64) {
	lo, hi := voltage, s.OpenCircuitV()
	if hi <= lo {
		return hi, 0
	}
	// Current falls with voltage and the load's rises: one crossing.
	for volts = hi; ; {
		amps, slope := s.current(volts)
		off := volts - amps*ohms - voltage
		if off > 0 {
			hi = volts
		} else {
			lo = volts
		}
		next := volts - off/(1-slope*ohms)
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		if math.Abs(next-volts) <= 1e-11*hi || next == volts {
			return next, s.CurrentA(next)
		}
		volts = next
	}
}

// MaximumPower is the point of most power with the voltage kept between least and
// most, V. With several strings it lies between their own.
func (s Strings) MaximumPower(least, most float64) (volts, amps float64) {
	volts, amps, _ = s.tracked(least, most, 0)
	return volts, amps
}

// tracked is the point at which most power comes through a cable, the voltage behind it
// kept between least and most, with the sum of the strings' own maxima, W.
func (s Strings) tracked(least, most, ohms float64) (volts, amps, maxima float64) {
	lo, hi := math.Inf(1), 0.0
	for i := range s {
		if s[i].LightA > 0 {
			v, a := s[i].MaximumPower()
			lo, hi = math.Min(lo, v), math.Max(hi, v)
			volts, amps = v, a
			maxima += v * a
		}
	}
	if hi == 0 || s.OpenCircuitV() <= least {
		return 0, 0, maxima
	}
	if len(s) == 1 {
		if ohms > 0 { // the cable is as a resistance in series with the cells
			long := s[0]
			long.SeriesOhm += ohms
			volts, amps = long.MaximumPower()
			volts += amps * ohms
		}
		if at := volts - amps*ohms; at >= least && at <= most {
			return volts, amps, maxima
		}
		lo, hi = volts, volts
	} else if ohms > 0 { // it pays for less current
		hi = s.OpenCircuitV()
	}
	inside := func(v float64) float64 {
		if ohms == 0 {
			return math.Max(least, math.Min(most, v))
		}
		switch at := v - s.CurrentA(v)*ohms; {
		case at < least:
			v, _ = s.behind(ohms, least)
		case at > most:
			v, _ = s.behind(ohms, most)
		}
		return v
	}
	lo, hi = inside(lo), inside(hi)
	power := func(v float64) float64 { a := s.CurrentA(v); return (v - a*ohms) * a }
	// A string that is blocked where another has its maximum makes a second peak:
	// look along the way, then close in on the best.
	const looks = 12
	step := (hi - lo) / looks
	best, at := -1.0, lo
	for i := range looks + 1 {
		v := lo + float64(i)*step
		if p := power(v); p > best {
			best, at = p, v
		}
	}
	volts = at
	if step > 0 {
		volts = Peak(math.Max(lo, at-step), math.Min(hi, at+step), 1e-4*hi, power)
	}
	return volts, s.CurrentA(volts), maxima
}
