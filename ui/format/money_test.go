package format

import (
	"testing"

	"golang.org/x/text/currency"

	"suncask/engine/tariff"
)

// Currencies have cents where the Unicode CLDR (32, by golang.org/x/text) gives their cash
// decimals, but for those of three, which sums of a household do without, and three whose
// prices are written with hundredths though no such coins are left (common practice, no source).
func TestCents_CLDR(t *testing.T) {
	n := 0
	for code := range tariff.Rates() {
		unit, err := currency.ParseISO(code)
		if err != nil {
			t.Errorf("%s is no code of ISO 4217", code)
			continue
		}
		want, _ := currency.Cash.Rounding(unit)
		if code == "CZK" || code == "NOK" || code == "SEK" {
			want = 2
		}
		if got := Cents(code); got != min(want, 2) {
			t.Errorf("%s: %d decimals, want %d", code, got, want)
		}
		n++
	}
	if n < 60 {
		t.Errorf("only %d currencies", n)
	}
}

func TestMoney_Examples(t *testing.T) {
	for _, c := range [][2]string{
		{Money(153.4, "EUR"), "EUR" + Space + "153"}, {Money(0.104, "EUR"), "EUR" + Space + "0.10"},
		{Money(4.6, "JPY"), "JPY" + Space + "5"}, {Money(4.6, "$"), "$" + Space + "4.60"},
		{PerKWh(0.1234, "EUR"), "EUR" + Space + "0.123"}, {PerKWh(2.345, "SEK"), "SEK" + Space + "2.35"},
		{PerKWh(31.23, "JPY"), "JPY" + Space + "31.2"}, {PerKWh(2100.4, "VND"), "VND" + Space + "2100"},
		{Number(0.0123, TwoDigits(0.0123)), "0.012"}, {Number(0.5, TwoDigits(0.5)), "0.50"}, {Number(0.24, TwoDigits(0.24)), "0.24"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}
