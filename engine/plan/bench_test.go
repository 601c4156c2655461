package plan

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// The search for the best hours of the example house: one price, then two.
func BenchmarkBest(b *testing.B) {
	for _, low := range []string{"one price", "two prices"} {
		b.Run(low, func(b *testing.B) {
			s := scenario.Defaults(scenario.LatestVersion)
			if low == "two prices" {
				s.LowFrom, s.LowTo = 22*60, 6*60
			}
			p, err := simulate.Prepare(&s, nil, nil)
			if err != nil {
				b.Fatal(err)
			}
			for b.Loop() {
				best := NewBest(NewGrid(p, scenario.Span{}), s.AcceptUses)
				for best.Step() {
				}
				b.ReportMetric(float64(best.Runs()), "years")
			}
		})
	}
}
