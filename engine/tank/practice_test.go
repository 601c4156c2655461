package tank

import (
	"math"
	"testing"
)

// Cases that people tell of tanks (common practice, no source), with what they leave
// open: only figures that follow from what they give are asserted.
func TestPractice_TankCases(t *testing.T) {
	kWh := func(litres, fromC, toC float64) float64 { return litres * HeatCapacity * (toC - fromC) / 3.6e6 }
	for _, c := range []struct {
		what           string
		got, want, tol float64
	}{
		{"117 L from 20 to 55 degC, kWh", kWh(117, 20, 55), 4.76, 0.02},
		{"117 L from 50 to 55 degC, kWh", kWh(117, 50, 55), 0.68, 0.01},
		{"117 L from 10 to 75 degC, kWh", kWh(117, 10, 75), 8.8, 0.05},
		{"117 L from 20 to 70 degC, kWh", kWh(117, 20, 70), 6.8, 0.03},
		{"170 L take 10 kWh, K", 10 * 3.6e6 / (170 * HeatCapacity), 50.6, 0.2},
		{"15 L by 30 K at 300 W, h", 15 * HeatCapacity * 30 / 300 / 3600, 1.8, 0.1},
		{"300 L for an hour at 3.6 kW, 250 L, K", 3.6e6 * 3.6 / (250 * HeatCapacity), 12, 0.5},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s: %.3f, told %g", c.what, c.got, c.want)
		}
	}
	// 189 L recovered by 4500 W from 4.4 to 48.9 degC: 87 L an hour; by 5500 W from 15.6:
	// an hour and a third. Losses are not given.
	for _, c := range []struct{ watts, fromC, hours float64 }{{4500, 4.4, 189.0 / 87}, {5500, 15.6, 1.33}} {
		tank := New(Params{Litres: 189, LossWPerK: 1e-6}, c.fromC, 20)
		_, used := tank.HeatUntil(tank.SpanOf(86400), c.watts, &Element{}, &Thermostat{SetC: 48.9})
		if math.Abs(used/3600/c.hours-1) > 0.02 {
			t.Errorf("189 L at %g W: %.2f h, told %.2f", c.watts, used/3600, c.hours)
		}
	}
	// From 55 to 50 degC within 11 h of a night, label 1.2 kWh in 24 h at 45 K: volume
	// and room are not told. With the 170 L that 90 W would need and a room of 20 degC the
	// label's own loss gives less.
	night := New(Params{Litres: 170, LossWPerK: 1200.0 / 24 / 45}, 55, 20)
	night.RestSpan(night.SpanOf(11 * 3600))
	t.Logf("by the label the night ends at %.1f degC, told 50", night.MeanC())
	if c := night.MeanC(); c < 50 || c > 55 {
		t.Errorf("the night ends at %.1f degC", c)
	}
	// Six minutes of stirring took a shower from 44 to 34 degC: mixing keeps the mean and
	// lowers the outlet (volume and flow are not told).
	stack := New(Params{Litres: 150, LossWPerK: 1e-6}, 44, 20)
	var s Served
	stack.Draw(&Draw{Litres: 60, UseC: 60}, 15, &s)
	top, mean := stack.At(stack.Len()-1).TempC, stack.MeanC()
	if !(mean < top-5) {
		t.Errorf("top %.1f, mean %.1f degC", top, mean)
	}
}
