package visit

import (
	"math"
	"testing"
)

func TestJoints_Closed(t *testing.T) {
	for _, r := range plates(t, "fault", 1) {
		n, ok := FaultModules(int(r[0]), r[1], r[2])
		close(t, "fault", n, r[3], 0.01)
		if _, both := FaultModules(6, 100, 100); !ok || both {
			t.Error("two positive readings are one fault")
		}
	}
	for _, r := range plates(t, "joint", 1) {
		ohms, watts, ok := Joint(r[0], r[1], r[2], r[3])
		close(t, "joint, ohm", ohms, r[4], 0.001)
		close(t, "joint, W", watts, r[5], 0.2)
		if _, _, none := Joint(200, 190, 0, 0.1); !ok || none {
			t.Error("no current tells a joint")
		}
	}
	for _, r := range plates(t, "insulation", 2) {
		megohm, ok := ParallelMegohm(r[0], r[1])
		close(t, "side by side", megohm, r[2], 0.001)
		if !ok {
			t.Error("two readings are refused")
		}
	}
}

// Readings that none can be are refused.
func TestJoints_Refused(t *testing.T) {
	nan := math.NaN()
	for _, v := range [][4]float64{{183, 178, 0, 0.17}, {183, 178, -9, 0.17}, {178, 183, 9, 0.17}, {183, 178, 9, -0.1}, {nan, 178, 9, 0.17}, {183, nan, 9, 0.17}, {183, 178, nan, 0.17}, {183, 178, 9, nan}} {
		if _, _, ok := Joint(v[0], v[1], v[2], v[3]); ok {
			t.Errorf("joint: %g is taken", v)
		}
	}
	for _, v := range [][3]float64{{6, 0, 0}, {6, -100, -200}, {6, 200, 100}, {6, -100, 100}, {0, 137, -69}, {6, nan, -69}, {6, 137, nan}} {
		if _, ok := FaultModules(int(v[0]), v[1], v[2]); ok {
			t.Errorf("fault: %g is taken", v)
		}
	}
	for _, v := range [][]float64{nil, {-1, 2}, {nan, 2}, {0, -1}} {
		if _, ok := ParallelMegohm(v...); ok {
			t.Errorf("insulation: %g is taken", v)
		}
	}
}

// A fault between two modules of a string is found again from the volts of the modules on either
// side of it, at both ends too (a divider: computed here module by module).
func TestFaultModules_Analytic(t *testing.T) {
	const n, each = 7, 34.3
	for below := range n + 1 {
		plus, minus := 0.0, 0.0
		for module := range n {
			if module < below {
				minus -= each
			} else {
				plus += each
			}
		}
		at, ok := FaultModules(n, plus, minus)
		close(t, "fault", at, float64(below), 1e-9)
		if !ok {
			t.Errorf("a fault after %d modules is refused", below)
		}
	}
}

// Strings together measure no more than the worst of them, and no less than it over their number.
func TestParallelMegohm_Property(t *testing.T) {
	for _, each := range [][]float64{{2}, {2, 2, 2}, {0.4, 800}, {5, 3, 1.2, 40}, {0, 7}, {math.Inf(1), 3}} {
		worst := math.Inf(1)
		for _, r := range each {
			worst = min(worst, r)
		}
		got, ok := ParallelMegohm(each...)
		if !ok || got > worst+1e-12 || got < worst/float64(len(each))-1e-12 {
			t.Errorf("%g: %g", each, got)
		}
	}
}
