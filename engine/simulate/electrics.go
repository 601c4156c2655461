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

// IVCurve are points of the strings' common curve in an hour's light, for a picture,
// and the operating point: light of an hour of the day view.
func (p *Prepared) IVCurve(irradiance, cellC float64, points int) (volts, amps []float64, atV, atA float64) {
	s := &p.Scenario
	chain := p.chain
	var all pv.Strings
	for _, modules := range [...]int{s.Modules, s.More[0].Modules, s.More[1].Modules, s.More[2].Modules} {
		if modules == 0 {
			continue
		}
		inString, strings, _ := InStrings(modules, s.InString)
		one := chain.module.At(irradiance*pv.DefaultLosses.Factor(), cellC)
		long := one.Series(inString)
		all = append(all, long.Parallel(strings))
	}
	open := all.OpenCircuitV()
	for i := range points {
		v := open * float64(i) / float64(points-1)
		volts, amps = append(volts, v), append(amps, all.CurrentA(v))
	}
	if s.Coupling == scenario.Converter {
		atV, atA = all.MaximumPower(s.ConverterLowV, s.ConverterHighV)
	} else {
		atV, atA = all.IntoOhms(chain.direct.ElementOhms + chain.direct.CableOhms)
	}
	return volts, amps, atV, atA
}

// ElementOhms is the element's resistance from its plate.
func (p *Prepared) ElementOhms() float64 { return pv.Ohms(p.Scenario.ElementW, p.Scenario.ElementV) }
