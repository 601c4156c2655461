// Package landscape draws the yearly cost of every backup window as a picture: start to
// the right, length upward, a stronger shade where it costs more, hatched where more uses
// run cool than accepted.
package landscape

import (
	"math"
	"strconv"

	"suncask/engine/plan"
)

// Size of the picture: cells of CellSize, margins for the numbers beside it.
const (
	CellSize = 3
	Left     = 30
	Top      = 8
	Wide     = plan.Places * CellSize
	High     = (plan.Places + 1) * CellSize
	Width    = Left + Wide + 12
	Height   = Top + High + 24
)

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
	if coolUses <= m.accept && !(cost >= m.LeastCost) {
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

// Range is the least and the most cost that is known.
func (m *Map) Range() (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i := range m.cost {
		for _, c := range m.cost[i] {
			if !math.IsNaN(c) {
				least, most = min(least, c), max(most, c)
			}
		}
	}
	return least, most
}

// Paths are the shapes of each shade, and of the windows that miss the promise.
func (m *Map) Paths() (shades [Levels]string, missed string) {
	least, most := m.Range()
	var shapes [Levels + 1][]byte
	run := func(of func(cost, cool float64) int) {
		for steps := range m.cost {
			for start := 0; start < plan.Places; {
				level := of(m.cost[steps][start], m.cool[steps][start])
				end := start + 1
				for end < plan.Places && of(m.cost[steps][end], m.cool[steps][end]) == level {
					end++
				}
				if level >= 0 {
					shapes[level] = box(shapes[level], start, steps, end-start)
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
func box(d []byte, start, steps, cells int) []byte {
	x, y := corner(start, steps)
	d = append(d, 'M')
	d = strconv.AppendInt(d, int64(x), 10)
	d = append(d, ' ')
	d = strconv.AppendInt(d, int64(y), 10)
	d = append(d, 'h')
	d = strconv.AppendInt(d, int64(cells*CellSize), 10)
	d = append(d, "v3h-"...)
	d = strconv.AppendInt(d, int64(cells*CellSize), 10)
	return append(d, 'z')
}

// corner is the upper left corner of a cell.
func corner(start, steps int) (x, y int) {
	return Left + start*CellSize, Top + (plan.Places-steps)*CellSize
}

// Middle is the middle of a window's cell.
func Middle(w plan.Window) (x, y float64) {
	left, top := corner(w.Start, w.Steps)
	return float64(left) + CellSize/2.0, float64(top) + CellSize/2.0
}

// WindowAt is the window whose cell is at a point of the picture; ok is false beside them.
func WindowAt(x, y float64) (w plan.Window, ok bool) {
	w.Start = int(math.Floor((x - Left) / CellSize))
	w.Steps = plan.Places - int(math.Floor((y-Top)/CellSize))
	return w, w.Start >= 0 && w.Start < plan.Places && w.Steps >= 0 && w.Steps <= plan.Places
}
