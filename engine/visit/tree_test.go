package visit

import (
	"testing"

	"suncask/engine/scenario"
)

// Every question can be reached from a complaint, no way goes in a circle for ever without an end,
// every end names who deals with it, and every question says who asks it.
func TestTree_Property(t *testing.T) {
	var s scenario.Scenario
	for _, kind := range []struct {
		coupling scenario.Coupling
		breaks   int8
	}{{scenario.Converter, scenario.BreaksContactor}, {scenario.Direct, scenario.BreaksStat}} {
		s.Modules, s.Coupling, s.BreaksBy = 6, kind.coupling, kind.breaks
		reached, ends := map[Node]bool{}, map[Node]bool{}
		var walk func(Node)
		walk = func(n Node) {
			if reached[n] {
				return
			}
			reached[n] = true
			q := QuestionOf(n)
			if q.Who == 0 || len(q.Answers) < 2 {
				t.Errorf("question %d: who %q, %d answers", n, q.Who.Letters(), len(q.Answers))
			}
			for _, a := range q.Answers {
				if a.Next == NoNode {
					ends[n] = true
					if a.Who.Letters() == "" {
						t.Errorf("question %d: an end names nobody", n)
					}
					continue
				}
				walk(a.Next.At(&s))
			}
		}
		for d := range Doors {
			walk(d.First(&s))
		}
		want := int(Nodes) - 1
		if kind.coupling == scenario.Direct {
			want -= 3 // no converter, no window, no contactor
		}
		if len(reached) != want {
			t.Errorf("coupling %d: %d questions of %d are reached", kind.coupling, len(reached), want)
		}
		for n := range reached { // from each an end is a few answers away
			seen := map[Node]bool{}
			at := []Node{n}
			found := false
			for len(at) > 0 && !found {
				next := at[0]
				at = at[1:]
				if seen[next] {
					continue
				}
				seen[next] = true
				found = ends[next]
				for _, a := range QuestionOf(next).Answers {
					if a.Next != NoNode {
						at = append(at, a.Next.At(&s))
					}
				}
			}
			if !found {
				t.Errorf("question %d leads to no end", n)
			}
		}
	}
	bare := scenario.Scenario{}
	for n := IsTrouble; n < Nodes; n++ {
		switch n.At(&bare) {
		case RoofVolts, InWindow, Polarity, EarthFault, ConverterWorks, ContactorWorks, StringMissing:
			t.Errorf("without modules question %d is about them", n)
		}
	}
}

func TestWho_Letters(t *testing.T) {
	if got := (Household | Trained | Electrician | Plumber).Letters(); got != "H, C, E, P" {
		t.Error(got)
	}
}
