package climate

import (
	"math"
	"math/rand/v2"
	"testing"
)

// record of random days at a place.
func someRecord(seed uint64) *Record {
	p, _ := PlaceBySlug("seville")
	y, err := Typical(p, Autoregressive, seed)
	if err != nil {
		panic(err)
	}
	r := &Record{LatDeg: p.LatDeg, LonDeg: p.LonDeg, ElevationM: p.ElevationM, OffsetH: 0}
	for h := range Hours {
		l := y.Light[h/24][h%24]
		r.Global[h] = uint16((l.Beam + l.Diffuse) / LightStep)
		r.Diffuse[h] = uint16(l.Diffuse / LightStep)
		r.Air[h] = int16(y.AirC[h/24][h%24] / AirStep)
	}
	return r
}

func TestRecord_KeptAndReadBack(t *testing.T) {
	r := someRecord(1)
	raw := r.Encode()
	back, err := DecodeRecord(raw)
	if err != nil || *back != *r || back.Key() != r.Key() {
		t.Fatalf("another record: %v", err)
	}
	if someRecord(2).Key() == r.Key() || len(r.Key()) != 8 {
		t.Errorf("key %q", r.Key())
	}
	for _, bad := range [][]byte{nil, raw[:len(raw)-1], append([]byte("x"), raw[1:]...), append(append([]byte{}, raw[:16]...), make([]byte, len(raw)-16+1)...)} {
		if _, err := DecodeRecord(bad); err == nil {
			t.Errorf("%d bytes were read", len(bad))
		}
	}
	wrong := *r
	wrong.LatDeg = math.NaN()
	if _, err := DecodeRecord(wrong.Encode()); err == nil {
		t.Error("a record at no latitude was read")
	}
}

// Whatever the clock and the shift, no light is lost or made, and it lies later by
// what was asked.
func TestFromRecord_KeepsEnergyProperty(t *testing.T) {
	r := someRecord(1)
	want := 0.0
	for _, g := range r.Global {
		want += float64(g) * LightStep
	}
	draws := rand.New(rand.NewPCG(3, 4))
	p, _ := PlaceBySlug("seville")
	base := math.NaN()
	for n := range 40 {
		place := *p
		shift := float64(draws.IntN(241) - 120)
		place.Clock = Clock{OffsetH: float64(draws.IntN(9)-4) / 4}
		if n == 0 {
			shift, place.Clock = 0, Clock{}
		}
		y := FromRecord(&place, r, shift)
		sum, moment := 0.0, 0.0
		for d := range y.Light {
			for h, l := range y.Light[d] {
				if l.Beam < -1e-9 || l.Diffuse < 0 {
					t.Fatalf("day %d hour %d: %+v", d, h, l)
				}
				sum += l.Beam + l.Diffuse
				moment += (l.Beam + l.Diffuse) * (float64(h) + 0.5)
			}
		}
		if math.Abs(sum/want-1) > 1e-12 {
			t.Errorf("shift %g, offset %g: %.6f of the light", shift, place.Clock.OffsetH, sum/want)
		}
		if n == 0 {
			base = moment / sum
			continue
		}
		// Moved into the dusk, an hour keeps its light in the part before sunset.
		if late := (moment/sum - base) * 60; math.Abs(late-shift-60*place.Clock.OffsetH) > 7 {
			t.Errorf("asked for %g min, its light lies %.1f min later", shift+60*place.Clock.OffsetH, late)
		}
	}
}

// On its own clock a record's hours are kept as they are, and so are its months.
func TestFromRecord_SameClock(t *testing.T) {
	r := someRecord(1)
	p, _ := PlaceBySlug("seville")
	place := *p
	place.Clock = Clock{}
	y := FromRecord(&place, r, 0)
	for h := range Hours {
		l := y.Light[h/24][h%24]
		if math.Abs(l.Beam+l.Diffuse-float64(r.Global[h])*LightStep) > 1e-9 {
			t.Fatalf("hour %d: %g", h, l.Beam+l.Diffuse)
		}
		if math.Abs(y.AirC[h/24][h%24]-float64(r.Air[h])*AirStep) > 1e-9 {
			t.Fatalf("hour %d: %g degC", h, y.AirC[h/24][h%24])
		}
	}
	for m := range 12 {
		if math.Abs(y.Place.GHI[m]-p.GHI[m]) > 0.01 || math.Abs(y.Place.TempC[m]-p.TempC[m]) > 0.02 {
			t.Errorf("month %d: %.3f %.2f, the place has %.3f %.2f", m+1, y.Place.GHI[m], y.Place.TempC[m], p.GHI[m], p.TempC[m])
		}
	}
}

// Known months of cold water are kept, the others follow the formula.
func TestColdWater_OvertypedMonths(t *testing.T) {
	p, _ := PlaceBySlug("lisbon")
	place := *p
	plain := place.coldYear()
	place.Cold.Known[6], place.Cold.Value[6] = true, 25
	year := place.coldYear()
	mean, before := MonthMeans(&year), MonthMeans(&plain)
	for m := range 12 {
		want := before[m]
		if m == 6 {
			want = 25
		}
		if math.Abs(mean[m]-want) > 1e-6 {
			t.Errorf("month %d: %.3f degC, want %.3f", m+1, mean[m], want)
		}
	}
}

// The day view takes the same distribution of daily clearness in a measured year as in one
// drawn from its months.
func TestFromRecord_ClearnessOfDrawnYears(t *testing.T) {
	place, _ := PlaceBySlug("seville")
	measured := FromRecord(place, someRecord(3), 0)
	drawn, err := Typical(&measured.Place, Autoregressive, 1)
	if err != nil {
		t.Fatal(err)
	}
	for m := range 12 {
		for _, q := range []float64{0.1, 0.5, 0.9} {
			if got, want := measured.Clear[m].Quantile(q), drawn.Clear[m].Quantile(q); math.Abs(got-want) > 1e-9 {
				t.Errorf("month %d: quantile %g is %.9f, drawn %.9f", m+1, q, got, want)
			}
		}
	}
}
