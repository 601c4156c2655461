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

// GroundReflectance is the default albedo (common practice, no source).
const GroundReflectance = 0.2

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

// GroundIncidenceModifier is the same for light from the ground, at 90 - 0.5788 b
// + 0.002693 b2 degrees. Brandemuehl & Beckman 1980. For a level plane, which no
// light from the ground reaches, it is 0.
func (p Plane) GroundIncidenceModifier() float64 {
	b := p.Tilt * 180 / math.Pi
	return IncidenceModifier(math.Cos((90 - 0.5788*b + 0.002693*b*b) * math.Pi / 180))
}
