package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Year is the result of a year.
type Year struct {
	Total    Flows
	Month    [12]Flows
	Day      [climate.Days]Flows    // costs at the price where the house's other use ends, see blocks
	Midnight [climate.Days]Midnight // at the start of each day

	WorstBalance float64 // largest failure of a day's balance, as part of throughput + content, 1 K of the water at least
	ForcedMerges int     // layers merged because the stack was full
	Err          error   // a fault of the engine, nil otherwise
}

// firstWeek is what a year's start tank has repeated.
const firstWeek = 7

// RunYear simulates 365 days with those backup hours. It allocates nothing once
// ws has run the same scenario.
func (p *Prepared) RunYear(b scenario.Backup, ws *Workspace, out *Year) {
	p.timeline(b, ws, false)
	r := p.start(b, ws)
	out.Total = Flows{}
	out.Month = [12]Flows{}
	out.WorstBalance = 0
	var f Flows
	r.repeatFirstWeek()
	kelvinJ := p.Litres() * tank.HeatCapacity // content is referred to 0 degC: water may have none
	day := 0
	for m := range 12 {
		for range climate.DaysIn[m] {
			r.save(&out.Midnight[day])
			content := r.content()
			r.onDay(day)
			off := r.run(&p.sun[day], p.Weather.ColdC[day], &f)
			through := math.Max(f.SunJ+f.BoughtJ+f.DeliveredJ+math.Abs(f.LostJ)+math.Abs(content), kelvinJ)
			out.WorstBalance = math.Max(out.WorstBalance, math.Abs(off)/through)
			out.Day[day] = f
			out.Month[m].add(&f)
			day++
		}
		out.Month[m].Cost += p.blocks(out.Month[m].BaseJ)
		out.Total.add(&out.Month[m])
	}
	out.ForcedMerges = ws.tank.ForcedMerges()
	out.Err = ws.tank.Err()
}

// repeatFirstWeek gives a year's tank its start.
func (r *dayRun) repeatFirstWeek() {
	var f Flows
	for day := range firstWeek {
		r.onDay(day)
		r.run(&r.p.sun[day], r.p.Weather.ColdC[day], &f)
	}
}

// start makes the tank ready at its thermostat's temperature.
func (p *Prepared) start(b scenario.Backup, ws *Workspace) *dayRun {
	r := &ws.run
	*r = dayRun{p: p, ws: ws, hours: b, open0: open(b)}
	r.stillOpen = r.open0
	p.thermostats(r)
	p.fill(ws, p.Scenario.SetC)
	return r
}
