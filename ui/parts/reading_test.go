package parts

import (
	"strconv"
	"testing"

	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// What is read is what tells most, then what somebody chose, by the nearest place or the next.
func TestReading(t *testing.T) {
	p := page.New(state.Open("v=2"), view.New())
	c := &Reading{p, "a", Items{[]float64{0, 1, 3, 4}, 2, strconv.Itoa}}
	if says := c.says(); says != "2" {
		t.Errorf("%q of what tells most", says)
	}
	for _, near := range []struct {
		x  float64
		at int
	}{{-3, 0}, {1.9, 1}, {2.1, 2}, {1e6, 3}} {
		if at := c.Items.Near(near.x); at != near.at {
			t.Errorf("near %g is %d, not %d", near.x, at, near.at)
		}
	}
	for by, says := range map[int]string{-1: "1", 3: "1", -3: "3"} {
		delete(p.Reads, "a")
		if c.turn(by); c.says() != says {
			t.Errorf("by %d: %q, not %q", by, c.says(), says)
		}
	}
	if none := (&Reading{Page: p, Of: "b"}); none.says() != "" {
		t.Errorf("%q of no items", none.says())
	} else {
		none.turn(1)
	}
}
