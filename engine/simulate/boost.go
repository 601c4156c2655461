package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// BoostKWh is what one press of a boost lets the grid heat: an assumption.
const BoostKWh = 1.0

// mostPresses is how often a day's boost may be pressed.
const mostPresses = 8

// Boost says what pressing a boost when it was needed would have come to in a year.
type Boost struct {
	Presses  int
	Cost     float64 // of the whole year, with what the presses bought
	CoolUses int32   // that no boost could prevent
}

// RunBoost runs a year in which a boost is pressed before every use that would run
// cool: as often as needed, so that its heating ends when the use begins, whatever the
// hours and who has the element.
func (p *Prepared) RunBoost(b scenario.Backup, ws *Workspace) (out Boost) {
	p.timeline(b, ws, false)
	r := p.start(b, ws)
	r.repeatFirstWeek()
	var f Flows
	plain := append([]event(nil), ws.events...)
	seconds := BoostKWh * JPerKWh / p.backupW
	for day := range climate.Days {
		r.onDay(day)
		if b.FollowsSun() {
			plain = append(plain[:0], ws.events...)
		}
		var midnight Midnight
		r.save(&midnight)
		run := func() {
			r.load(&midnight)
			r.run(&p.sun[day], p.Weather.ColdC[day], &f)
		}
		run()
		presses := map[int]int{} // by use
		for f.CoolUses > 0 {
			use := r.firstCool()
			if presses[use] == mostPresses {
				break
			}
			presses[use]++
			ws.events = append(ws.events[:0], plain...)
			for u, n := range presses {
				end := p.uses[u].Minute * 60
				from := math.Max(0, end-float64(n)*seconds)
				if end > from {
					ws.insert(p.timed(event{at: from, kind: boostEdge, i: 1}))
					ws.insert(p.timed(event{at: end, kind: boostEdge, i: -1}))
				}
			}
			run()
		}
		for _, n := range presses {
			out.Presses += n
		}
		out.Cost += f.Cost
		out.CoolUses += f.CoolUses
		ws.events = append(ws.events[:0], plain...)
	}
	return out
}

// firstCool is the first use of the day that ran cool.
func (r *dayRun) firstCool() int {
	first := -1
	for i := range r.p.uses {
		if r.coolUse(i) && (first < 0 || r.p.uses[i].Minute < r.p.uses[first].Minute) {
			first = i
		}
	}
	return first
}
