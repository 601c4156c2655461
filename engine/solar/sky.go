package solar

import "math"

// SkyModel says how diffuse light is spread over the sky.
type SkyModel uint8

const (
	HayDavies SkyModel = iota // isotropic with a circumsolar part (Hay & Davies 1980)
	Perez                     // circumsolar and horizon brightening by classes of clearness (Perez et al. 1990)
	Isotropic                 // the same from everywhere (Liu & Jordan 1963)
)

// Sky is the light above a horizontal plane, at an instant or as the mean of an
// hour.
type Sky struct {
	Beam, Diffuse float64 // on the horizontal, W/m2
	CosZenith     float64 // of the sun, over its sunlit part; above 0 where Beam is
	Extra         float64 // extraterrestrial normal irradiance, W/m2
	AirMass       float64 // relative; read by Perez alone
}

// InPlane is irradiance on a plane, W/m2. Circumsolar light comes from the sun's
// direction, Sky from everywhere above, Horizon from a band at the horizon (negative
// where the horizon is darker than the sky), Ground from below.
type InPlane struct{ Beam, Circumsolar, Sky, Horizon, Ground float64 }

// Total is the sum of the parts, not negative.
func (i InPlane) Total() float64 {
	return math.Max(0, i.Beam+i.Circumsolar+i.Sky+i.Horizon+i.Ground)
}

// Transpose moves horizontal irradiance into a plane. rb is the ratio of beam on
// the plane to beam on the horizontal: for an instant max(0, cos theta)/cos zenith,
// for an hour the ratio of the means over its sunlit part.
func (p Plane) Transpose(s Sky, rb, albedo float64, model SkyModel) InPlane {
	sinTilt, cosTilt := math.Sincos(p.Tilt)
	view := (1 + cosTilt) / 2
	in := InPlane{
		Beam:   s.Beam * rb,
		Ground: (s.Beam + s.Diffuse) * albedo * (1 - cosTilt) / 2,
	}
	switch model {
	case Isotropic:
		in.Sky = s.Diffuse * view
	case HayDavies:
		anisotropy := 0.0
		if s.Beam > 0 {
			anisotropy = math.Min(1, s.Beam/s.CosZenith/s.Extra)
		}
		in.Circumsolar = s.Diffuse * anisotropy * rb
		in.Sky = s.Diffuse * (1 - anisotropy) * view
	case Perez:
		f1, f2 := perezBrightness(s)
		// a/b: the sun's disc seen by the plane over that seen by the horizontal, the
		// latter not below 85 degrees from the zenith.
		disc := rb * s.CosZenith / math.Max(perezLow, s.CosZenith)
		in.Circumsolar = s.Diffuse * f1 * disc
		in.Sky = s.Diffuse * (1 - f1) * view
		in.Horizon = s.Diffuse * f2 * sinTilt
	}
	return in
}

var perezLow = math.Cos(85 * math.Pi / 180)

// perezUpper are the upper bounds of the classes of clearness epsilon.
var perezUpper = [7]float64{1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2}

// perezF are F11 F12 F13 F21 F22 F23 by class: Perez, Ineichen, Seals, Michalsky &
// Stewart 1990, table 6, the composite of all sites.
var perezF = [8][6]float64{
	{-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
	{0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
	{0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
	{0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
	{0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
	{1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
	{1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
	{0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
}

// perezBrightness returns the circumsolar and the horizon brightness F1 >= 0 and
// F2 for the sky's clearness epsilon and brightness Delta.
func perezBrightness(s Sky) (f1, f2 float64) {
	if s.Diffuse <= 0 {
		return 0, 0
	}
	zenith := math.Acos(math.Min(1, math.Max(0, s.CosZenith)))
	normal := 0.0
	if s.Beam > 0 {
		normal = s.Beam / s.CosZenith
	}
	k := 1.041 * zenith * zenith * zenith
	epsilon := ((s.Diffuse+normal)/s.Diffuse + k) / (1 + k)
	delta := s.Diffuse * s.AirMass / s.Extra
	class := 0
	for class < len(perezUpper) && epsilon >= perezUpper[class] {
		class++
	}
	f := &perezF[class]
	return math.Max(0, f[0]+f[1]*delta+f[2]*zenith), f[3] + f[4]*delta + f[5]*zenith
}
