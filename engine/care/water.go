package care

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
)

const (
	storeC = 60.0 // store at 60 degC or more
	// usualTapC is what may reach a tap where no other limit was given.
	usualTapC = 50.0
	// showerMoreK is how much warmer than the shower its own mixer wants the supply.
	showerMoreK = 10.0
	// atOnceC is where a second of water burns skin deeply.
	atOnceC = 70.0
	// cutOutOverK is how far a cut-out should lie above a thermostat not to trip in use
	// (common practice, no source).
	cutOutOverK = 5.0
)

// Seconds to a deep burn by water temperature, degC: two published tables (read on
// secondary pages; the second is of the US Consumer Product Safety Commission) and what
// is known of hotter water (Moritz & Henriques 1947 and public tables, from memory: at
// 70 degC under a second).
var burns = [...][][2]float64{
	{{45, 10800}, {47, 2700}, {48, 1200}, {49, 600}, {51, 252}, {55, 30}, {60, 5}},
	{{120.0/1.8 - 32/1.8, 300}, {130.0/1.8 - 32/1.8, 30}, {140.0/1.8 - 32/1.8, 6}, {150.0/1.8 - 32/1.8, 2}},
	{{65, 2}, {155.0/1.8 - 32/1.8, 1}, {70, 1}},
}

// BurnSeconds is how long skin stands water of a temperature until it is deeply
// burnt, s: the severest of the tables, between their values straight in the
// logarithm; infinite below the first; 1 above the last, where it is less.
func BurnSeconds(tempC float64) float64 {
	least := math.Inf(1)
	for _, table := range burns {
		at := 0
		for at < len(table) && tempC >= table[at][0]-1e-9 {
			at++
		}
		switch {
		case at == 0: // cooler than the table goes
		case at == len(table):
			least = math.Min(least, table[at-1][1])
		default:
			a, b := table[at-1], table[at]
			part := (tempC - a[0]) / (b[0] - a[0])
			least = math.Min(least, math.Exp(math.Log(a[1])+part*(math.Log(b[1])-math.Log(a[1]))))
		}
	}
	return least
}

// HottestC is the hottest that thermostats and the weekly heat-up let water become, degC.
func HottestC(s *scenario.Scenario) float64 {
	if s.AllModules() == 0 {
		return gridC(s)
	}
	return math.Max(gridC(s), s.SunLimitC)
}

// gridC is the same by the grid alone.
func gridC(s *scenario.Scenario) float64 {
	if s.HeatUp == 1 {
		return math.Max(s.SetC, scenario.HeatUpC)
	}
	return s.SetC
}

func (l *findings) water(p *simulate.Prepared) {
	s := &p.Scenario
	if s.SetC < storeC {
		l.find(StoredBelow60, Caution, scenario.SetC, "HSG274 Part 2 (2014): store at 60 degC or more (read on a secondary page)", s.SetC, storeC, simulate.DecimalMinutes(s.SetC))
	}
	l.scalds(s)
	below, ahead := p.BelowElements()
	if low := below + ahead; low > 0.02*p.Litres() {
		severity := Note
		if low > p.Litres()/2 {
			severity = Caution
		}
		l.find(BelowElement, severity, scenario.LowerPct, "height of the lower element", low, p.Litres())
	}
	l.elements(p)
	if _, least, most, ok := p.LabelMixed(); !ok && s.MixedL != scenario.Unknown {
		l.find(LabelImpossible, Caution, scenario.MixedLitres, "heat balance of the label's test, 65 and 10 degC (EN 50440, from memory)", s.MixedL, math.Ceil(least), math.Floor(most))
	}
	if s.LossBy == scenario.LossOvernight {
		if _, ok := tank.LossOvernight(s.TankLitres, s.EveningC, s.MorningC, s.RoomC, s.NightH); !ok {
			l.find(ReadingsImpossible, Caution, scenario.MorningC, "a tank cools, and not below its room", s.EveningC, s.MorningC, s.RoomC)
		}
	}
	l.stuck(p)
	l.cutOut(p)
	l.pressure(p)
}

// scalds are findings about water too hot for skin, and its mixing valve.
func (l *findings) scalds(s *scenario.Scenario) {
	limit := "the local limit, as given"
	if s.TapC == usualTapC {
		limit = "50 degC at the tap (AS/NZS 3500.4, from memory)"
	}
	if s.ValveC > s.TapC {
		l.find(ValveTooHot, Caution, scenario.ValveC, limit, s.ValveC, s.TapC)
	}
	if least := s.ShowerC + showerMoreK; s.ValveC > 0 && s.ValveC < least {
		l.find(ValveStarves, Note, scenario.ValveC, "common practice, no source: a thermostatic shower wants its supply 10 K warmer", s.ValveC, least)
	}
	hottest := HottestC(s)
	if hottest <= s.TapC || s.ValveC > 0 && s.ValveC <= s.TapC {
		return
	}
	switch seconds := BurnSeconds(hottest); {
	case hottest >= atOnceC:
		l.find(StoredScaldsAtOnce, Caution, scenario.SunLimitC, "Moritz & Henriques 1947 and public tables: at 70 degC under a second (from memory)", hottest, s.TapC)
	case math.IsInf(seconds, 1):
		l.find(StoredOverTap, Caution, scenario.SunLimitC, limit, hottest, s.TapC)
	default:
		l.find(StoredScalds, Caution, scenario.SunLimitC, "published burn times: 60 degC 3 to 5 s, 55 degC 17 to 30 s, 49 degC 8 to 10 min (read on secondary pages)", hottest, s.TapC, seconds)
	}
}

// elements are findings about their heights.
func (l *findings) elements(p *simulate.Prepared) {
	s := &p.Scenario
	sun, grid := p.Elements()
	if s.Elements.Upper() && s.HeatUp == 1 {
		l.find(BelowUpper, Note, scenario.HeatUp, "height of the upper element", grid.Low*s.TankLitres, s.TankLitres)
	}
	if s.Elements.Upper() && s.UpperPct < s.LowerPct {
		l.find(ElementsCrossed, Caution, scenario.UpperPct, "the upper of two elements", s.UpperPct, s.LowerPct)
	}
	if end := s.LowerPct + s.ReachPct; end > 100*sun.High+1e-9 {
		l.find(ElementTooLong, Caution, scenario.ReachPct, "an element ends in the tank", end, 100*sun.High)
	}
}

// stuck are findings about thermostats that never open.
func (l *findings) stuck(p *simulate.Prepared) {
	s := &p.Scenario
	cutC := s.CutOutC
	if cutC == scenario.Unknown {
		cutC = scenario.UsualCutOutC
	}
	switch stuck := p.StuckC(); {
	case stuck >= tank.BoilingC:
		l.find(StuckBoils, Caution, scenario.SunLimitC, "equilibrium of the sunniest month's mean power and the standing loss, above 100 degC", cutC)
	case stuck > cutC:
		l.find(FailedClosed, Caution, scenario.SunLimitC, "equilibrium of the sunniest month's mean power and the standing loss; usual cut-out: common practice, no source", stuck, cutC)
	}
	if hours, ok := p.GridStuckHours(); ok {
		l.find(GridStuck, Caution, scenario.SetC, "heat balance of the water above the grid's element, nobody drawing", hours, cutC)
	}
}

// cutOut are findings about what ends heating when a thermostat does not.
func (l *findings) cutOut(p *simulate.Prepared) {
	const source = "common practice, no source: an independent cut-out, reset by hand, in every tank that is heated by two supplies"
	s := &p.Scenario
	sun := p.Wiring().Strings > 0
	switch {
	case sun && s.CutBoth == scenario.CutNo:
		l.find(CutOutNotSun, Stop, scenario.CutBoth, source)
	case s.CutOutC == scenario.Unknown, sun && s.CutBoth == scenario.CutUnknown:
		l.find(CutOutUnknown, Caution, scenario.CutOutC, source)
	}
	if s.CutOutC == scenario.Unknown {
		return
	}
	near := gridC(s)
	if sun && s.CutBoth != scenario.CutNo {
		near = math.Max(near, s.SunLimitC)
	}
	if near >= s.CutOutC-cutOutOverK {
		l.find(CutOutNear, Caution, scenario.CutOutC, "common practice, no source", near, s.CutOutC)
	}
}
