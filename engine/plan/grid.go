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
	second scenario.Span
	known  [][Places + 1]Outcome // by start
	ws     simulate.Workspace
	year   simulate.Year
	runs   int
}

// NewGrid is the grid of a prepared house, beside a second window.
func NewGrid(p *simulate.Prepared, second scenario.Span) *Grid {
	return &Grid{p: p, second: second, known: make([][Places + 1]Outcome, Places)}
}

// At returns the outcome of a window; fresh tells whether it was simulated now.
func (g *Grid) At(w Window) (o Outcome, fresh bool) {
	w = w.normal()
	at := &g.known[w.Start][w.Steps]
	if fresh = !at.known; fresh {
		g.p.RunYear(w.Backup(g.second), &g.ws, &g.year)
		g.runs++
		*at = Outcome{g.year.Total.Cost, g.year.Total.CoolUses, true}
	}
	return *at, fresh
}

// Runs is how many years were simulated.
func (g *Grid) Runs() int { return g.runs }
