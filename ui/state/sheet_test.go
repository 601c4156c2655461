package state

import (
	"testing"

	"suncask/engine/scenario"
)

// Values of a datasheet that somebody gave bring the assumed ones with them.
func TestSheet_AssumedFollow(t *testing.T) {
	s := Open("")
	s.Type(scenario.ModuleW, "200")
	if s.Scenario.ShortA != 6.81 {
		t.Errorf("200 W: short circuit %g A", s.Scenario.ShortA)
	}
	s.Type(scenario.OpenV, "49,6")
	if s.Scenario.MostV != 41.6 || len(s.Refused) > 0 {
		t.Errorf("49.6 V: at maximum power %g V, refused %v", s.Scenario.MostV, s.Refused)
	}
	back := Open(s.Link())
	if back.Scenario != s.Scenario || len(back.LinkProblems) > 0 {
		t.Errorf("the link %s: %v", s.Link(), back.LinkProblems)
	}
}

// A value that no module has beside the others is refused with what is possible, and the
// house stays; in a link the datasheet is left out and said so.
func TestSheet_Impossible(t *testing.T) {
	s := Open("v=1&vmp=312&isc=1362")
	before := s.Scenario
	s.Type(scenario.OpenV, "30")
	r, ok := s.Refused[scenario.OpenV]
	if !ok || r.Problem.Code != scenario.ImpossibleSheet || !(r.Problem.Min < r.Problem.Max) || s.Scenario != before {
		t.Errorf("Voc below Vmp: %+v, %v", r, ok)
	}
	s.Type(scenario.ShortA, "12")
	if r := s.Refused[scenario.ShortA]; r.Typed != "12" || r.Problem.Field != scenario.ModuleW || s.Scenario != before {
		t.Errorf("Isc below Imp: %+v", s.Refused)
	}
	l := Open("v=1&voc=300&vmp=312&tank=150")
	if len(l.LinkProblems) != 1 || l.LinkProblems[0].Code != scenario.ImpossibleSheet || l.Scenario.TankLitres != 150 || l.Scenario.OpenV != 37.2 {
		t.Errorf("%+v, Voc %g", l.LinkProblems, l.Scenario.OpenV)
	}
}

// What the other rules would change is a year of each of them.
func TestRules_AreYears(t *testing.T) {
	s := Open("v=1&backup=1000-1500")
	rules := s.Rules()
	for i, name := range []string{"window", "satisfied", "sun"} {
		if want := Open("v=1&backup=1000-1500&rule=" + name).Results.Year.Total; rules[i] != want {
			t.Errorf("rule %s: cost %g, its own house %g", name, rules[i].Cost, want.Cost)
		}
	}
	if !(rules[scenario.SunFirst].BoughtJ < rules[scenario.WholeWindow].BoughtJ) {
		t.Errorf("at noon, sun first buys %g J, the whole window %g", rules[scenario.SunFirst].BoughtJ, rules[scenario.WholeWindow].BoughtJ)
	}
}
