package pv

import "math"

// Diode is the single-diode model of a cell, module or string under one light and
// temperature: with the voltage u across the junction,
//
//	I = LightA - SaturationA (e^(u/ThermalV) - 1) - u/ShuntOhm,   V = u - I SeriesOhm
//
// Both are explicit in u, and I falls and bends down all the way, so that Newton's
// method from the right of a root closes in on it from one side.
type Diode struct {
	LightA      float64 // >= 0
	SaturationA float64 // > 0
	SeriesOhm   float64 // >= 0
	ShuntOhm    float64 // > 0, may be infinite
	ThermalV    float64 // ideality times cells in series times kT/q, > 0
}

// at returns current and slope at a junction voltage.
func (d *Diode) at(u float64) (i, slope float64) {
	e := d.SaturationA * math.Exp(u/d.ThermalV)
	return d.LightA + d.SaturationA - e - u/d.ShuntOhm, -e/d.ThermalV - 1/d.ShuntOhm
}

// newtonSteps is far more than any root here takes.
const newtonSteps = 200

// fromRight finds the root of u - ohms I(u) - volts, which rises and bends up, from a
// point right of it.
func (d *Diode) fromRight(u, ohms, volts float64) (root, i float64) {
	for range newtonSteps {
		current, slope := d.at(u)
		step := (u - ohms*current - volts) / (1 - ohms*slope)
		u -= step
		if step <= 1e-14*math.Abs(u)+1e-15 {
			break
		}
	}
	i, _ = d.at(u)
	return u, i
}

// idealOpenV is the open circuit's voltage if there were no shunt: a little too high.
func (d *Diode) idealOpenV() float64 { return d.ThermalV * math.Log1p(d.LightA/d.SaturationA) }

// OpenCircuitV is the voltage without current, V.
func (d *Diode) OpenCircuitV() float64 {
	u := d.idealOpenV()
	for range newtonSteps {
		i, slope := d.at(u)
		step := i / slope
		u -= step
		if step <= 1e-14*u+1e-15 {
			break
		}
	}
	return u
}

// CurrentA is the current at a voltage, A; negative above the open circuit's.
func (d *Diode) CurrentA(volts float64) float64 {
	_, i := d.junction(volts)
	return i
}

// junction returns the voltage across the junction and the current at a voltage.
func (d *Diode) junction(volts float64) (u, i float64) {
	// A point right of it: where current flows out, u is below the open circuit's
	// without a shunt and at most volts + SeriesOhm LightA; else it is below volts, and
	// no more current flows in than all of volts would drive through the resistance.
	from := d.idealOpenV()
	if volts > from {
		from = math.Min(volts, d.ThermalV*math.Log1p((d.LightA+volts/d.SeriesOhm)/d.SaturationA))
	} else {
		from = math.Min(from, volts+d.SeriesOhm*d.LightA)
	}
	return d.fromRight(from, d.SeriesOhm, volts)
}

// ShortCircuitA is the current at no voltage, A.
func (d *Diode) ShortCircuitA() float64 { return d.CurrentA(0) }

// VoltageV is the voltage at a current of 0 to the short circuit's, V.
func (d *Diode) VoltageV(amps float64) float64 {
	u := d.ThermalV * math.Log1p(math.Max(0, d.LightA-amps)/d.SaturationA)
	for range newtonSteps {
		i, slope := d.at(u)
		step := (i - amps) / slope
		u -= step
		if math.Abs(step) <= 1e-14*math.Abs(u)+1e-15 {
			break
		}
	}
	return u - amps*d.SeriesOhm
}

// IntoOhms is the operating point on a resistance: where the curve meets V = I R.
func (d *Diode) IntoOhms(ohms float64) (volts, amps float64) {
	if d.LightA <= 0 {
		return 0, 0
	}
	_, i := d.fromRight(d.OpenCircuitV(), d.SeriesOhm+ohms, 0)
	return i * ohms, i
}

// MaximumPower is the point of the curve with the most power.
func (d *Diode) MaximumPower() (volts, amps float64) {
	if d.LightA <= 0 {
		return 0, 0
	}
	// With u, dP/du = I + I' (u - 2 I Rs): positive at 0, negative at open circuit.
	// Without resistances the open circuit and, nearly, the maximum are known.
	lo, hi := 0.0, d.idealOpenV()
	u := math.Max(hi/2, hi-d.ThermalV*math.Log1p(hi/d.ThermalV))
	for range newtonSteps {
		i, slope := d.at(u)
		left := u - 2*i*d.SeriesOhm
		f := i + slope*left
		if f > 0 {
			lo = u
		} else {
			hi = u
		}
		bend := (slope + 1/d.ShuntOhm) / d.ThermalV
		next := u - f/(slope+bend*left+slope*(1-2*slope*d.SeriesOhm))
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		done := math.Abs(next-u) <= 1e-10*hi
		u = next
		if done {
			break
		}
	}
	i, _ := d.at(u)
	return u - i*d.SeriesOhm, i
}

// Series is a string of n equal modules under the same light.
func (d *Diode) Series(n int) Diode {
	k := float64(n)
	return Diode{LightA: d.LightA, SaturationA: d.SaturationA, SeriesOhm: k * d.SeriesOhm, ShuntOhm: k * d.ShuntOhm, ThermalV: k * d.ThermalV}
}

// Parallel is n equal strings under the same light, side by side.
func (d *Diode) Parallel(n int) Diode {
	k := float64(n)
	return Diode{LightA: k * d.LightA, SaturationA: k * d.SaturationA, SeriesOhm: d.SeriesOhm / k, ShuntOhm: d.ShuntOhm / k, ThermalV: d.ThermalV}
}
