package scenario

import (
	"math"

	"suncask/engine/climate"
)

// Equatorward is the azimuth of the sun's side at a latitude, degrees clockwise from north:
// south from the equator on northward, north in the southern hemisphere.
func Equatorward(latDeg float64) float64 {
	if latDeg < 0 {
		return 0
	}
	return 180
}

// UsualTilt is the tilt that is assumed at a latitude, degrees: the latitude to the nearest
// five, between 10, so that rain cleans the modules, and 45, as roofs go (common practice,
// no source).
func UsualTilt(latDeg float64) float64 {
	return math.Max(10, math.Min(45, 5*math.Round(math.Abs(latDeg)/5)))
}

// settleRoof turns planes that are only assumed to where the sun is at the place. The
// second and third plane stay east and west.
func (s *Scenario) settleRoof() {
	f, ok := climate.Locate(s.Place)
	if !ok {
		return
	}
	for _, id := range [...]FieldID{AzimuthDeg, Face4} {
		if !s.Known.Has(id) {
			FieldOf(id).Set(s, Equatorward(f.LatDeg))
		}
	}
	for _, id := range [...]FieldID{TiltDeg, Tilt2, Tilt3, Tilt4} {
		if !s.Known.Has(id) {
			FieldOf(id).Set(s, UsualTilt(f.LatDeg))
		}
	}
}
