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

// With two prices a month for what is fed back a year is paid month by month, days at the
// first; and no year ends early, for its cost may fall again.
func TestBill_ExportTiers(t *testing.T) {
	plain := yearOf(t, scenario.Defaults(scenario.LatestVersion))
	for _, c := range [][3]float64{{0.3, 40, 0.05}, {0, 40, 0.2}, {0.05, 60, 0.3}, {0.07, 0, 0.5}} {
		s := scenario.Defaults(scenario.LatestVersion)
		s.ExportPrice, s.ExportKWh, s.ExportRest = c[0], c[1], c[2]
		p := prepared(t, func(to *scenario.Scenario) { *to = s })
		y, months := year(t, p, s.Backup), 0.0
		want := 0.0
		for m := range plain.Month {
			fed := plain.Month[m].UnusedSunJ / JPerKWh
			first := fed
			if c[1] > 0 {
				first = math.Min(fed, c[1])
			}
			want += plain.Month[m].Cost - c[0]*first - c[2]*(fed-first)
			months += y.Month[m].Cost
		}
		if math.Abs(y.Total.Cost-want) > 1e-9*(1+math.Abs(want)) || math.Abs(months-want) > 1e-9*(1+math.Abs(want)) || p.OnePrice() {
			t.Errorf("%v: %.6f, months %.6f, by hand %.6f", c, y.Total.Cost, months, want)
		}
		if !p.RunUpTo(s.Backup, Limits{CoolUses: math.MaxInt32, Cost: math.Max(0.01, want)}, new(Workspace), new(Year)) {
			t.Errorf("%v: the year ended early", c)
		}
		if b := p.RunBoost(scenario.Backup{AllDay: true}, new(Workspace)); b.Presses == 0 {
			if all := year(t, p, scenario.Backup{AllDay: true}); math.Abs(b.Cost-all.Total.Cost) > 1e-6 {
				t.Errorf("%v: with no press a boost's year costs %.6f, the year %.6f", c, b.Cost, all.Total.Cost)
			}
		} else {
			t.Errorf("%d presses with backup all day", b.Presses)
		}
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
