package page

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
		p := New(s, view.New())
		p.Compute()
		if !p.StepsOpen() {
			t.Fatalf("%s: nothing is open", link)
		}
		for part := range state.Work(state.StepsJob, plan.Whole, s.BeginJob(state.StepsJob), nil) {
			s.TakePart(state.StepsJob, part)
		}
		s.EndJob(state.StepsJob)
		if p.Compute(); p.StepsOpen() || !slices.ContainsFunc(p.Findings, func(f care.Finding) bool { return f.Code == care.StepDown }) {
			t.Errorf("%s: the finding waits on", link)
		}
	}
}
