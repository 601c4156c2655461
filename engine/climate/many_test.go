package climate

import (
	"math"
	"sort"
	"testing"

	"suncask/engine/published"
)

// dailyK are a year's daily clearness indices, NaN in the dark.
func dailyK(y *Year) (k [Days]float64) {
	for d := range k {
		sum := 0.0
		for _, l := range y.Light[d] {
			sum += (l.Beam + l.Diffuse) * 3600
		}
		k[d] = sum / y.Sun[d].ExtraJ
	}
	return k
}

// even is a place whose months all have one mean clearness.
func even(k float64) *Place {
	p := &Place{Name: "even", LatDeg: 35, LonDeg: 0}
	for m, h0 := range outsideMeans(35) {
		p.GHI[m] = k * h0
		p.TempC[m] = 15
	}
	return p
}

// Over 40 years daily clearness is distributed as Bendt's, drawn together about its mean: the largest distance of
// the cumulative distributions is under 0.03 for three means; neighbouring days are
// correlated as in real files (0.12 to 0.38 at 90 % of 1751 stations, computed 2026).
func TestTypical_DistributionOfBendt(t *testing.T) {
	for _, mean := range []float64{0.35, 0.50, 0.65} {
		p := even(mean)
		var all []float64
		num, den := 0.0, 0.0
		for seed := range uint64(40) {
			y, err := Typical(p, Autoregressive, seed)
			if err != nil {
				t.Fatal(err)
			}
			k := dailyK(y)
			all = append(all, k[:]...)
			for d := 1; d < Days; d++ {
				num += (k[d] - mean) * (k[d-1] - mean)
				den += (k[d] - mean) * (k[d] - mean)
			}
		}
		sort.Float64s(all)
		c, spread := ClearnessOf(mean), p.dailySpread(0)
		worst := 0.0
		for i, k := range all {
			worst = math.Max(worst, math.Abs(c.CDF(mean+(k-mean)/spread)-(float64(i)+0.5)/float64(len(all))))
		}
		lag := num / den
		t.Logf("mean %.2f: distance %.4f, lag-1 correlation %.3f", mean, worst, lag)
		if worst > 0.03 {
			t.Errorf("mean %.2f: largest distance from Bendt %.4f, want under 0.03", mean, worst)
		}
		if lag < 0.12 || lag > 0.38 {
			t.Errorf("mean %.2f: lag-1 correlation %.3f outside 0.12 to 0.38", mean, lag)
		}
	}
}

// A chain of 20 000 days has the mean within 0.01, the lag-1 correlation within 0.03
// of what follows from its matrix.
func TestMarkov_Aguiar(t *testing.T) {
	var b struct {
		Stats []struct {
			Matrix int
			Mean   float64 `json:"mean_kt"`
			SD     float64 `json:"sd_kt"`
			Lag1   float64
		}
	}
	published.Block(t, "sun.json", "aguiar", &b)
	if len(b.Stats) != len(chains) {
		t.Fatalf("%d rows", len(b.Stats))
	}
	for i, s := range b.Stats {
		const days = 20000
		w := newWalk(Markov, uint64(7+i))
		k := make([]float64, days)
		mean := 0.0
		for d := range k {
			k[d] = w.step(0.28 + 0.05*float64(i))
			mean += k[d] / days
		}
		num, den := 0.0, 0.0
		for d := range k {
			den += (k[d] - mean) * (k[d] - mean)
			if d > 0 {
				num += (k[d] - mean) * (k[d-1] - mean)
			}
		}
		sd := math.Sqrt(den / days)
		if math.Abs(mean-s.Mean) > 0.01 || math.Abs(num/den-s.Lag1) > 0.03 || math.Abs(sd-s.SD) > 0.01 {
			t.Errorf("class %d: mean %.4f sd %.4f lag-1 %.4f, published %.4f %.4f %.4f", i+1, mean, sd, num/den, s.Mean, s.SD, s.Lag1)
		}
	}
}

// The second generator keeps the months' means as the first does.
func TestMarkov_KeepsMeans(t *testing.T) {
	for _, slug := range []string{"lisbon", "cape-town", "singapore", "reykjavik", "mcmurdo"} {
		p, ok := PlaceBySlug(slug)
		if !ok {
			continue
		}
		y, err := Typical(p, Markov, 3)
		if err != nil {
			t.Fatal(err)
		}
		for m := range 12 {
			sum := 0.0
			for d := FirstDay(m); d < FirstDay(m)+DaysIn[m]; d++ {
				for _, l := range y.Light[d] {
					sum += (l.Beam + l.Diffuse) / 1000 / float64(DaysIn[m])
				}
			}
			if p.GHI[m] >= dark && math.Abs(sum-p.GHI[m]) > 1e-9*p.GHI[m] {
				t.Errorf("%s month %d: %.12f, table %.12f", slug, m+1, sum, p.GHI[m])
			}
		}
	}
}

// Many years: each calendar month's mean over all of them is the place's; months
// differ from year to year by what was set, or by what chance makes where that is
// more.
func TestMany_SpreadAsSet(t *testing.T) {
	for _, c := range []struct{ mean, set float64 }{{0.65, 8}, {0.65, 12}, {0.55, 12}, {0.5, 15}, {0.35, 8}} {
		p := even(c.mean)
		const years = 120
		m, err := NewMany(p, Autoregressive, 5, years, c.set)
		if err != nil {
			t.Fatal(err)
		}
		own := 100 * m.base.Clear[0].monthSpread(30) / m.base.MonthKt[0]
		pooled := 0.0
		for month := range 12 {
			s := m.span[month]
			mean, square := 0.0, 0.0
			for _, days := range m.days {
				sum := 0.0
				for _, j := range days[s.first : s.first+s.n] {
					sum += j
				}
				mean += sum / years
				square += sum * sum / years
			}
			if math.Abs(mean/s.target-1) > 1e-9 {
				t.Errorf("mean %.2f, month %d: grand mean off by %.1e", c.mean, month+1, mean/s.target-1)
			}
			pooled += (square - mean*mean) / (mean * mean) / 12
		}
		got, want := 100*math.Sqrt(pooled), math.Max(c.set, own)
		t.Logf("mean %.2f: months spread by %.1f %%, set %.0f, by chance alone %.1f", c.mean, got, c.set, own)
		if math.Abs(got-want) > 0.1*want {
			t.Errorf("mean %.2f: months spread by %.2f %%, want %.2f", c.mean, got, want)
		}
	}
}

// The first draws of a seed, native and WebAssembly alike: PCG of math/rand/v2 gives
// the integers, and a year follows from them. Computed here once, natively: a bar against regressions.
func TestWalk_SameDrawsEverywhere(t *testing.T) {
	w := newWalk(Autoregressive, 1)
	var bits uint64
	for range 1000 {
		bits = bits*31 + w.draws.Uint64()
	}
	if bits != wantBits {
		t.Errorf("draws hash to %d, want %d", bits, uint64(wantBits))
	}
	p, _ := PlaceBySlug("lisbon")
	y, err := Typical(p, Autoregressive, 1)
	if err != nil {
		t.Fatal(err)
	}
	sum := 0.0
	for d := range y.Light {
		for h, l := range y.Light[d] {
			sum += (l.Beam + 2*l.Diffuse) * float64(d*24+h)
		}
	}
	if math.Abs(sum/wantYear-1) > 1e-9 {
		t.Errorf("the year sums to %.17g, want %.17g", sum, wantYear)
	}
}

const (
	wantBits = 8437175648381836416
	wantYear = 9968041786.1595612
)
