package pv

import "math"

// Curve are a converter's losses by load: with p the output over the rated one they are
// Own + Linear p + Square p^2 of the rated output, so that its efficiency is
//
//	p / (p + Own + Linear p + Square p^2)
//
// (Jantsch, Schmidt & Schmid 1992; Schmidt & Sauer 1996; from memory).
type Curve struct{ Own, Linear, Square float64 }

// plainCurve is a curve whose parts are to each other as those of a common converter: an
// eighth of the losses at full power is its own use, half of them rise with the load, the
// rest with its square (assumption).
var plainCurve = Curve{Own: 1. / 8, Linear: 1. / 2, Square: 3. / 8}

// European are loads with their weights in the European efficiency (EN 50530; from memory).
var European = [...]struct{ Load, Weight float64 }{{0.05, 0.03}, {0.10, 0.06}, {0.20, 0.13}, {0.30, 0.10}, {0.50, 0.48}, {1, 0.20}}

// CurveOf is the curve whose European efficiency is that share, above 0 and below 1.
func CurveOf(european float64) Curve {
	scaled := func(k float64) Curve {
		return Curve{Own: k * plainCurve.Own, Linear: k * plainCurve.Linear, Square: k * plainCurve.Square}
	}
	lo, hi := 0.0, 1.0
	for scaled(hi).European() > european {
		hi *= 2
	}
	for range 60 {
		if mid := (lo + hi) / 2; scaled(mid).European() > european {
			lo = mid
		} else {
			hi = mid
		}
	}
	return scaled((lo + hi) / 2)
}

// Efficiency is the output over the input at a load, the output over the rated one.
func (c Curve) Efficiency(load float64) float64 {
	return load / (load + c.Own + c.Linear*load + c.Square*load*load)
}

// European is the weighted efficiency.
func (c Curve) European() (sum float64) {
	for _, e := range European {
		sum += e.Weight * c.Efficiency(e.Load)
	}
	return sum
}

// OutW is the output from an input, of a converter of that rated output, W: none while the
// input does not cover its own use.
func (c Curve) OutW(inW, ratedW float64) float64 {
	left := inW/ratedW - c.Own
	if left <= 0 {
		return 0
	}
	b := 1 + c.Linear
	return ratedW * 2 * left / (b + math.Sqrt(b*b+4*c.Square*left))
}

// Converter is a tracking converter between the strings and the element.
type Converter struct {
	LeastV, MostV float64 // voltages at its terminals at which it tracks; outside it stays at the nearer
	StartW        float64 // below this input nothing flows
	Losses        Curve
	MostW         float64 // highest output, which the losses are rated by
	MaxOutV       float64 // highest output voltage
	MaxOutA       float64 // highest output current
	ElementOhms   float64
	CableOhms     float64 // of the cable before it
	// OnlyDown: it lowers the voltage and never raises it. Its input then looks to the
	// strings like no less than the element's resistance: R/D^2 with a share D of the time
	// switched on.
	OnlyDown bool
}

// Into returns the split with the strings at the point that gives the converter's
// terminals most power.
func (c *Converter) Into(s Strings) Split {
	volts, amps, maxima := c.track(s)
	p := Split{Volts: volts, Amps: amps, MaximumW: max(maxima, volts*amps)}
	p.CouplingW = p.MaximumW - volts*amps
	p.CableW = amps * amps * c.CableOhms
	in := volts*amps - p.CableW
	out := c.Losses.OutW(in, c.MostW)
	if in < c.StartW {
		out = 0
	}
	p.ConverterW = in - out
	p.ElementW = min(out, c.MostW, c.MaxOutV*c.MaxOutV/c.ElementOhms, c.MaxOutA*c.MaxOutA*c.ElementOhms)
	p.OverW = out - p.ElementW
	return p
}

// track returns where the strings work, and the sum of their own maxima.
func (c *Converter) track(s Strings) (volts, amps, maxima float64) {
	volts, amps, maxima = s.tracked(c.LeastV, c.MostV, c.CableOhms)
	if !c.OnlyDown || volts-amps*c.CableOhms >= amps*c.ElementOhms {
		return volts, amps, maxima
	}
	volts, amps = s.IntoOhms(c.ElementOhms + c.CableOhms)
	if volts-amps*c.CableOhms > c.MostV { // it would have to pull the voltage down
		return 0, 0, maxima
	}
	return volts, amps, maxima
}
