package plan

import (
	"slices"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Windows is how many windows the grid has: no backup, all day, and every start with
// every length between.
const Windows = 2 + Places*(Places-1)

// ShortSteps is the length up to which windows are cheap enough to look at first: 12 h.
const ShortSteps = Places / 2

// Landscape simulates a house under every window of the grid, coarse to fine, so that a
// picture of it is whole early: first none, all day, and windows up to ShortSteps.
type Landscape struct {
	grid  *Grid
	share Share
	list  []Window
	at    int
}

// NewLandscape begins a share of it.
func NewLandscape(p *simulate.Prepared, second scenario.Span, share Share) *Landscape {
	return &Landscape{grid: NewGrid(p, second), share: share, list: slices.Collect(windows), at: share.Part}
}

// Step simulates the next window; ok is false when all are known.
func (l *Landscape) Step() (w Window, o Outcome, ok bool) {
	if l.at >= len(l.list) {
		return w, o, false
	}
	w = l.list[l.at]
	l.at += l.share.Of
	o, _ = l.grid.At(w)
	return w, o, true
}

// windows are all of the grid, each once.
func windows(yield func(Window) bool) {
	var seen [Places][Places + 1]bool
	on := true
	give := func(w Window) {
		if w.normal() == w && !seen[w.Start][w.Steps] {
			seen[w.Start][w.Steps] = true
			on = on && yield(w)
		}
	}
	give(Window{0, 0})
	give(Window{0, Places})
	for _, most := range [...]int{ShortSteps, Places} {
		for apart := 16; apart > 0; apart /= 2 {
			for steps := apart; steps <= most; steps += apart {
				for start := 0; start < Places && on; start += apart {
					give(Window{start, steps})
				}
			}
		}
	}
}
