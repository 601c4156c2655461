package visit

import (
	"math"
	"testing"

	"suncask/engine/scenario"
)

func straight(s *scenario.Scenario) { s.Coupling = scenario.Direct }

func TestExpect_Meters(t *testing.T) {
	p := prepared(t, straight)
	within := [QuantityCount]float64{0.05, 0.005, 0.05, 0.005, 0.5, 0.05, 0.005, 0.5}
	for _, r := range rows(t, "meters", 6) {
		got := Expect(p, r[0], r[1])
		for q := range QuantityCount {
			if math.Abs(got.Of(q)-r[2+int(q)]) > within[q] {
				t.Errorf("%g W/m2, %g degC, quantity %d: %.4f, not %g", r[0], r[1], q, got.Of(q), r[2+int(q)])
			}
		}
	}
}

// A converter's output against one with 96 % at every load: the house's own has 96 % as the European
// mean of a curve.
func TestExpect_Converter(t *testing.T) {
	got := Expect(prepared(t, nil), 800, 45)
	if want := 0.96 * (1808.5 - 10.454*10.454*0.1707); math.Abs(got.ElementW/want-1) > 0.015 {
		t.Errorf("%.1f W, at 96 %% of every load %.1f", got.ElementW, want)
	}
	for _, r := range rows(t, "steps", 2) {
		of := func(steps int8) float64 {
			return Expect(prepared(t, func(s *scenario.Scenario) { s.InString, s.ConverterSteps = 3, steps }), r[0], r[1]).ElementW
		}
		if down, both := of(scenario.StepsDown), of(scenario.StepsBoth); math.Abs(down/r[2]-1) > 0.015 || math.Abs(both/r[3]-1) > 0.015 {
			t.Errorf("%g W/m2: %.1f W lowering, %.1f both; not %g, %g", r[0], down, both, r[2], r[3])
		}
	}
}

func TestExpect_Loops(t *testing.T) {
	for i, r := range rows(t, "loops", 2) {
		if got := LoopOpenOhms(240*240/3000.0, 3-i); math.Abs(got-r[0]) > 0.01 {
			t.Errorf("one of %d loops open: %.2f ohm, not %g", 3-i, got, r[0])
		}
		p := prepared(t, func(s *scenario.Scenario) { straight(s); s.ElementW, s.SupplyV = 240*240/r[0], 240 })
		if got := Expect(p, 800, 45).ElementW; math.Abs(got-r[1]) > 0.5 || math.Abs(p.BackupW()-r[2]) > 0.1 {
			t.Errorf("%g ohm: %.1f W by the sun, %.1f by the grid; not %g, %g", r[0], got, p.BackupW(), r[1], r[2])
		}
	}
}

func TestLight_OfAmps(t *testing.T) {
	for _, r := range rows(t, "light", 2) {
		if got := LightOf(prepared(t, nil), int(r[0]), r[1], r[2]); math.Abs(got-r[3]) > 0.1 {
			t.Errorf("%g A: %.2f W/m2, not %g", r[1], got, r[3])
		}
	}
}

func TestCell_OfVolts(t *testing.T) {
	p := prepared(t, nil)
	for _, r := range rows(t, "cells", 1) {
		if got, err := CellOf(p, r[0], r[1]); err != nil || math.Abs(got-r[2]) > 0.1 {
			t.Errorf("%g V at %g W/m2: %.2f degC %v, not %g", r[0], r[1], got, err, r[2])
		}
	}
	for _, volts := range []float64{0, 120, 300, math.NaN()} {
		if c, err := CellOf(p, volts, 800); err == nil {
			t.Errorf("%g V gives %g degC", volts, c)
		}
	}
	if _, err := CellOf(p, 200, 0); err == nil {
		t.Error("a temperature without light")
	}
}

func TestCell_OfAir(t *testing.T) {
	for _, r := range rows(t, "air", 2) {
		s := house(t, func(s *scenario.Scenario) { s.Mount = int8(r[0]) })
		if got := CellOfAir(s, r[2], r[1]); math.Abs(got-r[3]) > 0.01 {
			t.Errorf("mounting %g: %.3f degC, not %g", r[0], got, r[3])
		}
	}
	if rack, in := CellOfBack(house(t, nil), 40, 500), CellOfBack(house(t, func(s *scenario.Scenario) { s.Mount = 2 }), 40, 500); rack != 41.5 || in != 40 {
		t.Errorf("back of 40 degC: %g on a rack, %g in the roof", rack, in)
	}
}

func TestBands_Propagated(t *testing.T) {
	for _, r := range rows(t, "bands", 10) {
		p := prepared(t, func(s *scenario.Scenario) { s.Coupling, s.SoilPct, s.MismatchPct = scenario.Coupling(r[2]), 0, 0 })
		got := Bands(p, Given{Wm2: r[0], CellC: r[1], LightShare: ByMeter, CellK: 5})[int(r[3])]
		if math.Abs(100*got.Above-r[4]) > 0.3 || got.Below != got.Above {
			t.Errorf("%g W/m2, quantity %g: %.2f %% below, %.2f above, not %g", r[0], r[3], 100*got.Below, 100*got.Above, r[4])
		}
	}
	clean, dirty := prepared(t, func(s *scenario.Scenario) { s.SoilPct = 0 }), prepared(t, func(s *scenario.Scenario) { s.SoilPct = 20 })
	g := Given{Wm2: 800, CellC: 45, LightShare: ByMeter, CellK: SensorK}
	a, b := Bands(clean, g)[ShortAmps], Bands(dirty, g)[ShortAmps]
	if math.Abs(b.Below-a.Below-0.2) > 0.02 || a.Above != b.Above {
		t.Errorf("dirt of 20 %% moves the band of amps from %+v to %+v", a, b)
	}
}

func TestMissing_OfVolts(t *testing.T) {
	p := prepared(t, nil)
	band := Bands(p, Given{Wm2: 800, CellC: 45, LightShare: ByMeter, CellK: SensorK})[OpenVolts]
	for _, r := range rows(t, "missing", 5) {
		got := MissingOf(r[0], r[1], int(r[2]), band)
		if got.Modules != int(r[3]) || got.Reversed != int(r[4]) || got.Thirds != int(r[5]) || got.Untold != (r[2] == 12) {
			t.Errorf("%g of %g V: %+v, not %v", r[0], r[1], got, r[3:])
		}
	}
}

// What is expected lies within; outcomes change once each way and in their order as a reading
// rises; signs, weak light and light taken from the amps themselves are not judged as numbers.
func TestJudge_Monotone(t *testing.T) {
	p := prepared(t, straight)
	g := Given{Wm2: 800, CellC: 45, LightShare: ByMeter, CellK: SensorK}
	want, bands := Expect(p, g.Wm2, g.CellC), Bands(p, g)
	for q := range QuantityCount {
		order := map[Outcome]int{Lower: 0, Within: 1, Higher: 2}
		before := 0
		for k := 0.0; k < 3; k += 0.01 {
			o, off := JudgeReading(q, k*want.Of(q), want.Of(q), bands[q], g)
			if at, ok := order[o]; !ok || at < before || (o == Within) != (off == 0) || off < 0 {
				t.Fatalf("quantity %d at %.2f times what is expected: %d by %g", q, k, o, off)
			} else {
				before = at
			}
		}
		if before != 2 {
			t.Errorf("quantity %d: never higher", q)
		}
		if o, _ := JudgeReading(q, want.Of(q), want.Of(q), bands[q], g); o != Within {
			t.Errorf("quantity %d: what is expected is %d", q, o)
		}
		weak := g
		if weak.Wm2 = 399; q.Volts() {
			weak.Wm2 = 99
		}
		if o, _ := JudgeReading(q, want.Of(q), want.Of(q), bands[q], weak); o != NoJudge {
			t.Errorf("quantity %d is judged at %g W/m2", q, weak.Wm2)
		}
	}
	if o, _ := JudgeReading(OpenVolts, -208, want.OpenV, bands[OpenVolts], g); o != Reversed {
		t.Errorf("minus 208 V: %d", o)
	}
	g.AmpsAreLight = true
	if o, _ := JudgeReading(ShortAmps, want.ShortA, want.ShortA, bands[ShortAmps], g); o != NoJudge {
		t.Error("amps are judged by themselves")
	}
	if o, _ := JudgeReading(ShortAmps, 0, want.ShortA, bands[ShortAmps], Given{Wm2: 800}); o != Lower {
		t.Error("no current is a reading")
	}
}

// A string's own open circuit says the cells' temperature, and then nothing about itself; a missing
// module would need cells hotter than the sun makes them.
func TestCell_NotByItself(t *testing.T) {
	p := prepared(t, nil)
	whole := Expect(p, 800, 45).OpenV
	if c, err := CellOf(p, whole*5/6, 800); err == nil {
		t.Errorf("five modules of six read like cells of %g degC", c)
	}
	if o, _ := JudgeReading(OpenVolts, whole, whole, Band{}, Given{Wm2: 800, VoltsAreCells: true}); o != NoJudge {
		t.Errorf("an open circuit judged by itself: %d", o)
	}
}

// Old modules pass less current in the same light: light taken from it is the same.
func TestLight_OfOldModules(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.AgeYears = 20; straight(s) })
	amps := Expect(p, 500, 40).ShortA
	if got := LightOf(p, 1, amps, 40); math.Abs(got-500) > 1 {
		t.Errorf("%.3f A of modules of 20 years: %.1f W/m2, not 500", amps, got)
	}
}

// At a stage the element's volts over its amps are that stage's ohms.
func TestExpect_Staged(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.Coupling, s.Stages = scenario.Staged, "500,1000,1500" })
	for _, wm2 := range []float64{300, 500, 900} {
		e := Expect(p, wm2, 30)
		best := math.Inf(1)
		for _, w := range p.StageWatts() {
			best = math.Min(best, math.Abs(e.ElementV/e.ElementA-p.Scenario.ElementV*p.Scenario.ElementV/w))
		}
		if best > 1e-6 || math.Abs(e.ElementV*e.ElementA-e.ElementW) > 1e-9 {
			t.Errorf("%g W/m2: %.1f V, %.2f A, %.0f W are at none of the stages", wm2, e.ElementV, e.ElementA, e.ElementW)
		}
	}
}
