package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// coldRecord is a dark year of 5 degC with one hour of that.
func coldRecord(coldestC float64) *climate.Record {
	r := &climate.Record{LatDeg: 45, LonDeg: 8, ElevationM: 200, OffsetH: 1}
	for h := range r.Air {
		r.Air[h] = 500
	}
	r.Air[100] = int16(math.Round(100 * coldestC))
	return r
}

// The strings' voltage counts from the lowest air on record: 20 K under the coldest month's
// mean where it is assumed; with a weather file 5 K under the file's coldest hour, if that is
// lower; a typed one stands, unless the file itself is colder.
func TestWiring_Coldest(t *testing.T) {
	if got := prepared(t, func(s *scenario.Scenario) { s.Place = "toronto"; s.Settle() }).Wiring().ColdC; got != -26 {
		t.Errorf("Toronto %g degC", got)
	}
	for _, c := range []struct{ coldest, file, want float64 }{{math.NaN(), -30, -35}, {-20, -30, -30}, {-40, -30, -40}, {math.NaN(), 4, math.NaN()}} {
		r := coldRecord(c.file)
		s := scenario.Defaults(scenario.LatestVersion)
		s.Place, s.Weather = r.PointName(), r.Key()
		if !math.IsNaN(c.coldest) {
			s.ColdestC, s.Known = c.coldest, s.Known.With(scenario.ColdestC)
		}
		s.Settle()
		p, err := Prepare(&s, r, nil)
		if err != nil {
			t.Fatal(err)
		}
		want := c.want
		if math.IsNaN(want) { // the month is colder
			if want = s.ColdestC; want > c.file-ColdMarginK {
				t.Fatalf("assumed %g degC", want)
			}
		}
		if got := p.Wiring().ColdC; math.Abs(got-want) > 1e-6 {
			t.Errorf("%+v: %g degC, want %g", c, got, want)
		}
	}
}

// Six modules of 400 W, 36.9 V, -0.26 %/K, 13.85 A on 15 m of 4 mm2 take 1.2 % of the voltage in
// full sun (computed apart at the strings' own maximum; the converter takes a little less current) and on hot cells stand where their maximum is, less the cable.
func TestWiring_SixInSeries(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) {
		s.Modules, s.OpenV, s.MostV, s.ShortA, s.VoltPct = 6, 36.9, 30.8, 13.85, -0.26
	})
	w := p.Wiring()
	if math.Abs(w.DropPct-1.200) > 0.005 || w.Strings != 1 || w.InString != 6 {
		t.Errorf("%+v", w)
	}
	hot := p.chain.module.At(1000, HotCellC)
	v, a := hot.MaximumPower()
	if want := 6*v - a*p.chain.direct.CableOhms; math.Abs(w.HotV-want) > 1e-6 {
		t.Errorf("%.3f V on hot cells, want %.3f", w.HotV, want)
	}
}

// On an element of so little resistance that the strings work on the flat part of their curve, the
// current follows the light, and power goes as its square: 1.25^2 at the edges of clouds, less
// what the curve bends, 3 %. Near the open circuit it hardly changes.
func TestWiring_CloudEdge_Analytic(t *testing.T) {
	straight := func(modules int, watts float64) Wiring {
		return prepared(t, func(s *scenario.Scenario) { s.Coupling, s.Modules, s.ElementW = scenario.Direct, modules, watts }).Wiring()
	}
	if w := straight(8, 3800); math.Abs(w.EdgeW/w.FullW-1.25*1.25) > 0.03*1.25*1.25 {
		t.Errorf("flat: %.0f W, at clouds' edges %.0f", w.FullW, w.EdgeW)
	}
	if w := straight(4, 1000); w.EdgeW < w.FullW || w.EdgeW > 1.03*w.FullW {
		t.Errorf("near open circuit: %.0f W, at clouds' edges %.0f", w.FullW, w.EdgeW)
	}
	w := prepared(t, func(s *scenario.Scenario) { s.Coupling, s.Modules, s.Stages = scenario.Staged, 8, "3800,200" }).Wiring()
	if one := straight(8, 3800); len(w.EdgeStageW) != 2 || math.Abs(w.EdgeStageW[0]-one.EdgeW) > 1e-6 || w.EdgeStageW[1] < w.StageW[1] {
		t.Errorf("stages %v, at clouds' edges %v", w.StageW, w.EdgeStageW)
	}
	if w := prepared(t, func(*scenario.Scenario) {}).Wiring(); w.EdgeW != 0 || w.EdgeStageW != nil {
		t.Errorf("with a converter %g W", w.EdgeW)
	}
}
