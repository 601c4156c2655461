package finance

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/published"
)

type rows struct {
	NPV []struct {
		Rate, NPV float64
		Flows     []float64
	}
	IRR []struct {
		Payments []float64
		IRR      float64
		Second   float64
		Decimals int
	}
	Annuity []struct{ Rate, Years, Factor float64 }
	Project struct {
		Cost, Saving, KWh, Upkeep, Replacement, PriceRise, UpkeepRise, Degradation, Discount float64
		ReplacementYear, Years                                                               int
		Payments                                                                             []float64
		NPV, IRR, Payback, DiscountPayback, KWhCost                                          float64
	}
}

func publishedRows(t *testing.T) (r rows) {
	t.Helper()
	published.Block(t, "money.json", "finance", &r)
	return r
}

func TestNPV_Published(t *testing.T) {
	r := publishedRows(t)
	if len(r.NPV) != 1 {
		t.Fatal("rows")
	}
	for _, c := range r.NPV { // this source's first payment is at the end of year 1
		if got := NPV(c.Rate, append([]float64{0}, c.Flows...)); math.Abs(got-c.NPV) > 0.005 {
			t.Errorf("%.4f, published %.4f", got, c.NPV)
		}
	}
}

func TestIRR_Published(t *testing.T) {
	r := publishedRows(t)
	if len(r.IRR) != 8 {
		t.Fatalf("%d rows", len(r.IRR))
	}
	for _, c := range r.IRR {
		tol := 0.5 * math.Pow(10, -float64(c.Decimals))
		rates, found := Rates(c.Payments), false
		for _, rate := range rates {
			found = found || math.Abs(rate-c.IRR) <= tol
			if v := NPV(rate, c.Payments); math.Abs(v) > 1e-6*math.Abs(c.Payments[0])*math.Pow(1+math.Abs(1/(1+rate)), float64(len(c.Payments))) {
				t.Errorf("%v at %g is worth %g", c.Payments, rate, v)
			}
		}
		if !found {
			t.Errorf("%v: %v, published %g", c.Payments, rates, c.IRR)
		}
		one, err := IRR(c.Payments)
		var several *RateError
		switch {
		case len(rates) == 1 && (err != nil || one != rates[0]):
			t.Errorf("%v: %g, %v", c.Payments, one, err)
		case len(rates) > 1 && (!errors.As(err, &several) || len(several.Rates) != len(rates)):
			t.Errorf("%v: several rates, error %v", c.Payments, err)
		}
		if c.Second != 0 {
			ok := false
			for _, rate := range rates {
				ok = ok || math.Abs(rate-c.Second) < 1e-6
			}
			if !ok {
				t.Errorf("%v: %v, second root %g", c.Payments, rates, c.Second)
			}
		}
	}
	for _, none := range [][]float64{{}, {-1}, {0, 0, 0}, {-100, -5, -5}, {100, 5}, {-1, 1, -1}} {
		var e *RateError
		if _, err := IRR(none); !errors.As(err, &e) || len(e.Rates) != 0 {
			t.Errorf("%v has no rate: %v", none, err)
		}
	}
	// (1 - 2x)^2 touches nothing at a rate of 100 %.
	if rates := Rates([]float64{1, -4, 4}); len(rates) != 1 || math.Abs(rates[0]-1) > 1e-6 {
		t.Errorf("a double root: %v", rates)
	}
}

// Payments made from their roots give them back.
func TestRates_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 300 {
		n := 1 + r.IntN(4)
		payments := []float64{-1000}
		var want []float64
		x := 0.3
		for range n {
			x += 0.1 + 0.4*r.Float64()
			want = append([]float64{1/x - 1}, want...)
			next := make([]float64, len(payments)+1) // times (x - X)
			for i, c := range payments {
				next[i] -= c * x
				next[i+1] += c
			}
			payments = next
		}
		got := Rates(payments)
		if len(got) != n {
			t.Fatalf("%v: %v, made of %v", payments, got, want)
		}
		for i := range got {
			if math.Abs(got[i]-want[i]) > 1e-8 {
				t.Fatalf("%v: %v, made of %v", payments, got, want)
			}
		}
	}
}

func TestAnnuity_Published(t *testing.T) {
	r := publishedRows(t)
	if len(r.Annuity) != 4 {
		t.Fatal("rows")
	}
	for _, c := range r.Annuity {
		if got := Annuity(c.Rate, int(c.Years)); math.Abs(got-c.Factor) > 5e-9 {
			t.Errorf("%g, %g years: %.8f, published %.8f", c.Rate, c.Years, got, c.Factor)
		}
	}
	if Annuity(0, 20) != 0.05 {
		t.Error("without interest")
	}
}

func TestProject_Computed(t *testing.T) {
	c := publishedRows(t).Project
	p := Project{Cost: c.Cost, Saving: c.Saving, KWh: c.KWh, Upkeep: c.Upkeep, Replacement: c.Replacement, ReplacementYear: c.ReplacementYear,
		PriceRise: c.PriceRise, UpkeepRise: c.UpkeepRise, Degradation: c.Degradation, Discount: c.Discount, Years: c.Years}
	w := p.Worth()
	if len(w.Payments) != len(c.Payments) || len(c.Payments) != 21 {
		t.Fatalf("%d payments", len(w.Payments))
	}
	for i, f := range c.Payments {
		if math.Abs(w.Payments[i]-f) > 0.005 {
			t.Errorf("year %d: %.4f, computed %.4f", i, w.Payments[i], f)
		}
	}
	for what, v := range map[string][2]float64{"NPV": {w.NPV, c.NPV}, "rate": {w.Rate, c.IRR}, "payback": {w.Payback, c.Payback},
		"discounted payback": {w.DiscountPayback, c.DiscountPayback}, "cost of a kWh": {w.KWhCost, c.KWhCost}} {
		if math.Abs(v[0]/v[1]-1) > 1e-8 {
			t.Errorf("%s: %.9g, computed %.9g", what, v[0], v[1])
		}
	}
}

// A project that never pays back says so.
func TestProject_NeverPaysBack(t *testing.T) {
	w := (&Project{Cost: 1000, Saving: 10, Years: 20}).Worth()
	if !math.IsInf(w.Payback, 1) || !math.IsInf(w.DiscountPayback, 1) || !math.IsInf(w.KWhCost, 1) || !(w.NPV < 0) {
		t.Errorf("%+v", w)
	}
}
