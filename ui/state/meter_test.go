package state

import (
	"testing"

	"suncask/engine/plan"
	"suncask/engine/visit"
)

// A meter's job comes to what the engine says at once, part by part; another reading forgets it.
func TestMeterJob_EqualsEngine(t *testing.T) {
	s := Open("v=2&modules=6")
	read := MeterRead{visit.Period{From: 304, Days: 92}, 200}
	s.ReadMeter(read)
	link := s.BeginJob(MeterJob)
	for part := range Work(MeterJob, plan.Whole, link, nil) {
		if !s.TakePart(MeterJob, part) {
			t.Fatal("the store takes no part of its own house")
		}
	}
	s.FinishJob(MeterJob)
	m, causes := s.Meter()
	if m == nil || len(causes) == 0 || !s.Done(MeterJob) {
		t.Fatalf("%+v, %d causes", m, len(causes))
	}
	found := map[visit.CauseKind]visit.Cause{}
	for part := range visit.ReadMeter(s.Prepared, nil, read.Period, read.KWh) {
		switch {
		case part.Meter != nil && *part.Meter != *m:
			t.Errorf("%+v, not %+v", m, part.Meter)
		case part.Cause != nil:
			found[part.Cause.Kind] = *part.Cause
		}
	}
	for i, c := range causes {
		if c != found[c.Kind] || i > 0 && visit.CompareCauses(causes[i-1], c) > 0 {
			t.Errorf("cause %d: %+v, not %+v", i, c, found[c.Kind])
		}
	}
	before := s.Link()
	if !causes[0].Alone || !s.TakeCause(&causes[0]) && !s.TakeCause(&causes[1]) || s.Link() == before {
		t.Error("no cause is taken")
	}
	if s.Undo(); s.Link() != before {
		t.Error("a cause is no undo away")
	}
	s.ReadMeter(MeterRead{read.Period, 100})
	if m, _ := s.Meter(); m != nil {
		t.Error("another reading has what the first one came to")
	}
	for _, text := range []string{"", "1,2", "-1,3,4", "1,0,4", "1,400,4", "1,2,-4", "1,2,Inf", "1,2,NaN", "a,b,c"} {
		if _, ok := meterOf(text); ok {
			t.Errorf("%q is a reading", text)
		}
	}
}
