package pv

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"suncask/engine/published"
)

type cellRow struct{ G, Ta, V, U0, U1, NOCT, Tc float64 }

func TestCellTemperature_Pvlib(t *testing.T) {
	var faiman, noct struct{ Rows []cellRow }
	published.Block(t, "sun.json", "faiman", &faiman)
	published.Block(t, "sun.json", "noct", &noct)
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

// Mountings by published laws: Ross's k of the two closer ones to 1 %; and King's other law in
// a wind of 1 m/s, measured elsewhere at another height, has the same order and, with less air,
// at least as much heat.
func TestMounting_NordmannKing(t *testing.T) {
	var b struct {
		Ross map[string]float64
		King map[string]struct{ A, B, DT float64 }
	}
	published.Block(t, "pv.json", "mounting", &b)
	if len(b.Ross) != 2 || len(b.King) != 3 {
		t.Fatalf("%d and %d rows", len(b.Ross), len(b.King))
	}
	last, lastKing := 0.0, 0.0
	for m, name := range map[Mounting]string{Close: "close", InRoof: "in"} {
		if k := (m.CellC(900, 15) - 15) / 900; math.Abs(k/b.Ross[name]-1) > 0.01 {
			t.Errorf("%s: %.4f K m2/W, published %.4f", name, k, b.Ross[name])
		}
	}
	for m := Rack; m <= InRoof; m++ {
		king := b.King[[]string{"rack", "close", "in"}[m]]
		k, other := m.CellC(1000, 0)/1000, math.Exp(king.A+king.B)+king.DT/1000
		if k <= last || other <= lastKing || k/other < 0.65 || k/other > 1.1 {
			t.Errorf("mounting %d: %.4f K m2/W, King %.4f", m, k, other)
		}
		last, lastKing = k, other
	}
	if got, want := Rack.CellC(800, 20), 20+800/31.84; math.Abs(got-want) > 1e-9 {
		t.Errorf("rack at %g degC, Faiman 2008 at 1 m/s %g", got, want)
	}
}

func TestOhms_Plate(t *testing.T) {
	var b struct {
		Rows map[string]map[string]struct {
			R     float64
			Least float64 `json:"R_lo(+5%)"`
			Most  float64 `json:"R_hi(-10%)"`
		}
	}
	published.Block(t, "water.json", "element_ohm", &b)
	if len(b.Rows) != 3 {
		t.Fatalf("%d voltages", len(b.Rows))
	}
	for volts, row := range b.Rows {
		v, _ := strconv.ParseFloat(volts, 64)
		for watts, want := range row {
			w, _ := strconv.ParseFloat(watts, 64)
			if least, most := OhmsRange(w, v); math.Abs(least-want.Least) > 1e-3 || math.Abs(most-want.Most) > 1e-3 {
				t.Errorf("%g W at %g V: %.4f to %.4f ohm, want %.4f to %.4f", w, v, least, most, want.Least, want.Most)
			}
			if got := Ohms(w, v); math.Abs(got-want.R) > 1e-3 {
				t.Errorf("%g W at %g V: %.4f ohm, want %.4f", w, v, got, want.R)
			}
		}
	}
}

// A converter takes the strings' maximum inside its window and stays within what it and
// the element bear; the parts add up.
func TestConverter_Split_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	m := module60(t)
	for range 300 {
		one := m.At(1100*r.Float64(), -10+80*r.Float64())
		s := Strings{one.Series(1 + r.IntN(12))}
		if r.IntN(2) == 0 {
			two := m.At(1100*r.Float64(), -10+80*r.Float64())
			s = append(s, two.Series(1+r.IntN(12)))
		}
		c := Converter{LeastV: 60, MostV: 250, StartW: 20, Losses: CurveOf(0.96), OnlyDown: r.IntN(2) == 0, MostW: 1500, MaxOutV: 230, MaxOutA: 8, ElementOhms: 26.45, CableOhms: 0.2}
		for name, p := range map[string]Split{
			"converter": c.Into(s), "direct": Direct{26.45, 0.2}.Into(s), "staged": Staged{[]float64{10, 26.45, 60}, 0.2}.Into(s),
		} {
			sum := p.CouplingW + p.CableW + p.ConverterW + p.OverW + p.ElementW
			if math.Abs(sum-p.MaximumW) > 1e-9*(1+p.MaximumW) {
				t.Errorf("%s: parts are %g W of %g", name, sum, p.MaximumW)
			}
			for _, part := range []float64{p.CouplingW, p.CableW, p.ConverterW, p.OverW, p.ElementW} {
				if part < 0 {
					t.Errorf("%s: %+v", name, p)
				}
			}
		}
		if p := c.Into(s); p.ElementW > 1500 || p.ElementW > 64*26.45 {
			t.Errorf("%g W into the element", p.ElementW)
		}
		if a, b := (Staged{[]float64{10, 26.45, 60}, 0.2}).Into(s), (Direct{26.45, 0.2}).Into(s); a.ElementW < b.ElementW {
			t.Errorf("stages give %g W, one of them %g", a.ElementW, b.ElementW)
		}
	}
	full := m.At(1000, 25)
	c := Converter{LeastV: 60, MostV: 250, StartW: 20, Losses: CurveOf(0.96), MostW: 5000, MaxOutV: 230, MaxOutA: 50, ElementOhms: 26.45}
	if p := c.Into(Strings{full.Series(4)}); math.Abs(p.ElementW-CurveOf(0.96).OutW(4*270.01, 5000)) > 0.1 {
		t.Errorf("four modules of 270 W give %g W", p.ElementW)
	}
	if p := c.Into(Strings{full.Series(1)}); p.ElementW != 0 {
		t.Errorf("a string below the window gives %g W", p.ElementW)
	}
}

// Days of light from one minute to the next, of our own making, on a fixed resistance
// that fits full sun: beam light through cloud whose thickness wanders, over a sky that
// keeps its light. Power from the hours' means is within 4 % of the day's energy on
// average and 10 % on the worst day; from the means alone it is low. Cloud that is
// either there or not (sharp) is off by more, and is printed, not asserted.
func TestTwoState_Minutes(t *testing.T) {
	m := module60(t)
	againstMinutes(t, func(g float64) float64 {
		if g <= 0 {
			return 0
		}
		one := m.At(g, 20+g/31.84)
		d := one.Series(7)
		v, i := d.IntoOhms(26.45)
		return v * i
	}, true)
}

// The same for a converter that only lowers the voltage, with four in series: the means err
// to the high side there, as more light no longer brings its share.
func TestTwoState_OnlyDownMinutes(t *testing.T) {
	m := module60(t)
	c := Converter{LeastV: 30, MostV: 450, StartW: 20, Losses: CurveOf(0.96), MostW: 3000, MaxOutV: 230, MaxOutA: 100, ElementOhms: 26.45, OnlyDown: true}
	againstMinutes(t, func(g float64) float64 {
		if g <= 0 {
			return 0
		}
		one := m.At(g, 20+g/31.84)
		return c.Into(Strings{one.Series(4)}).ElementW
	}, false)
}

// againstMinutes compares hours' power with that of their minutes.
func againstMinutes(t *testing.T, power func(g float64) float64, meansLow bool) {
	r := rand.New(rand.NewPCG(11, 12))
	for _, sharp := range []float64{1.5, 2.5, 20} {
		worst, mean, least, most := 0.0, 0.0, 0.0, 0.0
		for range 60 {
			around := 0.12 + 0.35*r.Float64() // of clear light comes from the sky
			thick := 3 * (r.Float64() - 0.5)
			keep := 0.8 + 0.15*r.Float64() // of the cloud from one minute to the next
			minutes, hours, means, z := 0.0, 0.0, 0.0, 0.0
			for h := 6; h < 18; h++ {
				sum, clear, diffuse := 0.0, 0.0, 0.0
				for minute := range 60 {
					top := 1000 * math.Sin((float64(h-6)+float64(minute)/60)*math.Pi/12)
					z = keep*z + math.Sqrt(1-keep*keep)*r.NormFloat64()
					through := 1 / (1 + math.Exp(-sharp*(z-thick)))
					g := top * (around + (1-around)*through)
					minutes += power(g) / 60
					sum += g / 60
					clear += top / 60
					diffuse += around * top / 60
				}
				high := math.Min(clear, 1.6*sum)
				hours += TwoState(power(sum), power(high), power(diffuse), HighShare(sum, high, diffuse))
				means += power(sum)
			}
			worst = math.Max(worst, math.Abs(hours/minutes-1))
			mean += math.Abs(hours/minutes-1) / 60
			least, most = math.Min(least, means/minutes-1), math.Max(most, means/minutes-1)
		}
		t.Logf("sharpness %g: mean %.1f %%, worst day %.1f %%; from the means alone %.1f to %.1f %%", sharp, 100*mean, 100*worst, 100*least, 100*most)
		if meansLow != (-least > most) {
			t.Errorf("sharpness %g: the means alone are off by %.1f to %.1f %%", sharp, 100*least, 100*most)
		}
		if sharp < 10 && (mean > 0.04 || worst > 0.10) {
			t.Errorf("sharpness %g: a day's energy is off by %.1f %% on average, %.1f %% at worst", sharp, 100*mean, 100*worst)
		}
	}
}
