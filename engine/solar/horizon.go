package solar

import (
	"math"
	"sort"
)

// HorizonPoint is a point of the skyline, rad: azimuth clockwise from north in
// [0, 2 pi), elevation in [0, pi/2).
type HorizonPoint struct{ Azimuth, Elevation float64 }

// Horizon is the skyline seen from the modules, its points in ascending azimuth,
// joined by straight lines of elevation over azimuth all the way round. No points:
// a free horizon at elevation 0.
type Horizon []HorizonPoint

// Elevation returns the skyline's elevation at an azimuth, rad.
func (h Horizon) Elevation(azimuth float64) float64 {
	if len(h) == 0 {
		return 0
	}
	const turn = 2 * math.Pi
	azimuth = math.Mod(math.Mod(azimuth, turn)+turn, turn)
	next := sort.Search(len(h), func(i int) bool { return h[i].Azimuth > azimuth })
	a, b := h[(next+len(h)-1)%len(h)], h[next%len(h)]
	gap := math.Mod(b.Azimuth-a.Azimuth+turn, turn)
	if gap == 0 {
		return a.Elevation
	}
	return a.Elevation + (b.Elevation-a.Elevation)*math.Mod(azimuth-a.Azimuth+turn, turn)/gap
}

// Hides tells whether the sun stands behind the skyline.
func (h Horizon) Hides(sun Direction) bool {
	return len(h) > 0 && sun.Elevation < h.Elevation(sun.Azimuth)
}

// SkyView returns which part of the isotropic light that a plane gets from a free
// sky is left above the skyline, 0 to 1. The integral over elevation is closed,
//
//	cos b (cos2 e)/2 + sin b cos(a) ((pi/2 - e)/2 - sin(2e)/4),
//
// from the higher of the skyline and the plane's own edge; that over azimuth a,
// from the plane's, is a sum of one-degree steps.
func (h Horizon) SkyView(p Plane) float64 {
	if len(h) == 0 {
		return 1
	}
	const steps = 360
	sinTilt, cosTilt := math.Sincos(p.Tilt)
	seen, free := 0.0, 0.0
	for i := range steps {
		a := (float64(i) + 0.5) * 2 * math.Pi / steps
		facing := math.Cos(a)
		above := func(e float64) float64 {
			return cosTilt*math.Cos(e)*math.Cos(e)/2 + sinTilt*facing*((math.Pi/2-e)/2-math.Sin(2*e)/4)
		}
		edge := 0.0 // where the plane's own back begins
		if facing < 0 {
			edge = math.Atan2(-sinTilt*facing, cosTilt)
		}
		free += above(edge)
		seen += above(math.Max(edge, h.Elevation(p.Azimuth+a)))
	}
	return seen / free
}
