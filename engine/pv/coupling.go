package pv

import "math"

// Split says what became of the power that the strings could give, each of them at its
// own maximum. The parts add up to it.
type Split struct {
	MaximumW   float64
	CouplingW  float64 // not taken: the load or the converter's window holds the strings off their maxima
	CableW     float64 // warms the cable
	ConverterW float64 // warms the converter, or is too little to start it
	OverW      float64 // above what element or converter take
	ElementW   float64 // reaches the element

	Volts, Amps float64 // where the strings work
}

// Direct is a resistance straight on the strings, through a cable.
type Direct struct{ ElementOhms, CableOhms float64 }

// Into returns the operating point's split.
func (d Direct) Into(s Strings) Split {
	return d.into(s, s.maxima())
}

func (d Direct) into(s Strings, most float64) Split {
	volts, amps := s.IntoOhms(d.ElementOhms + d.CableOhms)
	p := Split{Volts: volts, Amps: amps, MaximumW: most, CableW: amps * amps * d.CableOhms, ElementW: amps * amps * d.ElementOhms}
	p.MaximumW = max(most, volts*amps) // no more than rounding above it
	p.CouplingW = p.MaximumW - volts*amps
	p.ElementW = volts*amps - p.CableW
	return p
}

// Staged is several resistances of which a switch takes the one that the strings give
// most to.
type Staged struct {
	Ohms      []float64
	CableOhms float64
}

// Into returns the split on the best of the resistances.
func (d Staged) Into(s Strings) (best Split) {
	most := s.maxima()
	for i, ohms := range d.Ohms {
		if p := (Direct{ohms, d.CableOhms}).into(s, most); i == 0 || p.ElementW > best.ElementW {
			best = p
		}
	}
	return best
}

// maxima is the sum of the strings' own maxima, W.
func (s Strings) maxima() (watts float64) {
	for i := range s {
		v, a := s[i].MaximumPower()
		watts += v * a
	}
	return watts
}

// TwoState is the mean power of an hour under moving cloud on a load that does not
// follow the light, from its power in the hour's mean light, in the highest and in the
// lowest. From the mean light alone power errs low, from an hour of only two lights high:
// the middle of the two, with share of the time in the high light (HighShare). Some 4 %
// of a day's energy on average and up to 10 % under drifting cloud (TestTwoState_Minutes).
func TwoState(mean, high, low, share float64) float64 {
	return (mean + share*high + (1-share)*low) / 2
}

// HighShare is the part of an hour in the higher of two lights, W/m2, that gives its mean.
func HighShare(mean, high, low float64) float64 {
	if high <= low {
		return 1
	}
	return math.Max(0, math.Min(1, (mean-low)/(high-low)))
}

// TwoStates is TwoState of every part of a split, the operating point aside.
func TwoStates(mean, high, low Split, share float64) Split {
	of := func(part func(*Split) float64) float64 { return TwoState(part(&mean), part(&high), part(&low), share) }
	return Split{
		MaximumW:   of(func(p *Split) float64 { return p.MaximumW }),
		CouplingW:  of(func(p *Split) float64 { return p.CouplingW }),
		CableW:     of(func(p *Split) float64 { return p.CableW }),
		ConverterW: of(func(p *Split) float64 { return p.ConverterW }),
		OverW:      of(func(p *Split) float64 { return p.OverW }),
		ElementW:   of(func(p *Split) float64 { return p.ElementW }),
	}
}
