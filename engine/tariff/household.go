package tariff

import (
	"cmp"
	"iter"
	"maps"
)

// Household is what households of a country pay for a kWh: means of a year with all taxes and
// the charges that go by the kWh, rounded to two digits; all from memory. European Union and its
// neighbours: Eurostat, nrg_pc_204 (2500 to 5000 kWh a year), first half of 2024. United States:
// Energy Information Administration, Electric Power Monthly, mean of 2023. Others: what their
// regulators or statistics offices publish, 2023 or 2024.
type Household struct {
	Country  string  // in English, as the table of places has it
	Currency string  // ISO 4217
	PerKWh   float64 // in that currency; 0: no mean is known here, or it does not last a year
	Year     int     // of the price; 0 where there is none
}

var households = [...]Household{
	{"Albania", "ALL", 11, 2024},
	{"Algeria", "DZD", 5, 2023},
	{"Andorra", "EUR", 0, 0},
	{"Argentina", "ARS", 0, 0},
	{"Australia", "AUD", 0.33, 2024},
	{"Austria", "EUR", 0.27, 2024},
	{"Bangladesh", "BDT", 0, 0},
	{"Belgium", "EUR", 0.32, 2024},
	{"Bolivia", "BOB", 0, 0},
	{"Bosnia & Herzegovina", "BAM", 0.18, 2024},
	{"Botswana", "BWP", 0, 0},
	{"Brazil", "BRL", 0.9, 2024},
	{"Bulgaria", "EUR", 0.12, 2024},
	{"Canada", "CAD", 0.18, 2023},
	{"Chile", "CLP", 170, 2024},
	{"China", "CNY", 0.54, 2023},
	{"Colombia", "COP", 800, 2024},
	{"Costa Rica", "CRC", 85, 2023},
	{"Croatia", "EUR", 0.15, 2024},
	{"Cyprus", "EUR", 0.33, 2024},
	{"Czech Republic", "CZK", 7, 2024},
	{"Denmark", "DKK", 2.8, 2024},
	{"Dominican Republic", "DOP", 0, 0},
	{"Ecuador", "USD", 0.1, 2023},
	{"Egypt", "EGP", 0, 0},
	{"El Salvador", "USD", 0.22, 2023},
	{"Estonia", "EUR", 0.23, 2024},
	{"Fiji", "FJD", 0.34, 2023},
	{"Finland", "EUR", 0.23, 2024},
	{"France", "EUR", 0.28, 2024},
	{"French Guiana", "EUR", 0.28, 2024},
	{"Germany", "EUR", 0.4, 2024},
	{"Ghana", "GHS", 0, 0},
	{"Greece", "EUR", 0.22, 2024},
	{"Guadeloupe", "EUR", 0.28, 2024},
	{"Guatemala", "GTQ", 0, 0},
	{"Hong Kong", "HKD", 1.5, 2024},
	{"Hungary", "HUF", 37, 2024},
	{"Iceland", "ISK", 0, 0},
	{"India", "INR", 6, 2023},
	{"Indonesia", "IDR", 1400, 2024},
	{"Ireland", "EUR", 0.37, 2024},
	{"Israel", "ILS", 0.62, 2024},
	{"Italy", "EUR", 0.33, 2024},
	{"Japan", "JPY", 31, 2023},
	{"Jordan", "JOD", 0, 0},
	{"Kenya", "KES", 27, 2024},
	{"Latvia", "EUR", 0.24, 2024},
	{"Lebanon", "USD", 0, 0},
	{"Lithuania", "EUR", 0.22, 2024},
	{"Luxembourg", "EUR", 0.2, 2024},
	{"Malaysia", "MYR", 0.3, 2023},
	{"Malta", "EUR", 0.13, 2024},
	{"Martinique", "EUR", 0.28, 2024},
	{"Mauritius", "MUR", 0, 0},
	{"Mexico", "MXN", 1.8, 2023},
	{"Monaco", "EUR", 0, 0},
	{"Montenegro", "EUR", 0.1, 2024},
	{"Morocco", "MAD", 1.2, 2023},
	{"Mozambique", "MZN", 0, 0},
	{"Namibia", "NAD", 2.5, 2024},
	{"Nepal", "NPR", 0, 0},
	{"Netherlands", "EUR", 0.29, 2024},
	{"New Zealand", "NZD", 0.35, 2024},
	{"Nigeria", "NGN", 0, 0},
	{"Norway", "NOK", 1.3, 2024},
	{"Pakistan", "PKR", 0, 0},
	{"Panama", "USD", 0.18, 2023},
	{"Paraguay", "PYG", 420, 2023},
	{"Peru", "PEN", 0.75, 2023},
	{"Philippines", "PHP", 12, 2024},
	{"Poland", "PLN", 0.92, 2024},
	{"Portugal", "EUR", 0.24, 2024},
	{"Puerto Rico", "USD", 0.25, 2023},
	{"Romania", "RON", 0.94, 2024},
	{"Réunion", "EUR", 0.28, 2024},
	{"Saudi Arabia", "SAR", 0.21, 2024},
	{"Senegal", "XOF", 0, 0},
	{"Serbia", "RSD", 12, 2024},
	{"Singapore", "SGD", 0.32, 2024},
	{"Slovakia", "EUR", 0.18, 2024},
	{"Slovenia", "EUR", 0.2, 2024},
	{"South Africa", "ZAR", 3, 2024},
	{"South Korea", "KRW", 150, 2023},
	{"Spain", "EUR", 0.24, 2024},
	{"Sri Lanka", "LKR", 0, 0},
	{"Sweden", "SEK", 2.5, 2024},
	{"Switzerland", "CHF", 0.32, 2024},
	{"Taiwan", "TWD", 2.8, 2024},
	{"Tanzania", "TZS", 360, 2023},
	{"Thailand", "THB", 4.2, 2024},
	{"Tunisia", "TND", 0, 0},
	{"Turkey", "TRY", 0, 0},
	{"Uganda", "UGX", 790, 2024},
	{"Ukraine", "UAH", 4.3, 2024},
	{"United Arab Emirates", "AED", 0, 0},
	{"United Kingdom", "GBP", 0.25, 2024},
	{"United States", "USD", 0.16, 2023},
	{"Uruguay", "UYU", 10, 2024},
	{"Vietnam", "VND", 2100, 2024},
	{"Zambia", "ZMW", 0, 0},
	{"Zimbabwe", "USD", 0, 0},
}

// HouseholdOf returns a country's row; ok is false for those that are not in the table.
func HouseholdOf(country string) (h Household, ok bool) {
	for _, h := range households {
		if h.Country == country {
			return h, true
		}
	}
	return h, false
}

// perEuro is what a euro was in each currency, mean of 2024, rounded to three digits: reference
// rates of the European Central Bank, those it does not publish from other tables; all from
// memory. They only turn assumed sums of money into the currency of a country.
var perEuro = map[string]float64{
	"EUR": 1, "AED": 3.97, "ALL": 101, "ARS": 990, "AUD": 1.64, "BAM": 1.96, "BDT": 124, "BOB": 7.48, "BRL": 5.83, "BWP": 14.7, "CAD": 1.48,
	"CHF": 0.953, "CLP": 1020, "CNY": 7.79, "COP": 4410, "CRC": 557, "CZK": 25.1, "DKK": 7.46, "DOP": 64.4, "DZD": 145, "EGP": 49, "FJD": 2.44,
	"GBP": 0.847, "GHS": 15.5, "GTQ": 8.4, "HKD": 8.44, "HUF": 395, "IDR": 17200, "ILS": 4, "INR": 90.6, "ISK": 149, "JOD": 0.767, "JPY": 164,
	"KES": 146, "KRW": 1480, "LKR": 327, "MAD": 10.8, "MUR": 50.2, "MXN": 19.8, "MYR": 4.95, "MZN": 69.1, "NAD": 19.8, "NGN": 1600,
	"NOK": 11.6, "NPR": 145, "NZD": 1.79, "PEN": 4.06, "PHP": 62, "PKR": 301, "PLN": 4.31, "PYG": 8180, "RON": 4.98, "RSD": 117, "SAR": 4.06,
	"SEK": 11.4, "SGD": 1.45, "THB": 38.2, "TND": 3.37, "TRY": 35.6, "TWD": 34.7, "TZS": 2820, "UAH": 43.5, "UGX": 4060, "USD": 1.08, "UYU": 43.5,
	"VND": 27100, "XOF": 656, "ZAR": 19.8, "ZMW": 28.3,
}

// PerEuro is what a euro is in a currency, to three digits (mean of 2024); ok is false for
// those of no country in the table.
func PerEuro(currency string) (rate float64, ok bool) {
	rate, ok = perEuro[currency]
	return rate, ok
}

// Rates are those of PerEuro, by currency.
func Rates() iter.Seq2[string, float64] { return maps.All(perEuro) }

// Households is the table.
func Households() []Household { return households[:] }

// CurrencyOf is a country's, the euro where none is known.
func CurrencyOf(country string) string {
	h, _ := HouseholdOf(country)
	return cmp.Or(h.Currency, "EUR")
}
