package care

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Sources that several findings name.
const (
	sourceVoltage = "rule of IEC 62548 for the highest voltage (read in a guide of it), lowest air on record"
	sourcePlate   = "the plate's own figure"
)

func (l *findings) electrics(p *simulate.Prepared) {
	l.grid(p)
	w := p.Wiring()
	if w.Strings == 0 {
		return
	}
	s := &p.Scenario
	cold := HighestV(s, &w)
	l.strings(s, &w, cold)
	l.power(p)
	l.fuses(s, &w)
	l.currents(s, &w, cold)
	if s.Coupling == scenario.Converter {
		l.converter(s, &w, cold)
	} else {
		l.element(p, &w, cold)
	}
	l.thermostat(s, &w)
	supplies := Caution
	if s.ChangeBy == scenario.ChangeOther {
		supplies = Stop
	}
	l.find(TwoSupplies, supplies, scenario.ChangeBy, "common practice, no source: two supplies at one tank")
}

// grid are findings about the element on the grid.
func (l *findings) grid(p *simulate.Prepared) {
	s := &p.Scenario
	share := (s.SupplyV / s.ElementV) * (s.SupplyV / s.ElementV)
	if share > 1+pv.PlateUp {
		severity := Caution
		if share > overloadStop {
			severity = Stop
		}
		l.find(GridOverload, severity, scenario.SupplyV, "P = V^2/R; bounds 5 and 15 % over the plate: common practice, no source", share*s.ElementW, s.ElementW, 100*share)
	}
	l.gridCable(s)
	if s.BreakerA == scenario.Unknown {
		return
	}
	switch amps := GridA(s); {
	case amps > s.BreakerA:
		l.find(GridBreaker, Stop, scenario.BreakerA, "I = V/R with the plate's +5 % (IEC 60335-1 clause 10, from memory)", amps, s.BreakerA)
	case Continuous*amps > s.BreakerA:
		l.find(GridBreakerNear, Note, scenario.BreakerA, "some codes count water heaters as continuous loads (from memory)", Continuous*amps, s.BreakerA)
	}
}

// overloadStop is of the plate's watts, Continuous what some codes make of a current that stays on
// (from memory).
const overloadStop, Continuous = 1.15, 1.25

// GridA is what the grid passes through an element that takes 5 % more than its plate, A: I = V/R
// (IEC 60335-1 clause 10, from memory).
func GridA(s *scenario.Scenario) float64 {
	least, _ := pv.OhmsRange(s.ElementW, s.ElementV)
	return s.SupplyV / least
}

// converter are findings about what feeds the element.
func (l *findings) converter(s *scenario.Scenario, w *simulate.Wiring, cold float64) {
	if cold > s.ConverterMaxV {
		l.find(ConverterOverVoltage, Stop, scenario.ConverterMaxV, sourceVoltage, cold, s.ConverterMaxV)
	}
	if w.HotV < s.ConverterLowV {
		l.find(ConverterUnderVoltage, Caution, scenario.ConverterLowV, "De Soto, Klein & Beckman 2006, cells of 70 degC, behind the cable", w.HotV, s.ConverterLowV)
	}
	strings := float64(w.Strings)
	if short := RearA(s) * strings; s.ConverterShortA != scenario.Unknown && short > s.ConverterShortA {
		l.find(ConverterShort, Stop, scenario.ConverterShortA, sourcePlate, short, s.ConverterShortA)
	}
	if most := s.ModuleW / s.MostV * strings; s.ConverterMaxA != scenario.Unknown && most > s.ConverterMaxA {
		l.find(ConverterCurrent, Caution, scenario.ConverterMaxA, sourcePlate, most, s.ConverterMaxA)
	}
}

// element are findings about an element straight on the strings, or its stages.
func (l *findings) element(p *simulate.Prepared, w *simulate.Wiring, cold float64) {
	const source = "IEC 60335-1 clause 10: a new element may take 5 % or 20 W more than its plate (from memory)"
	s := &p.Scenario
	if cold > s.ElementV {
		l.find(ElementOverVoltage, Caution, scenario.ElementV, "rated voltage of the plate", cold, s.ElementV)
	}
	allowed := func(plateW float64) float64 { return math.Max(plateW*(1+pv.PlateUp), plateW+20) }
	if s.Coupling == scenario.Direct {
		if most := allowed(s.ElementW); w.FullW > most {
			l.find(ElementOverload, Stop, scenario.ElementW, source, w.FullW, most)
		}
		l.cloudEdge(scenario.ElementW, w.EdgeW, s.ElementW)
		return
	}
	for i, plate := range p.StageWatts() {
		if most := allowed(plate); w.StageW[i] > most {
			l.find(StageOverload, Stop, scenario.Stages, source+"; as if the switch stayed there", w.StageW[i], most, plate)
		}
		l.cloudEdge(scenario.Stages, w.EdgeStageW[i], plate)
	}
}

// cloudEdge finds an element or a stage that takes more than its plate says for minutes, as
// long as a cloud's edge passes.
func (l *findings) cloudEdge(field scenario.FieldID, watts, plate float64) {
	if watts > plate*(1+1e-9) {
		severity := Note
		if watts > overloadStop*plate {
			severity = Caution
		}
		l.find(CloudEdge, severity, field, "common practice, no source: 1250 W/m2 at the edges of clouds", watts, plate, simulate.CloudEdgeWm2)
	}
}

// thermostat finds direct current that a contact made for alternating current would
// have to break.
func (l *findings) thermostat(s *scenario.Scenario, w *simulate.Wiring) {
	volts, amps := w.OutV, w.OutA
	switch {
	case s.Coupling != scenario.Converter:
		volts, amps = HighestV(s, w), w.FullA
	case s.ConverterOut == scenario.OutAC:
		return
	}
	if s.StatBy == scenario.StatDC || s.BreaksBy == scenario.BreaksContactor || s.BreaksBy == scenario.BreaksConverter {
		return
	}
	severity := Caution
	if s.BreaksBy == scenario.BreaksStat {
		severity = Stop
	}
	l.find(ThermostatDC, severity, scenario.CoupledBy, "common practice, no source: contacts without a d.c. rating break some 30 V", volts, amps)
}

// stepDown compares the years with both kinds of converter where it is not known which
// it is.
func (l *findings) stepDown(p *simulate.Prepared, bothKWh, downKWh float64) {
	if p.Scenario.ConverterSteps != scenario.StepsUnknown || !p.StepsMatter() {
		return
	}
	code := StepDown
	if math.IsNaN(downKWh) {
		code = StepDownOpen
	}
	l.find(code, Caution, scenario.ConverterSteps, "a converter that only lowers the voltage looks like no less than the element's resistance (R/D^2)", bothKWh, downKWh)
}
