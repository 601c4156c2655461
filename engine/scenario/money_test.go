package scenario

import (
	"math"
	"testing"

	"suncask/engine/tariff"
)

// What is assumed of money is of the country, in its currency; what somebody gave stays.
func TestMoney_ByCountry(t *testing.T) {
	euro := Defaults(LatestVersion)
	for _, c := range []struct {
		link, currency string
		price, low     float64
		module         float64
		known          bool
	}{
		{"v=2", "EUR", 0.24, 0.15, 150, true},
		{"v=2&place=phoenix", "USD", 0.16, 0.1, 160, true},
		{"v=2&place=tokyo", "JPY", 31, 19, 25000, true},
		{"v=2&place=berlin", "EUR", 0.4, 0.25, 150, true},
		{"v=2&place=nairobi", "KES", 27, 17, 22000, true},
		{"v=2&place=ankara", "TRY", 8.5, 5.3, 5300, false},   // the example's 0.24 euros at 35.6
		{"v=2&place=thimphu", "EUR", 0.24, 0.15, 150, false}, // in no table
		{"v=2&place=phoenix&price=200", "USD", 0.2, 0.1, 160, true},
		{"v=2&place=phoenix&money=EUR", "EUR", 0.15, 0.093, 150, true}, // 0.16 dollars at 1.08
		{"v=2&place=phoenix&money=%24", "$", 0.16, 0.1, 160, true},
		{"v=2&place=53.48,-2.24,51&in=United%20Kingdom", "GBP", 0.25, 0.16, 130, true},
		{"v=1&place=phoenix", "EUR", 0.24, 0.15, 150, true},
	} {
		s, problems := Decode(c.link)
		if len(problems) > 0 {
			t.Fatal(c.link, problems)
		}
		if _, known := s.UsualPrice(); s.Currency != c.currency || s.Price != c.price || math.Abs(s.LowPrice-c.low) > 1e-9 || s.ModuleCost != c.module || known != c.known {
			t.Errorf("%s: %s, a kWh %g, low %g, a module %g, usual known: %v; want %+v", c.link, s.Currency, s.Price, s.LowPrice, s.ModuleCost, known, c)
		}
		if c.currency == "EUR" && c.link[:3] == "v=2" && (s.FixedCost != euro.FixedCost || s.UpkeepCost != euro.UpkeepCost) {
			t.Errorf("%s: other sums in euros", c.link)
		}
	}
}

// Every country's assumed sums lie within the ranges of their fields and on their steps.
func TestMoney_Ranges(t *testing.T) {
	for _, h := range tariff.Households() {
		s, problems := Decode("v=2&place=46.9,7.4,550&in=" + escape(h.Country))
		problems = append(problems, s.Problems()...)
		if len(problems) > 0 || s.Currency != h.Currency || h.PerKWh > 0 && math.Abs(s.Price/h.PerKWh-1) > 1e-9 {
			t.Errorf("%s: %s, a kWh %g, %v", h.Country, s.Currency, s.Price, problems)
		}
	}
}
