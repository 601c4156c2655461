package climate

import (
	"math"
	"testing"

	"suncask/engine/published"
)

// realMonths are a place's months in testdata/clearness.json; nil where the sun hardly rises.
type realMonths struct {
	Place, Half         string
	Latitude, Longitude float64
	Elevation           float64 `json:"elevation_m"`
	Clearness, SD, Lag1 [12]*float64
	AirC                [12]float64 `json:"air_C"`
}

func (r *realMonths) place() *Place {
	p := &Place{Name: r.Place, LatDeg: r.Latitude, LonDeg: r.Longitude, ElevationM: r.Elevation, TempC: r.AirC}
	p.Clock.OffsetH = math.Round(r.Longitude / 15)
	sun := SunYearOf(p)
	for m, k := range r.Clearness {
		if k == nil {
			continue
		}
		for day := FirstDay(m); day < FirstDay(m)+DaysIn[m]; day++ {
			p.GHI[m] += *k * sun[day].ExtraJ / 3.6e6 / float64(DaysIn[m])
		}
	}
	return p
}

// spreads are the root mean squares of the months' standard deviations over a place's lit
// months, and the mean lag-1 correlation.
type spreads struct{ sd, lag float64 }

// drawnSpreads are those of some drawn years, month by month as in the real ones.
func drawnSpreads(t *testing.T, r *realMonths, how Generator) (s spreads) {
	t.Helper()
	p := r.place()
	n := 0.0
	for seed := range uint64(20) {
		y, err := Typical(p, how, seed)
		if err != nil {
			t.Fatal(err)
		}
		all := dailyK(y)
		for m := range 12 {
			if r.Clearness[m] == nil {
				continue
			}
			sd, lag := ofDays(all[FirstDay(m) : FirstDay(m)+DaysIn[m]])
			s.sd += sd * sd
			s.lag += lag
			n++
		}
	}
	return spreads{math.Sqrt(s.sd / n), s.lag / n}
}

// ofDays are the standard deviation of a month's days and their lag-1 correlation.
func ofDays(k []float64) (sd, lag float64) {
	mean, square, next := 0.0, 0.0, 0.0
	for _, v := range k {
		mean += v / float64(len(k))
	}
	for i, v := range k {
		square += (v - mean) * (v - mean)
		if i > 0 {
			next += (v - mean) * (k[i-1] - mean)
		}
	}
	return math.Sqrt(square / float64(len(k)-1)), next / square
}

func (r *realMonths) spreads() (s spreads) {
	n := 0.0
	for m := range 12 {
		if r.SD[m] != nil {
			s.sd += *r.SD[m] * *r.SD[m]
			s.lag += *r.Lag1[m]
			n++
		}
	}
	return spreads{math.Sqrt(s.sd / n), s.lag / n}
}

// Days drawn from the months of real years spread as those years' do. Over the places
// between the polar circles that were not used to choose the relation, what is missed is
// under 0.03 (root mean square) and under half of what Bendt's own distribution misses. At
// each of them it is within 25 %: a bar against regressions, the relation reaches 23 %, and
// one year's own figure is uncertain by some 5 %. North of the circle it is far off (Barrow
// has 0.105). Persistence is within 0.05 over all places, and at each where nine in ten of
// 1751 stations lie (computed 2026); that places differ, from 0.11 to 0.35, is not drawn.
func TestDailySpread_Source(t *testing.T) {
	var b struct{ Places []realMonths }
	published.Block(t, "clearness.json", "daily", &b)
	if len(b.Places) != 17 {
		t.Fatalf("%d places, want 17", len(b.Places))
	}
	count := map[string]int{}
	var n, off, offBendt, lag, lagReal float64
	for i := range b.Places {
		r := &b.Places[i]
		count[r.Half]++
		is, want, bendt := drawnSpreads(t, r, Autoregressive), r.spreads(), r.bendt()
		t.Logf("%-6s %-16s spread %.3f, drawn %.3f (Bendt %.3f); lag-1 %.2f, drawn %.2f", r.Half, r.Place, want.sd, is.sd, bendt, want.lag, is.lag)
		lag += is.lag / float64(len(b.Places))
		lagReal += want.lag / float64(len(b.Places))
		if is.lag < 0.12 || is.lag > 0.38 {
			t.Errorf("%s: lag-1 correlation %.3f outside the band of stations, 0.12 to 0.38", r.Place, is.lag)
		}
		if r.Half != "tested" || math.Abs(r.Latitude) > 66.5 {
			continue
		}
		n++
		off += (is.sd - want.sd) * (is.sd - want.sd)
		offBendt += (bendt - want.sd) * (bendt - want.sd)
		if math.Abs(is.sd/want.sd-1) > 0.25 {
			t.Errorf("%s: days spread by %.3f, real ones by %.3f", r.Place, is.sd, want.sd)
		}
	}
	if count["chosen"] != 9 || count["tested"] != 8 {
		t.Errorf("halves %v", count)
	}
	off, offBendt = math.Sqrt(off/n), math.Sqrt(offBendt/n)
	t.Logf("places not chosen on: off by %.3f, by Bendt's distribution %.3f; lag-1 %.3f, drawn %.3f", off, offBendt, lagReal, lag)
	if off > 0.03 || off > offBendt/2 {
		t.Errorf("spread off by %.3f, by Bendt's distribution %.3f", off, offBendt)
	}
	if math.Abs(lag-lagReal) > 0.05 {
		t.Errorf("lag-1 correlation of all places %.3f, real %.3f", lag, lagReal)
	}
}

// bendt is the root mean square of the months' standard deviations by Bendt's
// distribution.
func (r *realMonths) bendt() float64 {
	square, n := 0.0, 0.0
	for _, k := range r.Clearness {
		if k == nil {
			continue
		}
		c := ClearnessOf(*k)
		for i := range 400 {
			d := c.Quantile((float64(i)+0.5)/400) - *k
			square += d * d / 400
		}
		n++
	}
	return math.Sqrt(square / n)
}

// A spread keeps the mean, and below 1 is the distribution drawn together: F(K) is
// Bendt's at the mean + (K - mean)/spread, in closed form. Wider ones stay between the
// darkest and the brightest days.
func TestClearnessOfSpread_Analytic(t *testing.T) {
	for _, mean := range []float64{0.03, 0.2, 0.35, 0.5, 0.65, 0.75, 0.85} {
		whole := ClearnessOf(mean)
		for _, spread := range []float64{spreadLeast, 0.6, 0.8, 1, spreadMost} {
			c := ClearnessOfSpread(mean, spread)
			if math.Abs(c.mean()-mean) > 1e-9 {
				t.Errorf("mean %g, spread %g: mean %.12f", mean, spread, c.mean())
			}
			if c.Min < math.Min(darkest, mean/2) || c.Max > math.Max(brightest, whole.Max) || c.Min >= mean || c.Max <= mean {
				t.Errorf("mean %g, spread %g: from %.3f to %.3f", mean, spread, c.Min, c.Max)
			}
			if spread > 1 {
				continue
			}
			for q := 0.05; q < 1; q += 0.1 {
				want := mean + spread*(whole.Quantile(q)-mean)
				if got := c.Quantile(q); math.Abs(got-want) > 1e-6 {
					t.Errorf("mean %g, spread %g: quantile %.2f is %.8f, want %.8f", mean, spread, q, got, want)
				}
			}
		}
	}
}
