package solar

import "math"

// ClearSky returns the global horizontal irradiance of a clear day, W/m2, for
// the cosine of the sun's zenith angle. Haurwitz 1945 with the exponent in use
// today; it knows neither height above sea level nor haze, and is used as a bound.
func ClearSky(cosZenith float64) float64 {
	if cosZenith <= 0 {
		return 0
	}
	return 1098 * cosZenith * math.Exp(-0.059/cosZenith)
}

// DiffuseShareHourly returns the diffuse part of an hour's global irradiation for
// its clearness index. Erbs, Klein & Duffie 1982, as Duffie & Beckman (2.10.1); for
// measured hours without a diffuse value.
func DiffuseShareHourly(clearness float64) float64 {
	k := clearness
	switch {
	case k <= 0.22:
		return 1 - 0.09*math.Max(0, k)
	case k <= 0.80:
		return 0.9511 + k*(-0.1604+k*(4.388+k*(-16.638+k*12.336)))
	}
	return 0.165
}

// DiffuseShareDaily returns the diffuse part of a day's global irradiation for
// its clearness index and sunset hour angle (rad), never above 1. Erbs, Klein &
// Duffie 1982, as Duffie & Beckman (2.11.1).
func DiffuseShareDaily(clearness, sunset float64) float64 {
	k := clearness
	if sunset <= lowSun {
		if k >= 0.715 {
			return 0.143
		}
		return 1 + k*(-0.2727+k*(2.4495+k*(-11.9514+k*9.3879)))
	}
	if k >= 0.722 {
		return 0.175
	}
	return math.Min(1, 1+k*(0.2832+k*(-2.5557+k*0.8448)))
}

// DiffuseShareMonthly returns the diffuse part of a month's mean global
// irradiation for its mean clearness index (0.3 to 0.8) and the sunset hour angle
// (rad) of its average day. Erbs, Klein & Duffie 1982, as Duffie & Beckman
// (2.12.1). Days are not split with it: see DiffuseShareDaily.
func DiffuseShareMonthly(clearness, sunset float64) float64 {
	k := clearness
	if sunset <= lowSun {
		return 1.391 + k*(-3.560+k*(4.189-k*2.137))
	}
	return 1.311 + k*(-3.022+k*(3.427-k*1.821))
}

// lowSun is the sunset hour angle up to which Erbs' forms are those of winter.
const lowSun = 81.4 * math.Pi / 180

// HourShareGlobal returns r_t, the part of a day's global irradiation that falls
// in the hour about the hour angle w, for the sunset hour angle ws (rad).
// Collares-Pereira & Rabl 1979, as Duffie & Beckman (2.13.2). Its sum over a day
// is 0.991 to 1.001: renormalise.
func HourShareGlobal(w, ws float64) float64 {
	a := 0.409 + 0.5016*math.Sin(ws-math.Pi/3)
	b := 0.6609 - 0.4767*math.Sin(ws-math.Pi/3)
	return math.Max(0, a+b*math.Cos(w)) * HourShareDiffuse(w, ws)
}

// HourShareDiffuse returns r_d, the same for the diffuse part. Liu & Jordan
// 1960, as Duffie & Beckman (2.13.4). At the pole in summer, where the sun circles
// level, it is 1/24.
func HourShareDiffuse(w, ws float64) float64 {
	if math.Abs(w) >= ws {
		return 0
	}
	sin, cos := math.Sincos(ws)
	return math.Pi / 24 * (math.Cos(w) - cos) / (sin - ws*cos)
}
