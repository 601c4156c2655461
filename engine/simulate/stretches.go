package simulate

import (
	"math"

	"suncask/engine/scenario"
)

// Conduction acts once in the middle of each stretch between the instants that change a
// tank's steps of temperature: uses and the edges of hours by the clock. Stretches in which
// an element may heat are at most stretchMost long, and instants closer than stretchLeast to the one before begin
// none: in the houses of TestConduction_Cells shorter ones change little.
const (
	stretchMost  = 7200.0
	stretchLeast = 3600.0
)

// stretches adds the middles of a day's stretches to its events, with their lengths in
// ws.stretches. They depend on uses and hours alone.
func (p *Prepared) stretches(b *scenario.Backup, ws *Workspace, e []event) []event {
	at := ws.edges[:0]
	for _, edge := range p.gridEdges(b) {
		if p.gridOpen(b, edge-0.5) != p.gridOpen(b, edge+0.5) {
			at = append(at, edge*60)
		}
	}
	for i := range p.uses {
		at = append(at, p.uses[i].Minute*60)
	}
	if len(at) == 0 {
		at = append(at, 0)
	}
	for i := 1; i < len(at); i++ {
		for j := i; j > 0 && at[j] < at[j-1]; j-- {
			at[j], at[j-1] = at[j-1], at[j]
		}
	}
	kept := at[:1]
	for _, x := range at[1:] {
		if x-kept[len(kept)-1] > stretchLeast {
			kept = append(kept, x)
		}
	}
	ws.edges, ws.stretches = at, ws.stretches[:0]
	for i, from := range kept {
		to := kept[0] + 86400
		if i+1 < len(kept) {
			to = kept[i+1]
		}
		parts := 1.0
		if p.heats(b, from, to) {
			parts = math.Ceil((to - from) / stretchMost)
		}
		each := (to - from) / parts
		for k := range int(parts) {
			middle := math.Mod(from+(float64(k)+0.5)*each, 86400)
			e = append(e, event{at: middle, kind: conduction, i: int32(len(ws.stretches))})
			ws.stretches = append(ws.stretches, each)
		}
	}
	return e
}

// heats tells whether grid or sun may heat between two instants of a day and the next.
func (p *Prepared) heats(b *scenario.Backup, from, to float64) bool {
	if b.FollowsSun() || p.Scenario.RescueL > 0 {
		return true
	}
	for hour := int(from / 3600); float64(hour)*3600 < to; hour++ {
		if p.sunny[hour%24] {
			return true
		}
	}
	return p.gridOpen(b, (from+to)/120)
}

// gridEdges are the minutes at which hours by the clock or outages may begin and end; an
// edge may stand there twice.
func (p *Prepared) gridEdges(b *scenario.Backup) [6]float64 {
	s, w := &p.Scenario, spans(b)
	return [6]float64{float64(w[0].Start), float64(w[0].End), float64(w[1].Start), float64(w[1].End), float64(s.OutFrom), float64(s.OutTo)}
}

// gridOpen tells whether the grid may heat at a minute, by hours by the clock less outages.
func (p *Prepared) gridOpen(b *scenario.Backup, minute float64) bool {
	minute = math.Mod(minute+scenario.DayMinutes, scenario.DayMinutes)
	if out := (scenario.Span{Start: p.Scenario.OutFrom, End: p.Scenario.OutTo}); out.Start != out.End && inSpan(minute, out) {
		return false
	}
	if b.AllDay {
		return true
	}
	for _, s := range spans(b) {
		if s.Start != s.End && inSpan(minute, s) {
			return true
		}
	}
	return false
}

// sunnyPart is the part of its best hour's mean power of a year from which an hour counts
// as sunny for stretches.
const sunnyPart = 0.1

// setSunny finds the hours of the day in which the sun heats for most of the year.
func (p *Prepared) setSunny() {
	var mean [24]float64
	most := 0.0
	for day := range p.sun {
		for h, w := range p.sun[day].power {
			mean[h] += w
			most = math.Max(most, mean[h])
		}
	}
	for h := range mean {
		p.sunny[h] = mean[h] > sunnyPart*most
	}
}
