// Package finance values a series of yearly payments. Money is in any one currency,
// rates are shares a year (0.05 for 5 %), and payment t falls at the end of year t, the
// first, 0, today.
package finance

import (
	"fmt"
	"math"
	"slices"
)

// NPV is the net present value of payments: sum of F_t / (1+r)^t. The rate is above -1.
func NPV(rate float64, payments []float64) (sum float64) {
	x := 1 / (1 + rate)
	for t := len(payments) - 1; t >= 0; t-- {
		sum = sum*x + payments[t]
	}
	return sum
}

// Annuity is the yearly payment that pays a present value of 1 back over years, also
// called the capital recovery factor: r / (1 - (1+r)^-n), and 1/n at no interest.
func Annuity(rate float64, years int) float64 {
	if rate == 0 {
		return 1 / float64(years)
	}
	return rate / (1 - math.Pow(1+rate, -float64(years)))
}

// RateError says why payments have no one internal rate of return: none, or several.
type RateError struct{ Rates []float64 }

func (e *RateError) Error() string {
	if len(e.Rates) == 0 {
		return "finance: no rate of return: the payments never change sign, or never balance"
	}
	return fmt.Sprintf("finance: %d rates of return: %.6g", len(e.Rates), e.Rates)
}

// IRR is the internal rate of return: the one rate above -1 at which the payments are
// worth nothing today. Where there is none, or several, it fails with a *RateError, which
// lists them.
func IRR(payments []float64) (float64, error) {
	rates := Rates(payments)
	if len(rates) != 1 {
		return math.NaN(), &RateError{rates}
	}
	return rates[0], nil
}

// Rates are all rates above -1 at which payments are worth nothing today, in ascending
// order: the positive roots of their polynomial in 1/(1+r). Payments that are all zero
// have none.
func Rates(payments []float64) (rates []float64) {
	for _, x := range positiveRoots(payments) {
		rates = append(rates, 1/x-1)
	}
	slices.Sort(rates)
	return rates
}

// positiveRoots are the roots above 0 of c[0] + c[1] x + ..., without their
// multiplicity. Between two neighbouring roots of its derivative a polynomial is monotone
// and has one root at most, which bisection finds.
func positiveRoots(c []float64) (roots []float64) {
	for len(c) > 0 && c[len(c)-1] == 0 {
		c = c[:len(c)-1]
	}
	for len(c) > 0 && c[0] == 0 { // x = 0 is no root above 0
		c = c[1:]
	}
	if len(c) < 2 {
		return nil
	}
	slope := make([]float64, len(c)-1)
	most := 0.0
	for i := 1; i < len(c); i++ {
		slope[i-1] = float64(i) * c[i]
	}
	for _, v := range c[:len(c)-1] {
		most = max(most, math.Abs(v/c[len(c)-1]))
	}
	at := func(x float64) (y, scale float64) {
		for i := len(c) - 1; i >= 0; i-- {
			y, scale = y*x+c[i], scale*x+math.Abs(c[i])
		}
		return y, scale
	}
	edges := append([]float64{0}, positiveRoots(slope)...)
	edges = append(edges, 1+most) // Cauchy's bound
	slices.Sort(edges)
	for i, lo := range edges[:len(edges)-1] {
		hi := edges[i+1]
		a, _ := at(lo)
		b, scale := at(hi)
		if math.Abs(b) <= 1e-13*scale { // the polynomial touches zero there
			if n := len(roots); n == 0 || roots[n-1] != hi {
				roots = append(roots, hi)
			}
			continue
		}
		if a == 0 || (a < 0) == (b < 0) {
			continue
		}
		if n := len(roots); n > 0 && roots[n-1] == lo {
			continue
		}
		for range 200 {
			mid := lo + (hi-lo)/2
			if mid == lo || mid == hi {
				break
			}
			if y, _ := at(mid); (y < 0) == (a < 0) {
				lo = mid
			} else {
				hi = mid
			}
		}
		roots = append(roots, hi)
	}
	return roots
}

// Cumulative are the sums of payments up to each, discounted at a rate.
func Cumulative(rate float64, payments []float64) []float64 {
	list, sum, factor := make([]float64, len(payments)), 0.0, 1.0
	for t, f := range payments {
		sum += f * factor
		list[t] = sum
		factor /= 1 + rate
	}
	return list
}

// Payback is after how many years the payments, discounted at a rate, have first come back
// to nothing, joined straight within a year; 0 at the rate leaves them as they are. ok is
// false where they never do.
func Payback(rate float64, payments []float64) (years float64, ok bool) {
	sum := 0.0
	for t, next := range Cumulative(rate, payments) {
		if t > 0 && sum < 0 && next >= 0 {
			return float64(t-1) + sum/(sum-next), true
		}
		sum = next
	}
	return math.Inf(1), false
}
