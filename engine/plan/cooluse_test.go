package plan

import (
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// In 200 random houses every fix for a cool use, applied, keeps that use warm and leaves no
// more uses cool in the year; none brings a stop finding or a thermostat below 60 degC.
func TestFixesFor_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 55))
	ws, y, day := new(simulate.Workspace), new(simulate.Year), new(simulate.Day)
	houses := 200
	if runtime.GOARCH == "wasm" {
		houses = 8 // the same code, five times slower
	}
	offered := map[Change]int{}
	helpless := 0
	for i, seen := 0, 0; seen < houses; i++ {
		s := house(r, i)
		start := 15 * r.IntN(96)
		s.Backup = scenario.Backup{Start: start, End: (start + 15*r.IntN(8)) % 1440}
		s.Modules, s.SetC = min(s.Modules, 3), float64(50+r.IntN(25))
		p := prepare(t, s)
		p.RunYear(s.Backup, ws, y)
		at := CoolUse{Day: -1}
		if i%2 == 0 {
			at.Day = r.IntN(365)
		}
		at.run(p, y, ws, day)
		at.Use = -1
		for u := range day.Uses {
			if day.Uses[u].RanCool {
				at.Use = u
			}
		}
		if at.Use < 0 {
			continue
		}
		seen++
		now, was := y.Total, day.Uses[at.Use].Use
		number, cool := ordinal(day.Uses, at.Use), day.Flows.CoolUses
		stops := map[care.Code]bool{}
		for _, f := range care.Findings(p) {
			stops[f.Code] = stops[f.Code] || f.Severity == care.Stop
		}
		list := FixesFor(p, nil, at, ws)
		if len(list) == 0 {
			helpless++
		}
		for _, f := range list {
			offered[f.Change]++
			q := prepare(t, f.To)
			for _, found := range care.Findings(q) {
				if found.Severity == care.Stop && !stops[found.Code] {
					t.Errorf("house %d, change %d brings the stop %d", i, f.Change, found.Code)
				}
			}
			if f.To.SetC < s.SetC && f.To.SetC < 60 {
				t.Errorf("house %d: a thermostat of %g degC", i, f.To.SetC)
			}
			q.RunYear(f.To.Backup, ws, y)
			at.run(q, y, ws, day)
			if f.Change == BoostPress {
				if presses, _, ok := q.BoostUse(f.To.Backup, day, at.Use, ws); !ok || presses != f.Presses || f.Year.CoolUses >= now.CoolUses {
					t.Errorf("house %d: %d presses, want %d", i, presses, f.Presses)
				}
				continue
			}
			if y.Total != f.Year || y.Total.CoolUses > now.CoolUses {
				t.Errorf("house %d, change %d: %d cool uses, before %d", i, f.Change, y.Total.CoolUses, now.CoolUses)
			}
			if f.Change == MovedUse {
				if day.Flows.CoolUses > 0 && day.Flows.CoolUses >= cool {
					t.Errorf("house %d: moving leaves %d uses of the day cool", i, day.Flows.CoolUses)
				}
				continue
			}
			if u := find(day.Uses, was, number); u < 0 || day.Uses[u].RanCool {
				t.Errorf("house %d, change %d: the use runs cool still", i, f.Change)
			}
		}
	}
	t.Logf("offered by kind %v; nothing helps %d of %d", offered, helpless, houses)
}
