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
	p.timeline(b, ws)
	r := p.start(b, ws)
	r.repeatFirstWeek()
	var f Flows
	var month Flows // so far
	plain := append([]event(nil), ws.events...)
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
				r.press(u, n)
			}
			run()
		}
		for _, n := range presses {
			out.Presses += n
		}
		out.CoolUses += f.CoolUses
		month.Add(&f)
		if m := climate.MonthOf(day); day == climate.FirstDay(m)+climate.DaysIn[m]-1 {
			out.Cost += month.Cost + p.monthMore(&month)
			month = Flows{}
		}
		ws.events = append(ws.events[:0], plain...)
	}
	return out
}

// press puts presses of a boost into the day, so that their heating ends when a use begins.
func (r *dayRun) press(use, presses int) {
	seconds := float64(presses) * BoostKWh * JPerKWh / r.p.backupW
	end := r.p.uses[use].Minute * 60
	if from := math.Max(0, end-seconds); end > from {
		r.ws.insert(r.p.timed(event{at: from, kind: boostEdge, i: 1}))
		r.ws.insert(r.p.timed(event{at: end, kind: boostEdge, i: -1}))
	}
}

// BoostUse finds how few presses of a boost before a use of a day, which RunDay or Replay
// filled, keep it from running cool, and no other, and what they add to that day's cost; ok is
// false where no number does.
func (p *Prepared) BoostUse(b scenario.Backup, d *Day, use int, ws *Workspace) (presses int, cost float64, ok bool) {
	p.timeline(b, ws)
	r := p.start(b, ws)
	if d.repeats {
		r.always(d.day)
	} else {
		r.onDay(d.day)
	}
	plain := append([]event(nil), ws.events...)
	var f, was Flows
	for ; presses <= mostPresses; presses++ {
		ws.events = append(ws.events[:0], plain...)
		if presses > 0 {
			r.press(use, presses)
		}
		r.load(&d.midnight)
		r.run(d.sun, d.ColdC, &f)
		if presses == 0 {
			was = f
		}
		if !r.coolUse(use) && (presses == 0 || f.CoolUses < was.CoolUses) {
			return presses, f.Cost - was.Cost, presses > 0
		}
	}
	return 0, 0, false
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
