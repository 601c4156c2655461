package plan

import (
	"slices"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Each range lies within its field's and on its steps.
func TestRanges_Property(t *testing.T) {
	for _, r := range Ranges {
		f := scenario.FieldOf(r.Field)
		for i := range r.Count {
			if v := r.From + float64(i)*r.Step; f.Check(v) != nil || f.Snap(v) != v {
				t.Errorf("%s: %g", f.Key, v)
			}
		}
	}
}

// A curve's points are the years of the houses with those values, each value once, the
// present one first.
func TestCurve_AreYears(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	p := prepare(t, s)
	for _, r := range Ranges {
		n, seen := 0, map[float64]bool{}
		for at := range Curve(p, nil, r) {
			if n == 0 && (at.Value-scenario.FieldOf(r.Field).Get(&s) > r.Step/2 || scenario.FieldOf(r.Field).Get(&s)-at.Value > r.Step/2) {
				t.Errorf("field %d begins at %g", r.Field, at.Value)
			}
			seen[at.Value] = true
			if n++; n%7 == 3 {
				to := s
				scenario.FieldOf(r.Field).Set(&to, at.Value)
				to.Known = to.Known.With(r.Field)
				to.Settle()
				var y simulate.Year
				prepare(t, to).RunYear(to.Backup, new(simulate.Workspace), &y)
				if y.Total.Cost != at.Cost || y.Total.CoolUses != at.CoolUses {
					t.Errorf("field %d at %g: %g and %d, the year %g and %d", r.Field, at.Value, at.Cost, at.CoolUses, y.Total.Cost, y.Total.CoolUses)
				}
			}
		}
		if n != r.Count || len(seen) != n {
			t.Errorf("field %d: %d points, %d values, want %d", r.Field, n, len(seen), r.Count)
		}
	}
	if got := outward(2.4, 5); !slices.Equal(got, []int{2, 3, 1, 4, 0}) {
		t.Errorf("outward %v", got)
	}
	for _, far := range []float64{-7, 9} {
		if got := outward(far, 4); len(got) != 4 {
			t.Errorf("outward from %g: %v", far, got)
		}
	}
}
