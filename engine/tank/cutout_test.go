package tank

import (
	"math"
	"math/rand/v2"
	"testing"
)

// hottest is the warmest layer.
func hottest(t *Tank) float64 { return t.At(t.Len() - 1).TempC }

// Nothing that elements reach is heated above their cut-outs, and the balance closes, for
// one element and for two, whatever their lengths, sensors and powers.
func TestCutOut_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 7))
	acted := 0
	for range 3000 {
		k := New(Params{Litres: 50 + 300*r.Float64(), LossWPerK: 0.5 + 4*r.Float64(), InletMixedLitres: 10}, 10+35*r.Float64(), 20)
		element := func() Element {
			low := 0.5 * r.Float64()
			return Element{low, low + float64(r.IntN(3))/2*(0.97-low)*r.Float64()}
		}
		thermostat := func(e Element) *Thermostat {
			return &Thermostat{SetC: 40 + 60*r.Float64(), Sensor: e.Low + (e.High-e.Low)*r.Float64(), Mode: Mode(r.IntN(2)), DifferentialK: 1 + 9*r.Float64(),
				CutC: []float64{0, 50 + 49*r.Float64()}[r.IntN(2)]}
		}
		low, high := element(), element()
		if high.Low < low.Low {
			low, high = high, low
		}
		high.High = high.Low // the upper of two lies across
		th1, th2 := thermostat(low), thermostat(high)
		before := k.ContentJ()
		most := math.Max(th1.cut(), th2.cut())
		for range 12 {
			var served Served
			k.Draw(&Draw{Litres: 60 * r.Float64(), UseC: 40}, 8, &served)
			span, power := k.SpanOf(20000*r.Float64()), 200+9000*r.Float64()
			which := r.IntN(3)
			switch which {
			case 0:
				k.HeatSpan(span, power, &low, th1)
			case 1:
				k.HeatUntil(span, power, &high, th2)
			default:
				k.HeatTwo(span, &Supply{power, low, th1}, &Supply{200 + 9000*r.Float64(), high, th2})
			}
			if hottest(k) > most+1e-6 {
				t.Fatalf("%.3f degC, cut-outs %g and %g, way %d, elements %v %v, thermostats %+v %+v", hottest(k), th1.cut(), th2.cut(), which, low, high, th1, th2)
			}
			if hottest(k) > most-1e-3 {
				acted++
			}
		}
		k.Settle()
		l := k.Ledger()
		if off := l.HeatJ + l.ColdJ - l.DrawnJ - l.LossJ - (k.ContentJ() - before); math.Abs(off) > 1e-8*(l.HeatJ+math.Abs(before)) || k.Err() != nil {
			t.Fatalf("balance off by %g J of %g, error %v", off, l.HeatJ, k.Err())
		}
	}
	if acted < 1000 {
		t.Errorf("the cut-out acted %d times", acted)
	}
}

// An element over two layers, its thermostat in the cold one: the hot layer comes to the
// cut-out and stands there, and the element gives what that costs, over its share.
func TestCutOut_Analytic(t *testing.T) {
	k := New(Params{Litres: 200, LossWPerK: 2}, 20, 20)
	k.Heat(3600, 100*HeatCapacity*60/3600, &Element{0.5, 0.5}, &Thermostat{SetC: 90, Sensor: 0.5}) // the upper half to some 80
	el, th := Element{0, 0.8}, Thermostat{SetC: 70, Sensor: 0.1, CutC: 85}
	share := 60.0 / 160 // of its litres in the upper half
	k.Heat(4*3600, 3000, &el, &th)
	if got := hottest(k); math.Abs(got-85) > 1e-6 {
		t.Fatalf("%.4f degC", got)
	}
	if k.Len() != 2 {
		t.Fatalf("%d layers", k.Len())
	}
	loss := 2.0 / 2 * (85 - 20)
	if got, want := k.Heat(600, 3000, &el, &th), 600*loss/share; math.Abs(got-want) > 1e-6*want {
		t.Errorf("%.1f J in ten minutes, the upper half's loss over its share is %.1f", got, want)
	}
}
