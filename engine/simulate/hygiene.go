package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
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
}

// RunHygiene runs a year and looks at the tank every quarter of an hour.
func (p *Prepared) RunHygiene(b scenario.Backup, ws *Workspace) (h Hygiene) {
	var d Day
	r := p.start(b, ws)
	p.timeline(b, ws, true)
	held := 0.0 // minutes that the water has stood hot
	last := math.Inf(-1)
	const step = 1440.0 / samplesPerDay
	for round := range 2 { // the second year follows the first, so that its start is no gap
		if round == 1 {
			h = Hygiene{}
			last -= climate.Days
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
				coldest, growing, below := math.Inf(1), 0.0, 0.0
				for _, l := range d.Trace.Layers(i) {
					below += l.Litres
					if below > p.BelowElements()+1e-6 {
						coldest = math.Min(coldest, l.TempC)
					}
					if l.TempC >= GrowFromC && l.TempC <= GrowToC {
						growing += l.Litres
					}
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
	if h.HeatUps == 0 {
		h.LongestDays = climate.Days
	}
	return h
}
