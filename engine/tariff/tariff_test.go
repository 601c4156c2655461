package tariff

import (
	"math"
	"testing"
)

func TestAt_Analytic(t *testing.T) {
	flat := Tariff{PerKWh: 0.3}
	night := Tariff{PerKWh: 0.3, LowPerKWh: 0.12, LowFrom: 22 * 60, LowTo: 6 * 60}
	noon := Tariff{PerKWh: 0.3, LowPerKWh: 0.2, LowFrom: 11 * 60, LowTo: 15 * 60}
	for _, c := range []struct {
		name   string
		t      Tariff
		minute int
		want   float64
	}{
		{"flat", flat, 0, 0.3}, {"flat", flat, 1439, 0.3},
		{"night, before", night, 1319, 0.3}, {"night, first minute", night, 1320, 0.12},
		{"night, midnight", night, 0, 0.12}, {"night, last minute", night, 359, 0.12}, {"night, after", night, 360, 0.3},
		{"noon, first minute", noon, 660, 0.2}, {"noon, after", noon, 900, 0.3},
	} {
		if got := c.t.At(c.minute); got != c.want {
			t.Errorf("%s at minute %d: %g, want %g", c.name, c.minute, got, c.want)
		}
	}
	if !flat.Flat() || night.Flat() {
		t.Error("Flat is wrong")
	}
}

// Bands off-peak 22-06 at 0.12, else 0.20: 3 kW from 23 to 1 h cost 0.72
// (computed 2026 for a band that wraps past midnight).
func TestAt_WrappingBill(t *testing.T) {
	b := Tariff{PerKWh: 0.2, LowPerKWh: 0.12, LowFrom: 22 * 60, LowTo: 6 * 60}
	sum := 0.0
	for m := 23 * 60; m < 25*60; m++ {
		sum += b.At(m%1440) * 3 / 60
	}
	if math.Abs(sum-0.72) > 1e-9 {
		t.Errorf("bill %.4f, want 0.72", sum)
	}
}
