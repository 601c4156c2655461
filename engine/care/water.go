package care

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
)

const (
	storeC = 60.0 // store at 60 degC or more
	tapC   = 50.0 // above this at a tap a mixing valve is advised
	boilC  = 100.0
	// showerMoreK is how much warmer than the shower its own mixer wants the supply.
	showerMoreK = 10.0
	cutOutC     = 88.0 // a usual independent cut-out (common practice, no source)
)

// Seconds to a deep burn by water temperature, degC: two published tables (read on
// secondary pages; the second is of the US Consumer Product Safety Commission).
var burns = [...][][2]float64{
	{{45, 10800}, {47, 2700}, {48, 1200}, {49, 600}, {51, 252}, {55, 30}, {60, 5}},
	{{120.0/1.8 - 32/1.8, 300}, {130.0/1.8 - 32/1.8, 30}, {140.0/1.8 - 32/1.8, 6}, {150.0/1.8 - 32/1.8, 2}},
}

// BurnSeconds is how long skin stands water of a temperature until it is deeply
// burnt, s: the severer of both tables, between their values straight in the
// logarithm; infinite below the first, that of the last above it.
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

// densities of water at 1 atm, kg/m3 by degC (IAPWS, computed).
var densities = [...][2]float64{{10, 999.702}, {20, 998.206}, {30, 995.652}, {40, 992.224}, {50, 988.047}, {60, 983.211}, {70, 977.779}, {80, 971.803}, {90, 965.319}}

// Expansion is the share of a tank's water that heating from 10 degC pushes out.
func Expansion(tempC float64) float64 {
	for i := 1; i < len(densities); i++ {
		a, b := densities[i-1], densities[i]
		if tempC <= b[0] || i == len(densities)-1 {
			d := a[1] + (b[1]-a[1])*(tempC-a[0])/(b[0]-a[0])
			return math.Max(0, densities[0][1]/d-1)
		}
	}
	return 0
}

func (l *findings) water(p *simulate.Prepared) {
	s := &p.Scenario
	hottest := math.Max(s.SetC, s.SunLimitC)
	if s.SetC < storeC {
		l.find(StoredBelow60, Caution, scenario.SetC, "HSG274 Part 2 (2014): store at 60 degC or more (read on a secondary page)", s.SetC, storeC, simulate.DecimalMinutes(s.SetC))
	}
	if s.ValveC > tapC {
		l.find(ValveTooHot, Caution, scenario.ValveC, "50 degC at the tap (AS/NZS 3500.4, from memory)", s.ValveC, tapC)
	}
	if least := simulate.ShowerC + showerMoreK; s.ValveC > 0 && s.ValveC < least {
		l.find(ValveStarves, Note, scenario.ValveC, "common practice, no source: a thermostatic shower wants its supply 10 K warmer", s.ValveC, least)
	}
	if hottest > tapC && (s.ValveC == 0 || s.ValveC > tapC) {
		l.find(StoredScalds, Caution, scenario.SunLimitC, "published burn times: 60 degC 3 to 5 s, 55 degC 17 to 30 s, 49 degC 8 to 10 min (read on secondary pages)", hottest, tapC, BurnSeconds(hottest))
	}
	below, ahead := p.BelowElements()
	if low := below + ahead; low > 0.02*p.Litres() {
		l.find(BelowElement, Note, scenario.TankLitres, "height of the lower element", low, p.Litres())
	}
	if s.LossBy == scenario.LossOvernight {
		if _, ok := tank.LossOvernight(s.TankLitres, s.EveningC, s.MorningC, s.RoomC, s.NightH); !ok {
			l.find(ReadingsImpossible, Caution, scenario.MorningC, "a tank cools, and not below its room", s.EveningC, s.MorningC, s.RoomC)
		}
	}
	if stuck := p.StuckC(); stuck > cutOutC {
		l.find(FailedClosed, Caution, scenario.SunLimitC, "equilibrium of the sunniest month's mean power and the standing loss; cut-out: common practice, no source", math.Min(stuck, boilC), cutOutC)
	}
	l.find(Expands, Note, scenario.TankLitres, "density of water at 1 atm (IAPWS, computed)", Expansion(hottest)*s.TankLitres, hottest)
}
