package skyline

import (
	"math/rand/v2"
	"strings"
	"testing"

	"suncask/engine/scenario"
)

// What is drawn is what the text says, and the text is one a link can hold.
func TestText_RoundTrip_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		var d Drawn
		for range r.IntN(5) {
			d.Raise(r.IntN(2) == 0, 400*r.Float64(), 150*r.Float64(), 400*r.Float64(), 150*r.Float64())
		}
		text := d.Text()
		s := scenario.Defaults(scenario.LatestVersion)
		s.Skyline = text
		if p := s.Problems(); len(p) > 0 {
			t.Fatalf("%v: %v", d, p)
		}
		if back := Of(text); back != d {
			t.Fatalf("%v is written %q and read %v", d, text, back)
		}
	}
}

func TestText_LeavesOutTheLine(t *testing.T) {
	var d Drawn
	if d.Text() != "" {
		t.Error("a free horizon has points")
	}
	d[9], d[10], d[11] = 10, 20, 30
	if got := d.Text(); got != "80:0,110:30,120:0" {
		t.Errorf("%q", got)
	}
	for i := range d {
		d[i] = 5
	}
	if got := d.Text(); got != "0:5" {
		t.Errorf("%q", got)
	}
}

// A tap sets the nearest column, a stroke all it passes, and nothing leaves what is
// allowed.
func TestRaise_Columns(t *testing.T) {
	var d Drawn
	d.Raise(false, X(121, false), Y(22), X(121, false), Y(22))
	if want := "110:0,120:22,130:0"; d.Text() != want {
		t.Errorf("%q, want %q", d.Text(), want)
	}
	d = Drawn{}
	d.Raise(true, X(340, true), Y(10), X(20, true), Y(10))
	if want := "20:10,30:0,330:0,340:10"; d.Text() != want {
		t.Errorf("round north %q, want %q", d.Text(), want)
	}
	d.Raise(false, -100, -100, 1000, 1000)
	for i, e := range d {
		if e < 0 || e > scenario.MostElevation {
			t.Errorf("column %d at %d", i, e)
		}
	}
}

// Sun paths: at the equator on an equinox the sun goes straight over; in polar night
// there is no path.
func TestSunPath_Analytic(t *testing.T) {
	over := SunPath(0, 0, false)
	if !strings.HasPrefix(over, "M118.0 132.0") || !strings.Contains(over, "L118.0 52") && !strings.Contains(over, "118.0 10.2") {
		t.Errorf("equator, equinox: %.60s", over)
	}
	if got := SunPath(1.4, -0.4, false); got != "" {
		t.Errorf("polar night: %s", got)
	}
}
