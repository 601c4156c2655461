package ui

import (
	"strings"
	"testing"

	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// A tap reads the nearest item of a chart; one that has none is not read, and the light is first
// read of the month shown.
func TestReadNear(t *testing.T) {
	p := page.New(state.Open("v=2"), view.New())
	if says := readable(p, "climate").Says(readable(p, "climate").Tells); !strings.HasPrefix(says, p.View.Words.Months[p.Store.Scenario.Month]) {
		t.Errorf("the light of %q, not of the month shown", says)
	}
	for _, c := range []struct {
		chart string
		x     float64 // a tap
		at    float64 // is read then
	}{
		{"year", 2.4, 2},
		{"year", -3, 1},
		{"climate", 7.4, 7},
		{"cash", 12.4, 12},
		{"cash", 1e6, float64(p.Store.Scenario.HorizonYears)},
	} {
		ReadNear(p, c.chart, c.x)
		if x, ok := ReadAt(p, c.chart); !ok || x != c.at {
			t.Errorf("%s tapped at %g reads %g, not %g", c.chart, c.x, x, c.at)
		}
	}
	if _, ok := ReadAt(p, "lengths"); ok {
		t.Error("lengths are read before any is known")
	}
}
