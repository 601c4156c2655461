package visit

import (
	"math"
	"slices"
	"testing"

	"suncask/engine/care"
	"suncask/engine/published"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

const file = "visit.json"

// house is the house of the check values, changed.
func house(t *testing.T, change func(*scenario.Scenario)) *scenario.Scenario {
	t.Helper()
	var link string
	published.Block(t, file, "house", &link)
	s, problems := scenario.Decode(link)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if change != nil {
		change(&s)
	}
	return &s
}

func prepared(t *testing.T, change func(*scenario.Scenario)) *simulate.Prepared {
	t.Helper()
	p, err := simulate.Prepare(house(t, change), nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func has(list []care.Finding, code care.Code, severity care.Severity) bool {
	return slices.ContainsFunc(list, func(f care.Finding) bool { return f.Code == code && f.Severity == severity })
}

func rows(t *testing.T, block string, want int) [][]float64 {
	t.Helper()
	return published.Rows[[]float64](t, file, block, want)
}

func TestRatings_ColdVolts(t *testing.T) {
	for _, r := range rows(t, "cold_volts", 4) {
		p := prepared(t, func(s *scenario.Scenario) {
			s.Modules, s.ColdestC = int(r[0]), r[1]
			s.Known = s.Known.With(scenario.ColdestC)
		})
		if got := RatingsOf(p).Volts; math.Abs(got-r[2]) > r[3] {
			t.Errorf("%g in series at %g degC: %.2f V, not %g", r[0], r[1], got, r[2])
		}
	}
}

func TestRatings_Fuses(t *testing.T) {
	for _, r := range rows(t, "fuses", 4) {
		p := prepared(t, func(s *scenario.Scenario) {
			s.Modules, s.InString = int(r[0]), 1
			s.ShortA, s.MaxFuseA = r[1], r[2]
			s.MostV, s.ModuleW = 30.8, 0.93*r[1]*30.8
		})
		got := RatingsOf(p)
		if got.Fused != (r[3] == 1) || !slices.Equal(got.FuseSizes, r[4:]) {
			t.Errorf("%g strings of %g A, at most %g A: needed %v, %v; not %v", r[0], r[1], r[2], got.Fused, got.FuseSizes, r[4:])
		}
		stop := has(care.Electric(p), care.NoFuseFits, care.Stop)
		if none := r[3] == 1 && len(r) == 4; stop != none {
			t.Errorf("%g strings of %g A, at most %g A: no fuse fits: %v", r[0], r[1], r[2], stop)
		}
	}
}

func TestInsulation_Basis(t *testing.T) {
	for _, r := range rows(t, "insulation", 4) {
		megohm, volts := care.InsulationTest(int(r[0]), 36.9, scenario.Unknown)
		if basis := 1.25 * r[0] * 36.9; math.Abs(basis-r[1]) > 0.06 || volts != r[2] || megohm != r[3] {
			t.Errorf("%g in series: %.1f V, %g V, %g megohm; not %v", r[0], basis, volts, megohm, r[1:])
		}
	}
}

func TestCable_Loss(t *testing.T) {
	for _, r := range rows(t, "cable_loss", 1) {
		ohms, _ := pv.CableOhms(r[0], r[1], simulate.CableC)
		if got := CableLossPct(r[0], r[1], r[2], r[3]); math.Abs(ohms-r[4]) > 1e-4 || math.Abs(got-r[5]) > 0.002 {
			t.Errorf("%.4f ohm, %.3f %%; not %g, %g", ohms, got, r[4], r[5])
		}
	}
}

func TestCable_Smallest(t *testing.T) {
	type table struct {
		Volts, Amps, Carry float64
		MM2                [][3]float64
	}
	var b struct {
		Lengths []float64 `json:"lengths_m"`
		One     table     `json:"one_string"`
		Two     table     `json:"two_strings"`
	}
	published.Block(t, file, "cables", &b)
	if !slices.Equal(b.Lengths, CableLengthsM[:]) || len(b.One.MM2) != 7 || len(b.Two.MM2) != 7 {
		t.Fatal("other lengths")
	}
	for _, c := range []table{b.One, b.Two} {
		for i, wanted := range c.MM2 {
			for k, want := range wanted {
				got, ok := SmallestCable(b.Lengths[i], c.Volts, c.Amps, c.Carry, CableLossPcts[k])
				if got != want || ok != (want > 0) {
					t.Errorf("%g V, %g m, %g %%: %g mm2, not %g", c.Volts, b.Lengths[i], CableLossPcts[k], got, want)
				}
			}
		}
	}
}

func TestRatings_Grid(t *testing.T) {
	for _, r := range rows(t, "grid", 2) {
		p := prepared(t, func(s *scenario.Scenario) { s.ElementW, s.ElementV, s.SupplyV = r[0], r[1], r[2] })
		got := RatingsOf(p)
		if math.Abs(got.GridA-r[3]) > 0.05 || math.Abs(p.BackupW()-r[4]) > 1 || math.Abs(got.GridContinuousA-1.25*got.GridA) > 1e-9 {
			t.Errorf("%g W %g V at %g V: %.2f A, %.0f W; not %g, %g", r[0], r[1], r[2], got.GridA, p.BackupW(), r[3], r[4])
		}
	}
}

// Twelve strings of one module through 4 mm2: 1.25 times 12 times 13.85 A is more than it carries;
// the design current of the house's one string is 17.3 A.
func TestRatings_DesignCurrent(t *testing.T) {
	many := prepared(t, func(s *scenario.Scenario) { s.Modules, s.InString = 12, 1 })
	if got := RatingsOf(many).DesignA; math.Abs(got-207.75) > 0.01 || !has(care.Electric(many), care.CableCurrent, care.Stop) {
		t.Errorf("%g A, findings %v", got, care.Electric(many))
	}
	if got := RatingsOf(prepared(t, nil)); math.Abs(got.DesignA-17.3125) > 1e-9 || math.Abs(got.StringA-17.3125) > 1e-9 || got.Fused {
		t.Errorf("one string: %+v", got)
	}
}

// Every way to wire six modules is there once, ordered: what nothing stops first.
func TestWirings_List(t *testing.T) {
	p := prepared(t, nil)
	var list []*Wiring
	for w := range Wirings(p, nil) {
		list = append(list, w)
	}
	seen := map[[2]int]bool{}
	for _, w := range list {
		seen[[2]int{w.To.InString, int(w.To.Coupling)}] = true
	}
	if len(list) != 12 || len(seen) != 12 {
		t.Fatalf("%d wirings of six modules, %d of them different; 1, 2, 3 and 6 strings, three couplings", len(list), len(seen))
	}
	slices.SortStableFunc(list, Compare)
	stopped := false
	for i, w := range list {
		if stopped = stopped || w.Stops(); stopped != w.Stops() {
			t.Errorf("%d: one that is stopped before one that is not", i)
		}
		if w.OfferedJ < w.IntoJ {
			t.Errorf("%d in series: %g J into the water of %g offered", w.To.InString, w.IntoJ, w.OfferedJ)
		}
	}
}

// A row is what the house of its own comes to.
func TestWirings_AsTheirHouse(t *testing.T) {
	p := prepared(t, nil)
	ws, year := new(simulate.Workspace), new(simulate.Year)
	for w := range Wirings(p, nil) {
		link := scenario.Encode(&w.To)
		s, problems := scenario.Decode(link)
		if len(problems) > 0 {
			t.Fatal(link, problems)
		}
		q, err := simulate.Prepare(&s, nil, nil)
		if err != nil {
			t.Fatal(err)
		}
		q.RunYear(s.Backup, ws, year)
		if math.Abs(q.Potential.ElementJ-w.OfferedJ) > 1e-9*w.OfferedJ || math.Abs(year.Total.SunJ-w.IntoJ) > 1e-9*w.IntoJ {
			t.Errorf("%s: %.3f and %.3f kWh, its house %.3f and %.3f", link, w.OfferedJ/simulate.JPerKWh, w.IntoJ/simulate.JPerKWh, q.Potential.ElementJ/simulate.JPerKWh, year.Total.SunJ/simulate.JPerKWh)
		}
		t.Logf("%d in series, coupling %d: %.0f kWh offered, %.0f into the water, stopped %v", w.To.InString, w.To.Coupling, w.OfferedJ/simulate.JPerKWh, w.IntoJ/simulate.JPerKWh, w.Stops())
	}
}

// The relief valve lets out what can heat at once: the larger of sun and grid at one element, both
// where each has its own (P = V^2/R at the plate's +5 %).
func TestRatings_Relief(t *testing.T) {
	grid := 230 * 230 / (240 * 240 / 3000.0 / 1.05)
	sun := prepared(t, straightOn).Wiring().EdgeW
	for _, c := range []struct {
		name   string
		change func(*scenario.Scenario)
		want   float64
	}{
		{"one element", straightOn, math.Max(grid, sun)},
		{"an element for each", func(s *scenario.Scenario) { straightOn(s); s.ChangeBy = scenario.ChangeTwoElements }, grid + sun},
		{"two together", func(s *scenario.Scenario) { straightOn(s); s.Elements = scenario.TwoTogether }, grid + sun},
		{"no modules", func(s *scenario.Scenario) { s.Modules = 0; s.SupplyV = 230 }, grid},
	} {
		if got := RatingsOf(prepared(t, c.change)).ReliefW; math.Abs(got-c.want) > 0.5 {
			t.Errorf("%s: %.0f W, not %.0f", c.name, got, c.want)
		}
	}
}

func straightOn(s *scenario.Scenario) { s.Coupling, s.SupplyV = scenario.Direct, 230 }

// The loss that a wiring's cable is chosen by is that of the house's own figure.
func TestWirings_CableAsTheHouse(t *testing.T) {
	for _, coupling := range []scenario.Coupling{scenario.Converter, scenario.Direct} {
		p := prepared(t, func(s *scenario.Scenario) { s.Coupling, s.ElementW, s.ElementV, s.CableM = coupling, 600, 120, 30 })
		w := Judge(p)
		if got, want := CableLossPct(30, 4, w.RunV, w.RunA), p.Wiring().DropPct; math.Abs(got-want) > 0.02*want {
			t.Errorf("coupling %d: %.2f %%, the house %.2f", coupling, got, want)
		}
	}
}
