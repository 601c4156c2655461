package tariff

import (
	"testing"

	"golang.org/x/text/currency"
	"golang.org/x/text/language"
	"golang.org/x/text/language/display"
)

// Countries have the legal tender that the Unicode CLDR (32, by golang.org/x/text) gives their
// region, but for what is newer than it: the euro in Croatia (2023) and Bulgaria (2026), and but
// for dollars where most sums are in them.
func TestHouseholds_CLDR(t *testing.T) {
	regions := map[string]language.Region{}
	for a := 'A'; a <= 'Z'; a++ {
		for b := 'A'; b <= 'Z'; b++ {
			if r, err := language.ParseRegion(string(a) + string(b)); err == nil && r.IsCountry() && r.Canonicalize() == r {
				regions[display.English.Regions().Name(r)] = r
			}
		}
	}
	named := map[string]string{"Czech Republic": "Czechia", "Hong Kong": "Hong Kong SAR China"}
	other := map[string]string{"Croatia": "EUR", "Bulgaria": "EUR", "Panama": "USD", "Zimbabwe": "USD", "El Salvador": "USD", "Lebanon": "USD"}
	for _, h := range households {
		name := h.Country
		if n, ok := named[name]; ok {
			name = n
		}
		r, ok := regions[name]
		if !ok {
			t.Errorf("%s is no region", h.Country)
			continue
		}
		unit, ok := currency.FromRegion(r)
		if want := unit.String(); !ok || h.Currency != want && h.Currency != other[h.Country] {
			t.Errorf("%s: %s, want %s", h.Country, h.Currency, want)
		}
	}
}

// Every row can be used: once in the table, a rate for its currency, a price between a fiftieth
// of a euro and half a euro, with its year.
func TestHouseholds_Property(t *testing.T) {
	seen := map[string]bool{}
	for _, h := range households {
		rate, ok := PerEuro(h.Currency)
		if seen[h.Country] || !ok {
			t.Errorf("%s is there twice, or %s has no rate", h.Country, h.Currency)
		}
		seen[h.Country] = true
		if (h.PerKWh == 0) != (h.Year == 0) {
			t.Errorf("%s: a price without a year, or the reverse", h.Country)
		}
		if euros := h.PerKWh / rate; h.PerKWh > 0 && (euros < 0.02 || euros > 0.5) {
			t.Errorf("%s: %.3f euros a kWh", h.Country, euros)
		}
	}
	for _, c := range carbon {
		if !seen[c.Country] {
			t.Errorf("%s has its carbon in the tables, but no currency", c.Country)
		}
	}
}
