package solar

import "math"

// horizon is the true elevation of the sun's centre at rise and set: refraction
// of 34 and a radius of 16 arc minutes (almanac convention).
const horizon = -50.0 / 60 * math.Pi / 180

// Day says when the sun rises, culminates and sets, in hours of a local clock
// from that day's midnight; Rise may be negative and Set over 24 where the clock
// is far from solar time. Without rise and set, Polar is +1 (sun all day) or -1
// (no sun) and Rise and Set are six hours from noon.
type Day struct {
	Rise, Noon, Set float64
	Polar           int
}

// DayAt returns the sun's day at a place. julianDay0 is the Julian day of the
// local midnight taken as if it were UTC; offsetHours is local clock less UTC.
// Within a minute outside the polar edge.
func DayAt(latitude, longitude, julianDay0, offsetHours float64) Day {
	utc := func(hour float64) float64 { return julianDay0 + (hour-offsetHours)/24 }
	noon := 12 + offsetHours - longitude*12/math.Pi
	for range 2 {
		noon = 12 + offsetHours - longitude*12/math.Pi - At(utc(noon)).EquationOfTime/60
	}
	d := Day{Noon: noon}
	edge := func(sign float64) (float64, int) {
		hour := noon + 6*sign
		for range 4 {
			sun := At(utc(hour))
			h, polar := halfDay(latitude, sun.Declination, horizon)
			if polar != 0 {
				return noon + 6*sign, polar
			}
			base := 12 + offsetHours - longitude*12/math.Pi - sun.EquationOfTime/60
			hour = base + sign*h*12/math.Pi
		}
		return hour, 0
	}
	var polarRise, polarSet int
	d.Rise, polarRise = edge(-1)
	d.Set, polarSet = edge(+1)
	if polarRise != 0 || polarSet != 0 {
		d.Polar = polarRise + polarSet
		d.Polar = min(max(d.Polar, -1), 1)
		if d.Polar == 0 {
			d.Polar = polarRise
		}
		d.Rise, d.Set = noon-6, noon+6
	}
	return d
}

// halfDay is the hour angle at which the sun crosses an elevation, rad, or the
// sign of the polar day or night.
func halfDay(latitude, declination, elevation float64) (float64, int) {
	c := (math.Sin(elevation) - math.Sin(latitude)*math.Sin(declination)) /
		(math.Cos(latitude) * math.Cos(declination))
	switch {
	case c >= 1:
		return 0, -1
	case c <= -1:
		return math.Pi, 1
	}
	return math.Acos(c), 0
}

// SunsetHourAngle is the geometric one (elevation 0) in [0, pi]: 0 in polar
// night, pi in polar day. Duffie & Beckman (1.6.10).
func SunsetHourAngle(latitude, declination float64) float64 {
	h, _ := halfDay(latitude, declination, 0)
	return h
}

// ExtraterrestrialDay returns the daily irradiation on a horizontal plane
// outside the air, J/m2, for the irradiance normalWm2 of a plane facing the sun.
// Duffie & Beckman (1.10.3).
func ExtraterrestrialDay(latitude, declination, normalWm2 float64) float64 {
	ws := SunsetHourAngle(latitude, declination)
	return 86400 / math.Pi * normalWm2 * (math.Cos(latitude)*math.Cos(declination)*math.Sin(ws) +
		ws*math.Sin(latitude)*math.Sin(declination))
}
