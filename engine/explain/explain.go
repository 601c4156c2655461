// Package explain opens the figures of a year into their formulas: the terms with their
// values, and the months or days that a sum is made of. An explanation evaluates the formula
// again, from what the year's run recorded and with the functions that the run used.
package explain

import (
	"suncask/engine/climate"
	"suncask/engine/simulate"
)

// Quantity is a figure that can be opened.
type Quantity int8

const (
	Bought        Quantity = iota // kWh from the grid into the water
	Sun                           // kWh from the sun into the water
	Cost                          // of what was bought less what was paid for sun fed back
	SolarFraction                 // 1
	CoolDays
	Saved     // a year, against backup all day without modules
	Lost      // kWh by the tank to its room
	Delivered // kWh at the tap above cold water
	DayBought // kWh on the day that is looked at
	DayCost
	Payback  // years until the system has paid for itself
	NetValue // of all its payments, today
	KWhCost  // of a kWh of the sun that is used
	Quantities
)

// Summed tells whether a quantity is the sum of those of months, and a month's of days.
func (q Quantity) Summed() bool { return q < DayBought && q != SolarFraction && q != Saved }

// Span is a year, a month (0 to 11) or a day (0 to 364); -1 where it is the longer.
type Span struct{ Month, Day int }

// Year is the whole year.
var Year = Span{-1, -1}

// Symbol names a term of a formula.
type Symbol int8

const (
	SunEnergy       Symbol = iota // E_s, kWh
	GridEnergy                    // E_g, kWh
	BareCost                      // C_0, money: backup all day without modules
	YearCost                      // C, money
	BaseEnergy                    // E_b, kWh outside all price bands
	BasePrice                     // p, money a kWh
	BandCost                      // C_b, money in price bands
	BlockCost                     // C_t, money that rising prices add
	FedBack                       // E_x, kWh
	FedPrice                      // x, money a kWh
	FedLess                       // C_x, money that a second price of it takes off
	Investment                    // I, money today
	FirstSaving                   // S, money in the first year
	PriceRise                     // r a year
	Ageing                        // g, of what the modules give, a year
	Discount                      // d a year
	Upkeep                        // U, money a year
	Replacement                   // R, money in the year y_R
	ReplacementYear               // y_R
	Horizon                       // N, years
	Symbols
)

// Term is a symbol with its value.
type Term struct {
	Symbol Symbol
	Value  float64
}

// Part is one of the spans that a sum is made of.
type Part struct {
	Span  Span
	Value float64
}

// House is what explanations speak of: a prepared house with its year, and the year with
// backup all day and no modules, and a day that is looked at.
type House struct {
	Prepared *simulate.Prepared
	Year     *simulate.Year
	Bare     *simulate.Flows
	Day      *simulate.Flows
}

// Explanation is a figure with what it is made of. Value is the formula evaluated: the sum
// of the parts where there are any, else from the terms.
type Explanation struct {
	Value float64
	Terms []Term
	Parts []Part
}

// Of explains a quantity of a span: those that are no sums of the year alone.
func Of(q Quantity, at Span, h *House) (e Explanation) {
	switch {
	case q == SolarFraction:
		sun, grid := Of(Sun, at, h).Value, Of(Bought, at, h).Value
		e.Terms = []Term{{SunEnergy, sun}, {GridEnergy, grid}}
		if sun+grid > 0 {
			e.Value = sun / (sun + grid)
		}
	case q == Saved:
		cost := Of(Cost, Year, h).Value
		e.Terms = []Term{{BareCost, h.Bare.Cost}, {YearCost, cost}}
		e.Value = h.Bare.Cost - cost
	case q == DayBought:
		e.Value = Bought.of(h.Day)
	case q == DayCost:
		return costOf(h.Day, 0, 0, h)
	case q >= Payback:
		return worthOf(q, h)
	case at.Day >= 0:
		if q == Cost {
			return costOf(&h.Year.Day[at.Day], 0, 0, h)
		}
		e.Value = q.of(&h.Year.Day[at.Day])
	case at.Month >= 0 && q == Cost:
		f := monthOf(at.Month, h)
		return costOf(&f, h.Prepared.Blocks(f.BaseJ), h.Prepared.FedRest(f.UnusedSunJ), h)
	default:
		e.Parts = parts(q, at, h)
		for _, p := range e.Parts {
			e.Value += p.Value
		}
	}
	return e
}

// parts are the months of a year, or the days of a month.
func parts(q Quantity, at Span, h *House) (list []Part) {
	add := func(s Span) { list = append(list, Part{s, Of(q, s, h).Value}) }
	if at.Month < 0 {
		for m := range 12 {
			add(Span{m, -1})
		}
		return list
	}
	for day := climate.FirstDay(at.Month); day < climate.FirstDay(at.Month)+climate.DaysIn[at.Month]; day++ {
		add(Span{at.Month, day})
	}
	return list
}

// monthOf adds up a month's days.
func monthOf(m int, h *House) (sum simulate.Flows) {
	for day := climate.FirstDay(m); day < climate.FirstDay(m)+climate.DaysIn[m]; day++ {
		sum.Add(&h.Year.Day[day])
	}
	return sum
}

// costOf takes a cost apart: what was bought outside bands at its price, what was bought in
// bands, what blocks add, less what was paid for what was fed back, of which a second price
// takes something off.
func costOf(f *simulate.Flows, blocks, fedLess float64, h *House) Explanation {
	s := &h.Prepared.Scenario
	t := s.Tariff()
	base, price := f.BaseJ/simulate.JPerKWh, t.Marginal(s.OtherKWh)
	fed := f.UnusedSunJ / simulate.JPerKWh
	bands := f.Cost - base*price + fed*s.ExportPrice
	return Explanation{
		Value: base*price + bands + blocks - fed*s.ExportPrice + fedLess,
		Terms: []Term{{BaseEnergy, base}, {BasePrice, price}, {BandCost, bands}, {BlockCost, blocks}, {FedBack, fed}, {FedPrice, s.ExportPrice}, {FedLess, fedLess}},
	}
}

// of is a quantity of recorded flows.
func (q Quantity) of(f *simulate.Flows) float64 {
	switch q {
	case Bought:
		return f.BoughtJ / simulate.JPerKWh
	case Sun:
		return f.SunJ / simulate.JPerKWh
	case Lost:
		return f.LostJ / simulate.JPerKWh
	case Delivered:
		return f.DeliveredJ / simulate.JPerKWh
	case Cost:
		return f.Cost
	}
	return float64(f.CoolDays)
}

// Shown is the figure as the page shows it, from the year's own totals.
func Shown(q Quantity, h *House) float64 {
	t := &h.Year.Total
	switch q {
	case SolarFraction:
		return t.SolarFraction()
	case Saved:
		return h.Bare.Cost - t.Cost
	case DayBought:
		return Bought.of(h.Day)
	case DayCost:
		return h.Day.Cost
	}
	if q >= Payback {
		return shownWorth(q, h)
	}
	return q.of(t)
}

// Formula is a quantity's, in the symbols of its terms; of a sum over parts, n.
func Formula(q Quantity, at Span) string {
	switch {
	case q == SolarFraction:
		return "f = E_s / (E_s + E_g)"
	case q == Saved:
		return "S = C_0 \u2212 C"
	case q == NetValue:
		return "V = \u2212I + \u03a3 (S ((1+r)(1\u2212g))^(y\u22121) \u2212 U \u2212 R_y) / (1+d)^y,  y = 1...N"
	case q == Payback:
		return "T:  \u2212I + \u03a3 (S ((1+r)(1\u2212g))^(y\u22121) \u2212 U \u2212 R_y) = 0,  y = 1...T"
	case q == KWhCost:
		return "k = (I + \u03a3 (U + R_y) / (1+d)^y) / \u03a3 E_s (1\u2212g)^(y\u22121) / (1+d)^y"
	case q == DayBought:
		return ""
	case q == Cost && at.Month >= 0, q == DayCost:
		return "C = p E_b + C_b + C_t \u2212 x E_x + C_x"
	case at.Day >= 0:
		return ""
	}
	return "\u03a3"
}

// Letters are the symbols as formulas write them.
var Letters = [Symbols]string{"E_s", "E_g", "C_0", "C", "E_b", "p", "C_b", "C_t", "E_x", "x", "C_x", "I", "S", "r", "g", "d", "U", "R", "y_R", "N"}
