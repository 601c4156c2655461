package visit

import (
	"suncask/engine/pv"
	"suncask/engine/simulate"
)

// CableLossPct is what a copper cable of that length (m, one way) and cross-section (mm2, one of
// pv.CableSizes) loses of the power at its start, %, at those volts and amps: 2 L r I/V.
func CableLossPct(lengthM, mm2, volts, amps float64) float64 {
	ohms, ok := pv.CableOhms(lengthM, mm2, simulate.CableC)
	if !ok || volts <= 0 {
		return 0
	}
	return 100 * ohms * amps / volts
}

// SmallestCable is the smallest cross-section, mm2, that loses no more than lossPct and carries
// carryA on a surface; ok is false where none of pv.CableSizes does.
func SmallestCable(lengthM, volts, amps, carryA, lossPct float64) (mm2 float64, ok bool) {
	for _, size := range pv.CableSizes() {
		if carries, _ := pv.CableAmps(size); carries >= carryA && CableLossPct(lengthM, size, volts, amps) <= lossPct {
			return size, true
		}
	}
	return 0, false
}

// Lengths and bounds of a table of cables.
var (
	CableLengthsM = [...]float64{5, 10, 15, 20, 30, 40, 60}
	CableLossPcts = [...]float64{1, 2, 3}
)
