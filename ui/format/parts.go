package format

import (
	"math"
	"sort"
)

// AddUp returns parts rounded to so many decimals so that what is shown adds up to the
// rounded sum of the exact parts: all are rounded down and those with the largest remainders
// get what is missing (the method of largest remainders, Hamilton 1792). No part is off by
// a whole last digit. Tables whose parts have a sum show them so.
func AddUp(parts []float64, decimals int) (shown []float64) {
	unit := math.Pow(10, -float64(decimals))
	shown = make([]float64, len(parts))
	order := make([]int, len(parts))
	sum, missing := 0.0, 0.0
	for i, v := range parts {
		order[i] = i
		shown[i] = math.Floor(v/unit + 1e-9)
		sum += v
		missing -= shown[i]
	}
	missing += math.Round(sum / unit)
	sort.SliceStable(order, func(a, b int) bool {
		return parts[order[a]]/unit-shown[order[a]] > parts[order[b]]/unit-shown[order[b]]
	})
	for _, i := range order[:min(len(order), max(0, int(missing)))] {
		shown[i]++
	}
	for i := range shown {
		shown[i] *= unit
	}
	return shown
}

// Less is the difference of two amounts as [Money] shows them: 978 less 444 is 534, though
// the exact ones be 535 apart. Where one is shown with cents, so is the difference.
func Less(a, b float64) float64 {
	unit := 1.0
	if moneyDecimals(a) > 0 || moneyDecimals(b) > 0 {
		unit = 100
	}
	return (math.Round(a*unit) - math.Round(b*unit)) / unit
}
