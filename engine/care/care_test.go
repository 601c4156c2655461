package care

import (
	"testing"

	"suncask/engine/scenario"
)

// Thresholds: 60 degC stored (HSG274 Part 2, 2014, read on a secondary page),
// 50 degC at a tap (AS/NZS 3500.4, from memory).
func TestFindings_Thresholds(t *testing.T) {
	for _, c := range []struct {
		set, limit float64
		want       []Code
	}{
		{60, 75, []Code{StoredScalds}}, {59, 75, []Code{StoredBelow60, StoredScalds}},
		{50, 50, []Code{StoredBelow60}}, {51, 50, []Code{StoredBelow60, StoredScalds}},
	} {
		s := scenario.Defaults(scenario.LatestVersion)
		s.SetC, s.SunLimitC = c.set, c.limit
		got := Findings(&s)
		if len(got) != len(c.want) {
			t.Errorf("%g/%g degC: %+v", c.set, c.limit, got)
			continue
		}
		for i := range got {
			if got[i].Code != c.want[i] || got[i].Source == "" {
				t.Errorf("%g/%g degC: %+v", c.set, c.limit, got[i])
			}
		}
	}
}
