package plan

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Every window comes once, coarse to fine, with the outcome of its year.
func TestLandscape_EveryWindowOnce(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	p := prepare(t, s)
	l := NewLandscape(p, scenario.Span{}, Whole)
	seen := map[Window]Outcome{}
	for w, o, ok := l.Step(); ok; w, o, ok = l.Step() {
		if _, twice := seen[w]; twice {
			t.Fatalf("%v twice", w)
		}
		seen[w] = o
		if n := len(seen); n == 20 { // 6 starts with 3 lengths, none and all day
			for v := range seen {
				if v.Start%16 != 0 || v.Steps%16 != 0 {
					t.Errorf("%v among the first %d", v, n)
				}
			}
		}
		if len(seen) <= 2+Places*ShortSteps && w.Steps > ShortSteps && w.Steps < Places {
			t.Fatalf("%v before the short ones are known", w)
		}
		if testing.Short() && len(seen) > 300 {
			return
		}
	}
	if len(seen) != Windows {
		t.Errorf("%d windows, want %d", len(seen), Windows)
	}
	for part := range 3 {
		some := NewLandscape(p, scenario.Span{}, Share{part, 3})
		for range 40 {
			w, o, ok := some.Step()
			if !ok || seen[w] != o {
				t.Fatalf("share %d: %v, %+v, want %+v", part, w, o, seen[w])
			}
			delete(seen, w)
		}
	}
	if len(seen) != Windows-120 {
		t.Errorf("shares have windows in common: %d left", len(seen))
	}
	y := new(simulate.Year)
	for _, w := range []Window{{0, 0}, {0, Places}, {60, 12}, {95, 3}} {
		p.RunYear(w.Backup(scenario.Span{}), new(simulate.Workspace), y)
		if o, _ := l.grid.At(w); o.Cost != y.Total.Cost || o.CoolUses != y.Total.CoolUses {
			t.Errorf("%v: %+v, the year %.4f and %d", w, o, y.Total.Cost, y.Total.CoolUses)
		}
	}
}
