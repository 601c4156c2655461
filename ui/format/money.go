package format

import (
	"math"
	"strings"
)

// withoutCents are the currencies of ISO 4217 whose smaller coins do not exist or are out of use
// (cash digits of the Unicode CLDR, checked against its data in the test).
const withoutCents = "ALL CLP COP CRC HUF IDR ISK JPY KRW MUR PKR PYG RSD TWD TZS UGX VND XAF XOF XPF"

// Cents is how many decimals small sums of a currency have: 0 or 2.
func Cents(currency string) int {
	if len(currency) == 3 && strings.Contains(withoutCents, currency) {
		return 0
	}
	return 2
}

// Money writes an amount in whole units of a currency, with cents under ten.
func Money(v float64, currency string) string {
	return Price(v, currency, moneyDecimals(v, currency))
}

func moneyDecimals(v float64, currency string) int {
	if math.Abs(v) < 10 {
		return Cents(currency)
	}
	return 0
}

// PerKWh writes a price of a kWh to three digits.
func PerKWh(v float64, currency string) string {
	decimals := 3
	for limit := 1.0; decimals > 0 && math.Abs(v) >= limit; limit *= 10 {
		decimals--
	}
	return Price(v, currency, decimals)
}

// TwoDigits is how many decimals show v, of less than one, to some two digits: two, or as
// many as keep it within a twentieth, at most five.
func TwoDigits(v float64) int {
	decimals := 2
	for unit := 100.0; decimals < 5 && math.Abs(math.Round(v*unit)/unit-v) > math.Abs(v)/20; unit *= 10 {
		decimals++
	}
	return decimals
}

// Less is the difference of two amounts as [Money] shows them: 978 less 444 is 534, though
// the exact ones be 535 apart. Where one is shown with cents, so is the difference.
func Less(a, b float64, currency string) float64 {
	unit := math.Pow(10, float64(max(moneyDecimals(a, currency), moneyDecimals(b, currency))))
	return (math.Round(a*unit) - math.Round(b*unit)) / unit
}

// currencyAfter tells whether a currency stands after its amount.
var currencyAfter bool

// SetCurrencyAfter chooses where it stands. Call it once, before amounts are written.
func SetCurrencyAfter(after bool) { currencyAfter = after }

// Price writes an amount with that many decimals.
func Price(v float64, currency string, decimals int) string {
	if currencyAfter {
		return Number(v, decimals) + Space + currency
	}
	return currency + Space + Number(v, decimals)
}
