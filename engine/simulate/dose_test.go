package simulate

import (
	"math"
	"strconv"
	"testing"

	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

func TestDecimalMinutes_Published(t *testing.T) {
	var b struct{ D map[string]float64 }
	published.Block(t, "water.json", "legionella", &b)
	n := 0
	for at, want := range b.D {
		c, _ := strconv.ParseFloat(at, 64)
		if c < 50 || want < 0.5 { // not counted below, half a minute at least
			continue
		}
		n++
		if got := DecimalMinutes(c); math.Abs(got/want-1) > 1e-5 {
			t.Errorf("%s degC: %.5f min, want %g", at, got, want)
		}
	}
	if n != 14 {
		t.Errorf("%d rows", n)
	}
	if !math.IsInf(DecimalMinutes(49), 1) || DecimalMinutes(80) != 0.5 {
		t.Error("outside its range")
	}
}

// Doses of three courses of temperature, integrated here in seconds.
func TestLethality_Published(t *testing.T) {
	var b struct {
		Lethality []struct {
			Case  string
			Log10 float64
		}
	}
	published.Block(t, "water.json", "legionella", &b)
	courses := map[string]struct {
		minutes float64
		at      func(minute float64) float64
	}{
		"60 degC for 30 min":         {30, func(float64) float64 { return 60 }},
		"50 to 60 degC at 0.3 K/min": {10 / 0.3, func(m float64) float64 { return 50 + 0.3*m }},
		"cooling from 60 degC towards 20, tau 134.641 h, first 60 min": {60, func(m float64) float64 { return 20 + 40*math.Exp(-m/60/134.641) }},
	}
	if len(b.Lethality) != len(courses) {
		t.Fatalf("%d rows", len(b.Lethality))
	}
	for _, row := range b.Lethality {
		c, ok := courses[row.Case]
		if !ok {
			t.Fatal(row.Case)
		}
		got := 0.0
		const step = 1.0 / 60
		for m := step / 2; m < c.minutes; m += step {
			got -= math.Log10(Lethality(c.at(m), step))
		}
		if math.Abs(got/row.Log10-1) > 1e-3 {
			t.Errorf("%s: %.5f powers of ten, published %.5f", row.Case, got, row.Log10)
		}
	}
}

// Bacteria from the inlet meet a tank held at 62 degC and are gone; held at 49 degC none
// dies. Heated to 52 degC and drawn as soon as it is cold water again, they come through.
func TestDose_ByHand(t *testing.T) {
	for _, c := range []struct {
		setC        float64
		least, most float64
	}{{62, mostDose, mostDose}, {49, 0, 0}} {
		p := prepared(t, func(s *scenario.Scenario) { s.SetC, s.SunLimitC, s.TankLitres, s.Modules = c.setC, c.setC, 300, 0 })
		if got := p.RunHygiene(allDay, new(Workspace)).LeastDose; got < c.least || got > c.most {
			t.Errorf("held at %g degC: %g powers of ten", c.setC, got)
		}
	}
	// One layer of 55 degC standing a quarter of an hour, by the published D of 17.63 min.
	cells := []float64{1, 1, 1, 1}
	kill(cells, []tank.Layer{{Litres: 50, TempC: 20}, {Litres: 150, TempC: 55}}, 15)
	if want := math.Pow(10, -15/17.62827); cells[0] != 1 || math.Abs(cells[1]/want-1) > 1e-5 || cells[3] != cells[1] {
		t.Errorf("%v, by hand 1 and %g", cells, want)
	}
	// Two cells move up by what is drawn.
	d := &dose{cellL: 50, alive: [][]float64{{0.5, 0.25}}}
	if first, second, third := d.push(), d.push(), d.push(); first != 0.25 || second != 0.5 || third != 1 {
		t.Errorf("%g, %g, %g left", first, second, third)
	}
}
