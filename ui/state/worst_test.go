package state

import (
	"testing"

	"suncask/engine/scenario"
)

// A house with cool water shows a day on which it runs cool; one that keeps the promise, and one
// whose day somebody chose, show theirs.
func TestShowWorst(t *testing.T) {
	for _, link := range []string{"v=2&backup=none0000", "v=2&people=5&tank=80", "v=2&place=oslo&modules=1&backup=1200-1215", "v=2&modules=12&backup=1200-1215"} {
		s := Open(link)
		if s.ShowWorst(); s.Results.Day.Flows.CoolUses == 0 {
			t.Errorf("%s: %d cool uses a year, none on the day shown, %s", link, s.Results.Year.Total.CoolUses, scenario.FieldOf(scenario.Month).Choices[s.Scenario.Month])
		}
		if s.Link() != link {
			t.Errorf("%s: the link has become %s", link, s.Link())
		}
	}
	for _, link := range []string{"", "v=2&backup=none0000&month=jul", "v=2&backup=none0000&sky=bright"} {
		s := Open(link)
		month, sky := s.Scenario.Month, s.Scenario.Sky
		if s.ShowWorst(); s.Scenario.Month != month || s.Scenario.Sky != sky {
			t.Errorf("%q: another day is shown", link)
		}
	}
}
