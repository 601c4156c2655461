package format

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Shown parts add up to the shown sum, and none is a whole last digit off.
func TestAddUp_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 9))
	for range 5000 {
		decimals := r.IntN(3)
		unit := math.Pow(10, -float64(decimals))
		parts, sum := make([]float64, 1+r.IntN(13)), 0.0
		for i := range parts {
			parts[i] = math.Pow(10, 4*r.Float64()-1) * (r.Float64() - 0.1)
			sum += parts[i]
		}
		total := 0.0
		for i, v := range AddUp(parts, decimals) {
			if total += v; math.Abs(v-parts[i]) > unit*(1+1e-6) {
				t.Fatalf("%v: %g is shown as %g", parts, parts[i], v)
			}
		}
		if want := math.Round(sum/unit) * unit; math.Abs(total-want) > unit*1e-6 {
			t.Fatalf("%v with %d decimals: parts show %g, their sum %g", parts, decimals, total, want)
		}
	}
}

// A worked apportionment (Balinski & Young 1982, chapter 2, from memory: 26 seats by quotas
// 9.061, 7.179, 5.259, 3.319, 1.182) and a difference of shown figures.
func TestAddUp_Worked(t *testing.T) {
	got := AddUp([]float64{9.061, 7.179, 5.259, 3.319, 1.182}, 0)
	for i, want := range []float64{9, 7, 5, 4, 1} {
		if got[i] != want {
			t.Fatalf("%v", got)
		}
	}
	if d := Less(978.4, 443.5, "EUR"); d != 534 {
		t.Errorf("%g", d)
	}
	if d := Less(12.345, 9.111, "JPY"); d != 3 {
		t.Errorf("%g", d)
	}
	if d := Less(12.345, 9.111, "EUR"); math.Abs(d-3.24) > 1e-9 { // 12.35 less 9.11
		t.Errorf("%g", d)
	}
}

// Running sums of shown payments are the shown running sums.
func TestSteps_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 9))
	for range 1000 {
		payments := make([]float64, 1+r.IntN(41))
		for i := range payments {
			payments[i] = 300 * r.NormFloat64()
		}
		exact, sum := 0.0, 0.0
		for i, v := range Steps(payments, 0) {
			exact += payments[i]
			if sum += v; sum != math.Round(exact) || math.Abs(v-payments[i]) > 1 {
				t.Fatalf("%v: %g is shown as %g, the sum %g as %g", payments, payments[i], v, exact, sum)
			}
		}
	}
}
