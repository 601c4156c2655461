package simulate

import (
	"suncask/engine/scenario"
)

// StepsMatter tells whether a converter that only lowers the voltage would make a difference:
// not where there is none, it is known that it only lowers, or the strings look like more than
// the element's resistance even in the brightest light on the hottest cells.
func (p *Prepared) StepsMatter() bool {
	const hotC = 75
	if p.Scenario.Coupling != scenario.Converter || p.Scenario.ConverterSteps == scenario.StepsDown {
		return false
	}
	c := p.chain.converter
	bright := p.strings(CloudEdgeWm2, hotC)
	with := c.Into(bright)
	c.OnlyDown = true
	return len(bright) > 0 && c.Into(bright) != with
}

// OnlyDown returns the house with a converter that only lowers the voltage, nil where that
// makes no difference.
func (p *Prepared) OnlyDown() *Prepared {
	if !p.StepsMatter() {
		return nil
	}
	s := p.Scenario
	s.ConverterSteps = scenario.StepsDown
	prev := p.yields.down // its sun serves other tanks too
	if prev == nil {
		prev = p
	}
	down, err := Prepare(&s, p.file, prev)
	if err != nil {
		panic("simulate: a prepared house cannot be prepared: " + err.Error())
	}
	p.yields.down = down
	return down
}

// BoughtJ is what a year with those hours buys.
func (p *Prepared) BoughtJ(b scenario.Backup) float64 {
	ws, y := new(Workspace), new(Year)
	p.RunYear(b, ws, y)
	return y.Total.BoughtJ
}
