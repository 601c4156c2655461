package view

import (
	"math"
	"testing"

	"suncask/ui/curve"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
)

func TestSentence_Forms(t *testing.T) {
	v := New()
	n := format.Space
	for link, want := range map[string]string{
		"v=1&price=0&backup=1445-1815":                "Hot water on every day. Nothing to pay, backup 14:45\u201318:15. Without the solar panels it would be EUR" + n + "0.00.",
		"v=1&price=0&modules=40&tank=1000&backup=all": "Hot water on every day. Nothing to pay, backup all day. Without the solar panels it would be EUR" + n + "0.00.",
		"v=1&price=0&modules=0&backup=none":           "Cool water on 365" + n + "days. Nothing to pay, no backup. Without the solar panels it would be EUR" + n + "0.00.",
	} {
		if got := v.Sentence(state.Open(link)); got != want {
			t.Errorf("%s: %q, want %q", link, got, want)
		}
	}
}

// The strip never draws more points than it promises, and its window band is
// where the hours are.
func TestStrip_Bounds(t *testing.T) {
	v := New()
	for _, link := range []string{"", "v=1&uses=l&backup=2300-0500", "v=1&uses=m&sky=dull", "v=1&backup=all", "v=1&backup=none"} {
		s := state.Open(link)
		strip := v.Strip(s)
		for i, list := range strip.Series {
			if len(list) > curve.MaxPoints {
				t.Errorf("%q: series %d has %d points", link, i, len(list))
			}
			for _, p := range list {
				if p.X < 0 || p.X > 24 || p.Y < 0 || p.Y > max(strip.Axes[curve.WaterAxis].Max, strip.Axes[curve.MoneyAxis].Max) {
					t.Errorf("%q: series %d: %v outside the axes", link, i, p)
				}
			}
		}
		shaded := 0.0
		band := strip.Series[curve.WindowWater]
		for i := 0; i+3 < len(band); i += 4 {
			shaded += band[i+2].X - band[i+1].X
		}
		if want := float64(s.Window(0).Length()) / 60; shaded != want {
			t.Errorf("%q: %g h shaded, %g h of backup", link, shaded, want)
		}
	}
}

// A frame has the same elements in the same order whatever the hours are, so the
// painter can compare it with the last one.
func TestFrame_SameOrder(t *testing.T) {
	s, v := state.Open(""), New()
	first := append([]dial.Attr(nil), v.Frame(s)...)
	s.Begin(0, dial.EndGrip, 0)
	for finger := 0.0; finger < 1400; finger += 100 {
		s.Drag(finger, state.Coarse)
		next := v.Frame(s)
		if len(next) != len(first) {
			t.Fatalf("%d attributes, at first %d", len(next), len(first))
		}
		for i := range next {
			if next[i].ID != first[i].ID || next[i].Name != first[i].Name {
				t.Fatalf("attribute %d is %s %s, at first %s %s", i, next[i].ID, next[i].Name, first[i].ID, first[i].Name)
			}
		}
	}
}

// The strip may count showers: its water is the litres over those of a shower.
func TestStrip_InShowers(t *testing.T) {
	s := state.Open("v=2&shower=10&flow=12") // 5 min at 6 L/min
	litres, showers := New(), New()
	showers.InShowers = true
	a, b := litres.Strip(s).Series[curve.Water], showers.Strip(s).Series[curve.Water]
	if math.Abs(a[0].Y/b[0].Y-30) > 1e-9 {
		t.Errorf("%g L are %g showers", a[0].Y, b[0].Y)
	}
}
