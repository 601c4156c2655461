package visit

import (
	"math"
	"testing"

	"suncask/engine/published"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

func plates(t *testing.T, name string, want int) [][]float64 {
	t.Helper()
	return published.Rows[[]float64](t, "plates.json", name, want)
}

func close(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %g, not %g", what, got, want)
	}
}

func TestPlates_Closed(t *testing.T) {
	for _, r := range plates(t, "element", 1) {
		least, most := pv.OhmsRange(r[0], r[1])
		cold, top := ColdOhms(r[0], r[1])
		close(t, "ohms", pv.Ohms(r[0], r[1]), r[2], 0.01)
		close(t, "least", least, r[3], 0.01)
		close(t, "most", most, r[4], 0.01)
		close(t, "cold", cold, r[5], 0.01)
		close(t, "most, cold", top, r[4], 0.01)
	}
	for _, r := range plates(t, "hot", 1) {
		least, most, ok := HotWatts(r[0], r[1])
		close(t, "least watts", least, r[2], 1)
		close(t, "most watts", most, r[3], 1)
		if _, _, none := HotWatts(0, 240); !ok || none {
			t.Error("no ohms are an element")
		}
	}
	for _, r := range plates(t, "elsewhere", 3) {
		p := prepared(t, func(s *scenario.Scenario) { s.ElementW, s.ElementV, s.SupplyV = r[0], r[1], r[2] })
		close(t, "watts elsewhere", p.BackupW(), r[3], 0.1)
	}
	for _, r := range plates(t, "pulses", 1) {
		watts, ok := PulseWatts(r[0], r[1], r[2])
		close(t, "pulses", watts, r[3], 1)
		if _, none := PulseWatts(1, 1000, 0); !ok || none {
			t.Error("no time is a measurement")
		}
	}
	for _, r := range plates(t, "outside", 1) {
		litres, ok := OutsideLitres(r[0], r[1], r[2])
		close(t, "outside", litres, r[3], 0.1)
		if _, none := OutsideLitres(0.5, 1, 0.25); !ok || none {
			t.Error("insulation alone holds water")
		}
	}
	for _, r := range plates(t, "heated", 1) {
		litres, ok := HeatedLitres(r[0], r[1])
		close(t, "heated", litres, r[2], 0.1)
		if _, none := HeatedLitres(1, 0); !ok || none {
			t.Error("no rise tells litres")
		}
	}
}

func TestLoss_Closed(t *testing.T) {
	for _, r := range plates(t, "night", 2) {
		wPerK, ok := tank.LossOvernight(r[0], r[1], r[2], r[3], r[4])
		close(t, "a night", wPerK, r[5], 0.001)
		close(t, "its uncertainty, %", 100*NightShare(r[1], r[2], r[3]), r[6], 1)
		if !ok {
			t.Error("a night is refused")
		}
	}
	for _, r := range plates(t, "reheat", 1) {
		wPerK, ok := ReheatLoss(r[0], r[1], r[2], r[3])
		close(t, "a reheat", wPerK, r[4], 0.001)
		close(t, "its label", LabelLoss(wPerK), r[5], 0.001)
		if _, none := ReheatLoss(1, 24, 18, 18); !ok || none {
			t.Error("water as cold as its room loses heat")
		}
	}
}

// Readings that none can be are refused, whichever of them is wrong.
func TestPlates_Refused(t *testing.T) {
	nan := math.NaN()
	hot := func(v ...float64) bool { _, _, ok := HotWatts(v[0], v[1]); return ok }
	pulses := func(v ...float64) bool { _, ok := PulseWatts(v[0], v[1], v[2]); return ok }
	outside := func(v ...float64) bool { _, ok := OutsideLitres(v[0], v[1], v[2]); return ok }
	heated := func(v ...float64) bool { _, ok := HeatedLitres(v[0], v[1]); return ok }
	reheat := func(v ...float64) bool { _, ok := ReheatLoss(v[0], v[1], v[2], v[3]); return ok }
	for _, c := range []struct {
		name string
		ok   func(v ...float64) bool
		good []float64
		bad  map[int][]float64 // by the reading that is wrong
	}{
		{"hot", hot, []float64{18.4, 240}, map[int][]float64{0: {0, -1, nan}, 1: {0, -240, nan}}},
		{"pulses", pulses, []float64{10, 1000, 12.5}, map[int][]float64{0: {0, -1, nan}, 1: {0, nan}, 2: {0, -1, nan}}},
		{"outside", outside, []float64{0.56, 1.55, 0.05}, map[int][]float64{0: {0, 0.1, nan}, 1: {0, 0.1, nan}, 2: {-0.01, 0.28, 0.8, nan}}},
		{"heated", heated, []float64{4, 14.8}, map[int][]float64{0: {0, -1, nan}, 1: {0, -1, nan}}},
		{"reheat", reheat, []float64{1.9, 24, 59, 18}, map[int][]float64{0: {0, -1, nan}, 1: {0, -1, nan}, 2: {18, 10, nan}, 3: {59, 70, nan}}},
	} {
		if !c.ok(c.good...) {
			t.Errorf("%s: %g is refused", c.name, c.good)
		}
		for i, list := range c.bad {
			for _, v := range list {
				wrong := append([]float64(nil), c.good...)
				wrong[i] = v
				if c.ok(wrong...) {
					t.Errorf("%s: %g is taken", c.name, wrong)
				}
			}
		}
	}
}

// A night tells less the less the tank cools, and nothing where it cannot have been.
func TestNightShare_Property(t *testing.T) {
	last := 0.0
	for morning := 40.0; morning < 60; morning++ {
		share := NightShare(60, morning, 20)
		if !(share > last) {
			t.Errorf("60 to %g degC: %g, no more than where it cooled further", morning, share)
		}
		last = share
	}
	for _, v := range [][3]float64{{60, 60, 20}, {60, 61, 20}, {60, 20, 20}, {60, 15, 20}, {60, math.NaN(), 20}} {
		if _, ok := tank.LossOvernight(200, v[0], v[1], v[2], 10); ok || !math.IsInf(NightShare(v[0], v[1], v[2]), 1) {
			t.Errorf("a night of %g tells a loss", v)
		}
	}
}
