package care

import (
	"math"
	"strconv"
	"testing"

	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

func house(t *testing.T, change func(*scenario.Scenario)) *simulate.Prepared {
	t.Helper()
	s := scenario.Defaults(scenario.LatestVersion)
	change(&s)
	if p := s.Problems(); len(p) > 0 {
		t.Fatal(p)
	}
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// has returns a finding of a house.
func has(t *testing.T, code Code, change func(*scenario.Scenario)) (Finding, bool) {
	t.Helper()
	for _, f := range Findings(house(t, change)) {
		if f.Code == code {
			if f.Source == "" {
				t.Errorf("finding %d has no source", code)
			}
			return f, true
		}
	}
	return Finding{}, false
}

// Every finding is there on one side of its limit and not on the other. Limits: 60 degC
// stored (HSG274 Part 2, 2014, read on a secondary page), 50 degC at a tap (AS/NZS
// 3500.4, from memory), 120 V d.c. (IEC 60449, from memory), plate +5 % (IEC 60335-1,
// from memory), fuses from three strings on (IEC 62548); others are the device's own
// figures or common practice, no source.
func TestFindings_BothSides(t *testing.T) {
	type side = func(*scenario.Scenario)
	direct := func(modules, inString int, watts float64) side {
		return func(s *scenario.Scenario) {
			s.Coupling, s.Modules, s.InString, s.ElementW = scenario.Direct, modules, inString, watts
		}
	}
	tested := map[Code]bool{}
	for _, c := range []struct {
		code     Code
		yes, no  side
		severity Severity
	}{
		{StoredBelow60, func(s *scenario.Scenario) { s.SetC = 59 }, func(s *scenario.Scenario) { s.SetC = 60 }, Caution},
		{StoredScalds, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 51, 50 }, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 50, 50 }, Caution},
		{StoredScalds, func(s *scenario.Scenario) { s.ValveC = 51 }, func(s *scenario.Scenario) { s.ValveC = 50 }, Caution},
		{ValveTooHot, func(s *scenario.Scenario) { s.ValveC = 51 }, func(s *scenario.Scenario) { s.ValveC = 50 }, Caution},
		{ValveStarves, func(s *scenario.Scenario) { s.ValveC = 49 }, func(s *scenario.Scenario) { s.ValveC = 50 }, Note},
		{BelowElement, func(s *scenario.Scenario) {}, nil, Note},
		{Expands, func(s *scenario.Scenario) {}, nil, Note},
		{ReadingsImpossible, func(s *scenario.Scenario) { s.LossBy, s.EveningC, s.MorningC = scenario.LossOvernight, 55, 55 },
			func(s *scenario.Scenario) { s.LossBy, s.EveningC, s.MorningC = scenario.LossOvernight, 55, 54.5 }, Caution},
		{FailedClosed, func(s *scenario.Scenario) { s.Modules = 4 }, func(s *scenario.Scenario) { s.Modules, s.LossKWh = 1, 10 }, Caution},
		{AboveLowVoltage, func(s *scenario.Scenario) { s.Modules = 4 }, func(s *scenario.Scenario) { s.Modules = 2 }, Caution},
		{ConverterOverVoltage, func(s *scenario.Scenario) { s.ConverterHighV = 150 }, func(s *scenario.Scenario) { s.ConverterHighV = 165 }, Stop},
		{ConverterUnderVoltage, func(s *scenario.Scenario) { s.ConverterLowV = 115 }, func(s *scenario.Scenario) { s.ConverterLowV = 100 }, Caution},
		{ElementOverVoltage, direct(8, 0, 2000), direct(5, 0, 2000), Caution},
		{ElementOverload, direct(10, 0, 2000), direct(6, 0, 2000), Stop},
		{ThermostatDC, direct(3, 0, 2000), func(s *scenario.Scenario) {}, Caution},
		{StringFuses, func(s *scenario.Scenario) { s.Modules, s.InString = 6, 2 }, func(s *scenario.Scenario) { s.Modules, s.InString = 4, 2 }, Caution},
		{UnevenStrings, func(s *scenario.Scenario) { s.Modules, s.InString = 5, 2 }, func(s *scenario.Scenario) { s.Modules, s.InString = 6, 2 }, Stop},
		{CableDrop, func(s *scenario.Scenario) { s.CableM = 60 }, func(s *scenario.Scenario) { s.CableM = 10 }, Caution},
		{InsulationLow, func(s *scenario.Scenario) { s.InsulationM = 0.99 }, func(s *scenario.Scenario) { s.InsulationM = 1 }, Stop},
		{InsulationLow, func(s *scenario.Scenario) { s.InsulationM, s.Modules = 0.49, 2 }, func(s *scenario.Scenario) { s.InsulationM, s.Modules = 0.5, 2 }, Stop},
		{IsolatorRating, func(s *scenario.Scenario) {}, func(s *scenario.Scenario) { s.Modules = 0 }, Note},
	} {
		tested[c.code] = true
		f, ok := has(t, c.code, c.yes)
		if !ok || f.Severity != c.severity {
			t.Errorf("finding %d: there %v, severity %d", c.code, ok, f.Severity)
		}
		if c.no == nil {
			continue
		}
		if f, ok := has(t, c.code, c.no); ok {
			t.Errorf("finding %d on the other side: %+v", c.code, f)
		}
	}
	for _, code := range Codes() {
		if !tested[code] {
			t.Errorf("finding %d is not tested", code)
		}
	}
}

func TestBurnSeconds_Published(t *testing.T) {
	var b struct {
		Rows map[string][2]float64 `json:"second_third_degree_s"`
		CPSC map[string]float64    `json:"cpsc_third_degree_s"`
	}
	published.Block(t, "water.json", "burns", &b)
	if len(b.Rows) != 7 || len(b.CPSC) != 4 {
		t.Fatalf("%d and %d rows", len(b.Rows), len(b.CPSC))
	}
	for at, want := range b.Rows {
		c, _ := strconv.ParseFloat(at, 64)
		if got := BurnSeconds(c); got > want[1]*(1+1e-9) || got < want[1]/3 {
			t.Errorf("%s degC: %.1f s, want %g", at, got, want[1])
		}
	}
	// The severer of both tables is taken.
	for at, want := range b.CPSC {
		f, _ := strconv.ParseFloat(at[:len(at)-1], 64)
		if got := BurnSeconds((f - 32) / 1.8); got > want*(1+1e-9) || got < want/3 {
			t.Errorf("%s: %.1f s, published %g", at, got, want)
		}
	}
	if !math.IsInf(BurnSeconds(40), 1) || BurnSeconds(90) != 2 {
		t.Error("ends of the table")
	}
}

func TestFuses_IEC62548(t *testing.T) {
	var b struct {
		Example struct {
			Strings      int
			Isc          float64
			Max          float64 `json:"max_series_fuse"`
			Lower, Upper float64
		}
	}
	published.Block(t, "pv.json", "fuse", &b)
	e := b.Example
	least, most := FuseWindow(e.Isc)
	if math.Abs(least-e.Lower) > 0.005 || math.Abs(most-e.Upper) > 0.005 || !FusesNeeded(e.Strings, e.Isc, e.Max) || FusesNeeded(2, e.Isc, e.Max) {
		t.Errorf("%g to %g A", least, most)
	}
}

func TestColdOpenV_IEC62548(t *testing.T) {
	var b struct {
		Rows []struct {
			Voc, Tmin, Max float64
			PerK           float64 `json:"beta_V_per_K"`
			Pct            float64 `json:"beta_pct"`
			VocMax         float64 `json:"voc_max"`
		}
	}
	published.Block(t, "pv.json", "cold_voc", &b)
	if len(b.Rows) != 2 {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for _, r := range b.Rows {
		if got := ColdOpenV(1, r.Voc, r.PerK+r.Pct/100*r.Voc, r.Tmin); math.Abs(got-r.VocMax) > 1e-4 {
			t.Errorf("%+v: %.5f V", r, got)
		}
	}
}

// Published densities: from 10 to 65 degC water grows by 1.95 %.
func TestExpansion_Water(t *testing.T) {
	var b struct{ Rows [][6]float64 }
	published.Block(t, "water.json", "water_1atm", &b)
	base := 0.0
	for _, r := range b.Rows {
		if r[0] == 10 {
			base = r[1]
		}
	}
	for _, r := range b.Rows {
		if r[0] < 10 || r[0] > 90 {
			continue
		}
		if got, want := Expansion(r[0]), base/r[1]-1; math.Abs(got-want) > 2e-4 {
			t.Errorf("%g degC: %.5f, want %.5f", r[0], got, want)
		}
	}
}
