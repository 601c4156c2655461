package visit

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/solar"
)

// ClearLight is the light on the plane of a house's first modules under a sky without cloud, at a
// minute of the clock on a day of the year (0 to 364), W/m2, as a meter in the plane sees it:
// Haurwitz 1945, split by Erbs, Klein & Duffie 1982, the sky of Perez et al. 1990. It knows no haze
// and no height; behind a skyline the sun's own part is left out. 0 at night.
func ClearLight(p *simulate.Prepared, day, minute int) float64 {
	s := &p.Scenario
	sun := &p.Weather.Sun[day]
	at := solar.DirectionAt(sun.Latitude, sun.Declination, (float64(minute)/60-sun.Noon)*math.Pi/12)
	cosZenith := math.Sin(at.Elevation)
	global := solar.ClearSky(cosZenith)
	if global <= 0 {
		return 0
	}
	diffuse := global * solar.DiffuseShareHourly(global/(sun.ExtraWm2*cosZenith))
	sky := solar.Sky{Beam: global - diffuse, Diffuse: diffuse, Extra: sun.ExtraWm2, CosZenith: cosZenith, AirMass: solar.AirMass(at.Elevation)}
	plane := solar.Plane{Tilt: s.TiltDeg * math.Pi / 180, Azimuth: s.AzimuthDeg * math.Pi / 180}
	in := plane.Transpose(sky, math.Max(0, plane.CosIncidence(at))/cosZenith, solar.GroundReflectance, solar.Perez)
	if scenario.SkylineOf(s.Skyline).Hides(at) {
		return math.Max(0, in.Sky+in.Horizon+in.Ground)
	}
	return in.Total()
}
