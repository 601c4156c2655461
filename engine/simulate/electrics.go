package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/pv"
	"suncask/engine/scenario"
)

// Wiring are the figures of the strings at their extremes.
type Wiring struct {
	Modules  int // of the first plane
	InString int // of the longest string
	Strings  int // side by side, of all planes
	Even     bool
	ColdC    float64 // coldest air of the year less ColdMarginK
	HotV     float64 // at maximum power, cells of HotCellC
	FullV    float64 // at the operating point in StandardWm2, cells of 25 degC
	FullA    float64
	FullW    float64 // into the element, cells of ColdC
	DropPct  float64 // of the voltage, lost in the cable then
}

// Margins of Wiring: assumptions.
const (
	ColdMarginK = 5.0
	HotCellC    = 70.0
)

// Wiring returns the figures of the strings; none without modules.
func (p *Prepared) Wiring() Wiring {
	s := &p.Scenario
	w := Wiring{Modules: s.Modules, Even: true, ColdC: math.Inf(1)}
	for day := range climate.Days {
		for _, c := range p.Weather.AirC[day] {
			w.ColdC = math.Min(w.ColdC, c)
		}
	}
	w.ColdC -= ColdMarginK
	chain := p.chain
	var full, cold pv.Strings
	for i, modules := range [...]int{s.Modules, s.More[0].Modules, s.More[1].Modules, s.More[2].Modules} {
		if modules == 0 {
			continue
		}
		inString, strings, even := InStrings(modules, s.InString)
		if i > 0 && inString != w.InString && w.Strings > 0 {
			even = false
		}
		w.Even = w.Even && even
		w.InString = max(w.InString, inString)
		w.Strings += strings
		for at, into := range map[float64]*pv.Strings{pv.StandardC: &full, w.ColdC: &cold} {
			one := chain.module.At(pv.StandardWm2, at)
			long := one.Series(inString)
			*into = append(*into, long.Parallel(strings))
		}
	}
	if w.Strings == 0 {
		return w
	}
	hot := chain.module.At(pv.StandardWm2, HotCellC)
	v, _ := hot.MaximumPower()
	w.HotV = v * float64(w.InString)
	if s.Coupling == scenario.Converter {
		w.FullV, w.FullA = full.MaximumPower(s.ConverterLowV, s.ConverterHighV)
		w.FullW = chain.converter.Into(cold).ElementW
	} else {
		w.FullV, w.FullA = full.IntoOhms(chain.direct.ElementOhms + chain.direct.CableOhms)
		w.FullW = chain.direct.Into(cold).ElementW
	}
	if w.FullV > 0 {
		w.DropPct = 100 * w.FullA * chain.direct.CableOhms / w.FullV
	}
	return w
}

// ElementHeights are where the elements sit, as shares of the water below them: the
// sun's and the grid's, equal where there is one.
func (p *Prepared) ElementHeights() (sun, grid float64) { return p.sunElement.Low, p.backupElement.Low }

// BelowElements is the water that no element reaches, L.
func (p *Prepared) BelowElements() float64 { return p.sunElement.Low * p.Scenario.TankLitres }

// StuckC is where the sun would bring the water in the sunniest month if its thermostat
// never opened and nobody drew: where mean power and loss are equal, degC.
func (p *Prepared) StuckC() float64 {
	most, day := 0.0, 0
	for m := range 12 {
		joules := 0.0
		for range climate.DaysIn[m] {
			joules += p.sun[day].j[24]
			day++
		}
		most = math.Max(most, joules/float64(climate.DaysIn[m])/86400)
	}
	return p.roomC + most/p.tankParams.LossWPerK
}

// strings are all strings in one light and cell temperature, soiling and mismatch
// counted.
func (p *Prepared) strings(irradiance, cellC float64) (all pv.Strings) {
	s := &p.Scenario
	for _, modules := range [...]int{s.Modules, s.More[0].Modules, s.More[1].Modules, s.More[2].Modules} {
		if modules == 0 {
			continue
		}
		inString, strings, _ := InStrings(modules, s.InString)
		one := p.chain.module.At(irradiance*p.chain.losses.Factor(), cellC)
		long := one.Series(inString)
		all = append(all, long.Parallel(strings))
	}
	return all
}

// Working is where the strings work in one light on all planes.
type Working struct {
	Volts, Amps float64
	MostW       float64 // every string at its own maximum
	FitOhms     float64 // the resistance that would hold them there
}

// Working returns the operating point in one light (W/m2) and cell temperature (degC).
func (p *Prepared) Working(irradiance, cellC float64) (w Working) {
	s, all := &p.Scenario, p.strings(irradiance, cellC)
	for i := range all {
		v, a := all[i].MaximumPower()
		w.MostW += v * a
	}
	if v, a := all.MaximumPower(0, math.Inf(1)); a > 0 {
		w.FitOhms = v / a
	}
	if s.Coupling == scenario.Converter {
		w.Volts, w.Amps = all.MaximumPower(s.ConverterLowV, s.ConverterHighV)
		return w
	}
	ohms := p.chain.direct.ElementOhms
	if s.Coupling == scenario.Staged {
		best := 0.0
		for _, stage := range p.chain.staged.Ohms {
			if v, a := all.IntoOhms(stage + p.chain.direct.CableOhms); v*a > best {
				best, ohms = v*a, stage
			}
		}
	}
	w.Volts, w.Amps = all.IntoOhms(ohms + p.chain.direct.CableOhms)
	return w
}

// IVCurve are points of the strings' common curve in one light, and where they work.
func (p *Prepared) IVCurve(irradiance, cellC float64, points int) (volts, amps []float64, atV, atA float64) {
	all := p.strings(irradiance, cellC)
	open := all.OpenCircuitV()
	for i := range points {
		v := open * float64(i) / float64(points-1)
		volts, amps = append(volts, v), append(amps, all.CurrentA(v))
	}
	w := p.Working(irradiance, cellC)
	return volts, amps, w.Volts, w.Amps
}

// ElementOhms is the element's resistance from its plate.
func (p *Prepared) ElementOhms() float64 { return pv.Ohms(p.Scenario.ElementW, p.Scenario.ElementV) }
