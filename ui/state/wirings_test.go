package state

import (
	"testing"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/visit"
)

// Rows that a worker sent are what the engine gives, in its order; one that is taken makes its
// house, marks it, and keeps the list. Another number of modules forgets it.
func TestWirings_Taken(t *testing.T) {
	s := Open("v=2&modules=6&backup=1500-1730")
	for part := range Work(WiringsJob, plan.Whole, s.BeginJob(WiringsJob), nil) {
		s.TakePart(WiringsJob, part)
	}
	s.EndJob(WiringsJob)
	want := map[[2]int]*visit.Wiring{}
	for w := range visit.Wirings(s.Prepared, nil) {
		want[[2]int{int(w.To.Coupling), w.To.InString}] = w
	}
	list := s.Wirings()
	if len(list) != 12 || len(want) != 12 {
		t.Fatalf("%d rows of %d", len(list), len(want))
	}
	wired := 0
	for i := range list {
		got := &list[i]
		w := want[[2]int{int(got.To.Coupling), got.To.InString}]
		if w == nil || got.IntoJ != w.IntoJ || got.Volts != w.Volts || got.DesignA != w.DesignA || got.CableMM2 != w.CableMM2 || got.Fused != w.Fused || got.FuseMostA != w.FuseMostA || len(got.Findings) != len(w.Findings) || got.Stops() != w.Stops() {
			t.Errorf("%+v, want %+v", got, w)
		}
		if i > 0 && visit.Compare(&list[i-1], got) > 0 {
			t.Errorf("row %d is out of its order", i)
		}
		if s.Wired(got) {
			wired++
		}
	}
	if wired != 1 {
		t.Errorf("%d rows are the house's own", wired)
	}
	take := &list[1]
	s.TakeWiring(take)
	if !s.Wired(take) || !s.Scenario.Known.Has(scenario.CoupledBy) || len(s.Wirings()) != 12 || s.Results.Year.Total.SunJ != take.IntoJ {
		t.Errorf("taken: %s, %g J into the water, %g in its row", s.Link(), s.Results.Year.Total.SunJ, take.IntoJ)
	}
	s.Undo()
	if s.Wired(take) {
		t.Error("not taken back")
	}
	s.Type(scenario.Modules, "4")
	if s.Wirings() != nil {
		t.Error("a list of another house")
	}
	for _, torn := range [][]float64{nil, {1, 2, 3}, make([]float64, 12)} {
		if _, ok := readWiring(Part{Numbers: torn}); ok {
			t.Errorf("%d numbers are taken", len(torn))
		}
	}
}

// The list can be of one module more or fewer; taking a row of it makes that house, and the list is of
// its modules again.
func TestWireModules(t *testing.T) {
	s := Open("v=2&modules=6&string=2")
	for _, c := range []struct{ by, rows int }{{1, 3}, {-1, 6}, {0, 12}, {1, 3}} { // seven and five go up in few ways
		s.WireModules(c.by)
		if _, known := s.known(WiringsJob); known {
			t.Errorf("%+d: the list before is still there", c.by)
		}
		for part := range Work(WiringsJob, plan.Whole, s.BeginJob(WiringsJob), nil) {
			s.TakePart(WiringsJob, part)
		}
		list := s.Wirings()
		if len(list) != c.rows || list[0].To.Modules != 6+c.by {
			t.Errorf("%+d: %d rows of %d modules", c.by, len(list), list[0].To.Modules)
		}
	}
	list := s.Wirings()
	s.TakeWiring(&list[0])
	if s.Scenario.Modules != 7 || s.WiredBy() != 0 || !s.Wired(&list[0]) {
		t.Errorf("taken: %s", s.Link())
	}
	if s.Undo(); s.Scenario.Modules != 6 {
		t.Errorf("undone: %s", s.Link())
	}
}
