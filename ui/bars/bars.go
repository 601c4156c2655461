// Package bars lays out amounts as bars from a common zero, over or under it.
package bars

import (
	"math"

	"suncask/ui/curve"
)

// Size of the picture, and of the part that has the bars.
const (
	Width  = 336
	Height = 190
	Left   = 52
	Foot   = 160
	top    = 22
)

// Bar is an amount's box, and where its name stands below.
type Bar struct{ X, Y, Wide, High, Middle float64 }

// Tick is an amount along the axis.
type Tick struct{ Value, Y float64 }

// Picture is the whole layout.
type Picture struct {
	Bars  []Bar
	Ticks []Tick
	Zero  float64
}

// Layout makes a bar of each value, with ticks at the ends of the axis, zero and between.
func Layout(values []float64) *Picture {
	least, most := 0.0, 0.0
	for _, v := range values {
		least, most = math.Min(least, v), math.Max(most, v)
	}
	ticks := curve.Ticks(least, most, 3)
	least, most = ticks[0], ticks[len(ticks)-1]
	y := func(v float64) float64 { return Foot - (v-least)/(most-least)*(Foot-top) }
	p := &Picture{Zero: y(0)}
	for _, v := range ticks {
		p.Ticks = append(p.Ticks, Tick{v, y(v)})
	}
	room := float64(Width-Left) / float64(max(1, len(values)))
	for i, v := range values {
		b := Bar{X: Left + (float64(i)+0.14)*room, Wide: 0.72 * room, Middle: Left + (float64(i)+0.5)*room}
		b.Y, b.High = math.Min(y(v), p.Zero), math.Abs(y(v)-p.Zero)
		p.Bars = append(p.Bars, b)
	}
	return p
}
