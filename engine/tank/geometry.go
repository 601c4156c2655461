package tank

import "math"

// Orientation of the cylinder's axis.
type Orientation uint8

const (
	Upright Orientation = iota
	Lying
)

// Geometry describes the tank as a cylinder with flat ends. It matters only to
// conduction between layers.
type Geometry struct {
	Orientation      Orientation
	LengthToDiameter float64 // along the axis, > 0; 0 means 2.5
	// ConductivityWPerMK is that of the water (0.64 at 50 degC, IAPWS) with what the wall
	// adds over its cross-section, see [WallConductivity]. 0 switches conduction off.
	ConductivityWPerMK float64
}

const defaultSlenderness = 2.5

// waterWPerMK is the thermal conductivity of water at 50 degC (IAPWS, from memory).
const waterWPerMK = 0.64

// Wall is what a tank's own wall is made of.
type Wall uint8

const (
	SteelWall     Wall = iota // enamelled
	StainlessWall             // thin
	CopperWall
)

// walls are conductivities, W/(m K) (handbook values, from memory), and usual thicknesses,
// m (common practice, no source).
var walls = [...]struct{ conductivity, thickness float64 }{{50, 0.0025}, {15, 0.001}, {390, 0.0007}}

// WallConductivity is what a tank's water and wall conduct together over the water's
// cross-section, W/(m K): k_w + k s P/A with the wall's thickness s and the perimeter P and
// area A of the cross-section, of a lying tank at half its height.
func (g Geometry) WallConductivity(w Wall, litres float64) float64 {
	d, l := g.sizes(litres)
	perimeter := 4 / d
	if g.Orientation == Lying {
		perimeter = 2/d + 2/l
	}
	return waterWPerMK + walls[w].conductivity*walls[w].thickness*perimeter
}

// sizes returns diameter and length in metres of a tank of that many litres.
func (g Geometry) sizes(litres float64) (diameterM, lengthM float64) {
	ratio := g.LengthToDiameter
	if ratio == 0 {
		ratio = defaultSlenderness
	}
	diameterM = math.Cbrt(4 * litres / 1000 / (math.Pi * ratio))
	return diameterM, ratio * diameterM
}

// areaM2 is the horizontal cross-section at the height below which the fraction
// f of the volume lies.
func (g Geometry) areaM2(litres, f float64) float64 {
	d, l := g.sizes(litres)
	if g.Orientation == Upright {
		return math.Pi / 4 * d * d
	}
	h := 2 * HeightFraction(f) // in radii
	return l * d * math.Sqrt(h*(2-h))
}

// SegmentFraction returns the part of a lying cylinder's volume that lies below
// the fraction h of its diameter: the circular segment. 0 <= h <= 1.
func SegmentFraction(h float64) float64 {
	c := 1 - 2*math.Min(math.Max(h, 0), 1)
	return (math.Acos(c) - c*math.Sqrt(1-c*c)) / math.Pi
}

// HeightFraction is the inverse of SegmentFraction, to 1e-12, by bisection.
func HeightFraction(f float64) float64 {
	lo, hi := 0.0, 1.0
	for range 42 {
		mid := (lo + hi) / 2
		if SegmentFraction(mid) < f {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

// InletMixedLitres returns the well-mixed volume V_m at the inlet that makes a tank, heated
// from coldC to hotC but for the water below its element, give the mixed water at 40 degC
// on its label. With r = (T_h - T_c)/(40 - T_c), V litres and B of them below the element
// the test gives
//
//	r (V - B) - V_m  where the mixed zone is above 40 degC, r (V_m - B) >= V_m,
//	r (V - V_m)      where it is not.
//
// ok is false where no zone that holds the water below the element, and is no more than
// half of the tank, does: of the labels in between, least and most.
func InletMixedLitres(litres, below, v40, hotC, coldC float64) (mixed, least, most float64, ok bool) {
	r := (hotC - coldC) / (40 - coldC)
	given := func(mixed float64) float64 {
		return r*(litres-math.Max(mixed, below)) + math.Max(0, r*(math.Max(mixed, below)-below)-mixed)
	}
	least, most = given(litres/2), r*(litres-below)
	if v40 < least || v40 > most {
		return 0, least, most, false
	}
	mixed = litres - v40/r
	if r*(mixed-below) >= mixed {
		mixed = r*(litres-below) - v40
	}
	if mixed < leastMixed { // rounding
		mixed = 0
	}
	return math.Min(mixed, litres/2), least, most, true
}
