package simulate

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
)

// Potential says what became, over a time, of the energy that the strings could give,
// J. Its parts add up to it; what reaches the element goes into the water, or is not
// used (Flows.DisplacedJ, and the rest of Flows.UnusedSunJ).
type Potential struct {
	MaximumJ   float64 // every string at its own maximum
	CouplingJ  float64 // the load or the converter's window holds them off it
	CableJ     float64
	ConverterJ float64
	OverJ      float64 // above what the element or the converter takes
	ElementJ   float64 // on offer at the element
}

func (p *Potential) add(s pv.Split, seconds float64) {
	p.MaximumJ += s.MaximumW * seconds
	p.CouplingJ += s.CouplingW * seconds
	p.CableJ += s.CableW * seconds
	p.ConverterJ += s.ConverterW * seconds
	p.OverJ += s.OverW * seconds
	p.ElementJ += s.ElementW * seconds
}

// wiring is the way from the light on the planes to the element.
type wiring struct {
	module    pv.Module
	coupling  scenario.Coupling
	converter pv.Converter
	direct    pv.Direct
	staged    pv.Staged
	losses    pv.Losses
	strings   pv.Strings // work space: of each plane
}

// cellV is the open circuit's voltage of a cell, from which the cells in series are
// counted (common practice, no source).
const cellV = 0.69

// stages are the staged resistances: those of the scenario, or the element's, twice and
// four times it.
func stages(s *scenario.Scenario) (ohms []float64) {
	watts, _ := scenario.ReadStages(s.Stages)
	for _, w := range watts {
		ohms = append(ohms, pv.Ohms(float64(w), s.ElementV))
	}
	if len(ohms) == 0 {
		own := pv.Ohms(s.ElementW, s.ElementV)
		ohms = []float64{own, 2 * own, 4 * own}
	}
	return ohms
}

// sheet is the scenario's datasheet.
func sheet(s *scenario.Scenario) pv.Datasheet {
	return pv.Datasheet{
		OpenCircuitV: s.OpenV, ShortCircuitA: s.ShortA, MaximumV: s.MostV, MaximumA: s.ModuleW / s.MostV,
		VoltagePerK: s.VoltPct / 100 * s.OpenV, CurrentPerK: s.AmpsPct / 100 * s.ShortA, Cells: max(1, int(math.Round(s.OpenV/cellV))),
	}
}

// newWiring fails with a *pv.DatasheetError where no module has the datasheet's values.
func newWiring(s *scenario.Scenario) (*wiring, error) {
	m, err := sheet(s).Module()
	if err != nil {
		return nil, err
	}
	ohms := pv.Ohms(s.ElementW, s.ElementV)
	cable, _ := pv.CableOhms(s.CableM, pv.CableSizes()[s.CableSize], CableC)
	w := &wiring{module: m, coupling: s.Coupling, direct: pv.Direct{ElementOhms: ohms, CableOhms: cable}}
	left := func(pct float64) float64 { return 1 - pct/100 }
	w.losses = pv.Losses{
		Soiling: left(s.SoilPct), Shade: left(s.ShadePct), Mismatch: left(s.MismatchPct), Connections: left(s.ConnectPct),
		FirstLight: left(s.FirstLightPct), Plate: left(s.PlatePct), Running: left(s.DownPct), Age: math.Pow(left(scenario.AgePctAYear), float64(s.AgeYears)),
	}
	w.staged = pv.Staged{Ohms: stages(s), CableOhms: cable}
	w.converter = pv.Converter{
		LeastV: s.ConverterLowV, MostV: s.ConverterHighV, StartW: s.ConverterStartW, Losses: pv.CurveOf(s.ConverterPct / 100),
		OnlyDown: s.ConverterSteps == scenario.StepsDown,
		MostW:    s.ConverterW, MaxOutV: s.ElementV, MaxOutA: math.Inf(1), ElementOhms: ohms, CableOhms: cable,
	}
	return w, nil
}

// InStrings returns how many modules of a plane are in a string and how many strings
// there are side by side; even is false where they do not go up.
func InStrings(modules, wanted int) (inString, strings int, even bool) {
	if modules == 0 || wanted == 0 || wanted >= modules {
		return modules, min(1, modules), wanted <= modules
	}
	strings = modules / wanted
	return modules / strings, strings, strings*wanted == modules
}

// planeLight is the light that reaches the cells of a plane in an hour: its mean, and
// the most and least that it may swing between, W/m2.
type planeLight struct{ mean, high, low, cellC float64 }

// split turns an hour's light into power at the element.
func (w *wiring) split(planes []plane, light []planeLight) pv.Split {
	in := func(of func(*planeLight) float64) pv.Split { return w.load(w.at(planes, light, of)) }
	mean := in(func(l *planeLight) float64 { return l.mean })
	if w.coupling == scenario.Converter && !w.converter.OnlyDown { // it follows the light
		return mean
	}
	share, total := 0.0, 0.0
	for _, l := range light {
		share += pv.HighShare(l.mean, l.high, l.low) * l.mean
		total += l.mean
	}
	if total == 0 {
		return mean
	}
	high := in(func(l *planeLight) float64 { return l.high })
	low := in(func(l *planeLight) float64 { return l.low })
	return pv.TwoStates(mean, high, low, share/total)
}

// load is what becomes of the strings' power as they are coupled.
func (w *wiring) load(s pv.Strings) pv.Split {
	switch w.coupling {
	case scenario.Converter:
		return w.converter.Into(s)
	case scenario.Staged:
		return w.staged.Into(s)
	}
	return w.direct.Into(s)
}

// at are the strings of all planes under their light.
func (w *wiring) at(planes []plane, light []planeLight, of func(*planeLight) float64) pv.Strings {
	w.strings = w.strings[:0]
	for i := range planes {
		if g := of(&light[i]) * w.losses.Factor(); g > 0 {
			w.strings = append(w.strings, w.string(g, light[i].cellC, planes[i].inString, planes[i].strings))
		}
	}
	return w.strings
}

// string is equal strings side by side in the light that the cells turn to something.
func (w *wiring) string(irradiance, cellC float64, inString, strings int) pv.Diode {
	one := w.module.At(irradiance, cellC)
	long := one.Series(inString)
	return long.Parallel(strings)
}

// warmK is over how many kelvin the change of power is taken, as labels have it from (IEC 60891
// measures over 30 K, from memory).
const warmK = 30.0

// PowerPctPerK is the change of a module's most power with the temperature of its cells, % a kelvin.
func (p *Prepared) PowerPctPerK() float64 {
	watts := func(cellC float64) float64 {
		d := p.chain.module.At(pv.StandardWm2, cellC)
		volts, amps := d.MaximumPower()
		return volts * amps
	}
	return 100 * (watts(pv.StandardC+warmK)/watts(pv.StandardC) - 1) / warmK
}
