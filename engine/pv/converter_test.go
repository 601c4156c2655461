package pv

import (
	"math"
	"math/rand/v2"
	"testing"
)

// The curve's weighted efficiency is the figure it was made from (weights of EN 50530, from
// memory); it is low at little load, as published curves are, and its output is what the
// losses leave of the input.
func TestCurve_European(t *testing.T) {
	sum := 0.0
	for _, e := range European {
		sum += e.Weight
	}
	nearRel(t, "weights", sum, 1, 1e-12)
	for share := 0.80; share < 0.995; share += 0.005 {
		c := CurveOf(share)
		nearRel(t, "European efficiency", c.European(), share, 1e-9)
		if c.Efficiency(0.05) >= c.Efficiency(0.3) || c.Own <= 0 {
			t.Errorf("%.3f: %+v", share, c)
		}
		for _, load := range []float64{0.01, 0.05, 0.3, 1, 1.3} {
			out := c.OutW(1500*load/c.Efficiency(load), 1500)
			nearRel(t, "output, W", out, 1500*load, 1e-9)
		}
		if c.OutW(1500*c.Own*(1-1e-9), 1500) != 0 || c.OutW(0, 1500) != 0 {
			t.Errorf("%.3f: an output without power", share)
		}
	}
	if got := (Curve{}).OutW(700, 1500); got != 700 {
		t.Errorf("without losses %g of 700 W", got)
	}
}

// A converter follows the point of most power at its own terminals: no other voltage of the
// strings gives more behind the cable and inside the window.
func TestConverter_TracksItsTerminals_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 15))
	m := module60(t)
	held := 0
	for range 200 {
		one := m.At(100+1000*r.Float64(), -10+80*r.Float64())
		s := Strings{one.Series(1 + r.IntN(8))}
		if r.IntN(3) == 0 {
			two := m.At(100+1000*r.Float64(), -10+80*r.Float64())
			s = append(s, two.Series(1+r.IntN(8)))
		}
		c := Converter{LeastV: 20 + 100*r.Float64(), StartW: 0, MostW: 5000, MaxOutV: 1e6, MaxOutA: 1e6, ElementOhms: 26.45, CableOhms: 3 * r.Float64()}
		c.MostV = c.LeastV + 300*r.Float64()
		p := c.Into(s)
		at := p.Volts - p.Amps*c.CableOhms
		if p.Amps > 0 && (at < c.LeastV-1e-6 || at > c.MostV+1e-6) {
			t.Fatalf("%g V at the terminals, window %g to %g", at, c.LeastV, c.MostV)
		}
		if at < c.LeastV+1e-6 || at > c.MostV-1e-6 {
			held++
		}
		best := 0.0
		for v := 0.0; v < s.OpenCircuitV(); v += 0.05 {
			a := s.CurrentA(v)
			if at := v - a*c.CableOhms; at >= c.LeastV && at <= c.MostV {
				best = math.Max(best, at*a)
			}
		}
		if p.ElementW < best*(1-1e-5) {
			t.Errorf("%.3f W behind %.2f ohm in %g to %g V, possible are %.3f", p.ElementW, c.CableOhms, c.LeastV, c.MostV, best)
		}
	}
	if held < 10 {
		t.Errorf("the window held %d times", held)
	}
}

// Three modules of 400 W in series, two strings, 15 m of 4 mm2, 19.2 ohm: a converter that
// only lowers the voltage passes the straight point on (computed apart, 96 % taken off).
func TestConverter_OnlyDown(t *testing.T) {
	m, err := Datasheet{OpenCircuitV: 36.9, ShortCircuitA: 13.85, MaximumV: 30.8, MaximumA: 400 / 30.8, VoltagePerK: -0.0026 * 36.9, CurrentPerK: 0.0005 * 13.85, Cells: 53}.Module()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ light, cellC, down, both float64 }{{1000, 25, 578.5, 2193.4}, {500, 35, 509.3, 1091.6}} {
		one := m.At(c.light, c.cellC)
		long := one.Series(3)
		s := Strings{long.Parallel(2)}
		converter := Converter{MostV: 1000, MostW: 5000, MaxOutV: 1e6, MaxOutA: 1e6, ElementOhms: 19.2, CableOhms: 0.1707}
		if got := 0.96 * converter.Into(s).ElementW; math.Abs(got-c.both) > 1 {
			t.Errorf("%g W/m2, both ways: %.1f W, want %.1f", c.light, got, c.both)
		}
		converter.OnlyDown = true
		p := converter.Into(s)
		if got := 0.96 * p.ElementW; math.Abs(got-c.down) > 1 {
			t.Errorf("%g W/m2, only down: %.1f W, want %.1f", c.light, got, c.down)
		}
		if in := p.Volts - p.Amps*0.1707; p.ElementW > in*in/19.2*(1+1e-9) {
			t.Errorf("%.1f W from %.1f V", p.ElementW, in)
		}
		converter.MostV = 90
		if p := converter.Into(s); p.ElementW != 0 || p.CouplingW != p.MaximumW {
			t.Errorf("a window of 90 V: %+v", p)
		}
	}
	// Strings of more volts than the element needs lose nothing.
	one := m.At(1000, 25)
	s := Strings{one.Series(12)}
	converter := Converter{MostV: 1000, MostW: 5000, MaxOutV: 1e6, MaxOutA: 1e6, ElementOhms: 19.2}
	both := converter.Into(s)
	converter.OnlyDown = true
	if down := converter.Into(s); down != both {
		t.Errorf("only down %+v, both ways %+v", down, both)
	}
}
