package ui

import (
	"strings"
	"testing"

	"suncask/ui/state"
	"suncask/ui/view"
)

// What is read of a chart is what tells most, then what somebody chose, by the nearest place or
// the next; it says the numbers of the chart's table.
func TestReading(t *testing.T) {
	p := NewPage(state.Open("v=2"), view.New())
	for _, c := range []struct {
		chart  string
		x      float64 // a tap
		at     float64 // is read then
		before float64 // the one before
	}{
		{"year", 2.4, 2, 1},
		{"year", -3, 1, 12},
		{"climate", 7.4, 7, 6},
		{"cash", 12.4, 12, 11},
		{"cash", 1e6, float64(p.Store.Scenario.HorizonYears), float64(p.Store.Scenario.HorizonYears) - 1},
	} {
		p.ReadNear(c.chart, c.x)
		if x, ok := p.ReadAt(c.chart); !ok || x != c.at {
			t.Errorf("%s tapped at %g reads %g, not %g", c.chart, c.x, x, c.at)
		}
		(&Reading{p, c.chart}).turn(-1)
		if x, _ := p.ReadAt(c.chart); x != c.before {
			t.Errorf("%s: before %g is %g, not %g", c.chart, c.at, x, c.before)
		}
	}
	if _, ok := p.ReadAt("lengths"); ok {
		t.Error("lengths are read before any is known")
	}
	// The year of the payback is the first whose sum, in the table too, is above zero.
	p = NewPage(state.Open("v=2"), view.New())
	year, _ := p.ReadAt("cash")
	rows := (&Worth{p}).cash().rows
	if sum, before := rows[int(year)].cells[2].(figure).value, rows[int(year)-1].cells[2].(figure).value; sum < 0 || before >= 0 {
		t.Errorf("paid back in year %g, %g after %g", year, sum, before)
	}
	if says := (&Reading{p, "cash"}).says(); !strings.Contains(says, shownCell(rows[int(year)].cells[2])) {
		t.Errorf("%q without %s", says, shownCell(rows[int(year)].cells[2]))
	}
	if says := (&Reading{p, "climate"}).says(); !strings.HasPrefix(says, p.View.Words.Months[p.Store.Scenario.Month]) {
		t.Errorf("the light of %q, not of the month shown", says)
	}
}
