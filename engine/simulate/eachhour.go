package simulate

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// Hour is what an hour of a year came to.
type Hour struct {
	OfferJ  float64 // of the sun at the element
	SunJ    float64 // into the water
	BoughtJ float64
	Cost    float64
	UsableL float64 // at the hour's end
	MeanC   float64 // of the tank, at the hour's end
}

// EachHour replays a year that RunYear filled and hands out its hours: day 0 to 364, hour
// 0 to 23.
func (p *Prepared) EachHour(b scenario.Backup, y *Year, ws *Workspace, do func(day, hour int, h *Hour)) {
	var d Day
	for day := range climate.Days {
		p.Replay(b, y, day, ws, &d)
		last := &d.Trace.Points[0]
		at := 0
		for hour := range 24 {
			end := float64(hour+1) * 60
			for at+1 < len(d.Trace.Points) && d.Trace.Points[at+1].Minute <= end+1e-6 {
				at++
			}
			now := &d.Trace.Points[at]
			do(day, hour, &Hour{OfferJ: d.SunW[hour] * 3600, SunJ: now.SunJ - last.SunJ, BoughtJ: now.BoughtJ - last.BoughtJ,
				Cost: now.Cost - last.Cost, UsableL: now.UsableL, MeanC: now.MeanC})
			last = now
		}
	}
}
