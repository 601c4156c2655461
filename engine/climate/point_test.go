package climate

import (
	"math"
	"sort"
	"testing"
)

// Great-circle distances: a quarter of the meridian is 10 007.5 km on a sphere of 6371
// km (closed form); Lisbon to Cape Town about 8 570 km (computed with the spherical
// law of cosines).
func TestDistance_Analytic(t *testing.T) {
	for _, c := range []struct{ a, b, x, y, want, tol float64 }{
		{0, 0, 90, 0, 6371 * math.Pi / 2, 1e-6}, {0, 179, 0, -179, 6371 * math.Pi / 90, 1e-6}, {10, 20, 10, 20, 0, 1e-9},
		{38.72, -9.14, -33.92, 18.42, 6371 * math.Acos(math.Sin(38.72*math.Pi/180)*math.Sin(-33.92*math.Pi/180)+
			math.Cos(38.72*math.Pi/180)*math.Cos(-33.92*math.Pi/180)*math.Cos(27.56*math.Pi/180)), 1e-6},
	} {
		if got := DistanceKm(c.a, c.b, c.x, c.y); math.Abs(got-c.want) > c.tol {
			t.Errorf("%v: %.6f km", c, got)
		}
	}
}

func TestLocate(t *testing.T) {
	for _, name := range []string{"", "atlantis", "91,0", "0,181", "1,2,3,4", "38.700,-9.1", "+1,2", "1,2,7000", "NaN,0", "1e1,0", "1, 2", "-0,0"} {
		if f, ok := Locate(name); ok {
			t.Errorf("%q is %+v", name, f.Place.Name)
		}
	}
	for _, name := range []string{"lisbon", "38.7,-9.14", "-90,0", "0,0,-430", "78.22,15.65,12"} {
		f, ok := Locate(name)
		if !ok || f.Slug != name {
			t.Errorf("%q: %v %q", name, ok, f.Slug)
		}
	}
	// At a place of the table a point has nearly its climate.
	at, _ := Locate("lisbon")
	p := Point(at.LatDeg, at.LonDeg, at.ElevationM)
	for m := range 12 {
		if math.Abs(p.GHI[m]/at.GHI[m]-1) > 0.01 || math.Abs(p.TempC[m]-at.TempC[m]) > 0.1 {
			t.Errorf("month %d: %.3f %.2f, Lisbon has %.3f %.2f", m+1, p.GHI[m], p.TempC[m], at.GHI[m], at.TempC[m])
		}
	}
	if p.Clock != at.Clock || p.NearestKm > 1 || p.Nearest != at.Name {
		t.Errorf("%+v, nearest %s at %.1f km", p.Clock, p.Nearest, p.NearestKm)
	}
	// A thousand metres higher it is 6 K colder.
	high := Point(at.LatDeg, at.LonDeg, at.ElevationM+1000)
	if d := p.TempC[0] - high.TempC[0]; math.Abs(d-6) > 1e-9 {
		t.Errorf("%.3f K colder", d)
	}
	// In the middle of an ocean the clock is that of the longitude.
	if far := Point(-40, -120, 0); far.Clock.OffsetH != -8 || far.NearestKm < ReachKm {
		t.Errorf("%+v, nearest %.0f km", far.Clock, far.NearestKm)
	}
}

// Each place left out in turn and interpolated from the others: what Point says about
// its accuracy. Every point on earth gives a year.
func TestPoint_LeaveOneOut(t *testing.T) {
	all := Places()
	var off [3][]float64
	for i := range all {
		p := all[i]
		// As if it lay elsewhere: far from itself.
		rest := append(append([]Place{}, all[:i]...), all[i+1:]...)
		f := pointAmong(rest, p.LatDeg, p.LonDeg, p.ElevationM)
		have, want := 0.0, 0.0
		for m := range 12 {
			have += f.GHI[m] * float64(DaysIn[m])
			want += p.GHI[m] * float64(DaysIn[m])
		}
		class := 0
		if f.NearestKm > 200 {
			class = 1
		}
		if f.NearestKm > 300 {
			class = 2
		}
		off[class] = append(off[class], 100*math.Abs(have/want-1))
	}
	for i, name := range []string{"up to 200 km", "200 to 300 km", "beyond 300 km"} {
		sort.Float64s(off[i])
		n := len(off[i])
		t.Logf("nearest place %s: %d places, yearly irradiation off by %.1f %% (median), %.1f %% (9 in 10)", name, n, off[i][n/2], off[i][n*9/10])
	}
	if n := len(off[0]); off[0][n/2] > 3 || off[0][n*9/10] > 6 {
		t.Errorf("near places are off by %.1f %% (median), %.1f %% (9 in 10): FarKm's comment says otherwise", off[0][n/2], off[0][n*9/10])
	}
	for lat := -90.0; lat <= 90; lat += 15 {
		for lon := -180.0; lon < 180; lon += 45 {
			p := Point(lat, lon, math.NaN())
			if _, err := Typical(&p.Place, Autoregressive, 1); err != nil {
				t.Errorf("%g, %g: %v", lat, lon, err)
			}
		}
	}
}
