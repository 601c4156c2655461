package plan

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Quantiles of 1 to 5 by the definition of Hyndman & Fan 1996, type 7 (closed form).
func TestQuantile_Analytic(t *testing.T) {
	v := []float64{5, 1, 4, 2, 3}
	for q, want := range map[float64]float64{0: 1, 0.1: 1.4, 0.5: 3, 0.9: 4.6, 1: 5} {
		if got := Quantile(v, q); math.Abs(got-want) > 1e-12 {
			t.Errorf("quantile %g is %g, want %g", q, got, want)
		}
	}
	if !math.IsNaN(Quantile(nil, 0.5)) || v[0] != 5 {
		t.Error("no values have no quantile, and values stay in place")
	}
}

// Many years straddle the typical one, differ from each other, and are the same again.
func TestYears_AboutTheTypicalOne(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	run := func() *Years {
		y, err := NewYears(p, s.Backup)
		if err != nil {
			t.Fatal(err)
		}
		for y.Step() {
		}
		return y
	}
	a, b := run(), run()
	if len(a.Cost) != YearCount || len(a.BoughtKWh) != YearCount || len(a.CoolDays) != YearCount {
		t.Fatalf("%d years", len(a.Cost))
	}
	for i := range a.Cost {
		if a.Cost[i] != b.Cost[i] {
			t.Fatalf("year %d costs %g and %g", i, a.Cost[i], b.Cost[i])
		}
	}
	ws, year := new(simulate.Workspace), new(simulate.Year)
	p.RunYear(s.Backup, ws, year)
	typical := year.Total.BoughtJ / simulate.JPerKWh
	low, mid, high := Quantile(a.BoughtKWh, 0.1), Quantile(a.BoughtKWh, 0.5), Quantile(a.BoughtKWh, 0.9)
	t.Logf("bought kWh: typical year %.0f; 10 %% %.0f, median %.0f, 90 %% %.0f; cool days 90 %% %.1f", typical, low, mid, high, Quantile(a.CoolDays, 0.9))
	if !(low < mid && mid < high) || math.Abs(mid/typical-1) > 0.15 {
		t.Errorf("10, 50, 90 %%: %.0f, %.0f, %.0f; the typical year %.0f", low, mid, high, typical)
	}
}
