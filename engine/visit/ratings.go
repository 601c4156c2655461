package visit

import (
	"math"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Ratings are the least that what is fitted must be rated for. They name no product, and local
// codes may ask for more.
type Ratings struct {
	Volts   float64 // at the coldest: modules, cables, connectors, switches, fuses, converter (rule of IEC 62548, see care.HighestV)
	DesignA float64 // of all strings: switches and the common cable, with Volts together (IEC 62548-1, from memory)
	StringA float64 // that a string's own cable carries (the same)

	Fused                 bool      // the other strings can feed one of them more than its modules bear
	FuseLeastA, FuseMostA float64   // of a string's fuse, see care.FuseWindow, and no more than the modules bear
	FuseSizes             []float64 // rated currents within that, see care.FusesThatFit; none: no fuse fits, or the label's limit is not known

	GridA           float64 // that the grid's circuit carries: I = V/R with the plate's +5 %
	GridContinuousA float64 // where a code counts water heaters as continuous loads
	ReliefW         float64 // of all that can heat at once: the relief valve's stated capacity
}

// RatingsOf are those of a prepared house.
func RatingsOf(p *simulate.Prepared) Ratings {
	s, w := &p.Scenario, p.Wiring()
	grid := care.GridA(s)
	r := Ratings{GridA: grid, GridContinuousA: care.Continuous * grid, ReliefW: s.SupplyV * grid}
	if w.Strings == 0 {
		return r
	}
	if sun := math.Max(w.FullW, w.EdgeW); s.Elements.Apart() || s.ChangeBy == scenario.ChangeTwoElements {
		r.ReliefW += sun
	} else {
		r.ReliefW = math.Max(r.ReliefW, sun)
	}
	r.Volts = care.HighestV(s, &w)
	r.DesignA, r.StringA = care.DesignA(s, w.Strings), care.DesignA(s, max(1, w.Strings-1))
	bears, known := care.ModuleFuse(s)
	if r.Fused = care.FusesNeeded(w.Strings, care.RearA(s), bears); r.Fused {
		r.FuseLeastA, r.FuseMostA = care.FuseWindow(care.RearA(s))
		if !known { // its size waits for the label
			return r
		}
		r.FuseMostA = math.Min(r.FuseMostA, bears)
		r.FuseSizes = care.FusesThatFit(care.RearA(s), bears)
		for _, size := range r.FuseSizes {
			r.StringA = size // with a fuse its cable carries the fuse's rating
		}
	}
	return r
}
