package tank

import (
	"math"
	"math/rand/v2"
	"testing"
)

// The label's test with the engine's own tank (EN 50440, from memory): cold of 10 degC heated
// to 65 by its element gives the label's litres at 40 degC; random tanks on both sides of the
// zone's 40 degC, and none gives more than the hot water or a label that is refused.
func TestV40_EN50440(t *testing.T) {
	r := rand.New(rand.NewPCG(40, 1))
	cold, refused := 0, 0
	for range 400 {
		litres, low := 50+450*r.Float64(), 0.5*r.Float64()
		v40 := litres * (55.0/30*(1-low) + 0.05 - 0.6*r.Float64())
		vm, least, most, ok := InletMixedLitres(litres, low*litres, v40, 65, 10)
		if ok != (v40 >= least && v40 <= most) || most > 55.0/30*litres {
			t.Fatalf("%g L of %g: ok %v, between %g and %g", v40, litres, ok, least, most)
		}
		if !ok {
			refused++
			continue
		}
		k := New(Params{Litres: litres, LossWPerK: 1e-9, InletMixedLitres: vm}, 10, 20)
		e := &Element{Low: low, High: low}
		k.Heat(86400, 9000, e, &Thermostat{SetC: 65, Sensor: low, CutC: BoilingC})
		if k.zoneTemp() < 40 {
			cold++
		}
		if got := k.UsableLitres(40, 10, 0); math.Abs(got-v40) > 1e-4*v40 {
			t.Errorf("%g L, element at %g: label %g L, the tank gives %g", litres, low, v40, got)
		}
	}
	if cold < 20 || refused < 20 || refused > 300 {
		t.Errorf("%d zones below 40 degC, %d labels refused: the draw tests little", cold, refused)
	}
}
