package simulate

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/climate"
)

// Watching changes nothing: in random houses with every option the days of a year add up to
// it, a day shown is the year's, and the hours saved add up to their days.
func TestWatching_Property(t *testing.T) {
	want := 1000
	if runtime.GOARCH == "wasm" {
		want = 40
	}
	r := rand.New(rand.NewPCG(51, 52))
	ws, y, d := new(Workspace), new(Year), new(Day)
	near := func(a, b, scale float64) bool { return math.Abs(a-b) <= 1e-9*(1+math.Abs(scale)) }
	for houses := 0; houses < want; {
		base := extreme(r)
		for i := range base.More {
			base.More[i].Modules = 0
		}
		p, err := Prepare(&base, nil, nil)
		if err != nil {
			continue
		}
		for range 50 {
			houses++
			s := variation(r, base)
			q, err := Prepare(&s, nil, p)
			if err != nil {
				t.Fatal(err)
			}
			q.RunYear(s.Backup, ws, y)
			var sum Flows
			for i := range y.Day {
				sum.Add(&y.Day[i])
			}
			if total := &y.Total; !near(sum.BoughtJ, total.BoughtJ, total.BoughtJ) || !near(sum.SunJ, total.SunJ, total.SunJ) || sum.CoolUses != total.CoolUses {
				t.Fatalf("%+v: days come to %+v, the year to %+v", s, sum, *total)
			}
			for range 4 {
				day := r.IntN(climate.Days)
				q.Replay(s.Backup, y, day, ws, d)
				want := &y.Day[day]
				if !near(d.Flows.BoughtJ, want.BoughtJ, want.BoughtJ) || !near(d.Flows.SunJ, want.SunJ, want.SunJ) ||
					!near(d.Flows.Cost, want.Cost, want.Cost) || d.Flows.CoolUses != want.CoolUses {
					t.Fatalf("%+v: day %d shown %+v, in the year %+v", s, day, d.Flows, *want)
				}
				if end := &d.Trace.Points[len(d.Trace.Points)-1]; !near(end.BoughtJ, want.BoughtJ, want.BoughtJ) || !near(end.SunJ, want.SunJ, want.SunJ) {
					t.Fatalf("%+v: day %d ends at %+v", s, day, *end)
				}
			}
			if houses%50 != 0 {
				continue
			}
			var bought, sun float64
			q.EachHour(s.Backup, y, ws, func(_, _ int, h *Hour) { bought, sun = bought+h.BoughtJ, sun+h.SunJ })
			if !near(bought, y.Total.BoughtJ, y.Total.BoughtJ) || !near(sun, y.Total.SunJ, y.Total.SunJ) {
				t.Fatalf("%+v: hours buy %g J, the year %g", s, bought, y.Total.BoughtJ)
			}
		}
	}
}
