package state

import (
	"testing"

	"suncask/engine/plan"
	"suncask/engine/scenario"
)

// Curves that a worker sends are taken for the house that they are of; moving along one leaves
// it as it is and makes the others stale.
func TestCurves_Taken(t *testing.T) {
	s := Open("v=2&tank=180")
	fields := []scenario.FieldID{scenario.TankLitres, scenario.ElementW, scenario.SetC}
	link, ok := s.BeginCurves(fields)
	if !ok {
		t.Fatal("nothing is asked for")
	}
	for part := range Work(CurvesJob, plan.Whole, link, nil) {
		s.TakePart(CurvesJob, part)
	}
	for _, id := range []scenario.FieldID{scenario.TankLitres, scenario.SetC} {
		r, _ := plan.RangeOf(id)
		if points, stale := s.Curve(id); stale || len(points) != r.Count || points[0].Value != r.From {
			t.Fatalf("field %d: %d points, stale %v", id, len(points), stale)
		}
	}
	if _, ok := s.BeginCurves(fields); ok {
		t.Error("what is known is asked for again")
	}
	s.Set(scenario.TankLitres, 120)
	points, stale := s.Curve(scenario.TankLitres)
	if at := points[2]; stale || at.Value != 120 || at.Cost != s.Results.Year.Total.Cost || at.CoolUses != s.Results.Year.Total.CoolUses {
		t.Errorf("at %g: %+v, the year %+v, stale %v", s.Scenario.TankLitres, at, s.Results.Year.Total, stale)
	}
	if _, stale := s.Curve(scenario.SetC); !stale {
		t.Error("the thermostat's curve is of another tank")
	}
	// Steps along one field are one edit.
	s.Set(scenario.TankLitres, 140)
	s.Set(scenario.TankLitres, 160)
	if s.Undo(); s.Scenario.TankLitres != 180 {
		t.Errorf("after undo %g L", s.Scenario.TankLitres)
	}
}
