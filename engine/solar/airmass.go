package solar

import "math"

// AirMass returns the relative optical air mass at an apparent elevation (rad,
// with refraction): 1 overhead, 38 at the horizon. Kasten & Young 1989. Below the
// horizon it is that of the horizon.
func AirMass(elevation float64) float64 {
	deg := math.Max(0, elevation*180/math.Pi)
	return 1 / (math.Sin(deg*math.Pi/180) + 0.50572*math.Pow(deg+6.07995, -1.6364))
}
