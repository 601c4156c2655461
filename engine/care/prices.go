package care

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// OddFactor is how many times dearer or cheaper than usual a kWh may be before it is asked
// about: other tariffs of a country differ by less, wrong decimal marks and currencies by more
// (an assumption).
const OddFactor = 20.0

// prices asks about those of a kWh that are far from the country's usual one, and for one
// where no usual one is known.
func (l *findings) prices(p *simulate.Prepared) {
	s := &p.Scenario
	usual, known := s.UsualPrice()
	if !known && !s.Known.Has(scenario.Price) {
		l.find(PriceUnknown, Note, scenario.Price, "common practice, no source", s.Price)
	}
	source := "mean price of households, from memory"
	if !known {
		source = "the example's price at the rate of exchange"
	}
	odd := func(field scenario.FieldID, price float64) bool {
		if price == 0 || price <= usual*OddFactor && price*OddFactor >= usual {
			return false
		}
		l.find(PriceOdd, Caution, field, source, price, usual)
		return true
	}
	odd(scenario.Price, s.Price)
	t := s.Tariff()
	for i, b := range t.Bands {
		field := scenario.BandPrices
		if i == len(t.Bands)-1 && s.LowFrom != s.LowTo {
			field = scenario.LowPrice
		}
		if odd(field, b.PerKWh) {
			break
		}
	}
	for _, b := range t.Blocks {
		if odd(scenario.BlockPrices, b.PerKWh) {
			break
		}
	}
}
