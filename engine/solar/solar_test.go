package solar

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"
	"time"
)

const rad = math.Pi / 180

// block reads one block of testdata/sun.json, which names the sources.
func block(t *testing.T, name string, into any) {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/sun.json")
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

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > tol {
		t.Errorf("%s = %.8g, want %.8g within %g", what, got, want, tol)
	}
}

func julian(t *testing.T, utc string) float64 {
	t.Helper()
	at, err := time.Parse(time.RFC3339, utc)
	if err != nil {
		t.Fatal(err)
	}
	return JulianDay(at.Year(), int(at.Month()), at.Day(), float64(at.Hour())+float64(at.Minute())/60+float64(at.Second())/3600)
}

func TestDirection_SPAPositions(t *testing.T) {
	var b struct {
		Rows []struct {
			Place, UTC         string
			Lat, Lon, Azimuth  float64
			Elev               float64 `json:"true_elev"`
			EquationOfTimeMins float64 `json:"eot_min"`
		}
	}
	block(t, "sun_positions", &b)
	if len(b.Rows) != 50 {
		t.Fatalf("%d rows, want 50", len(b.Rows))
	}
	worstE, worstA := 0.0, 0.0
	for _, r := range b.Rows {
		name := r.Place + " " + r.UTC
		d := DirectionFrom(r.Lat*rad, r.Lon*rad, julian(t, r.UTC))
		de := math.Abs(d.Elevation/rad - r.Elev)
		da := math.Abs(math.Remainder(d.Azimuth/rad-r.Azimuth, 360)) * math.Cos(d.Elevation)
		worstE, worstA = math.Max(worstE, de), math.Max(worstA, da)
		if de > 0.01 || da > 0.01 {
			t.Errorf("%s: elevation off %.4f, azimuth off %.4f deg", name, de, da)
		}
		near(t, name+" equation of time", At(julian(t, r.UTC)).EquationOfTime, r.EquationOfTimeMins, 0.03)
	}
	t.Logf("worst elevation %.4f deg, worst azimuth x cos elevation %.4f deg", worstE, worstA)
}

func TestEphemeris_SPAReport(t *testing.T) {
	var b struct {
		Expected struct {
			Delta   float64
			R       float64 `json:"R_au"`
			E0      float64
			Azimuth float64 `json:"azimuth_north_east"`
			Eot     float64 `json:"eot_min"`
			JD      float64
			Inc     float64 `json:"incidence"`
		}
	}
	block(t, "spa_report", &b)
	jd := JulianDay(2003, 10, 17, 19.5+30.0/3600)
	near(t, "Julian day", jd, b.Expected.JD, 1e-6)
	sun := At(jd)
	near(t, "declination", sun.Declination/rad, b.Expected.Delta, 0.002)
	near(t, "distance", sun.DistanceAU, b.Expected.R, 5e-5)
	// 0.04 min is 0.01 deg of hour angle, the bar of the short series.
	near(t, "equation of time", sun.EquationOfTime, b.Expected.Eot, 0.04)
	d := DirectionFrom(39.742476*rad, -105.1786*rad, jd)
	near(t, "elevation", d.Elevation/rad, b.Expected.E0, 0.01)
	near(t, "azimuth", d.Azimuth/rad, b.Expected.Azimuth, 0.01)
	// Slope 30, azimuth rotation -10 from south to the west: 170 from north.
	d.Elevation += Refraction(d.Elevation) * 820 / 1010 * 283 / 284
	near(t, "incidence", math.Acos(Plane{30 * rad, 170 * rad}.CosIncidence(d))/rad, b.Expected.Inc, 0.01)
}

// Meeus (2nd ed.) examples 25.a and 28.a, 1992 October 13, 0 h TD (read in a
// public copy).
func TestEphemeris_Meeus(t *testing.T) {
	sun := At(2448908.5)
	near(t, "25.a declination", sun.Declination/rad, -7.78507, 2e-4)
	near(t, "25.a distance", sun.DistanceAU, 0.99766, 1e-5)
	near(t, "28.a equation of time", sun.EquationOfTime, 13+42.6/60, 0.01)
}

func TestDay_RiseSet(t *testing.T) {
	var b struct {
		Rows []struct {
			Place, Day         string
			Lat, Lon           float64
			Rise, Transit, Set *string
		}
	}
	block(t, "rise_set", &b)
	if len(b.Rows) != 18 {
		t.Fatalf("%d rows, want 18", len(b.Rows))
	}
	for _, r := range b.Rows {
		day, err := time.Parse("2006-01-02", r.Day)
		if err != nil {
			t.Fatal(err)
		}
		offset := math.Round(r.Lon / 15)
		jd0 := JulianDay(day.Year(), int(day.Month()), day.Day(), 0)
		d := DayAt(r.Lat*rad, r.Lon*rad, jd0, offset)
		name := r.Place + " " + r.Day
		clock := func(at string) float64 { return (julian(t, at)-jd0)*24 + offset }
		near(t, name+" transit", math.Remainder(d.Noon-clock(*r.Transit), 24), 0, 1.0/60)
		if (r.Rise == nil) != (d.Polar != 0) {
			t.Errorf("%s: polar %d, published rise %v", name, d.Polar, r.Rise)
			continue
		}
		if r.Rise == nil {
			near(t, name+" stand-in for rise", d.Rise, d.Noon-6, 1e-9)
			continue
		}
		near(t, name+" rise", math.Remainder(d.Rise-clock(*r.Rise), 24), 0, 1.0/60)
		near(t, name+" set", math.Remainder(d.Set-clock(*r.Set), 24), 0, 1.0/60)
	}
}

func TestExtraterrestrialDay_DuffieBeckman(t *testing.T) {
	var b struct {
		N    []float64
		Rows map[string][]float64
	}
	block(t, "H0_daily_MJ", &b)
	if len(b.Rows) != 13 {
		t.Fatalf("%d latitudes, want 13", len(b.Rows))
	}
	for lat, row := range b.Rows {
		phi, _ := strconv.ParseFloat(lat, 64)
		for m, want := range row {
			n := b.N[m]
			dec := 23.45 * rad * math.Sin(2*math.Pi*(284+n)/365) // Cooper 1969
			normal := 1367 * (1 + 0.033*math.Cos(2*math.Pi*n/365))
			near(t, fmt.Sprintf("latitude %s, day %g", lat, n), ExtraterrestrialDay(phi*rad, dec, normal)/1e6, want, 0.01)
		}
	}
}

func TestHourShares_CollaresPereiraRabl(t *testing.T) {
	var b struct {
		Rows []struct {
			WS float64
			W  float64 `json:"omega"`
			RT float64 `json:"r_t"`
			RD float64 `json:"r_d"`
		}
	}
	block(t, "rt_rd", &b)
	if len(b.Rows) != 15 {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for _, r := range b.Rows {
		near(t, "r_t", HourShareGlobal(r.W*rad, r.WS*rad), r.RT, 1e-6)
		near(t, "r_d", HourShareDiffuse(r.W*rad, r.WS*rad), r.RD, 1e-6)
	}
}

func TestDiffuseShare_Erbs(t *testing.T) {
	var b struct{ Rows [][3]float64 }
	block(t, "erbs_daily", &b)
	if len(b.Rows) != 5 {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for _, r := range b.Rows {
		near(t, "low sun", DiffuseShareDaily(r[0], 80*rad), r[1], 1e-5)
		near(t, "high sun", DiffuseShareDaily(r[0], 90*rad), r[2], 1e-5)
	}
}

type transposed struct {
	Tilt, Zen, GHI, DNI, DHI, Isotropic, HayDavies, AOI, Beam float64
	AppZenith                                                 float64 `json:"app_zenith"`
	Az                                                        float64
	SurfAz                                                    float64 `json:"surf_az"`
	SunAz                                                     float64 `json:"sun_az"`
	Extra                                                     float64 `json:"dni_extra"`
	BeamPOA                                                   float64 `json:"beam_poa"`
	Ground                                                    float64 `json:"ground_02"`
}

func TestTranspose_Pvlib(t *testing.T) {
	var more, read struct {
		Rows []transposed
	}
	block(t, "transposition", &more)
	block(t, "transposition_tests", &read)
	if len(more.Rows) != 8 || len(read.Rows) != 3 {
		t.Fatalf("%d and %d rows", len(more.Rows), len(read.Rows))
	}
	for _, r := range read.Rows {
		r.Tilt, r.SurfAz, r.Extra, r.Zen, r.SunAz, r.BeamPOA = 40, 180, 1321.1655834833, r.AppZenith, r.Az, r.Beam
		more.Rows = append(more.Rows, r)
	}
	for i, r := range more.Rows {
		name := fmt.Sprintf("row %d", i)
		p := Plane{r.Tilt * rad, r.SurfAz * rad}
		cosInc := p.CosIncidence(Direction{(90 - r.Zen) * rad, r.SunAz * rad})
		if r.AOI != 0 {
			near(t, name+" incidence", math.Acos(cosInc)/rad, r.AOI, 1e-4)
		}
		cosZen := math.Cos(r.Zen * rad)
		rb := math.Max(cosInc, 0) / math.Max(cosZen, 0.01745)
		// pvlib's ground part uses GHI as given, ours beam + diffuse: hand over the difference.
		iso := p.Transpose(r.DNI*cosZen, r.DHI, rb, r.DNI/r.Extra, GroundReflectance, Isotropic)
		hay := p.Transpose(r.DNI*cosZen, r.DHI, rb, r.DNI/r.Extra, GroundReflectance, HayDavies)
		near(t, name+" isotropic", iso.Sky, r.Isotropic, 1e-4*r.Isotropic+5e-7)
		near(t, name+" Hay-Davies", hay.Circumsolar+hay.Sky, r.HayDavies, 1e-4*r.HayDavies)
		if r.BeamPOA > 0 {
			near(t, name+" beam", hay.Beam, r.BeamPOA, 1e-4*r.BeamPOA)
		}
		if r.Ground > 0 {
			ground := p.Transpose(r.GHI-r.DHI, r.DHI, rb, 0, GroundReflectance, Isotropic).Ground
			near(t, name+" ground", ground, r.Ground, 1e-4*r.Ground)
		}
	}
}

func TestIncidenceModifier_Pvlib(t *testing.T) {
	var b struct{ Rows [][2]float64 }
	block(t, "iam_ashrae", &b)
	if len(b.Rows) != 4 {
		t.Fatalf("%d rows", len(b.Rows))
	}
	for _, r := range b.Rows {
		near(t, fmt.Sprintf("%g deg", r[0]), IncidenceModifier(math.Cos(r[0]*rad)), r[1], 1e-7)
	}
}

// Haurwitz: 1098 cos z exp(-0.057/cos z); 1037.1 W/m2 overhead (closed form).
func TestClearSky_Property(t *testing.T) {
	near(t, "overhead", ClearSky(1), 1098*math.Exp(-0.057), 1e-9)
	last := 0.0
	for c := 0.0; c <= 1; c += 0.01 {
		if g := ClearSky(c); g < last || math.IsNaN(g) {
			t.Fatalf("clear sky at cos z %.2f: %g", c, g)
		} else {
			last = g
		}
	}
}

func ExampleDayAt() {
	// London on 21 June 2025 in UTC; astronomy-engine has 03:43:13 and 20:21:31.
	d := DayAt(51.5*rad, -0.13*rad, JulianDay(2025, 6, 21, 0), 0)
	fmt.Printf("%.2f to %.2f h\n", d.Rise, d.Set)
	// Output: 3.72 to 20.36 h
}
