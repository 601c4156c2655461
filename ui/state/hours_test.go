package state

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/ui/dial"
)

// An edge that is counted from the sun stays where it was on the day shown, to the
// five minutes an offset can have, follows through the year, and comes back.
func TestCountFrom_StaysThere(t *testing.T) {
	s := Open("v=1&backup=1500-1800")
	for _, from := range []scenario.Anchor{scenario.SolarNoon, scenario.Sunset, scenario.Clock} {
		s.CountFrom(dial.StartGrip, from)
		w := s.Window(0)
		if math.Abs(float64(w.Start-900)) > 5 || w.End != 1080 || s.Scenario.Backup.StartFrom != from {
			t.Errorf("from %d: %+v, %+v", from, w, s.Scenario.Backup)
		}
	}
	if s.Scenario.Backup.FollowsSun() || !s.CanUndo() {
		t.Errorf("back to the clock: %+v", s.Scenario.Backup)
	}
	s.CountFrom(dial.EndGrip, scenario.Sunset)
	march := s.Window(0).End
	s.Choose(scenario.Month, 5)
	if june := s.Window(0).End; june <= march+30 {
		t.Errorf("sunset moves the end from %d in March to %d in June", march, june)
	}
	back := Open(s.Link())
	if back.Scenario != s.Scenario || len(back.LinkProblems) > 0 {
		t.Errorf("the link %s gives %+v, %v", s.Link(), back.Scenario.Backup, back.LinkProblems)
	}
}

// Drags, steps and typed times move hours that follow the sun, and they go on
// following it.
func TestSunHours_Gestures(t *testing.T) {
	s := Open("v=1&backup=noon0130toset0000")
	at := s.Window(0)
	if w := s.Stepped(0, dial.StartGrip, Coarse); w.Start != at.Start+Coarse {
		t.Errorf("a step from %d to %d", at.Start, w.Start)
	}
	s.SetWindow(0, s.Stepped(0, dial.StartGrip, Coarse))
	if b := s.Scenario.Backup; b.Start != 105 || b.StartFrom != scenario.SolarNoon || b.EndFrom != scenario.Sunset || b.End != 0 {
		t.Errorf("after a step: %+v", b)
	}
	s.Begin(0, dial.EndGrip, float64(at.End))
	s.Drag(float64(at.End+62), Coarse)
	if b := s.Scenario.Backup; b.EndFrom != scenario.Sunset || b.End < 50 || b.End > 70 {
		t.Errorf("dragged by an hour: %+v", b)
	}
	s.Drag(float64(at.Start), Coarse)
	s.Drag(float64(at.Start-200), Coarse)
	if s.Scenario.Backup.FollowsSun() || s.Window(0).Length() != 0 {
		t.Errorf("dragged shut: %+v", s.Scenario.Backup)
	}
	s.Drag(float64(at.Start), Coarse)
	s.Drag(float64(at.End+62), Coarse)
	if b := s.Scenario.Backup; !b.FollowsSun() {
		t.Errorf("open again: %+v", b)
	}
	s.Cancel()
	if b := s.Scenario.Backup; b.Start != 105 || b.End != 0 {
		t.Errorf("cancelled: %+v", b)
	}
	s.TypeEdge(0, dial.StartGrip, "16:00")
	if w := s.Window(0); math.Abs(float64(w.Start-960)) > 3 || s.Scenario.Backup.StartFrom != scenario.SolarNoon {
		t.Errorf("typed 16:00: %+v, %+v", w, s.Scenario.Backup)
	}
}

// Over midnight an end counted from the sun is that of the next day.
func TestSunHours_OverMidnight(t *testing.T) {
	s := Open("v=1&backup=2200-0500")
	s.CountFrom(dial.EndGrip, scenario.SolarNoon)
	from, to, ok := s.Prepared.Hours(s.Scenario.Backup, s.shownDay())
	if !ok || from != 1320 || math.Abs(to-1740) > 5 {
		t.Errorf("%g to %g: %+v", from, to, s.Scenario.Backup)
	}
	if w := s.Window(0); w.Start != 1320 || math.Abs(float64(w.End-300)) > 5 {
		t.Errorf("on the dial %+v", w)
	}
}
