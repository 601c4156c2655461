package solar

import "math"

// Plane is the orientation of a surface, rad: tilt from horizontal, azimuth
// clockwise from north of the direction it faces.
type Plane struct{ Tilt, Azimuth float64 }

// CosIncidence returns the cosine of the angle between the sun and the plane's
// normal; negative behind the plane.
func (p Plane) CosIncidence(sun Direction) float64 {
	sinE, cosE := math.Sincos(sun.Elevation)
	return sinE*math.Cos(p.Tilt) + cosE*math.Sin(p.Tilt)*math.Cos(sun.Azimuth-p.Azimuth)
}

// SkyModel says how diffuse light is spread over the sky.
type SkyModel uint8

const (
	HayDavies SkyModel = iota // isotropic with a circumsolar part (Hay & Davies 1980)
	Isotropic                 // the same from everywhere (Liu & Jordan 1963)
)

// GroundReflectance is the default albedo (common practice, no source).
const GroundReflectance = 0.2

// InPlane is irradiance on a plane, W/m2. Circumsolar light comes from the sun's
// direction, Sky from everywhere above.
type InPlane struct{ Beam, Circumsolar, Sky, Ground float64 }

// Total is the sum of the parts.
func (i InPlane) Total() float64 { return i.Beam + i.Circumsolar + i.Sky + i.Ground }

// Transpose moves horizontal irradiance into a plane. beam and diffuse are
// horizontal, W/m2; rb is the ratio of beam on the plane to beam on the
// horizontal (for an instant max(0, cos theta)/cos zenith, for an hour the ratio
// of the means over its sunlit part); anisotropy is beam normal irradiance over
// extraterrestrial normal irradiance, 0 to 1.
func (p Plane) Transpose(beam, diffuse, rb, anisotropy, albedo float64, model SkyModel) InPlane {
	cosTilt := math.Cos(p.Tilt)
	if model == Isotropic {
		anisotropy = 0
	}
	return InPlane{
		Beam:        beam * rb,
		Circumsolar: diffuse * anisotropy * rb,
		Sky:         diffuse * (1 - anisotropy) * (1 + cosTilt) / 2,
		Ground:      (beam + diffuse) * albedo * (1 - cosTilt) / 2,
	}
}

// IncidenceModifier returns the part of light that passes a module's front at an
// angle of incidence, against normal incidence. ASHRAE form with b0 = 0.05
// (Souka & Safwat 1966); 0 where it would be negative.
func IncidenceModifier(cosIncidence float64) float64 {
	const b0 = 0.05
	if cosIncidence <= b0/(1+b0) {
		return 0
	}
	return 1 - b0*(1/cosIncidence-1)
}

// SkyIncidenceModifier is IncidenceModifier for isotropic light at its effective
// angle of incidence 59.7 - 0.1388 b + 0.001497 b2 degrees, b the tilt in
// degrees. Brandemuehl & Beckman 1980.
func (p Plane) SkyIncidenceModifier() float64 {
	b := p.Tilt * 180 / math.Pi
	return IncidenceModifier(math.Cos((59.7 - 0.1388*b + 0.001497*b*b) * math.Pi / 180))
}
