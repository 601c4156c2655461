package state

import (
	"strings"
	"testing"

	"suncask/engine/scenario"
)

func TestEntry_InLinks(t *testing.T) {
	for _, c := range []struct {
		link string
		want Entry
	}{
		{"", Home}, {"v=1&tank=150", Home}, {"v=1&view=visit&tank=150", Visit}, {"#v=1&tank=150&view=lesson", Lesson}, {"v=1&tank=150&view=home", Home}, {"#view=lesson", Lesson},
	} {
		s := Open(c.link)
		if s.Entry != c.want || len(s.LinkProblems) > 0 || strings.Contains(c.link, "tank") != (s.Scenario.TankLitres == 150) {
			t.Errorf("%q: entry %d, tank %g, %v", c.link, s.Entry, s.Scenario.TankLitres, s.LinkProblems)
		}
		if again := Open(s.Address()); again.Entry != s.Entry || again.Scenario != s.Scenario {
			t.Errorf("%q comes back as %q", c.link, again.Address())
		}
		if strings.Contains(s.Link(), "view") {
			t.Errorf("%q: the house's link has the entry: %q", c.link, s.Link())
		}
	}
	for _, link := range []string{"v=1&view=moon", "v=1&view=visit&view=lesson", "v=1&view"} {
		s := Open(link)
		if len(s.LinkProblems) != 1 || s.LinkProblems[0].Field != scenario.NoField {
			t.Errorf("%q: %v", link, s.LinkProblems)
		}
	}
}
