// Package dots lays out values as stacked dots over an axis, one dot a value.
package dots

import (
	"math"
	"slices"

	"suncask/ui/curve"
)

// Size of the picture, and the axis's line in it.
const (
	Width  = 336
	Height = 160
	Foot   = 134
	most   = 5.0 // radius
	top    = 44  // room for words above the stacks
)

// Dot is one value: its middle, and whether it is among the lowest (-1) or highest (1) tenth.
type Dot struct {
	X, Y  float64
	Tenth int
}

// Picture is the whole layout.
type Picture struct {
	Dots     []Dot
	Radius   float64
	Ticks    []float64 // values along the axis
	from, to float64
}

// At is where a value stands across.
func (p *Picture) At(v float64) float64 {
	return most + (v-p.from)/(p.to-p.from)*(Width-2*most)
}

// Layout stacks values; below low and above high they are tenths. There is at least one value.
func Layout(values []float64, low, high float64) *Picture {
	sorted := slices.Sorted(slices.Values(values))
	ticks := curve.Ticks(sorted[0], sorted[len(sorted)-1], 4)
	p := &Picture{Radius: most, Ticks: ticks, from: ticks[0], to: ticks[len(ticks)-1]}
	// As large as the highest stack allows.
	for ; p.Radius > 0.2; p.Radius *= 0.92 {
		if p.stack(sorted) <= Foot-top {
			break
		}
	}
	for i := range p.Dots {
		switch v := sorted[i]; {
		case v < low:
			p.Dots[i].Tenth = -1
		case v > high:
			p.Dots[i].Tenth = 1
		}
	}
	return p
}

// stack puts dots into columns as wide as they are, and returns how high the highest is.
func (p *Picture) stack(sorted []float64) (high float64) {
	p.Dots = p.Dots[:0]
	wide := 2*p.Radius + 1
	counts := map[int]int{}
	for _, v := range sorted {
		column := int(p.At(v) / wide)
		y := Foot - 2 - p.Radius - wide*float64(counts[column])
		counts[column]++
		p.Dots = append(p.Dots, Dot{X: (float64(column) + 0.5) * wide, Y: y})
		high = math.Max(high, Foot-y+p.Radius)
	}
	return high
}
