package ui

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/ui/state"
	"suncask/ui/view"
)

// Every field of a house has words in a comparison, and only what differs is listed.
func TestHouses_Compare(t *testing.T) {
	p := NewPage(state.Open("v=1&place=oslo&people=4"), view.New())
	p.other, p.otherName = state.Open("v=1&place=lisbon&backup=noon0000to1700&light=300,,,,,,,,,,,"), "another"
	c := &Houses{p}
	for _, f := range scenario.Fields() {
		for _, s := range []*state.Store{p.Store, p.other} {
			_ = c.value(s, f.ID)
		}
	}
	rows := map[string]bool{}
	for _, r := range c.sheet().rows {
		rows[r.name()] = true
	}
	if !rows["Place"] || !rows["People"] || rows["Tank"] || len(rows) > 14 {
		t.Errorf("rows %v", rows)
	}
}
