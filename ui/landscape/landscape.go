// Package landscape draws the yearly cost of every backup window as a picture: start to
// the right, length upward, a stronger shade where it costs more, hatched where more uses
// run cool than accepted.
package landscape

import (
	"math"
	"strconv"

	"suncask/engine/plan"
)

// Size of the picture across: cells of CellWide, margins for the numbers beside it.
const (
	CellWide = 3
	Left     = 30
	Top      = 8
	Width    = Left + plan.Places*CellWide + 12
)

// Frame is which lengths are drawn, and how high each is.
type Frame struct{ most, cellHigh int }

// Short shows windows up to plan.ShortSteps, All every length.
var Short, All = Frame{plan.ShortSteps, 5}, Frame{plan.Places, 3}

// Height of the picture.
func (f Frame) Height() int { return Top + (f.most+1)*f.cellHigh + 24 }

// Hours is the longest length drawn.
func (f Frame) Hours() int { return f.most * plan.StepMinutes / 60 }

// Levels is how many shades of cost there are.
const Levels = 8

// Map holds what is known of the windows of a house.
type Map struct {
	cost, cool [plan.Places + 1][plan.Places]float64 // by length and start; NaN: not known
	Known      int
	Least      plan.Window // of those that keep the promise, the one that costs least
	LeastCost  float64     // NaN while there is none
	accept     float64
}

// New is an empty map for so many accepted cool uses a year.
func New(accept int) *Map {
	m := &Map{accept: float64(accept), LeastCost: math.NaN()}
	for i := range m.cost {
		for j := range m.cost[i] {
			m.cost[i][j] = math.NaN()
		}
	}
	return m
}

// Add takes the outcome of a window. No backup and all day are the same from every start.
func (m *Map) Add(w plan.Window, cost, coolUses float64) {
	m.Known++
	// Of equal ones the shortest and earliest, in whatever order they come.
	shorter := w.Steps < m.Least.Steps || w.Steps == m.Least.Steps && w.Start < m.Least.Start
	if coolUses <= m.accept && (!(cost >= m.LeastCost) || cost == m.LeastCost && shorter) {
		m.Least, m.LeastCost = w, cost
	}
	if w.Steps == 0 || w.Steps == plan.Places {
		for i := range m.cost[w.Steps] {
			m.cost[w.Steps][i], m.cool[w.Steps][i] = cost, coolUses
		}
		return
	}
	m.cost[w.Steps][w.Start], m.cool[w.Steps][w.Start] = cost, coolUses
}

// At returns the outcome of a window; ok is false while it is not known.
func (m *Map) At(w plan.Window) (cost, coolUses float64, ok bool) {
	cost = m.cost[w.Steps][w.Start]
	return cost, m.cool[w.Steps][w.Start], !math.IsNaN(cost)
}

// Range is the least and the most cost that is known of what is drawn.
func (f Frame) Range(m *Map) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i := range m.cost[:f.most+1] {
		for _, c := range m.cost[i] {
			if !math.IsNaN(c) {
				least, most = min(least, c), max(most, c)
			}
		}
	}
	return least, most
}

// Paths are the shapes of each shade, and of the windows that miss the promise.
func (f Frame) Paths(m *Map) (shades [Levels]string, missed string) {
	least, most := f.Range(m)
	var shapes [Levels + 1][]byte
	run := func(of func(cost, cool float64) int) {
		for steps := range m.cost[:f.most+1] {
			for start := 0; start < plan.Places; {
				level := of(m.cost[steps][start], m.cool[steps][start])
				end := start + 1
				for end < plan.Places && of(m.cost[steps][end], m.cool[steps][end]) == level {
					end++
				}
				if level >= 0 {
					shapes[level] = f.box(shapes[level], start, steps, end-start)
				}
				start = end
			}
		}
	}
	run(func(cost, _ float64) int {
		switch {
		case math.IsNaN(cost):
			return -1
		case most == least:
			return 0
		}
		return min(Levels-1, int((cost-least)/(most-least)*Levels))
	})
	run(func(cost, cool float64) int {
		if math.IsNaN(cost) || cool <= m.accept {
			return -1
		}
		return Levels
	})
	for i := range shades {
		shades[i] = string(shapes[i])
	}
	return shades, string(shapes[Levels])
}

// box adds a row of cells to a path.
func (f Frame) box(d []byte, start, steps, cells int) []byte {
	x, y := f.corner(start, steps)
	d = append(d, 'M')
	d = strconv.AppendInt(d, int64(x), 10)
	d = append(d, ' ')
	d = strconv.AppendInt(d, int64(y), 10)
	d = append(d, 'h')
	d = strconv.AppendInt(d, int64(cells*CellWide), 10)
	d = append(d, 'v')
	d = strconv.AppendInt(d, int64(f.cellHigh), 10)
	d = append(d, "h-"...)
	d = strconv.AppendInt(d, int64(cells*CellWide), 10)
	return append(d, 'z')
}

// corner is the upper left corner of a cell.
func (f Frame) corner(start, steps int) (x, y int) {
	return Left + start*CellWide, Top + (f.most-steps)*f.cellHigh
}

// Middle is the middle of a window's cell; ok is false where it is longer than what is drawn.
func (f Frame) Middle(w plan.Window) (x, y float64, ok bool) {
	left, top := f.corner(w.Start, w.Steps)
	return float64(left) + CellWide/2.0, float64(top) + float64(f.cellHigh)/2, w.Steps <= f.most
}

// WindowAt is the window whose cell is at a point of the picture; ok is false beside them.
func (f Frame) WindowAt(x, y float64) (w plan.Window, ok bool) {
	w.Start = int(math.Floor((x - Left) / CellWide))
	w.Steps = f.most - int(math.Floor((y-Top)/float64(f.cellHigh)))
	return w, w.Start >= 0 && w.Start < plan.Places && w.Steps >= 0 && w.Steps <= f.most
}
