package explain

import (
	"suncask/engine/finance"
	"suncask/engine/plan"
)

// worthOf takes what a system is worth apart, against backup all day without modules.
func worthOf(q Quantity, h *House) (e Explanation) {
	sun := Of(Sun, Year, h).Value
	p := plan.Project(&h.Prepared.Scenario, Of(Saved, Year, h).Value, sun)
	costs := []Term{{Investment, p.Cost}, {Upkeep, p.Upkeep}, {Replacement, p.Replacement}, {ReplacementYear, float64(p.ReplacementYear)}, {Ageing, p.Degradation}}
	saving := []Term{{FirstSaving, p.Saving}, {PriceRise, p.PriceRise}}
	later := []Term{{Discount, p.Discount}, {Horizon, float64(p.Years)}}
	switch q {
	case Payback:
		e.Terms = append(costs, saving...)
		e.Value, _ = finance.Payback(0, p.Payments())
	case NetValue:
		e.Terms = append(append(costs, saving...), later...)
		e.Value = finance.NPV(p.Discount, p.Payments())
	default:
		e.Terms = append(append(costs, Term{SunEnergy, sun}), later...)
		e.Value = p.Worth().KWhCost
	}
	return e
}

// shownWorth is the figure of the table of what the system is worth.
func shownWorth(q Quantity, h *House) float64 {
	savings := plan.Savings{AllDay: *h.Bare, Hours: *h.Bare, Now: h.Year.Total}
	w, _ := savings.Worth(&h.Prepared.Scenario)
	return map[Quantity]float64{Payback: w.Payback, NetValue: w.NPV, KWhCost: w.KWhCost}[q]
}
