package plan

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// offers runs a search; years counts its steps.
func offers(t *testing.T, p *simulate.Prepared, k Search) (list []*Offer, years int) {
	t.Helper()
	for o := range k.Run(p, nil, Whole) {
		if o == nil {
			years++
		} else {
			list = append(list, o)
		}
	}
	return list, years
}

// isItsYear fails where an offer is not the year it says, or brings a stop finding.
func isItsYear(t *testing.T, p *simulate.Prepared, o *Offer) {
	t.Helper()
	q, ws, y := prepare(t, o.To), new(simulate.Workspace), new(simulate.Year)
	if o.Months != nil {
		q.RunMonths(o.Months, ws, y)
	} else {
		q.RunYear(o.To.Backup, ws, y)
	}
	if o.Way != ManyYears && y.Total != o.Year {
		t.Errorf("%d: not the year it says", o.Way)
	}
	if o.Kept != (int(o.Year.CoolUses) <= p.Scenario.AcceptUses) {
		t.Errorf("%d cool uses, kept %v", o.Year.CoolUses, o.Kept)
	}
	if _, stops := brought(care.Findings(p), care.Findings(q)); stops {
		t.Errorf("brings a finding that stops")
	}
}

// Hours of every kind for six random houses: each the year it says; one window more, or
// hours for each month, cost no more than one window that keeps the same promise.
func TestWays_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7))
	houses := 6
	if runtime.GOARCH == "wasm" {
		houses = 1 // the same code, five times slower
	}
	for i := range houses {
		s := house(r, i)
		if s.Rule == scenario.SunFirst {
			s.Rule = scenario.WholeWindow
		}
		p := prepare(t, s)
		list, years := offers(t, p, Ways)
		var of [WayCount]*Offer
		for _, o := range list {
			isItsYear(t, p, o)
			of[o.Way] = o
			t.Logf("house %d, way %d: %.2f, %d cool uses, kept %v, worth %.0f, %v", i, o.Way, o.Year.Cost, o.Year.CoolUses, o.Kept, o.Worth, o.To.Backup)
		}
		t.Logf("%d years", years)
		clock := of[ByClock]
		for _, w := range []Way{TwoWindows, EachMonth} {
			o := of[w]
			if o == nil && w == TwoWindows {
				continue // one is as good
			}
			if o == nil || clock.Kept && (!o.Kept || o.Year.Cost > 1.001*clock.Year.Cost+0.01) {
				t.Errorf("house %d, way %d: worse than one window", i, w)
			}
		}
	}
}

// Sizes of the example house: none stops, 0 to 12 modules are all there, and the same
// search twice is the same.
func TestSizes_Property(t *testing.T) {
	if testing.Short() || runtime.GOARCH == "wasm" {
		t.Skip("the same code, natively: 10,000 years")
	}
	s := scenario.Defaults(scenario.LatestVersion)
	p := prepare(t, s)
	list, years := offers(t, p, Sizes)
	var best *Offer
	modules := map[int]int{}
	for _, o := range list {
		modules[o.To.Modules]++
		isItsYear(t, p, o)
		if o.Kept && (best == nil || o.Worth > best.Worth) {
			best = o
		}
	}
	if len(modules) != MostModules+1 {
		t.Errorf("module counts %v", modules)
	}
	t.Logf("%d houses, %d years; best %d modules, %g L, coupling %d in strings of %d: %.2f a year, %d cool, worth %.0f, %v", len(list), years,
		best.To.Modules, best.To.TankLitres, best.To.Coupling, best.To.InString, best.Year.Cost, best.Year.CoolUses, best.Worth, best.To.Backup)
	for _, o := range list {
		if o.Kept && o.Worth > best.Worth {
			t.Errorf("%d modules are worth more", o.To.Modules)
		}
	}
}

// The shares of the sizes are all numbers of modules, each once, the nearest to the house's first.
func TestShare_Counts(t *testing.T) {
	for of := 1; of <= 4; of++ {
		seen := map[int]int{}
		for part := range of {
			list := Share{part, of}.counts(4)
			for i, n := range list {
				seen[n]++
				if i > 0 && max(n-4, 4-n) < max(list[i-1]-4, 4-list[i-1]) {
					t.Errorf("%d shares: %v", of, list)
				}
			}
		}
		for n := range MostModules + 1 {
			if seen[n] != 1 {
				t.Errorf("%d shares: %d modules %d times", of, n, seen[n])
			}
		}
	}
}

// An element that is tried keeps to the promise where the house's own can.
func TestElements_Property(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.ElementW = 1800
	p := prepare(t, s)
	list, _ := offers(t, p, Elements)
	own := false
	for _, o := range list {
		isItsYear(t, p, o)
		own = own || o.To.ElementW == 1800
		t.Logf("%g W: %.2f, %d cool, worth %.0f", o.To.ElementW, o.Year.Cost, o.Year.CoolUses, o.Worth)
	}
	if !own || len(list) != len(elementWatts)+1 {
		t.Errorf("%d elements, own among them: %v", len(list), own)
	}
}

// What a search says a house is worth is what the page says of that house: with and without
// a converter, and without modules.
func TestOffers_WorthAsSavings(t *testing.T) {
	for _, change := range []func(*scenario.Scenario){
		func(s *scenario.Scenario) {},
		func(s *scenario.Scenario) { s.Coupling = scenario.Direct },
		func(s *scenario.Scenario) { s.Modules = 0 },
	} {
		s := scenario.Defaults(scenario.LatestVersion)
		change(&s)
		v := savings(t, s)
		want, _ := v.Worth(&s)
		tried := trial{p: prepare(t, s), allDay: v.AllDay}
		if got := tried.worth(&s, &v.Now); math.Abs(got-want.NPV) > 1e-9*math.Abs(want.NPV) {
			t.Errorf("%d modules, coupling %d: the search says %.6f, the savings %.6f", s.Modules, s.Coupling, got, want.NPV)
		}
	}
}
