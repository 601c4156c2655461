package plan

import (
	"fmt"
	"math/rand/v2"
	"os"
	"runtime"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

func prepare(t *testing.T, s scenario.Scenario) *simulate.Prepared {
	t.Helper()
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// house is a random one: all three rules, one price and two.
func house(r *rand.Rand, i int) scenario.Scenario {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Place = []string{"lisbon", "seattle", "santiago", "toronto", "cape-town"}[i%5]
	s.People, s.When = 1+r.IntN(5), scenario.When(r.IntN(3))
	s.TankLitres, s.Modules = float64(100+r.IntN(200)), r.IntN(7)
	s.ElementW = []float64{1500, 2000, 3000}[r.IntN(3)]
	s.Rule = scenario.Rule(i % 3)
	if i/3%2 == 1 {
		s.LowPrice, s.LowFrom, s.LowTo = 0.4*s.Price, 60*r.IntN(24), 60*r.IntN(24)
	}
	s.Settle()
	return s
}

// The window found against every window of the grid, 9121 years a house: the best, or
// within a thousandth of its cost with no more cool uses; where none keeps the promise,
// within a hundredth of the fewest. Every rule and tariff is in the
// first six houses; SUNCASK_EVERY=1 takes twenty.
func TestBest_EveryWindow(t *testing.T) {
	if runtime.GOARCH == "wasm" {
		t.Skip("the same code, natively: 55,000 years")
	}
	houses := 6
	if os.Getenv("SUNCASK_EVERY") != "" {
		houses = 20
	}
	r := rand.New(rand.NewPCG(3, 14))
	for i := range houses {
		s := house(r, i)
		accept := []int{0, 3, 10, 40}[r.IntN(4)]
		t.Run(fmt.Sprint("house ", i), func(t *testing.T) {
			t.Parallel()
			againstEvery(t, prepare(t, s), accept)
		})
	}
}

func againstEvery(t *testing.T, p *simulate.Prepared, accept int) {
	b := NewBest(NewGrid(p, scenario.Span{}), accept)
	for b.Step() {
	}
	w, o, kept := b.Result()
	all := &Best{grid: NewGrid(p, scenario.Span{}), accept: int32(accept)}
	for steps := 0; steps <= Places; steps++ {
		for start := range Places {
			v := Window{start, steps}
			if v.normal() != v {
				continue
			}
			if out, _ := all.grid.At(v); !all.some || all.better(out, v, all.out, all.at) {
				all.at, all.out, all.some = v, out, true
			}
		}
	}
	t.Logf("rule %d, %d cool uses accepted: %v, %.2f, %d cool, of %d years; the best %v, %.2f, %d cool", p.Scenario.Rule, accept, w, o.Cost, o.CoolUses, b.Runs(), all.at, all.out.Cost, all.out.CoolUses)
	if kept != (all.out.CoolUses <= int32(accept)) || kept && o.Cost > 1.001*all.out.Cost+0.005 || !kept && float64(o.CoolUses) > 1.01*float64(all.out.CoolUses) {
		t.Errorf("found %v at %.3f with %d cool uses, the best is %v at %.3f with %d", w, o.Cost, o.CoolUses, all.at, all.out.Cost, all.out.CoolUses)
	}
}
