package landscape

import (
	"strings"
	"testing"

	"suncask/engine/plan"
)

// A point is in the cell whose middle it is, and beside the cells in none.
func TestWindowAt_Inverse(t *testing.T) {
	for _, f := range []Frame{Short, All} {
		for steps := 0; steps <= plan.Places; steps++ {
			for start := range plan.Places {
				w := plan.Window{Start: start, Steps: steps}
				x, y, drawn := f.Middle(w)
				if got, ok := f.WindowAt(x, y); ok != drawn || drawn != (steps <= 4*f.Hours()) || ok && got != w {
					t.Fatalf("%v: %v, %v", w, got, ok)
				}
			}
		}
		for _, p := range [][2]float64{{0, 0}, {Left - 1, 50}, {Width - 11, 50}, {50, Top - 1}, {50, float64(f.Height() - 23)}} {
			if w, ok := f.WindowAt(p[0], p[1]); ok {
				t.Errorf("%v is %v", p, w)
			}
		}
	}
}

// Shades and hatching cover what is known and nothing else; the least cost is the least
// of those that keep the promise.
func TestMap_Paths(t *testing.T) {
	m := New(5)
	if shades, missed := All.Paths(m); strings.Join(shades[:], "")+missed != "" {
		t.Error("an empty map draws something")
	}
	m.Add(plan.Window{}, 0, 400)
	m.Add(plan.Window{Steps: plan.Places}, 80, 0)
	m.Add(plan.Window{Start: 60, Steps: 12}, 30, 5)
	m.Add(plan.Window{Start: 61, Steps: 12}, 29, 6)
	shades, missed := All.Paths(m)
	if shades[0] != "M30 296h288v3h-288z" || shades[Levels-1] != "M30 8h288v3h-288z" {
		t.Errorf("no backup %q, all day %q", shades[0], shades[Levels-1])
	}
	if missed != "M30 296h288v3h-288zM213 260h3v3h-3z" {
		t.Errorf("missed %q", missed)
	}
	// Of the short ones none costs as much as all day.
	if shades, _ = Short.Paths(m); shades[0] != "M30 248h288v5h-288z" || shades[Levels-1] == "" || strings.Contains(strings.Join(shades[:], ""), "M30 8h288") {
		t.Errorf("of the short ones %q", shades)
	}
	if m.Least != (plan.Window{Start: 60, Steps: 12}) || m.LeastCost != 30 || m.Known != 4 {
		t.Errorf("%v at %g of %d", m.Least, m.LeastCost, m.Known)
	}
	if _, _, ok := m.At(plan.Window{Start: 3, Steps: 3}); ok {
		t.Error("an unknown window is known")
	}
}
