// Package sheettest reads tables in tests as people read them.
package sheettest

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"suncask/ui/format"
	"suncask/ui/parts"
)

// Links are of houses whose tables are tested.
var Links = []string{"", "v=2&place=oslo&modules=6", "v=2&place=santiago&backup=none0000&people=6", "v=2&couple=direct&modules=5&tank=150", "v=2&place=phoenix&tank=80", "v=2&place=tokyo&lowfrom=276&lowto=84", "v=2&money=XYZ&export=800&meter=90"}

// Sum is that of a column as it is shown, of the rows from one on.
func Sum(t *testing.T, rows []parts.SheetRow, column, from int) (sum float64) {
	t.Helper()
	for _, r := range rows[from:] {
		sum += read(t, parts.Text(r.Cells[column]))
	}
	return sum
}

// Amount is an amount of money as it is shown.
func Amount(t *testing.T, v float64, currency string) float64 {
	t.Helper()
	return read(t, strings.ReplaceAll(format.Money(v, currency), currency, ""))
}

func read(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(strings.NewReplacer("\u202f", "", "\u2212", "-").Replace(text), 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// Rounded is a value as it is shown with so many decimals.
func Rounded(v float64, decimals int) float64 {
	unit := math.Pow(10, float64(decimals))
	return math.Round(v*unit) / unit
}
