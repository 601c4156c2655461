// Package plan turns simulated years into advice.
package plan

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// StepMinutes is the grid on which backup hours are tried, Places how many starts it has.
const (
	StepMinutes = 15
	Places      = scenario.DayMinutes / StepMinutes
)

// Window is a first backup window on the grid: its start and its length in steps. No
// steps are no backup, Places steps all day.
type Window struct{ Start, Steps int }

// Backup is the window with the second window of other hours.
func (w Window) Backup(second scenario.Span) scenario.Backup {
	return scenario.Backup{
		Start: w.Start * StepMinutes, End: (w.Start + w.Steps) % Places * StepMinutes,
		AllDay: w.Steps == Places, Second: second,
	}
}

// normal is the one window of those that are the same hours.
func (w Window) normal() Window {
	w.Start = (w.Start%Places + Places) % Places
	if w.Steps == 0 || w.Steps == Places {
		w.Start = 0
	}
	return w
}

// Outcome is what a year under a window comes to.
type Outcome struct {
	Cost     float64
	CoolUses int32
	known    bool
}

// Grid holds the years of a house under windows of the grid, each simulated when it is
// first asked for.
type Grid struct {
	p      *simulate.Prepared
	run    func(w Window, most simulate.Limits) (o Outcome, ok bool)
	beyond map[Window]simulate.Limits // that a window was found to exceed, outcome unknown
	known  [][Places + 1]Outcome      // by start
	runs   int
}

// NewGrid is the grid of a prepared house, beside a second window.
func NewGrid(p *simulate.Prepared, second scenario.Span) *Grid {
	g := &Grid{p: p, known: make([][Places + 1]Outcome, Places), beyond: map[Window]simulate.Limits{}}
	ws, year := new(simulate.Workspace), new(simulate.Year)
	g.run = func(w Window, most simulate.Limits) (o Outcome, ok bool) {
		ok = p.RunUpTo(w.Backup(second), most, ws, year)
		return Outcome{Cost: year.Total.Cost, CoolUses: year.Total.CoolUses}, ok
	}
	return g
}

// At returns the outcome of a window; fresh tells whether it was simulated now.
func (g *Grid) At(w Window) (o Outcome, fresh bool) {
	w = w.normal()
	at := &g.known[w.Start][w.Steps]
	if fresh = !at.known; fresh {
		*at, _ = g.run(w, simulate.NoLimits)
		at.known = true
		g.runs++
	}
	return *at, fresh
}

// Within returns the outcome of a window, or false, in less time than At, where it is
// beyond the limits.
func (g *Grid) Within(w Window, most simulate.Limits) (o Outcome, ok bool) {
	w = w.normal()
	at := &g.known[w.Start][w.Steps]
	if at.known {
		return *at, at.CoolUses <= most.CoolUses && at.Cost <= most.Cost
	}
	if cut, was := g.beyond[w]; was && cut.CoolUses >= most.CoolUses && cut.Cost >= most.Cost {
		return o, false
	}
	g.runs++
	if o, ok = g.run(w, most); ok {
		*at = o
		at.known = true
	} else {
		g.beyond[w] = most
	}
	return o, ok
}

// Runs is how many years were simulated.
func (g *Grid) Runs() int { return g.runs }
