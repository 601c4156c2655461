package care

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/published"
)

// Kell's formula against densities computed by another one (IAPWS, testdata/water.json): water
// from 5 to 99 degC grows the same to 3e-5 of itself.
func TestExpansion_IAPWS(t *testing.T) {
	rows := published.Rows[[6]float64](t, "water.json", "water_1atm", 21)
	for i, cold := range rows {
		for _, hot := range rows[i:] {
			if cold[0] < 5 {
				continue
			}
			if got, want := Expansion(cold[0], hot[0]), cold[1]/hot[1]-1; math.Abs(got-want) > 3e-5 {
				t.Errorf("%g to %g degC: %.6f, want %.6f", cold[0], hot[0], got, want)
			}
		}
	}
	if got := Expansion(60, 20); got != 0 {
		t.Errorf("cooling pushes out %g", got)
	}
}

// Litres that a heat-up pushes out (Kell 1975, J. Chem. Eng. Data 20, p. 97; formula from memory,
// rows computed apart).
func TestExpansion_Kell(t *testing.T) {
	for _, r := range published.Rows[[4]float64](t, "water.json", "expansion", 3) {
		if got := r[0] * Expansion(r[1], r[2]); math.Abs(got-r[3]) > 0.03 {
			t.Errorf("%g L, %g to %g degC: %.3f L, want %g", r[0], r[1], r[2], got, r[3])
		}
	}
}

// The least vessel by Boyle's law: a row computed apart, and for any pressures the gas of such a
// vessel reaches just 0.9 of the relief valve's pressure when it holds the water.
func TestVesselLitres_Boyle(t *testing.T) {
	for _, r := range published.Rows[[4]float64](t, "water.json", "vessel", 1) {
		if got, ok := VesselLitres(r[0], r[1], r[2]); !ok || math.Abs(got-r[3]) > 0.1 {
			t.Errorf("%g L at %g and %g bar: %.2f L, want %g", r[0], r[1], r[2], got, r[3])
		}
	}
	r, none := rand.New(rand.NewPCG(6, 62)), 0
	for range 1000 {
		water, supply, relief := 10*r.Float64(), 0.1+12*r.Float64(), 1+11*r.Float64()
		litres, ok := VesselLitres(water, supply, relief)
		if !ok {
			none++
			if supply <= 0.8*relief { // else SupplyNearRelief speaks
				t.Errorf("no vessel is enough at %g and %g bar", supply, relief)
			}
			continue
		}
		before := litres * (supply + 1)
		if after := (litres - water) * (0.9*relief + 1); math.Abs(after-before) > 1e-9*before {
			t.Errorf("%g L at %g and %g bar: pressure times volume %g, then %g", water, supply, relief, before, after)
		}
	}
	if none == 0 || none == 1000 {
		t.Errorf("%d of 1000 without room", none)
	}
}
