package climate

import (
	"math"
	"testing"

	"suncask/engine/published"
)

// The table's clocks are those of the places' zones in RefYear, day by day: Go's copy of the
// IANA time zone data base.
func TestPlaces_ClocksAreTheirZones(t *testing.T) {
	for _, p := range Places() {
		offsets, err := published.Offsets(p.Zone, RefYear)
		if err != nil {
			t.Errorf("%s: %v", p.Slug, err)
			continue
		}
		for day, want := range offsets {
			if p.Clock.At(day) != want {
				t.Errorf("%s, day %d: %g h, %s has %g", p.Slug, day, p.Clock.At(day), p.Zone, want)
				break
			}
		}
		if c, ok := ClockOver(&offsets); !ok || c != p.Clock {
			t.Errorf("%s: %+v, of its offsets %+v (%v)", p.Slug, p.Clock, c, ok)
		}
		if far := math.Remainder(p.Clock.At(0)-p.LonDeg/15, 24); math.Abs(far) > 3.5 && p.Country != "Antarctica" {
			t.Errorf("%s: %s is %.1f h from its sun", p.Slug, p.Zone, far)
		}
	}
}

// Dates that the table may hold, and others.
func TestReadSummer(t *testing.T) {
	if c, ok := readSummer("0329-1025"); !ok || c != (Clock{ShiftH: 1, From: 87, To: 297}) {
		t.Errorf("%+v", c)
	}
	if c, ok := readSummer("1004-0405+0.5"); !ok || c != (Clock{ShiftH: 0.5, From: 276, To: 94}) {
		t.Errorf("%+v", c)
	}
	for _, bad := range []string{"0329", "0329-0329", "1332-0101", "0329-1025+x", "-"} {
		if _, ok := readSummer(bad); ok {
			t.Errorf("%q is read", bad)
		}
	}
}

// Years of our own making: what one summer time can say comes back, the rest is refused.
func TestClockOver_Property(t *testing.T) {
	for _, want := range []Clock{
		{}, {OffsetH: 5.75}, {OffsetH: -3.5, ShiftH: 1, From: 66, To: 304}, {OffsetH: 12, ShiftH: 1, From: 269, To: 94},
		{OffsetH: 10.5, ShiftH: 0.5, From: 276, To: 94}, {ShiftH: 2, From: 87, To: 297}, {OffsetH: 1, ShiftH: 1, From: 1, To: 364},
	} {
		var year [Days]float64
		for day := range year {
			year[day] = want.At(day)
		}
		if got, ok := ClockOver(&year); !ok || got != want {
			t.Errorf("%+v has become %+v (%v)", want, got, ok)
		}
		for day := 30; day < 40; day++ {
			year[day] += 0.25
		}
		if got, ok := ClockOver(&year); ok && want.ShiftH != 0 {
			t.Errorf("two shifts have become %+v", got)
		}
	}
}
