package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tariff"
)

// A year's cost is what its days and months, which bought the same as at one price, cost
// under the tariff.
func TestBill_Property(t *testing.T) {
	for _, c := range []struct {
		name string
		set  func(*scenario.Scenario)
		day  func(day int, f *Flows) float64 // cost
	}{
		{"one price", func(s *scenario.Scenario) {}, func(_ int, f *Flows) float64 { return 0.24 * f.BoughtJ }},
		{"free weekends", func(s *scenario.Scenario) { s.Bands = "we0000-0000:0" }, func(day int, f *Flows) float64 {
			if tariff.Weekend(day) {
				return 0
			}
			return 0.24 * f.BoughtJ
		}},
		{"dear winter", func(s *scenario.Scenario) { s.Bands = "11-2/0000-0000:0.5" }, func(day int, f *Flows) float64 {
			if m := climate.MonthOf(day); m >= 10 || m <= 1 {
				return 0.5 * f.BoughtJ
			}
			return 0.24 * f.BoughtJ
		}},
		{"the whole window in a band", func(s *scenario.Scenario) { s.Bands = "1430-1830:0.4" }, func(_ int, f *Flows) float64 { return 0.4 * f.BoughtJ }},
		{"fed back", func(s *scenario.Scenario) { s.ExportPrice = 0.05 }, func(_ int, f *Flows) float64 {
			return 0.24*f.BoughtJ - 0.05*f.UnusedSunJ
		}},
	} {
		s := scenario.Defaults(scenario.LatestVersion)
		plain := yearOf(t, s)
		c.set(&s)
		y := yearOf(t, s)
		want := 0.0
		for day := range plain.Day {
			want += c.day(day, &plain.Day[day]) / JPerKWh
		}
		if math.Abs(y.Total.Cost-want) > 1e-9*math.Abs(want) || y.Total.BoughtJ != plain.Total.BoughtJ && c.name != "the whole window in a band" {
			t.Errorf("%s: %.6f, want %.6f", c.name, y.Total.Cost, want)
		}
	}
}

// With blocks, water costs what it adds to each month's bill.
func TestBill_Blocks(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Blocks, s.OtherKWh = "210:0.3,240:0.45", 200
	y := yearOf(t, s)
	tr, want := s.Tariff(), 0.0
	for _, m := range y.Month {
		kWh := m.BoughtJ / JPerKWh
		want += tr.Month(200+kWh) - tr.Month(200)
	}
	if math.Abs(y.Total.Cost-want) > 1e-9*want || want < 0.3*y.Total.BoughtJ/JPerKWh {
		t.Errorf("%.6f, want %.6f", y.Total.Cost, want)
	}
}

func yearOf(t *testing.T, s scenario.Scenario) *Year {
	t.Helper()
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	var ws Workspace
	y := new(Year)
	p.RunYear(s.Backup, &ws, y)
	return y
}
