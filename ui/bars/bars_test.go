package bars

import (
	"math"
	"testing"
)

// Heights are as the amounts, from a zero that all share; nothing leaves the picture.
func TestLayout_Shares(t *testing.T) {
	for _, values := range [][]float64{{300, 150, -75}, {0, 0}, {-4, -2}, {12345.6, 1}, {1e-3}, {}} {
		p := Layout(values)
		if len(p.Bars) != len(values) || len(p.Ticks) < 2 || len(p.Ticks) > 8 {
			t.Fatalf("%v: %+v", values, p)
		}
		scale := (p.Ticks[0].Y - p.Ticks[1].Y) / (p.Ticks[1].Value - p.Ticks[0].Value)
		for i, b := range p.Bars {
			if math.Abs(b.High-scale*math.Abs(values[i])) > 1e-9 || b.Y < top-1e-9 || b.Y+b.High > Foot+1e-9 || b.X < Left || b.X+b.Wide > Width || math.Abs(b.Middle-b.X-b.Wide/2) > 1e-9 {
				t.Errorf("%v: bar %d %+v", values, i, b)
			}
			if zero := b.Y + b.High; values[i] > 0 && math.Abs(zero-p.Zero) > 1e-9 || values[i] < 0 && math.Abs(b.Y-p.Zero) > 1e-9 {
				t.Errorf("%v: bar %d does not stand on zero: %+v, %g", values, i, b, p.Zero)
			}
		}
	}
}
