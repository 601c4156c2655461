package scenario

import (
	"math"

	"suncask/engine/tariff"
)

// settleMoney takes what is only assumed of money from the country: its currency, what its
// households pay for a kWh, and the example's other sums at the rate of exchange.
func (s *Scenario) settleMoney() {
	f, ok := s.located()
	if !ok {
		return
	}
	if !s.Known.Has(Currency) {
		s.Currency = tariff.CurrencyOf(f.Country)
	}
	usual, _ := s.usualPrice(f.Country)
	example := first()
	for _, a := range [...]struct {
		id    FieldID
		value float64
	}{
		{Price, usual},
		{LowPrice, usual * example.LowPrice / example.Price},
		{ModuleCost, example.ModuleCost * s.rate(f.Country)},
		{FixedCost, example.FixedCost * s.rate(f.Country)},
		{TankCost, example.TankCost * s.rate(f.Country)},
		{ReplaceCost, example.ReplaceCost * s.rate(f.Country)},
		{UpkeepCost, example.UpkeepCost * s.rate(f.Country)},
	} {
		if f := FieldOf(a.id); !s.Known.Has(a.id) {
			f.Set(s, f.Snap(twoDigits(a.value)))
		}
	}
}

// UsualPrice is what a kWh usually costs households in the scenario's country, in its currency.
// known is false where that is not known: it is the example's then, at the rate of exchange.
func (s *Scenario) UsualPrice() (perKWh float64, known bool) {
	f, _ := s.located()
	return s.usualPrice(f.Country)
}

func (s *Scenario) usualPrice(country string) (perKWh float64, known bool) {
	h, _ := tariff.HouseholdOf(country)
	if h.PerKWh == 0 {
		return first().Price * s.rate(country), false
	}
	own, _ := tariff.PerEuro(h.Currency)
	return h.PerKWh * s.rate(country) / own, true
}

// rate is what a euro is in the scenario's currency. One that is not known, such as a mere
// sign, is taken for the country's own.
func (s *Scenario) rate(country string) float64 {
	if rate, ok := tariff.PerEuro(s.Currency); ok {
		return rate
	}
	rate, _ := tariff.PerEuro(tariff.CurrencyOf(country))
	return rate
}

// twoDigits rounds to two significant digits: more would look like knowledge.
func twoDigits(v float64) float64 {
	if v <= 0 {
		return 0
	}
	unit := math.Pow(10, math.Floor(math.Log10(v))-1)
	return math.Round(v/unit) * unit
}

// MoneyKnown tells whether somebody confirmed a sum of money: it is one of the currency of
// then.
func (s *Scenario) MoneyKnown() bool {
	for i := range fields {
		f := &fields[i]
		if s.Known.Has(f.ID) && (f.Unit.IsMoney() || f.ID == BandPrices && s.Bands != "" || f.ID == BlockPrices && s.Blocks != "") {
			return true
		}
	}
	return false
}

// IsMoney tells whether values of a unit are sums in the scenario's currency.
func (u Unit) IsMoney() bool {
	return u == Money || u == MoneyPerKWh || u == MoneyAMonth || u == MoneyAYear
}
