package pv

// Copper's relative rise of resistance with temperature at 20 degC, 1/K (0.00393,
// IACS annealed copper; handbook value).
const copperPerK = 0.00393

// cables are the highest resistances of flexible tinned copper conductors (class 5) at
// 20 degC by cross-section (IEC 60228:2004, table 3, metal-coated, from memory), as cable
// for modules has them, and the current of two loaded cables that touch on a surface in
// air of 60 degC (EN 50618, table A.3, from memory).
var cables = [...]struct{ mm2, ohmPerKm, amps float64 }{
	{1.5, 13.7, 24}, {2.5, 8.21, 33}, {4, 5.09, 44}, {6, 3.39, 57}, {10, 1.95, 79}, {16, 1.24, 107}, {25, 0.795, 142}, {35, 0.565, 176}, {50, 0.393, 221},
}

// CableSizes are the cross-sections in mm2 that CableOhms knows.
func CableSizes() (list []float64) {
	for _, c := range cables {
		list = append(list, c.mm2)
	}
	return list
}

// CableOhms is the resistance of both conductors of a copper cable of that length (m,
// one way), cross-section (mm2, one of CableSizes) and temperature (degC). ok is false
// for another cross-section.
func CableOhms(lengthM, mm2, tempC float64) (ohms float64, ok bool) {
	for _, c := range cables {
		if c.mm2 == mm2 {
			return 2 * lengthM / 1000 * c.ohmPerKm * (1 + copperPerK*(tempC-20)), true
		}
	}
	return 0, false
}

// CableAmps is the current that a cable of that cross-section (mm2, one of CableSizes)
// carries on a surface; in conduit, bundles and under insulation it carries less. ok is
// false for another cross-section.
func CableAmps(mm2 float64) (amps float64, ok bool) {
	for _, c := range cables {
		if c.mm2 == mm2 {
			return c.amps, true
		}
	}
	return 0, false
}
