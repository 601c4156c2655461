package tank

import (
	"math"
	"strconv"
	"testing"

	"suncask/engine/published"
)

func TestLossOfClass_EU812(t *testing.T) {
	var b struct{ Rows map[string]map[string]float64 }
	published.Block(t, "water.json", "loss_classes", &b)
	n := 0
	for litres, row := range b.Rows {
		v, _ := strconv.ParseFloat(litres, 64)
		for i, class := range LossClasses {
			n++
			if got, want := LossOfClass(i, v), row[class]; math.Abs(got-want) > 0.006 {
				t.Errorf("%s L, class %s: %.3f W, want %.2f", litres, class, got, want)
			}
		}
	}
	if n != 56 {
		t.Errorf("%d rows", n)
	}
}

func TestLossMEPS_ASNZS4692(t *testing.T) {
	var b struct {
		Rows map[string]struct {
			W float64 `json:"UA_W_K"`
		}
	}
	published.Block(t, "water.json", "loss_meps", &b)
	if len(b.Rows) != len(mepsLimits) {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for litres, want := range b.Rows {
		v, _ := strconv.ParseFloat(litres, 64)
		if got := LossMEPS(v); math.Abs(got-want.W) > 1e-4 {
			t.Errorf("%s L: %.5f W/K, want %.4f", litres, got, want.W)
		}
	}
	for v := 20.0; v < 1100; v += 10 {
		if !(LossMEPS(v+10) > LossMEPS(v)) {
			t.Errorf("the loss falls from %g L on", v)
		}
	}
}

// A night's readings give the loss that cooled the tank.
func TestLossOvernight_Cooldown(t *testing.T) {
	var b struct{ Cases map[string]map[string]float64 }
	published.Block(t, "water.json", "cooldown", &b)
	n := 0
	for name, row := range b.Cases {
		var litres, wPerK float64
		for i := range name {
			if name[i] == '_' {
				litres, _ = strconv.ParseFloat(name[:i-1], 64)
				wPerK, _ = strconv.ParseFloat(name[i+1:], 64)
			}
		}
		for hours, end := range row {
			h, err := strconv.ParseFloat(hours, 64)
			if err != nil {
				continue // tau_h
			}
			n++
			tank := New(Params{Litres: litres, LossWPerK: wPerK, HeatCapacityJPerLK: 4120}, 60, 20)
			tank.RestSpan(tank.SpanOf(h * 3600))
			if math.Abs(tank.MeanC()-end) > 1e-3 { // printed to 1e-4, UA to 1e-3
				t.Errorf("%s after %s h: %.4f degC, want %.4f", name, hours, tank.MeanC(), end)
			}
			got, ok := LossOvernight(litres, 60, end, 20, h)
			if want := wPerK * HeatCapacity / 4120; !ok || math.Abs(got/want-1) > 1e-3 {
				t.Errorf("%s, %s h: %.4f W/K, want %.4f", name, hours, got, want)
			}
		}
	}
	if n != 20 {
		t.Errorf("%d rows", n)
	}
	for _, bad := range [][3]float64{{60, 60, 20}, {60, 61, 20}, {60, 20, 20}, {60, 15, 20}} {
		if _, ok := LossOvernight(200, bad[0], bad[1], bad[2], 10); ok {
			t.Errorf("%v was taken", bad)
		}
	}
	if _, ok := LossOvernight(200, 60, 50, 20, 0); ok {
		t.Error("a night of no hours was taken")
	}
}

func TestHeatUntil_Analytic(t *testing.T) {
	var b struct {
		Cases []struct {
			V, P, UA, T0, T1 float64
			H                float64 `json:"t_h"`
			KWh              float64
		}
	}
	published.Block(t, "water.json", "heatup", &b)
	if len(b.Cases) != 4 {
		t.Fatalf("%d rows", len(b.Cases))
	}
	for _, c := range b.Cases {
		tank := New(Params{Litres: c.V, LossWPerK: math.Max(c.UA, 1e-9)}, c.T0, 20)
		th := Thermostat{SetC: c.T1}
		got, used := tank.HeatUntil(tank.SpanOf(86400), c.P, &Element{}, &th)
		if math.Abs(used/3600-c.H) > 2e-5 || math.Abs(got/3.6e6-c.KWh) > 1e-4 {
			t.Errorf("%+v: %.5f h, %.5f kWh", c, used/3600, got/3.6e6)
		}
	}
}

func TestDrawLimits_Analytic(t *testing.T) {
	var b struct {
		AfterL float64 `json:"mixed_T_after_100L"`
		Plug   float64 `json:"V40_plug_L"`
		Mixed  float64 `json:"V40_mixed_L"`
	}
	published.Block(t, "water.json", "draw_limits", &b)
	plug := New(Params{Litres: 150, LossWPerK: 1e-9}, 60, 20)
	if got := plug.UsableLitres(40, 15, 0); math.Abs(got-b.Plug) > 1e-6 {
		t.Errorf("plug flow: %.4f L at 40 degC, want %g", got, b.Plug)
	}
	// A fully mixed tank: the closed form that the inlet zone has in the small.
	if got := 60 + (15-60)*(1-math.Exp(-100.0/150)); math.Abs(got-b.AfterL) > 1e-5 {
		t.Errorf("mixed: %.5f degC after 100 L, want %g", got, b.AfterL)
	}
	// Hot litres until 40 degC, each mixed with cold to 40.
	hot := 150 * math.Log((60-15.0)/(40-15))
	litres := 150.0 * 45 / 25 * (1 - math.Exp(-hot/150))
	if math.Abs(litres-b.Mixed) > 1e-3 {
		t.Errorf("mixed: %.4f L at 40 degC, want %g", litres, b.Mixed)
	}
}

// The heat capacity of water that the tank takes lies among published ones.
func TestHeatCapacity_Water(t *testing.T) {
	for _, r := range published.Rows[[6]float64](t, "water.json", "water_1atm", 21) {
		if r[0] < 5 || r[0] > 90 {
			continue
		}
		if per := r[1] * r[2] / 1000; math.Abs(HeatCapacity/per-1) > 0.032 {
			t.Errorf("at %g degC: %.0f J/(L K) against %.0f", r[0], per, HeatCapacity)
		}
	}
}

// A label's mixed water at 40 degC is what the tank with the inlet zone that follows
// from it gives, drawn in small parts from 65 degC with cold water of 10 (test of EN
// 50440, from memory; V_m = r V - V40 with r = (65 - 10)/(40 - 10)).
func TestMixedWater_Label(t *testing.T) {
	const hot, cold = 65.0, 10.0
	r := (hot - cold) / (40 - cold)
	for _, c := range []struct{ litres, v40 float64 }{{100, 165}, {150, 250}, {200, 330}, {300, 500}} {
		zone := r*c.litres - c.v40
		tank := New(Params{Litres: c.litres, LossWPerK: 1e-9, InletMixedLitres: zone}, hot, 20)
		got := 0.0
		for {
			var s Served
			tank.Draw(&Draw{Litres: 0.1, UseC: 40}, cold, &s)
			if s.CoolLitres > 0.05 {
				break
			}
			got += 0.1
		}
		t.Logf("%g L, label %g L, inlet zone %.1f L: %.1f L", c.litres, c.v40, zone, got)
		if math.Abs(got/c.v40-1) > 0.02 {
			t.Errorf("%g L with a label of %g L give %.1f L of 40 degC", c.litres, c.v40, got)
		}
	}
}

// The hot share of water mixed at the tap.
func TestTapMix_Analytic(t *testing.T) {
	var b struct{ Table map[string]map[string]float64 }
	published.Block(t, "water.json", "tap_mix", &b)
	n := 0
	for hot, row := range b.Table {
		h, _ := strconv.ParseFloat(hot, 64)
		for cold, want := range row {
			n++
			c, _ := strconv.ParseFloat(cold, 64)
			tank := New(Params{Litres: 200, LossWPerK: 1e-9}, h, 20)
			var s Served
			tank.Draw(&Draw{Litres: 50, UseC: 40}, c, &s)
			if math.Abs(s.HotLitres/50-want) > 6e-6 {
				t.Errorf("%s and %s degC: %.6f of it hot, want %g", hot, cold, s.HotLitres/50, want)
			}
		}
	}
	if n != 24 {
		t.Errorf("%d rows", n)
	}
}
