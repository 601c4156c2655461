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

// SunTimes says when the sun rises, stands highest and sets at a place on a day.
func SunTimes(p *Place, day int) solar.Day {
	return solar.DayAt(p.LatDeg*math.Pi/180, p.LonDeg*math.Pi/180, julian0(day), p.Clock.At(day))
}

// SunYear is the sun's course over a year at a place.
type SunYear [Days]SunDay

// SunYearOf returns the sun's year at a place.
func SunYearOf(p *Place) (y SunYear) {
	for day := range y {
		y[day] = SunDayOf(p, day)
	}
	return y
}

// CosZenith is that of the sun at an hour counted from the year's start, which may lie
// beyond its ends; 0 at night.
func (y *SunYear) CosZenith(at float64) float64 {
	at = math.Mod(at+Hours, Hours)
	day := min(int(at/24), Days-1)
	sun := &y[day]
	return math.Max(0, sun.CosZenith((at-float64(day)*24-sun.Noon)*math.Pi/12))
}

// MeanCosZenith is the mean over a stretch of hours, its night included.
func (y *SunYear) MeanCosZenith(from, length float64) (mean float64) {
	for i := range Slices {
		mean += y.CosZenith(sliceAt(from, length, i)) / Slices
	}
	return mean
}

// Slices is the number of equal parts into which a stretch of light is cut to fall on
// the hours of another clock.
const Slices = 12

func sliceAt(from, length float64, i int) float64 { return from + (float64(i)+0.5)*length/Slices }

// Cut divides the light of a stretch of hours over its parts, as the cosine of the
// zenith angle runs, evenly at night, so that no energy is lost or made. put gets the
// hour that holds a part, counted from the year's start, and the part's share.
func (y *SunYear) Cut(from, length float64, put func(hour int, share float64)) {
	var weight [Slices]float64
	sum := 0.0
	for i := range weight {
		weight[i] = y.CosZenith(sliceAt(from, length, i))
		sum += weight[i]
	}
	for i, w := range weight {
		share := 1.0 / Slices
		if sum > 0 {
			share = w / sum
		}
		put(int(math.Floor(sliceAt(from, length, i))), share)
	}
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
