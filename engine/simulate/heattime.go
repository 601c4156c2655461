package simulate

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// HeatTimes are how long the water above each element takes from cold to a thermostat, nobody
// drawing. A day may not be enough.
type HeatTimes struct {
	ColdC, ToC  float64
	GridMinutes float64
	GridOK      bool
	SunFrom     float64 // first light, minutes after midnight
	SunMinutes  float64 // from then on
	SunOK       bool
}

// SkyW is the power that could reach the element, W, by hour, on the average day of a month (0 to
// 11) under a sky.
func (p *Prepared) SkyW(month int, sky scenario.Sky) [24]float64 { return p.sky[month][sky].power }

// HeatTimes heats cold water of a month (0 to 11), by the grid without a break and by the sun
// on the month's bright day, each its own tank where there are two, to the grid's thermostat or
// to the sun's where that is lower. Nothing is conducted downwards meanwhile.
func (p *Prepared) HeatTimes(month int, ws *Workspace) (h HeatTimes) {
	sunC, gridC := p.reached()
	h.ColdC, h.ToC = p.skyColdC[month], min(sunC, gridC)
	r := p.start(scenario.Backup{}, ws)
	cold := func() {
		p.fill(ws, h.ColdC)
		r.room(climate.AverageDay(month))
		ws.tank.FedBy(nil)
		r.backup.SetC, r.sun.SetC = h.ToC, h.ToC
	}
	cold()
	h.GridMinutes, h.GridOK = heatFrom(&ws.tank, &p.backupElement, &r.backup, 0, func(int) float64 { return p.backupW })
	day := &p.sky[month][scenario.Bright]
	first := 0
	for first < 24 && day.power[first] == 0 {
		first++
	}
	if first == 24 {
		return h
	}
	cold()
	t := &ws.tank
	if p.twoTanks {
		t = &ws.sunTank
	}
	h.SunFrom = float64(first) * 60
	h.SunMinutes, h.SunOK = heatFrom(t, &p.sunElement, &r.sun, first, func(hour int) float64 { return day.power[hour] })
	return h
}

// heatFrom heats from an hour to the end of the day, at most until the thermostat is satisfied.
func heatFrom(t *tank.Tank, e *tank.Element, th *tank.Thermostat, from int, powerW func(hour int) float64) (minutes float64, ok bool) {
	for hour := from; hour < 24; hour++ {
		w := powerW(hour)
		if w == 0 {
			t.Rest(hourS)
			minutes += 60
			continue
		}
		_, used := t.HeatUntil(t.SpanOf(hourS), w, e, th)
		minutes += used / 60
		if used < hourS {
			return minutes, true
		}
	}
	return 0, false
}
