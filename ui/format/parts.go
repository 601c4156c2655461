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

// Steps returns payments rounded to so many decimals so that their running sums are the
// rounded running sums of the exact ones.
func Steps(payments []float64, decimals int) (shown []float64) {
	unit := math.Pow(10, float64(decimals))
	sum, before := 0.0, 0.0
	for _, v := range payments {
		sum += v
		now := math.Round(sum*unit) / unit
		shown, before = append(shown, now-before), now
	}
	return shown
}
