package format

import (
	"math/rand/v2"
	"testing"
)

func TestClock_Inverse(t *testing.T) {
	for m := range 1440 {
		if got, ok := ParseClock(Clock(m)); !ok || got != m {
			t.Fatalf("%d -> %q -> %d %v", m, Clock(m), got, ok)
		}
	}
	for text, want := range map[string]int{"1445": 885, "7": 420, "7:30": 450, " 14.45 ": 885, "2:45 pm": 885, "12:05am": 5, "12 PM": 720, "23:59": 1439} {
		if got, ok := ParseClock(text); !ok || got != want {
			t.Errorf("%q: %d %v", text, got, ok)
		}
	}
	for _, text := range []string{"", "25:00", "12:60", "-1:00", "noon", "1:2:3", "12345", "+5", "13:00 pm", "0:30 am", "am", "1 am pm"} {
		if got, ok := ParseClock(text); ok {
			t.Errorf("%q is read as %d", text, got)
		}
	}
}

func TestNumber_Inverse_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 5000 {
		n := float64(r.IntN(20000001)-10000000) / 100
		if got, ok := Parse(Number(n, 2)); !ok || got != n {
			t.Fatalf("%v -> %q -> %v %v", n, Number(n, 2), got, ok)
		}
		if got, ok := Parse(Input(n)); !ok || got != n {
			t.Fatalf("%v -> %q -> %v %v", n, Input(n), got, ok)
		}
	}
	for text, want := range map[string]float64{"0,24": 0.24, " 1.5 ": 1.5, "-3": -3, "\u22123": -3} {
		if got, ok := Parse(text); !ok || got != want {
			t.Errorf("%q: %v %v", text, got, ok)
		}
	}
	for _, text := range []string{"", "abc", "1.2.3", "1,000.5", "1e5", "NaN", "Inf", "0x10", "--1"} {
		if got, ok := Parse(text); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

func TestText_Examples(t *testing.T) {
	for _, c := range [][2]string{
		{Number(12345.6, 1), "12" + Space + "345.6"}, {Number(1234, 0), "1234"}, {Number(-0.001, 2), "0.00"},
		{Number(-5, 0), "\u22125"}, {Duration(210), "3" + Space + "h 30" + Space + "min"}, {Duration(0), "0" + Space + "min"},
		{Money(153.4, "EUR"), "EUR" + Space + "153"}, {Money(0.104, "R"), "R" + Space + "0.10"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}

// A currency stands after its amount where people write it so.
func TestSetCurrencyAfter(t *testing.T) {
	SetCurrencyAfter(true)
	defer SetCurrencyAfter(false)
	if got := Money(-153.4, "EUR"); got != "\u2212153"+Space+"EUR" {
		t.Errorf("%q", got)
	}
	if got := Price(0.0541, "R", 3); got != "0.054"+Space+"R" {
		t.Errorf("%q", got)
	}
}

// With a decimal comma numbers and boxes are written so, and read back.
func TestSetDecimal(t *testing.T) {
	SetDecimal(",")
	defer SetDecimal(".")
	if got := Number(12345.25, 1) + " " + Input(37.5); got != "12\u202f345,2 37,5" {
		t.Error(got)
	}
	if v, ok := Parse(Input(37.5)); !ok || v != 37.5 {
		t.Errorf("read back: %g", v)
	}
}
