package care

import (
	"math"
	"slices"
	"testing"

	"suncask/engine/published"
	"suncask/engine/scenario"
)

func TestFuses_IEC62548(t *testing.T) {
	var b struct {
		Example struct {
			Strings      int
			Isc          float64
			Max          float64 `json:"max_series_fuse"`
			Lower, Upper float64
		}
	}
	published.Block(t, "pv.json", "fuse", &b)
	e := b.Example
	least, most := FuseWindow(e.Isc)
	if math.Abs(least-e.Lower) > 0.005 || math.Abs(most-e.Upper) > 0.005 || !FusesNeeded(e.Strings, e.Isc, e.Max) || FusesNeeded(2, e.Isc, e.Max) {
		t.Errorf("%g to %g A", least, most)
	}
}

func TestFuseSizes_IEC60269(t *testing.T) {
	rows := published.Rows[struct {
		Strings  int
		Isc, Max float64
		Sizes    []float64
	}](t, "pv.json", "fuse_sizes", 4)
	for _, r := range rows {
		if needed := FusesNeeded(r.Strings, r.Isc, r.Max); needed != (r.Sizes != nil) {
			t.Errorf("%+v: needed %v", r, needed)
		}
		if got := FusesThatFit(r.Isc, r.Max); r.Sizes != nil && !slices.Equal(got, r.Sizes) {
			t.Errorf("%+v: %v", r, got)
		}
	}
}

func TestInsulation_IEC62446(t *testing.T) {
	rows := published.Rows[struct {
		Modules int
		Test    float64 `json:"test_V"`
		Megohm  float64
	}](t, "pv.json", "insulation", 5)
	for _, r := range rows {
		if megohm, volts := InsulationTest(r.Modules, 36.9, scenario.Unknown); megohm != r.Megohm || volts != r.Test {
			t.Errorf("%+v: %g megohm at %g V", r, megohm, volts)
		}
		for _, bears := range []float64{600, 1000} { // no test stresses modules beyond their label
			if megohm, volts := InsulationTest(r.Modules, 36.9, bears); megohm != r.Megohm || volts > bears || volts > r.Test {
				t.Errorf("%+v, modules for %g V: %g megohm at %g V", r, bears, megohm, volts)
			}
		}
	}
}

func TestColdOpenV_IEC62548(t *testing.T) {
	rows := published.Rows[struct {
		Voc, Tmin, Max float64
		PerK           float64 `json:"beta_V_per_K"`
		Pct            float64 `json:"beta_pct"`
		VocMax         float64 `json:"voc_max"`
	}](t, "pv.json", "cold_voc", 2)
	for _, r := range rows {
		if got := ColdOpenV(1, r.Voc, r.PerK+r.Pct/100*r.Voc, r.Tmin); math.Abs(got-r.VocMax) > 1e-4 {
			t.Errorf("%+v: %.5f V", r, got)
		}
	}
}
