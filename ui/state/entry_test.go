package state

import (
	"strings"
	"testing"

	"suncask/engine/scenario"
)

// An experiment and its letters travel in a lesson's link alone; its house stands for what the link
// leaves out, and a name that is none is refused.
func TestExperiment_InLinks(t *testing.T) {
	for _, c := range []struct {
		link, exp string
		big       bool
		setC      float64
		problems  int
	}{
		{"view=lesson&exp=tap", "tap", false, 60, 0}, {"#view=lesson&exp=tap&set=70", "tap", false, 70, 0}, {"view=lesson&exp=tap&big=1", "tap", true, 60, 0},
		{"v=2&set=70&view=lesson&exp=tap", "tap", false, 70, 0}, {"v=2&view=lesson&exp=tides", "", false, 60, 1}, {"v=2&exp=tap", "", false, 60, 1}, {"v=2&view=visit&big=1", "", false, 60, 1}, {"v=2&view=lesson&big=2", "", false, 60, 1},
	} {
		s := Open(c.link)
		if s.Exp != c.exp || s.Big != c.big || s.Scenario.SetC != c.setC || len(s.LinkProblems) != c.problems {
			t.Errorf("%s: %q, %v, %g degC, %v", c.link, s.Exp, s.Big, s.Scenario.SetC, s.LinkProblems)
		}
		if again := Open(s.Address()); again.Exp != s.Exp || again.Big != s.Big || again.Scenario != s.Scenario {
			t.Errorf("%s comes back as %s", c.link, again.Address())
		}
		if s.Exp != "" && (s.Scenario.Modules != 0 || s.Scenario.PipeLitres != 0) == strings.HasPrefix(strings.TrimPrefix(c.link, "#"), "view") {
			t.Errorf("%s: %d modules, %g L in pipes", c.link, s.Scenario.Modules, s.Scenario.PipeLitres)
		}
	}
}

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
