package pv

import (
	"encoding/json"
	"math"
	"os"
	"strconv"
	"testing"
)

func read(t *testing.T, file, name string, into any) {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]json.RawMessage{}
	if err := json.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(all[name], into); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
}

type cellRow struct{ G, Ta, V, U0, U1, NOCT, Tc float64 }

func TestCellTemperature_Pvlib(t *testing.T) {
	var faiman, noct struct{ Rows []cellRow }
	read(t, "sun.json", "faiman", &faiman)
	read(t, "sun.json", "noct", &noct)
	if len(faiman.Rows) != 3 || len(noct.Rows) != 4 {
		t.Fatalf("%d and %d rows", len(faiman.Rows), len(noct.Rows))
	}
	for _, r := range faiman.Rows {
		if got := CellFaimanWith(r.G, r.Ta, r.V, r.U0, r.U1); math.Abs(got-r.Tc) > 0.001 {
			t.Errorf("Faiman %+v: %.4f", r, got)
		}
	}
	if got, want := CellFaiman(900, 20, 5), faiman.Rows[0].Tc; math.Abs(got-want) > 0.001 {
		t.Errorf("Faiman with its own coefficients: %.4f, want %.4f", got, want)
	}
	for _, r := range noct.Rows {
		if got := CellNOCT(r.G, r.Ta, r.NOCT); math.Abs(got-r.Tc) > 0.001 {
			t.Errorf("NOCT %+v: %.4f", r, got)
		}
	}
}

func TestOhms_Plate(t *testing.T) {
	var b struct {
		Rows map[string]map[string]struct{ R float64 }
	}
	read(t, "water.json", "element_ohm", &b)
	if len(b.Rows) != 3 {
		t.Fatalf("%d voltages", len(b.Rows))
	}
	for volts, row := range b.Rows {
		v, _ := strconv.ParseFloat(volts, 64)
		for watts, want := range row {
			w, _ := strconv.ParseFloat(watts, 64)
			if got := Ohms(w, v); math.Abs(got-want.R) > 1e-3 {
				t.Errorf("%g W at %g V: %.4f ohm, want %.4f", w, v, got, want.R)
			}
		}
	}
}

func TestIntoElement_Analytic(t *testing.T) {
	c := Converter{Efficiency: 0.96, StartW: 20, MaxOutV: 230}
	r := Ohms(2000, 230)
	for _, row := range []struct{ array, want float64 }{
		{0, 0}, {19.9, 0}, {20, 19.2}, {1000, 960}, {2500, 2000},
	} {
		if got := c.IntoElement(row.array, r); math.Abs(got-row.want) > 1e-9 {
			t.Errorf("%g W: %g into the element, want %g", row.array, got, row.want)
		}
	}
	a := Array{RatedW: 1000, PerK: -0.004, Losses: Losses{1, 1, 1, 1}}
	if got := a.MaximumPowerW(500, 50); math.Abs(got-450) > 1e-9 {
		t.Errorf("half sun, 25 K over standard: %g W, want 450", got)
	}
}
