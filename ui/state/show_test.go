package state

import "testing"

// A grip that shows itself goes two hours where there is room, never past the other edge, and
// leaves the house as it was.
func TestShowGrip(t *testing.T) {
	for _, c := range []struct {
		link string
		far  int // minutes, 0: none shows itself
	}{
		{"v=2&backup=1300-1500", 120},
		{"v=2&backup=2200-0600", 120},
		{"v=2&backup=0100-2300", -120},
		{"v=2&backup=1300-1500&backup2=1900-2000", 120},
		{"v=2&backup=none0000", 0},
		{"v=2&backup=all", 0},
	} {
		s := Open(c.link)
		link := s.Link()
		if s.CanShow() != (c.far != 0) {
			t.Errorf("%s: can show: %v", c.link, s.CanShow())
		}
		if c.far == 0 {
			continue
		}
		was := s.Window(0)
		most := 0
		for share := 0.0; share <= 1; share += 0.05 {
			s.ShowGrip(share)
			if s.Window(0).Start != was.Start {
				t.Fatalf("%s: the other edge moves", c.link)
			}
			if by := s.Window(0).Length() - was.Length(); by*c.far > most*c.far {
				most = by
			}
		}
		if most != c.far {
			t.Errorf("%s: %d minutes, not %d", c.link, most, c.far)
		}
		if s.Cancel(); s.Link() != link || s.Window(0) != was {
			t.Errorf("%s: afterwards %s", c.link, s.Link())
		}
	}
}
