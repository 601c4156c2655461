package ui

import (
	"slices"
	"testing"

	"suncask/engine/care"
	"suncask/engine/plan"
	"suncask/ui/state"
	"suncask/ui/view"
)

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
