package plan

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// The search for the best hours of the example house: one price, two, and the other rules.
func BenchmarkBest(b *testing.B) {
	for _, c := range []struct {
		name   string
		change func(*scenario.Scenario)
	}{
		{"one price", func(*scenario.Scenario) {}},
		{"two prices", func(s *scenario.Scenario) { s.LowFrom, s.LowTo = 22*60, 6*60 }},
		{"satisfied", func(s *scenario.Scenario) { s.Rule = scenario.SunWhenSatisfied }},
		{"sun first", func(s *scenario.Scenario) { s.Rule = scenario.SunFirst }},
	} {
		b.Run(c.name, func(b *testing.B) {
			p, s := benched(b, c.change)
			for b.Loop() {
				best := NewBest(NewGrid(p, scenario.Span{}), s.AcceptUses)
				for best.Step() {
				}
				b.ReportMetric(float64(best.Runs()), "years")
			}
		})
	}
}

// The curves behind two sliders of the example house: the tank keeps its light, modules do not.
func BenchmarkCurve(b *testing.B) {
	for _, id := range []scenario.FieldID{scenario.TankLitres, scenario.Modules} {
		b.Run(scenario.FieldOf(id).Key, func(b *testing.B) {
			p, _ := benched(b, func(*scenario.Scenario) {})
			r, _ := RangeOf(id)
			for b.Loop() {
				for range Curve(p, nil, r) {
				}
			}
		})
	}
}

func benched(b *testing.B, change func(*scenario.Scenario)) (*simulate.Prepared, scenario.Scenario) {
	s := scenario.Defaults(scenario.LatestVersion)
	change(&s)
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		b.Fatal(err)
	}
	return p, s
}
