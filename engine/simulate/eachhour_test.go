package simulate

import (
	"math"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// The hours of a year add up to its days.
func TestEachHour_AddUp(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Bands = "1600-1700:0.5"
	p, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	ws, y := new(Workspace), new(Year)
	p.RunYear(s.Backup, ws, y)
	var sum [climate.Days]Hour
	p.EachHour(s.Backup, y, ws, func(day, hour int, h *Hour) {
		d := &sum[day]
		d.OfferJ += h.OfferJ
		d.SunJ += h.SunJ
		d.BoughtJ += h.BoughtJ
		d.Cost += h.Cost
		if outside := hour < 15 || hour > 17; outside && h.BoughtJ != 0 || h.UsableL < 0 {
			t.Fatalf("day %d, hour %d: %+v", day, hour, h)
		}
	})
	for day := range sum {
		f, d := &y.Day[day], &sum[day]
		if math.Abs(d.SunJ-f.SunJ) > 1e-6*(f.SunJ+1) || math.Abs(d.BoughtJ-f.BoughtJ) > 1e-6*(f.BoughtJ+1) ||
			math.Abs(d.Cost-f.Cost) > 1e-9 || math.Abs(d.OfferJ-f.SunJ-f.UnusedSunJ) > 1e-6*(d.OfferJ+1) {
			t.Fatalf("day %d: %+v, the year has %+v", day, d, f)
		}
	}
}
