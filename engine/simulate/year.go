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
	Day      [climate.Days]Flows    // costs at the price where the house's other use ends, see Blocks, and of the first fed back, see FedRest
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
	p.runYear(b, nil, NoLimits, ws, out)
}

// RunMonths is RunYear with hours for each month.
func (p *Prepared) RunMonths(months *[12]scenario.Backup, ws *Workspace, out *Year) {
	p.runYear(months[0], months, NoLimits, ws, out)
}

// Limits end a year early.
type Limits struct {
	CoolUses int32
	Cost     float64 // does not end years in which something is paid for what is fed back
}

// NoLimits end no year.
var NoLimits = Limits{math.MaxInt32, math.Inf(1)}

// RunUpTo is RunYear that ends, with false, on the day on which more uses have run cool,
// or more has been spent, than the limits say; then out is not to be used.
func (p *Prepared) RunUpTo(b scenario.Backup, most Limits, ws *Workspace, out *Year) bool {
	return p.runYear(b, nil, most, ws, out)
}

func (p *Prepared) runYear(b scenario.Backup, months *[12]scenario.Backup, most Limits, ws *Workspace, out *Year) bool {
	p.timeline(b, ws)
	r := p.start(b, ws)
	out.Total = Flows{}
	out.Month = [12]Flows{}
	out.WorstBalance = 0
	var f Flows
	r.repeatFirstWeek()
	kelvinJ := p.Litres() * tank.HeatCapacity // content is referred to 0 degC: water may have none
	day, cool, cost := 0, int32(0), 0.0
	if p.bill.tariff.PaysExport() { // a day's cost may be below zero
		most.Cost = math.Inf(1)
	}
	for m := range 12 {
		if ws.Turn != nil {
			ws.Turn()
		}
		if months != nil {
			p.timeline(months[m], ws)
			r.keep(months[m])
		}
		for range climate.DaysIn[m] {
			r.save(&out.Midnight[day])
			content := r.content()
			r.onDay(day)
			off := r.run(&p.sun[day], p.Weather.ColdC[day], &f)
			through := math.Max(f.SunJ+f.BoughtJ+f.DeliveredJ+math.Abs(f.LostJ)+math.Abs(content), kelvinJ)
			out.WorstBalance = math.Max(out.WorstBalance, math.Abs(off)/through)
			out.Day[day] = f
			out.Month[m].Add(&f)
			cool += f.CoolUses
			cost += f.Cost
			if cool > most.CoolUses || cost > most.Cost {
				return false
			}
			day++
		}
		out.Month[m].Cost += p.monthMore(&out.Month[m])
		out.Total.Add(&out.Month[m])
	}
	out.ForcedMerges = ws.tank.ForcedMerges()
	out.Err = ws.tank.Err()
	return true
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
	*r = dayRun{p: p, ws: ws}
	r.keep(b)
	p.thermostats(r)
	_, gridC := p.reached()
	p.fill(ws, gridC)
	return r
}

// keep makes hours those of the days to come.
func (r *dayRun) keep(b scenario.Backup) {
	r.hours, r.open0, r.stillOpen = b, open(b), open(b)
}
