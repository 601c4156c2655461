package tariff

import (
	"math"
	"testing"

	"suncask/engine/published"
)

var (
	flat  = Tariff{PerKWh: 0.3}
	night = Tariff{PerKWh: 0.3, Bands: []Band{{From: 22 * 60, To: 6 * 60, Last: 11, PerKWh: 0.12}}}
	noon  = Tariff{PerKWh: 0.3, Bands: []Band{{From: 11 * 60, To: 15 * 60, Last: 11, PerKWh: 0.2}}}
	// Peak hours of winter weekdays, and weekends at one price.
	winter = Tariff{PerKWh: 0.3, Bands: []Band{
		{From: 17 * 60, To: 20 * 60, Days: Weekdays, First: 10, Last: 1, PerKWh: 0.5},
		{Days: Weekends, Last: 11, PerKWh: 0.2}}}
)

func TestAt_Analytic(t *testing.T) {
	for _, c := range []struct {
		name    string
		t       *Tariff
		month   int
		weekend bool
		minute  int
		want    float64
	}{
		{"flat", &flat, 0, false, 0, 0.3}, {"flat", &flat, 11, true, 1439, 0.3},
		{"night, before", &night, 5, false, 1319, 0.3}, {"night, first minute", &night, 5, false, 1320, 0.12},
		{"night, midnight", &night, 5, true, 0, 0.12}, {"night, last minute", &night, 5, false, 359, 0.12}, {"night, after", &night, 5, false, 360, 0.3},
		{"noon, first minute", &noon, 0, false, 660, 0.2}, {"noon, after", &noon, 0, false, 900, 0.3},
		{"winter peak", &winter, 0, false, 17 * 60, 0.5}, {"winter peak, over", &winter, 0, false, 20 * 60, 0.3},
		{"November", &winter, 10, false, 18 * 60, 0.5}, {"October", &winter, 9, false, 18 * 60, 0.3}, {"March", &winter, 2, false, 18 * 60, 0.3},
		{"winter weekend", &winter, 0, true, 18 * 60, 0.2}, {"weekend's midnight", &winter, 6, true, 0, 0.2},
	} {
		if got, base := c.t.At(c.month, c.weekend, c.minute); got != c.want || base != (c.want == 0.3) {
			t.Errorf("%s at minute %d: %g (outside bands: %v), want %g", c.name, c.minute, got, base, c.want)
		}
	}
	if !flat.OnePrice() || night.OnePrice() || (&Tariff{Export: 0.1}).OnePrice() || (&Tariff{Blocks: []Block{{1, 2}}}).OnePrice() {
		t.Error("OnePrice is wrong")
	}
	same := Tariff{PerKWh: 0.3, Bands: []Band{{To: 60, Last: 11, PerKWh: 0.3}}}
	if !same.OnePrice() {
		t.Error("a band at the same price is no other price")
	}
	saturdays := 0
	for day := range 365 {
		if Weekend(day) {
			saturdays++
		}
	}
	if saturdays != 104 {
		t.Errorf("%d days of weekends, want 104", saturdays)
	}
}

// Bills computed by hand.
func TestBills_Computed(t *testing.T) {
	var cases []struct {
		Case           string
		Bill, Marginal float64
		Standing, KWh  float64
		PerKWh         float64
		Blocks         [][2]float64
		Bands          [][3]float64 // from, to (hours), price
		Kilowatts      float64
		From, To       float64 // hours
	}
	published.Block(t, "money.json", "bills", &cases)
	for _, c := range cases {
		tr := Tariff{PerKWh: c.PerKWh}
		for _, b := range c.Blocks {
			tr.Blocks = append(tr.Blocks, Block{b[0], b[1]})
		}
		for _, b := range c.Bands {
			tr.Bands = append(tr.Bands, Band{From: int(60 * b[0]), To: int(60 * b[1]), Last: 11, PerKWh: b[2]})
		}
		bill := c.Standing + tr.Month(c.KWh)
		for m := int(c.From * 60); m < int(c.To*60); m++ {
			price, _ := tr.At(0, false, m%1440)
			bill += price * c.Kilowatts / 60
		}
		if math.Abs(bill-c.Bill) > 0.005 {
			t.Errorf("%s: bill %.4f, want %.2f", c.Case, bill, c.Bill)
		}
		if c.Marginal > 0 && tr.Marginal(c.KWh) != c.Marginal {
			t.Errorf("%s: marginal price %g, want %g", c.Case, tr.Marginal(c.KWh), c.Marginal)
		}
	}
	if len(cases) != 3 {
		t.Errorf("%d cases, want 3", len(cases))
	}
}

// A month's cost is the integral of the marginal price.
func TestMonth_Property(t *testing.T) {
	tr := Tariff{PerKWh: 0.1, Blocks: []Block{{100, 0.15}, {300, 0.22}}}
	sum := 0.0
	for kWh := 0; kWh < 600; kWh++ {
		if got := tr.Month(float64(kWh)); math.Abs(got-sum) > 1e-9 {
			t.Fatalf("%d kWh cost %g, want %g", kWh, got, sum)
		}
		sum += tr.Marginal(float64(kWh))
	}
}

// Two prices a month for what is fed back, by hand on both sides of the edge.
func TestFed_HandComputed(t *testing.T) {
	two := Tariff{Export: 0.3, ExportKWh: 100, ExportRest: 0.05}
	for kWh, want := range map[float64]float64{0: 0, 99: 29.7, 100: 30, 101: 30.05, 300: 40} {
		if got := two.Fed(kWh); math.Abs(got-want) > 1e-12 {
			t.Errorf("%g kWh: %g, by hand %g", kWh, got, want)
		}
	}
	one := Tariff{Export: 0.3, ExportRest: 0.05}
	if got := one.Fed(300); math.Abs(got-90) > 1e-12 || !two.PaysExport() || (&Tariff{ExportRest: 0.05}).PaysExport() || (&Tariff{ExportKWh: 5}).PaysExport() {
		t.Errorf("one price pays %g", got)
	}
}
