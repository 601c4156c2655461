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
	for _, s := range spans(b) {
		for _, edge := range [2]int{s.Start, s.End} {
			if !b.AllDay && openAt(b, float64(edge)-0.5) != openAt(b, float64(edge)+0.5) {
				at = append(at, float64(edge)*60)
			}
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
	if b.AllDay || b.FollowsSun() || p.Scenario.RescueL > 0 {
		return true
	}
	for hour := int(from / 3600); float64(hour)*3600 < to; hour++ {
		if p.sunny[hour%24] {
			return true
		}
	}
	return openAt(b, (from+to)/120)
}

// openAt tells whether a minute lies in the hours by the clock.
func openAt(b *scenario.Backup, minute float64) bool {
	minute = math.Mod(minute+scenario.DayMinutes, scenario.DayMinutes)
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
