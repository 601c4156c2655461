package climate

import (
	"math"

	"suncask/engine/solar"
)

// Substeps is the number of instants at which each hour's sun is taken.
const Substeps = 6

// SunDay is the sun's course over one local day at a place.
type SunDay struct {
	Latitude, Declination float64 // rad
	Noon                  float64 // local clock, h
	ExtraWm2              float64 // extraterrestrial normal irradiance
	Sunset                float64 // geometric hour angle, rad
	ExtraJ                float64 // daily extraterrestrial irradiation on the horizontal, J/m2
}

// SunDayOf returns the sun's day at a place. Declination and equation of time
// are those of noon; they move less than 0.2 deg and 0.25 min from it.
func SunDayOf(p *Place, day int) SunDay {
	lat, lon := p.LatDeg*math.Pi/180, p.LonDeg*math.Pi/180
	offset := p.Clock.At(day)
	sun := solar.At(julian0(day) + (12-p.LonDeg/15)/24)
	d := SunDay{
		Latitude: lat, Declination: sun.Declination,
		Noon:     12 + offset - lon*12/math.Pi - sun.EquationOfTime/60,
		ExtraWm2: solar.Constant / (sun.DistanceAU * sun.DistanceAU),
		Sunset:   solar.SunsetHourAngle(lat, sun.Declination),
	}
	d.ExtraJ = solar.ExtraterrestrialDay(lat, d.Declination, d.ExtraWm2)
	return d
}

// ClearJ is the day's irradiation on the horizontal under a Haurwitz clear sky, J/m2.
func (d *SunDay) ClearJ() (joules float64) {
	for h := range 24 {
		for s := range Substeps {
			joules += solar.ClearSky(d.CosZenith(d.HourAngle(h, s))) * 3600 / Substeps
		}
	}
	return joules
}

// HourAngle is the sun's at the middle of a sub-step of a local hour, rad.
func (d *SunDay) HourAngle(hour, sub int) float64 {
	clock := float64(hour) + (float64(sub)+0.5)/Substeps
	return math.Remainder((clock-d.Noon)*math.Pi/12, 2*math.Pi)
}

// CosZenith for an hour angle.
func (d *SunDay) CosZenith(w float64) float64 {
	return math.Sin(d.Latitude)*math.Sin(d.Declination) + math.Cos(d.Latitude)*math.Cos(d.Declination)*math.Cos(w)
}

// HourLight is the mean irradiance on the horizontal in one hour, W/m2.
type HourLight struct{ Beam, Diffuse float64 }

// Spread fills a local day's hours with a day's irradiation (J/m2 on the
// horizontal). The diffuse part follows Erbs' daily form, the hours r_t and r_d;
// both are renormalised, and what r_t leaves below the diffuse light counts as
// diffuse, so that the day's sum is exact.
func (d *SunDay) Spread(dayJ float64, out *[24]HourLight) {
	*out = [24]HourLight{}
	if dayJ <= 0 || d.ExtraJ <= 0 {
		return
	}
	var global, diffuse [24]float64
	sumG, sumD := 0.0, 0.0
	for h := range 24 {
		for s := range Substeps {
			w := d.HourAngle(h, s)
			global[h] += solar.HourShareGlobal(w, d.Sunset)
			diffuse[h] += solar.HourShareDiffuse(w, d.Sunset)
		}
		sumG += global[h]
		sumD += diffuse[h]
	}
	if sumG <= 0 || sumD <= 0 {
		// The sun shows for less than a sub-step: all of it about noon.
		h := int(math.Mod(d.Noon+24, 24))
		out[h].Diffuse = dayJ / 3600
		return
	}
	share := solar.DiffuseShareDaily(dayJ/d.ExtraJ, d.Sunset)
	for h := range 24 {
		g := dayJ / 3600 * global[h] / sumG
		f := math.Min(g, share*dayJ/3600*diffuse[h]/sumD)
		out[h] = HourLight{Beam: g - f, Diffuse: f}
	}
}
