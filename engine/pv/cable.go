package pv

// Copper's relative rise of resistance with temperature at 20 degC, 1/K (0.00393,
// IACS annealed copper; handbook value).
const copperPerK = 0.00393

// cableOhmPerKm are the highest resistances of flexible plain copper conductors (class
// 5) at 20 degC by cross-section: IEC 60228:2004, table 3 (read in tables that repeat
// it).
var cableOhmPerKm = [...]struct{ mm2, ohmPerKm float64 }{
	{1.5, 13.3}, {2.5, 7.98}, {4, 4.95}, {6, 3.3}, {10, 1.91}, {16, 1.21}, {25, 0.78}, {35, 0.554}, {50, 0.386},
}

// CableSizes are the cross-sections in mm2 that CableOhms knows.
func CableSizes() (list []float64) {
	for _, c := range cableOhmPerKm {
		list = append(list, c.mm2)
	}
	return list
}

// CableOhms is the resistance of both conductors of a copper cable of that length (m,
// one way), cross-section (mm2, one of CableSizes) and temperature (degC). ok is false
// for another cross-section.
func CableOhms(lengthM, mm2, tempC float64) (ohms float64, ok bool) {
	for _, c := range cableOhmPerKm {
		if c.mm2 == mm2 {
			return 2 * lengthM / 1000 * c.ohmPerKm * (1 + copperPerK*(tempC-20)), true
		}
	}
	return 0, false
}
