package plan

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Windows is how many windows the grid has: no backup, all day, and every start with
// every length between.
const Windows = 2 + Places*(Places-1)

// Landscape simulates a house under every window of the grid, coarse to fine, so that a
// picture of it is whole early.
type Landscape struct {
	grid         *Grid
	apart        int // of the windows of the present round, in steps
	start, steps int
}

// NewLandscape begins with no backup.
func NewLandscape(p *simulate.Prepared, second scenario.Span) *Landscape {
	return &Landscape{grid: NewGrid(p, second), apart: 16}
}

// Step simulates the next window; ok is false when all are known.
func (l *Landscape) Step() (w Window, o Outcome, ok bool) {
	for l.apart > 0 {
		w = Window{l.start, l.steps}
		if l.start += l.apart; l.start >= Places {
			l.start = 0
			if l.steps += l.apart; l.steps > Places {
				l.steps = 0
				l.apart /= 2
			}
		}
		if w.normal() != w {
			continue
		}
		if out, fresh := l.grid.At(w); fresh {
			return w, out, true
		}
	}
	return w, o, false
}
