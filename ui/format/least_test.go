package format

import (
	"math/rand/v2"
	"testing"
)

// What must be reached is never written below what it is, and what must not be passed never above,
// whatever the decimal mark; and neither is off by more than its last digit.
func TestLeast_Property(t *testing.T) {
	defer SetDecimal(".")
	r := rand.New(rand.NewPCG(23, 3))
	for _, mark := range []string{".", ","} {
		SetDecimal(mark)
		for range 20_000 {
			v, decimals := r.Float64()*1000, r.IntN(3)
			least, ok := Parse(AtLeast(v, decimals))
			most, alsoOK := Parse(AtMost(v, decimals))
			digit := [...]float64{1, 0.1, 0.01}[decimals]
			if !ok || !alsoOK || least < v-2e-9 || least > v+digit || most > v+2e-9 || most < v-digit {
				t.Fatalf("%v to %d decimals: %s and %s", v, decimals, AtLeast(v, decimals), AtMost(v, decimals))
			}
		}
	}
	SetDecimal(".")
	for _, c := range []struct {
		v           float64
		decimals    int
		least, most string
	}{{15.3, 0, "16", "15"}, {17.3125, 1, "17.4", "17.3"}, {78.2, 0, "79", "78"}, {12, 0, "12", "12"}, {0.3, 1, "0.3", "0.3"}} {
		if least, most := AtLeast(c.v, c.decimals), AtMost(c.v, c.decimals); least != c.least || most != c.most {
			t.Errorf("%g: at least %s, at most %s", c.v, least, most)
		}
	}
}
