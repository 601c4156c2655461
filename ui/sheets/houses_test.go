package sheets

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/view"
)

// Every field of a house has words in a comparison, and only what differs is listed.
func TestHouses_Compare(t *testing.T) {
	p := page.New(state.Open("v=1&place=oslo&people=4"), view.New())
	p.Other, p.OtherName = state.Open("v=1&place=lisbon&backup=noon0000to1700&light=300,,,,,,,,,,,"), "another"
	c := &Houses{p}
	for _, f := range scenario.Fields() {
		for _, s := range []*state.Store{p.Store, p.Other} {
			_ = p.View.Field(s, f.ID)
		}
	}
	rows := map[string]bool{}
	for _, r := range c.sheet().Rows {
		rows[parts.Text(r.Cells[0])] = true
	}
	if !rows["Place"] || !rows["People"] || rows["Tank"] || len(rows) > 14 {
		t.Errorf("rows %v", rows)
	}
}
