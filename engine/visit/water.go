package visit

import (
	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
)

// HotShare is the part of a mixed flow that is hot water, by temperatures, degC:
// (Tm - Tc)/(Th - Tc); ok is false where the mix is not between them.
func HotShare(mixedC, hotC, coldC float64) (share float64, ok bool) {
	return (mixedC - coldC) / (hotC - coldC), coldC < mixedC && mixedC <= hotC
}

// HeatJ is what heating so many litres takes, J, without loss; 0 where they are as warm already.
func HeatJ(litres, fromC, toC float64) float64 {
	return litres * tank.HeatCapacity * max(0, toC-fromC)
}

// HeatHours is how long a power takes for that, h.
func HeatHours(litres, fromC, toC, watts float64) float64 {
	return HeatJ(litres, fromC, toC) / watts / 3600
}

// GridHeatUp is the first heat-up by the grid of the water above its element, from the coldest
// water of a month (0 to 11) to the thermostat, without loss.
func GridHeatUp(p *simulate.Prepared, month int) (joules, hours float64) {
	_, grid := p.Elements()
	s := &p.Scenario
	litres := s.TankLitres * (1 - grid.Low)
	return HeatJ(litres, p.ColdC(month), s.SetC), HeatHours(litres, p.ColdC(month), s.SetC, p.BackupW())
}

// mostDays is how many days SunHeatUp waits.
const mostDays = 30

// SunHeatUp is how many days like the average one of a month (0 to 11) under a sky the sun alone
// takes to heat the water above its element from cold to the grid's thermostat, or to its own limit
// where that is lower, nobody drawing; of the last day the part up to the hour in which it is hot.
// Standing loss is that of the mean temperature. 0 where cold water is as warm already; ok is false
// where 30 days are not enough.
func SunHeatUp(p *simulate.Prepared, month int, sky scenario.Sky) (days float64, ok bool) {
	s := &p.Scenario
	sun, _ := p.Elements()
	litres := s.TankLitres
	if s.Elements == scenario.TwoTanks {
		litres = s.SunTankL
	}
	share := 1 - sun.Low
	capacity := litres * share * tank.HeatCapacity
	wPerK, _ := p.StandingLoss()
	coldC, toC := p.ColdC(month), min(s.SetC, s.SunLimitC)
	if coldC >= toC {
		return 0, true
	}
	watts, c := p.SkyW(month, sky), coldC
	for hour := range mostDays * 24 {
		before := c
		c += (watts[hour%24] - wPerK*share*(c-s.RoomC)) * 3600 / capacity
		c = max(c, min(coldC, s.RoomC))
		if c >= toC {
			return (float64(hour) + (toC-before)/(c-before)) / 24, true
		}
	}
	return mostDays, false
}

// FirstShower is what the first shower takes by hand, J, and the grid's minutes for it, from the
// cold water of a month: of its own water, and of all that lies above the grid's element, which
// heats as one; ok is false where a day is not enough.
func FirstShower(p *simulate.Prepared, month int, ws *simulate.Workspace) (joules, minutes float64, ok bool) {
	s := &p.Scenario
	litres := s.ShowerMinutes * s.ShowerFlow
	minutes, ok = p.ReadyAfter(litres, month, simulate.Left{}, ws)
	return HeatJ(litres, p.ColdC(month), s.ShowerC), minutes, ok
}

// Pushed is what a heat-up from the coldest water of the year to the hottest limit pushes out, L.
func Pushed(p *simulate.Prepared) (litres, coldC, hotC float64) {
	coldC, hotC = p.Weather.ColdC[0], care.HottestC(&p.Scenario)
	for day := range climate.Days {
		coldC = min(coldC, p.Weather.ColdC[day])
	}
	return care.Expansion(coldC, hotC) * p.Litres(), coldC, hotC
}
