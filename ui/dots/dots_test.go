package dots

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Every value has its dot in the picture, in the column of its place on the axis, no two at the
// same place; tenths are told apart.
func TestLayout_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 0))
	for range 300 {
		values := make([]float64, 1+r.IntN(80))
		for i := range values {
			values[i] = math.Exp(8*r.Float64()) * float64(r.IntN(2)+r.IntN(2))
		}
		p := Layout(values, 3, 200)
		seen := map[[2]float64]bool{}
		for _, d := range p.Dots {
			if d.X < 0 || d.X > Width+p.Radius || d.Y > Foot-p.Radius || d.Y < top-2*p.Radius || seen[[2]float64{d.X, d.Y}] {
				t.Fatalf("%v: %+v of radius %g", values, d, p.Radius)
			}
			seen[[2]float64{d.X, d.Y}] = true
		}
		low, high := 0, 0
		for _, v := range values {
			if at := p.At(v); at < 0 || at > Width || math.IsNaN(at) {
				t.Fatalf("%g at %g", v, at)
			}
			if v < 3 {
				low++
			} else if v > 200 {
				high++
			}
		}
		for _, d := range p.Dots {
			switch d.Tenth {
			case -1:
				low--
			case 1:
				high--
			}
		}
		if len(p.Dots) != len(values) || low != 0 || high != 0 || len(p.Ticks) < 2 || len(p.Ticks) > 8 {
			t.Fatalf("%d dots of %d, tenths left %d, %d, ticks %v", len(p.Dots), len(values), low, high, p.Ticks)
		}
	}
}

// By hand: three equal values stand upon each other in the middle of 0 to 10, the fourth at its end.
func TestLayout_ByHand(t *testing.T) {
	p := Layout([]float64{5, 10, 5, 5, 0}, 0.5, 9)
	if len(p.Dots) != 5 || p.Dots[1].X != p.Dots[3].X || p.Dots[1].Y-p.Dots[2].Y != 2*p.Radius+1 || p.Dots[0].Tenth != -1 || p.Dots[4].Tenth != 1 || p.Dots[2].Tenth != 0 {
		t.Errorf("%+v", p)
	}
	if math.Abs(p.Dots[1].X-Width/2) > p.Radius+1 || p.At(5) != Width/2 {
		t.Errorf("the middle is at %g, dots at %g", p.At(5), p.Dots[1].X)
	}
}
