package solar

import (
	"math"
	"testing"
)

func TestHorizon_Elevation(t *testing.T) {
	h := Horizon{{10 * rad, 20 * rad}, {90 * rad, 0}, {350 * rad, 10 * rad}}
	for _, c := range []struct{ azimuth, want float64 }{
		{10, 20}, {50, 10}, {90, 0}, {220, 5}, {350, 10}, {0, 15}, {360, 15}, {-5, 12.5}, {370, 20},
	} {
		near(t, "elevation", h.Elevation(c.azimuth*rad)/rad, c.want, 1e-9)
	}
	near(t, "free", Horizon(nil).Elevation(1), 0, 0)
	near(t, "one point stands for all", Horizon{{1, 0.3}}.Elevation(4), 0.3, 1e-12)
	if !h.Hides(Direction{5 * rad, 50 * rad}) || h.Hides(Direction{15 * rad, 50 * rad}) || Horizon(nil).Hides(Direction{-1, 0}) {
		t.Error("wrong side of the skyline")
	}
}

// A ring of one elevation e leaves a level plane cos2(e) of the sky: closed form.
func TestHorizon_SkyViewAnalytic(t *testing.T) {
	for e := 0.0; e < 80; e += 10 {
		near(t, "ring", Horizon{{0, e * rad}}.SkyView(Plane{}), math.Pow(math.Cos(e*rad), 2), 1e-12)
	}
	near(t, "free", Horizon(nil).SkyView(Plane{1, 1}), 1, 0)
	// A wall over the whole sky in front of an upright plane leaves nothing; behind it, all.
	front := Horizon{{0, 89.999 * rad}, {89.99 * rad, 89.999 * rad}, {90 * rad, 0}, {270 * rad, 0}, {270.01 * rad, 89.999 * rad}}
	near(t, "wall in front", front.SkyView(Plane{math.Pi / 2, 0}), 0, 1e-3)
	near(t, "wall behind", front.SkyView(Plane{math.Pi / 2, math.Pi}), 1, 1e-3)
}

// Against the sky summed patch by patch, for planes and skylines of every kind.
func TestHorizon_SkyViewAgainstPatches(t *testing.T) {
	h := Horizon{{0, 30 * rad}, {60 * rad, 5 * rad}, {140 * rad, 40 * rad}, {200 * rad, 0}, {300 * rad, 15 * rad}}
	for _, p := range []Plane{{}, {30 * rad, 0}, {60 * rad, 2}, {90 * rad, 4}} {
		seen, free := 0.0, 0.0
		const n = 720
		for i := range n {
			e := (float64(i) + 0.5) / n * math.Pi / 2
			for j := range n {
				sun := Direction{e, (float64(j) + 0.5) / n * 2 * math.Pi}
				c := math.Max(0, p.CosIncidence(sun)) * math.Cos(e)
				free += c
				if !h.Hides(sun) {
					seen += c
				}
			}
		}
		near(t, "sky view", h.SkyView(p), seen/free, 2e-4)
	}
}
