package state

import (
	"math"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
)

// VisitAsk is the light and what was read, for AnswerVisit; NaN is not given. Of the temperatures the
// first that is given counts.
type VisitAsk struct {
	Wm2, CellC, BackC, AirC float64
	ShortA                  float64 // of one string: the light by it
	Readings                visit.Readings
}

// AnswerVisit is what a script gets of an installer's work for a link. It accepts anything and never
// fails; what cannot be worked out is not there.
func AnswerVisit(fragment string, ask VisitAsk) []Named {
	s := Open(fragment)
	p := s.Prepared
	refused := []any{}
	for _, problem := range s.LinkProblems {
		refused = append(refused, problem.Got)
	}
	list := []Named{{"version", ScriptVersion}, {"link", s.Link()}, {"refused", refused}}
	list = append(list, wiringsAnswer(s)...)
	list = append(list, waterAnswer(s)...)
	g, ok := ask.given(p)
	if !ok || p.Wiring().Strings == 0 {
		return list
	}
	m := visit.NewCommission(p, g, true, visit.SunHeats, ask.Readings)
	expected, outcomes := map[string]any{}, map[string]any{}
	for q, name := range quantityNames {
		least, most := visit.Limits(visit.Quantity(q), m.Expected.Of(visit.Quantity(q)), m.Bands[q])
		expected[name], expected[name+"_least"], expected[name+"_most"] = m.Expected.Of(visit.Quantity(q)), least, most
	}
	for code := range ask.Readings {
		if o, off, ok := m.Judge(code); ok {
			outcomes[string(code)] = []any{outcomeNames[o], off}
		}
	}
	return append(list, Named{"light_wm2", g.Wm2}, Named{"cells_c", g.CellC}, Named{"expected", expected}, Named{"outcomes", outcomes})
}

var quantityNames = [visit.QuantityCount]string{"open_v", "short_a", "most_v", "most_a", "most_w", "element_v", "element_a", "element_w"}

var outcomeNames = map[visit.Outcome]string{visit.Within: "within", visit.Lower: "lower", visit.Higher: "higher", visit.NoJudge: "not judged", visit.Reversed: "reversed"}

// given is the light and the cells' heat that are asked about.
func (a *VisitAsk) given(p *simulate.Prepared) (g visit.Given, ok bool) {
	g = visit.Given{Wm2: a.Wm2, LightShare: visit.ByMeter}
	cells := func() bool {
		switch {
		case !math.IsNaN(a.CellC):
			g.CellC, g.CellK = a.CellC, visit.SensorK
		case !math.IsNaN(a.BackC):
			g.CellC, g.CellK = visit.CellOfBack(&p.Scenario, a.BackC, g.Wm2), visit.SensorK
		case !math.IsNaN(a.AirC):
			g.CellC, g.CellK = visit.CellOfAir(&p.Scenario, a.AirC, g.Wm2), visit.AirK
		default:
			return false
		}
		return true
	}
	if !math.IsNaN(a.ShortA) {
		g.AmpsAreLight = true
		for range 4 { // light and heat of the cells hang on each other
			g.Wm2 = visit.LightOf(p, 1, a.ShortA, g.CellC)
			if !cells() {
				return g, false
			}
		}
	}
	return g, g.Wm2 > 0 && cells()
}

func wiringsAnswer(s *Store) []Named {
	p := s.Prepared
	rows := []any{}
	for w := range visit.Wirings(p, s.File()) {
		stops, minds := []any{}, []any{}
		for _, f := range w.Findings {
			switch f.Severity {
			case care.Stop:
				stops = append(stops, int(f.Code))
			case care.Caution:
				minds = append(minds, int(f.Code))
			}
		}
		rows = append(rows, map[string]any{
			"in_series": w.To.InString, "strings": w.Strings, "coupling": scenario.FieldOf(scenario.CoupledBy).Choices[w.To.Coupling],
			"offered_kwh": w.OfferedJ / simulate.JPerKWh, "into_water_kwh": w.IntoJ / simulate.JPerKWh, "coldest_v": w.Volts, "hot_v": w.HotV,
			"run_v": w.RunV, "run_a": w.RunA, "design_a": w.DesignA, "cable_mm2": w.CableMM2, "fused": w.Fused, "fuse_sizes_a": numbers(w.FuseSizes), "stop_codes": stops, "mind_codes": minds,
		})
	}
	assumed := []any{}
	for _, id := range visit.Assumed(&s.Scenario) {
		assumed = append(assumed, scenario.FieldOf(id).Key)
	}
	r := visit.RatingsOf(p)
	return []Named{{"wirings", rows}, {"assumed", assumed}, {"ratings", map[string]any{
		"volts": r.Volts, "design_a": r.DesignA, "string_a": r.StringA, "grid_a": r.GridA, "grid_continuous_a": r.GridContinuousA, "relief_w": r.ReliefW, "fuse_sizes_a": numbers(r.FuseSizes),
	}}}
}

func waterAnswer(s *Store) []Named {
	p, month := s.Prepared, int(s.Scenario.Month)
	pushed, coldC, hotC := visit.Pushed(p)
	joules, hours := visit.GridHeatUp(p, month)
	answer := map[string]any{"pushed_l": pushed, "coldest_c": coldC, "hottest_c": hotC, "grid_heat_up_kwh": joules / simulate.JPerKWh, "grid_heat_up_h": hours}
	for sky, name := range [...]string{"sun_days_bright", "sun_days_typical", "sun_days_dull"} {
		if days, ok := visit.SunHeatUp(p, month, scenario.Sky(sky)); ok && s.Scenario.AllModules() > 0 {
			answer[name] = days
		}
	}
	return []Named{{"water", answer}}
}

func numbers(list []float64) []any {
	out := make([]any, len(list))
	for i, v := range list {
		out[i] = v
	}
	return out
}
