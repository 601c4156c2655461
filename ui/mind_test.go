package ui

import (
	"slices"
	"testing"

	"suncask/engine/care"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What is known of the expansion stands under its fields: the vessel's box is there where a vessel
// takes the water, with the finding that it is too small, and not else.
func TestFindings_Vessel(t *testing.T) {
	for link, want := range map[string]bool{"v=2&expand=vessel&relief=60&supply=35&vessel=2": true, "v=2&expand=valve&relief=60&supply=35&vessel=2": false} {
		p := NewPage(state.Open(link), view.New())
		p.Compute(nil)
		p.More, p.Panel = true, slices.IndexFunc(panels, func(p panel) bool { return p.id == TankPanel })
		rows := (&Card{Page: p}).rows()
		at := slices.IndexFunc(rows, func(r row) bool { return r.id == scenario.VesselL })
		if at >= 0 != want || want && (len(rows[at].findings) != 1 || rows[at].findings[0].Code != care.VesselSmall || rows[at].value != "2") {
			t.Errorf("%s: row %d", link, at)
		}
	}
}

// Once both kinds of converter are compared the finding has its figures, also where both buy
// nothing; nothing is asked again.
func TestFindings_StepsKnown(t *testing.T) {
	for _, link := range []string{"v=2", "v=2&backup=none0000"} {
		s := state.Open(link)
		p := NewPage(s, view.New())
		p.Compute(nil)
		if !p.StepsOpen() {
			t.Fatalf("%s: nothing is open", link)
		}
		for part := range state.Work(state.StepsJob, plan.Whole, s.BeginJob(state.StepsJob), nil) {
			s.TakePart(state.StepsJob, part)
		}
		s.EndJob(state.StepsJob)
		if p.Compute(nil); p.StepsOpen() || !slices.ContainsFunc(p.minded, func(f care.Finding) bool { return f.Code == care.StepDown }) {
			t.Errorf("%s: the finding waits on", link)
		}
	}
}
