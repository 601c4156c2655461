package finance

import "math"

// Project is what a system costs and saves.
type Project struct {
	Cost            float64 // today
	Saving          float64 // of the first year, at its price
	KWh             float64 // of the sun, used in the first year
	Upkeep          float64 // of the first year
	Replacement     float64 // of the converter
	ReplacementYear int     // 1 to Years; 0: none
	PriceRise       float64 // a year, of a bought kWh
	UpkeepRise      float64
	Degradation     float64 // a year, of what the modules give
	Discount        float64
	Years           int // horizon, >= 1
}

// Worth is what a project comes to.
type Worth struct {
	Payments        []float64 // today and at the end of each year
	NPV             float64
	Rate            float64   // internal rate of return; NaN: see Rates
	Rates           []float64 // all rates of return
	Payback         float64   // years; infinite where it never comes
	DiscountPayback float64
	KWhCost         float64 // levelised cost of a kWh of the sun that is used; infinite without any
}

// upkeepIn is the upkeep of a year, from 1.
func (p *Project) upkeepIn(year int) float64 {
	return p.Upkeep * math.Pow(1+p.UpkeepRise, float64(year-1))
}

// Payments are those of a project: the cost today, then each year's saving, which rises
// with the price and falls with the modules, less upkeep and replacement.
func (p *Project) Payments() []float64 {
	list := []float64{-p.Cost}
	for year := 1; year <= p.Years; year++ {
		f := p.Saving*math.Pow((1+p.PriceRise)*(1-p.Degradation), float64(year-1)) - p.upkeepIn(year)
		if year == p.ReplacementYear {
			f -= p.Replacement
		}
		list = append(list, f)
	}
	return list
}

// Worth values a project.
func (p *Project) Worth() Worth {
	w := Worth{Payments: p.Payments()}
	w.NPV = NPV(p.Discount, w.Payments)
	w.Rates = Rates(w.Payments)
	w.Rate = math.NaN()
	if len(w.Rates) == 1 {
		w.Rate = w.Rates[0]
	}
	w.Payback, _ = Payback(0, w.Payments)
	w.DiscountPayback, _ = Payback(p.Discount, w.Payments)
	w.KWhCost = p.kWhCost()
	return w
}

// kWhCost is the present value of all costs over that of all kilowatt-hours.
func (p *Project) kWhCost() float64 {
	costs, kWh := p.Cost, 0.0
	for year := 1; year <= p.Years; year++ {
		now := math.Pow(1+p.Discount, -float64(year))
		costs += p.upkeepIn(year) * now
		if year == p.ReplacementYear {
			costs += p.Replacement * now
		}
		kWh += p.KWh * math.Pow(1-p.Degradation, float64(year-1)) * now
	}
	if kWh == 0 {
		return math.Inf(1)
	}
	return costs / kWh
}
