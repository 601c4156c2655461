// Package foresight draws what a year would cost over the range of a field, as a picture behind
// the field's slider.
package foresight

import (
	"math"
	"strconv"
	"strings"

	"suncask/engine/plan"
)

// Size of the picture, which is stretched to the slider's width.
const (
	Width  = 100
	Height = 40
)

// room is kept free above and below the curve.
const room = 5.0

// Curve draws a curve over a range: its line, the area under it, and bars where more uses run
// cool than accepted. Nothing is drawn of fewer than two points.
func Curve(points []plan.At, from, to float64, accept int) (line, area, bars string) {
	if len(points) < 2 || to <= from {
		return "", "", ""
	}
	least, most := math.Inf(1), math.Inf(-1)
	for _, p := range points {
		least, most = math.Min(least, p.Cost), math.Max(most, p.Cost)
	}
	least = math.Min(least, 0.8*most) // a flat curve is flat
	var b, barred strings.Builder
	x := func(p plan.At) float64 { return X(p.Value, from, to) }
	for i, p := range points {
		y := Height / 2.0
		if most > least {
			y = Height - room - (Height-2*room)*(p.Cost-least)/(most-least)
		}
		b.WriteString(" L" + number(x(p)) + " " + number(y))
		if int(p.CoolUses) <= accept {
			continue
		}
		left, right := x(p), x(p)
		if i > 0 {
			left = (x(points[i-1]) + x(p)) / 2
		}
		if i+1 < len(points) {
			right = (x(p) + x(points[i+1])) / 2
		}
		for at := math.Ceil(left / barApart); at*barApart <= right; at++ {
			barred.WriteString("M" + number(at*barApart) + " 0V" + strconv.Itoa(Height))
		}
	}
	line = "M" + b.String()[2:]
	return line, line + "L" + number(x(points[len(points)-1])) + " " + strconv.Itoa(Height) + "H" + number(x(points[0])) + "z", barred.String()
}

const barApart = 2.5

// X is where a value stands, within the picture.
func X(value, from, to float64) float64 {
	return Width * math.Max(0, math.Min(1, (value-from)/(to-from)))
}

// Mark is an upright line at a value.
func Mark(value, from, to float64) string {
	return "M" + number(X(value, from, to)) + " 0V" + strconv.Itoa(Height)
}

func number(v float64) string { return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64) }
