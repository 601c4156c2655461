package simulate

import (
	"math"
	"testing"

	"suncask/engine/scenario"
)

// Tracking takes 20 to 35 % more in a year than the best fixed resistance, before the
// converter's own loss (Matuska & Sourek 2017, Int. J. Photoenergy 7540250, for Europe;
// read in its abstract); the far north is only printed. The best resistance lies above
// the one that fits full sun (follows from it).
func TestYields_Practice(t *testing.T) {
	for _, place := range []string{"seville", "madrid", "lisbon", "mariehamn"} {
		p := prepared(t, func(s *scenario.Scenario) {
			s.Place, s.Modules, s.ElementW, s.ConverterW = place, 8, 9000, 9000
			s.Settle()
		})
		y := p.Yields()
		_, fit := p.Working(1000, 25)
		more := y.TrackedJ / (p.Scenario.ConverterPct / 100) / y.BestJ
		t.Logf("%-10s best %.1f ohm (full sun %.1f), tracked %.0f %% more before the converter's loss, straight on %.1f ohm %.0f %%",
			place, y.BestOhms, fit, 100*(more-1), p.ElementOhms(), 100*y.StraightJ/y.BestJ)
		if y.BestOhms < fit || place != "mariehamn" && (more < 1.20 || more > 1.35) || y.StraightJ > y.BestJ*(1+1e-6) {
			t.Errorf("%s: %+v, fit %.1f ohm", place, y, fit)
		}
	}
	if y := prepared(t, func(s *scenario.Scenario) { s.Modules = 0 }).Yields(); y != (Yields{}) {
		t.Errorf("without modules %+v", y)
	}
	// Counted on every fifth day, the tracked yield is the year's to a few percent.
	p := prepared(t, func(*scenario.Scenario) {})
	if got := p.Yields().TrackedJ / p.Potential.ElementJ; math.Abs(got-1) > 0.05 {
		t.Errorf("on every fifth day %.3f of the year", got)
	}
}
