package advice

import (
	"strings"
	"testing"

	"suncask/engine/plan"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// The lengths' title names the shortest that keeps the promise, if one does.
func TestTitles_Lengths(t *testing.T) {
	for link, want := range map[string]string{
		"v=2": "h of backup are enough", "v=2&modules=12&tank=400&people=1&backup=1500-1600&accept=100": "No backup is needed", "v=2&people=8&tank=50&backup=0300-0400": "No length",
	} {
		s := state.Open(link)
		s.BeginJob(state.LengthsJob)
		for part := range state.Work(state.LengthsJob, plan.Whole, s.Link(), nil) {
			s.TakePart(state.LengthsJob, part)
		}
		c := &Lengths{page.New(s, view.New())}
		if got := c.title(); !strings.Contains(got, want) {
			t.Errorf("%s: %q of %v", link, got, s.Lengths())
		}
	}
}
