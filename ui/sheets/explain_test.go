package sheets

import (
	"math"
	"testing"

	"suncask/engine/explain"
	"suncask/ui/page"
	"suncask/ui/parts/sheettest"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What the parts of a figure show adds up to it as it is shown, and days are whole.
func TestExplain_AddsUpAsShown(t *testing.T) {
	for _, link := range sheettest.Links {
		p := page.New(state.Open(link), view.New())
		c := &Explain{p}
		for q := range explain.Quantities {
			for _, at := range []explain.Span{explain.Year, {Month: 6, Day: -1}} {
				if p.Explained, p.ExplainedAt = q, at; at != explain.Year && !q.Summed() {
					continue
				}
				e := c.value()
				if len(e.Parts) == 0 {
					continue
				}
				f := c.figure(e.Value)
				if got, want := sheettest.Sum(t, c.sheet().Rows, 1, len(e.Terms)), sheettest.Rounded(f.Value, f.Decimals); math.Abs(got-want) > 1e-6 {
					t.Errorf("%s: parts of %s show %g, their sum %g", link, c.name(q), got, want)
				}
				if q == explain.CoolDays && f.Decimals > 0 {
					t.Errorf("cool days with decimals")
				}
			}
		}
	}
}
