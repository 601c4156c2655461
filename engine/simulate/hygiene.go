package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// What counts as a heat-up against bacteria: all water above the lowest element at
// HygieneC for HygieneMinutes; and where they grow (HSG274 Part 2, 2014, read on a
// secondary page; 32 minutes: common practice, no source).
const (
	HygieneC       = 60.0
	HygieneMinutes = 32.0
	GrowFromC      = 25.0
	GrowToC        = 45.0
)

// Hygiene are a year's figures of the water in the tank. None of them says that water
// is free of bacteria.
type Hygiene struct {
	HeatUps     int     // days with a heat-up
	LongestDays float64 // longest time without one; a year if there was none
	GrowHours   float64 // a day in which some layer is where bacteria grow, mean of the year
	GrowLitres  float64 // water there, mean over all time
	// LeastDose is by how many powers of ten standing hot has thinned out the bacteria
	// of the water that was drawn after the least of it; 15 stands for more.
	LeastDose float64
}

// RunHygiene runs a year and looks at the tank every quarter of an hour.
func (p *Prepared) RunHygiene(b scenario.Backup, ws *Workspace) (h Hygiene) {
	var d Day
	r := p.start(b, ws)
	p.timeline(b, ws)
	below, ahead := p.BelowElements()
	dose := newDose(p)
	held := 0.0 // minutes that the water has stood hot
	last := math.Inf(-1)
	const step = 1440.0 / samplesPerDay
	for round := range 2 { // the second year follows the first, so that its start is no gap
		if round == 1 {
			h = Hygiene{}
			last -= climate.Days
			dose.worst = 0
		}
		for day := range climate.Days {
			r.onDay(day)
			r.trace = &d.Trace
			d.Trace.Points, d.Trace.layers = d.Trace.Points[:0], d.Trace.layers[:0]
			r.trace.point(r, 0, p.Weather.ColdC[day], &Flows{})
			var f Flows
			r.run(&p.sun[day], p.Weather.ColdC[day], &f)
			heated := false
			next := 0.0
			for i := range d.Trace.Points {
				if d.Trace.Points[i].Minute < next-1e-6 {
					continue // a draw between the looks
				}
				next += step
				dose.stand(&d.Trace, i, step)
				coldest, growing := look(d.Trace.Layers(i), below)
				if p.twoTanks {
					c, g := look(d.Trace.Ahead(i), ahead)
					coldest, growing = math.Min(coldest, c), growing+g
				}
				if growing > 0 {
					h.GrowHours += step / 60 / climate.Days
				}
				h.GrowLitres += growing / (samplesPerDay * climate.Days)
				if held += step; coldest < HygieneC-1e-6 {
					held = 0
				}
				if held < HygieneMinutes {
					continue
				}
				at := float64(day) + d.Trace.Points[i].Minute/1440
				if !math.IsInf(last, -1) {
					h.LongestDays = math.Max(h.LongestDays, at-last)
				}
				last = at
				heated = true
			}
			if heated {
				h.HeatUps++
			}
		}
	}
	r.trace = nil
	h.LeastDose = dose.least()
	if h.HeatUps == 0 {
		h.LongestDays = climate.Days
	}
	return h
}

// look returns the coldest layer above that many litres and the litres where bacteria
// grow.
func look(layers []tank.Layer, aboveL float64) (coldestC, growingL float64) {
	coldestC = math.Inf(1)
	height := 0.0
	for _, l := range layers {
		if height += l.Litres; height > aboveL+1e-6 {
			coldestC = math.Min(coldestC, l.TempC)
		}
		if l.TempC >= GrowFromC && l.TempC <= GrowToC {
			growingL += l.Litres
		}
	}
	return coldestC, growingL
}
