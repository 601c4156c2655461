package climate

import (
	"math"
	"testing"
	"time"
	_ "time/tzdata" // the same on every machine
)

// The table's clocks are those of the places' zones in refYear, day by day: Go's copy of the
// IANA time zone data base.
func TestPlaces_ClocksAreTheirZones(t *testing.T) {
	for _, p := range Places() {
		zone, err := time.LoadLocation(p.Zone)
		if err != nil {
			t.Errorf("%s: %v", p.Slug, err)
			continue
		}
		for day := range Days {
			_, seconds := time.Date(refYear, 1, 1+day, 12, 0, 0, 0, zone).Zone()
			if want := float64(seconds) / 3600; p.Clock.At(day) != want {
				t.Errorf("%s, day %d: %g h, %s has %g", p.Slug, day, p.Clock.At(day), p.Zone, want)
				break
			}
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
