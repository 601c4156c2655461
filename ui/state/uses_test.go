package state

import (
	"testing"

	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/ui/dial"
)

// A mark that is dragged takes all its uses along, keeps within the day, and comes back with
// undo; the year is simulated at every step.
func TestUses_DragCommitUndo(t *testing.T) {
	s := Open("v=1&people=4&tank=120")
	first, cost := s.Scenario, s.Results.Year.Total.Cost
	marks := s.OccasionsOf()
	if len(marks) < 3 || !marks[0].Has(draw.MorningShowers) || !marks[0].Has(draw.MorningHands) {
		t.Fatalf("marks %v", marks)
	}
	s.BeginUses(marks[0], 400)
	if !s.Drag(400+63, Coarse) || s.Results.Year.Total.Cost == cost || s.CanUndo() {
		t.Error("a preview must change the figures and leave no undo")
	}
	if at, later := s.MovedTo(); at != 450 || later != 60 {
		t.Errorf("moved to %d, %d later", at, later)
	}
	if n := len(s.Drops()); n != len(marks) {
		t.Errorf("%d marks while one moves, %d before", n, len(marks))
	}
	s.Cancel()
	if s.Scenario != first || s.Prepared.Scenario != first || s.Results.Year.Total.Cost != cost {
		t.Errorf("cancelled: %v", s.Scenario.UseAt)
	}
	s.BeginUses(marks[0], 0)
	for range 20 {
		s.Preview(-Page)
	}
	if s.Scenario.UseAt[draw.MorningShowers] != 0 || s.Scenario.UseAt[draw.MorningHands] != 70 {
		t.Errorf("at the day's beginning: %v", s.Scenario.UseAt)
	}
	s.Commit()
	for _, o := range []draw.Occasion{draw.MorningShowers, draw.MorningHands} {
		if !s.Scenario.Known.Has(scenario.TimeOf(o)) {
			t.Errorf("occasion %d is still assumed", o)
		}
	}
	if s.Scenario.Known.Has(scenario.NightHands) || s.Scenario.UseAt != s.Prepared.Scenario.UseAt || !s.CanUndo() {
		t.Errorf("committed: %s", s.Link())
	}
	if again := Open(s.Link()); again.Results.Year.Total != s.Results.Year.Total || again.Bare != s.Bare {
		t.Error("the link opens another house")
	}
	s.Undo()
	if s.Scenario != first || s.Results.Year.Total.Cost != cost {
		t.Errorf("undone: %v", s.Scenario.UseAt)
	}
}

// What runs past midnight stays with its mark while that moves.
func TestUses_PastMidnight(t *testing.T) {
	s := Open("v=1&people=12&wash=evening&showerpm=280&handspm=200&dishespm=200")
	late := Of(draw.EveningShowers)
	s.BeginUses(late, 0)
	s.Preview(Coarse)
	for _, d := range s.Drops() {
		if d.Count > 0 && (d.Last-d.First > 720 || d.Last < d.First) {
			t.Errorf("mark %+v", d)
		}
	}
	if n := s.Marks(nil); len(n) != len(s.Results.Day.Uses) {
		t.Errorf("%d marks of %d uses", len(n), len(s.Results.Day.Uses))
	}
	s.Cancel()
}

// The hours of a standard day are given.
func TestUses_StandardDayStays(t *testing.T) {
	s := Open("v=1&uses=m")
	for _, set := range s.OccasionsOf() {
		if set != 0 {
			t.Errorf("a standard day's mark can be moved: %v", set)
		}
	}
	s.BeginUses(Of(draw.MorningShowers), 0)
	if s.Before != nil || s.Preview(Coarse) || s.Drag(90, Coarse) {
		t.Error("a gesture on a standard day")
	}
}

// A gesture on backup hours that follows one on uses takes that back.
func TestUses_AnotherGesture(t *testing.T) {
	s := Open("")
	first := s.Scenario
	s.BeginUses(Of(draw.EveningShowers), 0)
	s.Preview(Page)
	s.Begin(0, dial.EndGrip, 0)
	if s.Scenario != first || s.Moving != 0 {
		t.Errorf("%v", s.Scenario.UseAt)
	}
	s.Cancel()
}
