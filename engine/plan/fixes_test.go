package plan

import (
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// In 200 random houses with more cool uses than accepted every fix leaves fewer, in others
// every fix costs less; none brings a stop finding, none sets the thermostat below 60 degC,
// and each is the year it says.
func TestFixes_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 21))
	ws, y := new(simulate.Workspace), new(simulate.Year)
	cool, fixes, kept := 0, 0, 0
	houses := 200
	if runtime.GOARCH == "wasm" {
		houses = 10 // the same code, five times slower
	}
	for i := 0; cool < houses; i++ {
		s := house(r, i)
		start := 15 * r.IntN(96)
		s.Backup = scenario.Backup{Start: start, End: (start + 15*r.IntN(8)) % 1440}
		if i%5 == 0 {
			s.Backup.End = 15 * r.IntN(96)
		} else {
			s.Modules = min(s.Modules, 3)
		}
		s.SetC = float64(50 + r.IntN(25))
		p := prepare(t, s)
		p.RunYear(s.Backup, ws, y)
		now := y.Total
		list := Fixes(p, nil, ws)
		misses := int(now.CoolUses) > s.AcceptUses
		if misses {
			cool++
		}
		stops := map[care.Code]bool{}
		for _, f := range care.Findings(p) {
			stops[f.Code] = stops[f.Code] || f.Severity == care.Stop
		}
		caution := false
		for _, f := range list {
			fixes++
			q, err := simulate.Prepare(&f.To, nil, p)
			if err != nil {
				t.Fatal(err)
			}
			q.RunYear(f.To.Backup, ws, y)
			if y.Total != f.Year {
				t.Fatalf("house %d, change %d: not the year it says", i, f.Change)
			}
			if misses && f.Year.CoolUses >= now.CoolUses || !misses && (f.Year.Cost >= now.Cost || int(f.Year.CoolUses) > s.AcceptUses) {
				t.Errorf("house %d, change %d: from %d cool uses and %.2f to %d and %.2f", i, f.Change, now.CoolUses, now.Cost, f.Year.CoolUses, f.Year.Cost)
			}
			if int(f.Year.CoolUses) <= s.AcceptUses {
				kept++
			}
			for _, found := range care.Findings(q) {
				if found.Severity == care.Stop && !stops[found.Code] {
					t.Errorf("house %d, change %d brings the stop %d", i, f.Change, found.Code)
				}
			}
			if f.To.SetC < s.SetC && f.To.SetC < 60 {
				t.Errorf("house %d: a thermostat of %g degC is no saving", i, f.To.SetC)
			}
			if caution && len(f.Brings) == 0 {
				t.Errorf("house %d: a fix without caution comes after one with", i)
			}
			caution = len(f.Brings) > 0
		}
		if len(list) == 0 && misses {
			t.Logf("house %d: nothing helps its %d cool uses", i, now.CoolUses)
		}
	}
	t.Logf("%d fixes, %d bring the house to what is accepted", fixes, kept)
}
