// Package solar computes where the sun is and how much of its light falls on a
// plane. Angles are radians inside the package and in its arguments; azimuth is
// clockwise from north, tilt from horizontal, longitude positive to the east.
package solar

import "math"

// Constant is the solar constant in W/m2: 1361 +- 0.5 (Kopp & Lean 2011). Older
// worked examples use 1367; functions that depend on it take it as an argument.
const Constant = 1361.0

// JulianDay returns the Julian day of a civil date (Gregorian calendar, UTC) at
// that many hours after 0 h. Meeus, Astronomical Algorithms (2nd ed.), eq. 7.1.
func JulianDay(year, month, day int, hourUTC float64) float64 {
	if month <= 2 {
		year--
		month += 12
	}
	century := math.Floor(float64(year) / 100)
	b := 2 - century + math.Floor(century/4)
	return math.Floor(365.25*float64(year+4716)) + math.Floor(30.6001*float64(month+1)) +
		float64(day) + hourUTC/24 + b - 1524.5
}

// Ephemeris is the sun as seen from the earth's centre at one instant.
type Ephemeris struct {
	Declination    float64 // rad
	EquationOfTime float64 // apparent minus mean solar time, minutes
	DistanceAU     float64
}

// At returns the sun's ephemeris at a Julian day (UTC). The short series of
// Meeus ch. 25 is good to 0.003 deg between 1950 and 2050; the difference of UTC
// and terrestrial time (70 s, 0.0008 deg) is neglected.
func At(julianDay float64) Ephemeris {
	t := (julianDay - 2451545) / 36525 // eq. 25.1
	rad := math.Pi / 180
	l0 := 280.46646 + t*(36000.76983+t*0.0003032) // (25.2)
	m := (357.52911 + t*(35999.05029-t*0.0001537)) * rad
	e := 0.016708634 - t*(0.000042037+t*0.0000001267)
	c := (1.914602-t*(0.004817+t*0.000014))*math.Sin(m) +
		(0.019993-t*0.000101)*math.Sin(2*m) + 0.000289*math.Sin(3*m)
	omega := (125.04 - 1934.136*t) * rad
	nutation := -0.00478 * math.Sin(omega) // in longitude, deg
	lambda := (l0 + c - 0.00569 + nutation) * rad
	obliquity := (23.4392911 - t*(0.0130042+t*1.64e-7) + 0.00256*math.Cos(omega)) * rad
	alpha := math.Atan2(math.Cos(obliquity)*math.Sin(lambda), math.Cos(lambda)) // (25.6)
	// (28.1): mean longitude less right ascension, aberration and nutation put back.
	eot := math.Remainder(l0-0.0057183-alpha/rad+nutation*math.Cos(obliquity), 360) * 4
	return Ephemeris{
		Declination:    math.Asin(math.Sin(obliquity) * math.Sin(lambda)), // (25.7)
		EquationOfTime: eot,
		DistanceAU:     1.000001018 * (1 - e*e) / (1 + e*math.Cos(m+c*rad)), // (25.5)
	}
}

// Direction is the sun in the observer's sky. Elevation is the true one, without
// refraction; see Refraction.
type Direction struct{ Elevation, Azimuth float64 }

// DirectionAt returns where the sun stands for that hour angle (rad, 0 at solar
// noon, positive in the afternoon), declination and latitude. Meeus (13.5, 13.6).
func DirectionAt(latitude, declination, hourAngle float64) Direction {
	sinLat, cosLat := math.Sincos(latitude)
	sinDec, cosDec := math.Sincos(declination)
	sinH, cosH := math.Sincos(hourAngle)
	elevation := math.Asin(math.Min(1, math.Max(-1, sinLat*sinDec+cosLat*cosDec*cosH)))
	azimuth := math.Atan2(-cosDec*sinH, sinDec*cosLat-cosDec*cosH*sinLat)
	if azimuth < 0 {
		azimuth += 2 * math.Pi
	}
	return Direction{elevation, azimuth}
}

// parallax of the sun at the horizon, rad (8.794 arc seconds).
const parallax = 8.794 / 3600 * math.Pi / 180

// DirectionFrom returns the sun's direction at a Julian day (UTC) from a place.
// Good to 0.01 deg between 1950 and 2050.
func DirectionFrom(latitude, longitude, julianDay float64) Direction {
	sun := At(julianDay)
	d := DirectionAt(latitude, sun.Declination, HourAngle(sun, longitude, julianDay))
	d.Elevation -= parallax * math.Cos(d.Elevation)
	return d
}

// HourAngle returns the sun's hour angle at a longitude, rad in [-pi, pi].
func HourAngle(sun Ephemeris, longitude, julianDay float64) float64 {
	_, day := math.Modf(julianDay + 0.5)
	turn := day + sun.EquationOfTime/1440 - 0.5
	return math.Remainder(turn*2*math.Pi+longitude, 2*math.Pi)
}

// Refraction returns by how much the air lifts a body of that true elevation
// (rad) at an air pressure in hPa and a temperature in degC (1010 and 10 where
// unknown). Saemundsson's formula, Meeus (16.4); 0 below -1 degree, where it does
// not hold.
func Refraction(elevation, hPa, airC float64) float64 {
	deg := elevation * 180 / math.Pi
	if deg < -1 {
		return 0
	}
	return 1.02 / 60 / math.Tan((deg+10.3/(deg+5.11))*math.Pi/180) * math.Pi / 180 * hPa / 1010 * 283 / (273 + airC)
}
