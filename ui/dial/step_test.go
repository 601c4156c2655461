package dial

import "testing"

func TestStep_ToTheGrid(t *testing.T) {
	for _, c := range []struct{ at, by, want int }{
		{390, 15, 15}, {390, -15, -15}, {395, 15, 10}, {395, -15, -5}, {395, 5, 5}, {0, -15, -15}, {397, 60, 53},
	} {
		if got := Step(c.at, c.by); got != c.want {
			t.Errorf("from %d by %d: %d, want %d", c.at, c.by, got, c.want)
		}
	}
}

func TestSlide_KeepsWithin(t *testing.T) {
	s := BeginSlide(390, 0, 1400, 100)
	for _, c := range []struct {
		finger float64
		want   int
	}{{120, 405}, {90, 375}, {1400, 255}, {1000, 0}, {1300, 150}, {100, 390}, {500, 795}, {1100, 1395}, {1300, 1400}} {
		if got := s.To(c.finger, 15); got != c.want {
			t.Errorf("finger at %g: %d, want %d", c.finger, got, c.want)
		}
	}
}
