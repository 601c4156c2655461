package dial

import (
	"math"
	"testing"
)

func TestTurn_Stops(t *testing.T) {
	w := Window{Start: 900, End: 1080}
	type move struct {
		by   float64
		want Window
	}
	for _, c := range []struct {
		name  string
		part  Part
		from  Window
		moves []move
	}{
		{"end grip follows and snaps", EndGrip, w, []move{
			{20, Window{Start: 900, End: 1095}}, {10, Window{Start: 900, End: 1110}}, {-60, Window{Start: 900, End: 1050}}}},
		{"end grip wraps past midnight", EndGrip, w, []move{{400, Window{Start: 900, End: 45}}}},
		{"onto the other edge: none, held until 30 min back", EndGrip, w, []move{
			{-170, Window{Start: 900, End: 915}}, {-30, Window{Start: 900, End: 900}}, {-100, Window{Start: 900, End: 900}},
			{29, Window{Start: 900, End: 900}}, {1, Window{Start: 900, End: 930}}, {15, Window{Start: 900, End: 945}}}},
		{"round the other way: all day, held until 30 min back", EndGrip, w, []move{
			{700, Window{Start: 900, End: 345}}, {550, Window{Start: 900, End: 885}}, {60, Window{Start: 900, End: 900, AllDay: true}},
			{-29, Window{Start: 900, End: 900, AllDay: true}}, {-1, Window{Start: 900, End: 870}}}},
		{"start grip grows backwards", StartGrip, w, []move{{-30, Window{Start: 870, End: 1080}}, {240, Window{Start: 1080, End: 1080}}}},
		{"from none an edge opens the window", StartGrip, Window{Start: 600, End: 600}, []move{{-45, Window{Start: 555, End: 600}}}},
		{"from all day an edge closes it", StartGrip, Window{Start: 600, End: 600, AllDay: true}, []move{{45, Window{Start: 645, End: 600}}}},
		{"the body moves both edges", Body, Window{Start: 1380, End: 60}, []move{{-75, Window{Start: 1305, End: 1425}}}},
	} {
		finger := 700.0
		turn := Begin(c.from, c.part, finger)
		for i, m := range c.moves {
			// In steps of at most 100 minutes, as a finger moves.
			left := m.by
			var got Window
			for left != 0 {
				d := math.Copysign(math.Min(100, math.Abs(left)), left)
				finger = math.Mod(finger+d+DayMinutes, DayMinutes)
				got = turn.To(finger, 15)
				left -= d
			}
			if got != m.want {
				t.Errorf("%s, move %d: %+v, want %+v", c.name, i, got, m.want)
			}
		}
	}
}

func TestStep_Property(t *testing.T) {
	for start := 0; start < DayMinutes; start += 35 {
		for end := 0; end < DayMinutes; end += 45 {
			for _, part := range []Part{StartGrip, EndGrip} {
				w := Window{Start: start, End: end}
				for _, by := range []int{5, -5, 15, -15, 60, -60} {
					got := w.Step(part, by)
					if got.Start < 0 || got.Start >= DayMinutes || got.End < 0 || got.End >= DayMinutes || got.AllDay && got.Start != got.End {
						t.Fatalf("%+v step %d of %d: %+v", w, part, by, got)
					}
				}
			}
		}
	}
	if got := (Window{Start: 890, End: 1080}).Step(StartGrip, 15); got.Start != 900 {
		t.Errorf("from 14:50 a step of 15 goes to %d, want 900", got.Start)
	}
	if got := (Window{Start: 890, End: 1080}).Step(StartGrip, -15); got.Start != 885 {
		t.Errorf("from 14:50 a step back goes to %d, want 885", got.Start)
	}
}

func TestMinuteAt_Inverse(t *testing.T) {
	for m := 0.0; m < DayMinutes; m += 7 {
		x, y := at(m, 120)
		got, r := MinuteAt(x, y)
		if math.Abs(math.Remainder(got-m, DayMinutes)) > 1e-9 || math.Abs(r-120) > 1e-9 {
			t.Errorf("minute %g at radius 120 comes back as %g at %g", m, got, r)
		}
	}
}

func TestDrops_Groups(t *testing.T) {
	got := Drops([]Mark{{420, 40, false, 0}, {450, 40, true, 0}, {505, 6, false, 0}, {600, 5, false, 0}}, 0)
	if len(got) != 2 || got[0].Count != 3 || got[0].Cool != 1 || got[0].Litres != 86 || got[1].Count != 1 {
		t.Errorf("%+v", got)
	}
	got = Drops([]Mark{{420, 40, false, 1}, {450, 40, true, 0}, {505, 6, false, 0}, {600, 5, false, 1}}, 3)
	if len(got) != 3 || got[0].Count != 2 || got[1].First != 420 || got[1].Last != 600 || got[2].Count != 0 {
		t.Errorf("fixed: %+v", got)
	}
}

func TestRings_Whole(t *testing.T) {
	for _, c := range []struct {
		shower, full float64
		want         int
	}{{40, 30, 0}, {40, 50, 1}, {40, 290, 2}, {48, 330, 3}, {40, 400, 2}, {40, 130, 3}} {
		got := Rings(c.shower, c.full)
		if len(got) != c.want || len(got) > 0 && float64(got[len(got)-1])*c.shower > c.full {
			t.Errorf("rings of %g L in %g L: %v", c.shower, c.full, got)
		}
	}
}
