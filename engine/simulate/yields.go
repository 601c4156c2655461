package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/pv"
	"suncask/engine/scenario"
)

// Yields compare ways of feeding the element, energy on offer at it in a year, J. They
// are counted on every fifth day.
type Yields struct {
	BestOhms  float64 // the fixed resistance that takes most in the year
	BestJ     float64
	StraightJ float64 // the element as it is, without a converter
	TrackedJ  float64 // the element through a converter
}

// yieldEvery is how many days apart the days are that Yields counts.
const yieldEvery = 5

// Yields returns the comparison; nothing without modules. It is computed once for
// houses of the same light and wiring.
func (p *Prepared) Yields() Yields {
	if !p.yields.known {
		p.yields.Yields, p.yields.known = p.compare(), true
	}
	return p.yields.Yields
}

// comparison is shared by houses of the same light and wiring.
type comparison struct {
	Yields
	known bool
	down  *Prepared // see OnlyDown
}

func (p *Prepared) compare() (y Yields) {
	r, err := p.roof()
	if err != nil {
		panic("simulate: a prepared house has an impossible datasheet: " + err.Error())
	}
	if len(r.planes) == 0 {
		return y
	}
	energy := func(coupling scenario.Coupling, ohms float64) float64 {
		r.wiring.coupling = coupling
		r.wiring.direct.ElementOhms = ohms
		var sum Potential
		var out [24]float64
		for day := yieldEvery / 2; day < climate.Days; day += yieldEvery {
			r.hours(&p.Weather.Sun[day], &p.Weather.Light[day], &p.Weather.AirC[day], &out, &sum)
		}
		return sum.ElementJ * yieldEvery
	}
	y.TrackedJ = energy(scenario.Converter, p.ElementOhms())
	y.StraightJ = energy(scenario.Direct, p.ElementOhms())
	_, fit := p.Working(pv.StandardWm2, pv.StandardC)
	straight := func(logOhms float64) float64 { return energy(scenario.Direct, math.Exp(logOhms)) }
	best := pv.Peak(math.Log(fit/2), math.Log(fit*6), 0.01, straight)
	y.BestOhms, y.BestJ = math.Exp(best), straight(best)
	return y
}
