package advice

import (
	"sort"

	"suncask/engine/plan"
	"suncask/engine/scenario"
)

// bestByModules keeps of each number of modules the best offer, in their order.
func bestByModules(list []plan.Offer) (best []plan.Offer) {
	at := map[int]int{}
	for _, o := range list {
		i, ok := at[o.To.Modules]
		if !ok {
			at[o.To.Modules] = len(best)
			best = append(best, o)
		} else if beats(&o, &best[i]) {
			best[i] = o
		}
	}
	sort.Slice(best, func(i, k int) bool { return best[i].To.Modules < best[k].To.Modules })
	return best
}

// beats tells whether an offer is better: the promise, no caution brought, then worth.
func beats(o, than *plan.Offer) bool {
	if o.Kept != than.Kept {
		return o.Kept
	}
	if a, b := len(o.Mind) > 0, len(than.Mind) > 0; a != b {
		return b
	}
	return o.Worth > than.Worth
}

// bestOffer is the best of those that keep the promise; nil where none does.
func bestOffer(list []plan.Offer) (best *plan.Offer) {
	for i := range list {
		if o := &list[i]; o.Kept && (best == nil || beats(o, best)) {
			best = o
		}
	}
	return best
}

// sameHouse tells whether an offer is the house shown.
func sameHouse(o, now *scenario.Scenario) bool {
	a := *o
	a.Month, a.Sky, a.Known = now.Month, now.Sky, now.Known
	return a == *now
}
