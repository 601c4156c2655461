package solar

import "math"

// ClearSky returns the global horizontal irradiance of a clear day, W/m2, for
// the cosine of the sun's zenith angle. Haurwitz 1945; it knows neither height
// above sea level nor haze, and is used as a bound.
func ClearSky(cosZenith float64) float64 {
	if cosZenith <= 0 {
		return 0
	}
	return 1098 * cosZenith * math.Exp(-0.057/cosZenith)
}

// DiffuseShareDaily returns the diffuse part of a day's global irradiation for
// its clearness index and sunset hour angle (rad). Erbs, Klein & Duffie 1982, as
// Duffie & Beckman (2.11.1).
func DiffuseShareDaily(clearness, sunset float64) float64 {
	k := clearness
	if sunset <= 81.4*math.Pi/180 {
		if k >= 0.715 {
			return 0.143
		}
		return 1 + k*(-0.2727+k*(2.4495+k*(-11.9514+k*9.3879)))
	}
	if k >= 0.722 {
		return 0.175
	}
	return 1 + k*(0.2832+k*(-2.5557+k*0.8448))
}

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
