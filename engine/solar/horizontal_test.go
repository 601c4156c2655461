package solar

import (
	"fmt"
	"math"
	"strconv"
	"testing"
)

func TestExtraterrestrialDay_DuffieBeckman(t *testing.T) {
	var b struct {
		N    []float64
		Rows map[string][]float64
	}
	block(t, "H0_daily_MJ", &b)
	for lat, row := range b.Rows {
		phi, _ := strconv.ParseFloat(lat, 64)
		for m, want := range row {
			n := b.N[m]
			near(t, fmt.Sprintf("latitude %s, day %g", lat, n), ExtraterrestrialDay(phi*rad, cooper(n), normal1367(n))/1e6, want, 0.01)
		}
	}
}

func TestExtraterrestrialDay_FAO56(t *testing.T) {
	var b struct {
		Computed struct {
			Dr, Decl, Omega, Ra, N float64
		}
		Expected map[string]float64
	}
	var c struct{ Computed map[string]float64 }
	block(t, "fao56", &b)
	block(t, "fao56", &c)
	decl := 0.409 * math.Sin(2*math.Pi*246/365-1.39)
	dr := 1 + 0.033*math.Cos(2*math.Pi*246/365)
	near(t, "sunset hour angle", SunsetHourAngle(-20*rad, decl), c.Computed["omega_s_rad"], 1e-6)
	near(t, "daylight hours", SunsetHourAngle(-20*rad, decl)*24/math.Pi, b.Expected["N_hours"], 0.05)
	// Gsc 0.0820 MJ/m2 a minute.
	near(t, "Ra", ExtraterrestrialDay(-20*rad, decl, 0.0820e6/60*dr)/1e6, b.Expected["Ra_MJ"], 0.05)
}

// The engine's month days are those of Klein; its ephemeris is within 1.2 deg of
// Cooper's declination, as Cooper's form is of the sun (computed against SPA).
func TestEphemeris_AverageDays(t *testing.T) {
	var b struct {
		N    []float64
		Decl []float64 `json:"decl_cooper"`
	}
	block(t, "average_days", &b)
	for i, n := range b.N {
		near(t, fmt.Sprintf("day %g", n), At(JulianDay(2025, 1, int(n), 12)).Declination/rad, b.Decl[i], 1.2)
		near(t, "Cooper", cooper(n)/rad, b.Decl[i], 1e-4)
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
		Integral []struct{ WS, Value float64 } `json:"integral_of_rt"`
	}
	block(t, "rt_rd", &b)
	for _, r := range b.Rows {
		near(t, "r_t", HourShareGlobal(r.W*rad, r.WS*rad), r.RT, 1e-6)
		near(t, "r_d", HourShareDiffuse(r.W*rad, r.WS*rad), r.RD, 1e-6)
	}
	for _, r := range b.Integral {
		global, diffuse := 0.0, 0.0
		const steps = 20000
		for i := range steps {
			w := (2*(float64(i)+0.5)/steps - 1) * r.WS * rad
			global += HourShareGlobal(w, r.WS*rad) * 2 * r.WS / steps / 15
			diffuse += HourShareDiffuse(w, r.WS*rad) * 2 * r.WS / steps / 15
		}
		near(t, "integral of r_t", global, r.Value, 1e-6)
		near(t, "integral of r_d", diffuse, 1, 1e-6)
	}
}

func TestDiffuseShare_Erbs(t *testing.T) {
	var b struct {
		Hourly         [][2]float64
		Daily, Monthly [][3]float64
	}
	block(t, "erbs", &b)
	for _, r := range b.Hourly {
		near(t, fmt.Sprintf("hourly at %g", r[0]), DiffuseShareHourly(r[0]), r[1], 1e-5)
	}
	for _, r := range b.Daily {
		near(t, "daily, low sun", DiffuseShareDaily(r[0], 80*rad), r[1], 1e-5)
		// The raw polynomial passes 1 by 0.0036: never more than all.
		near(t, "daily, high sun", DiffuseShareDaily(r[0], 90*rad), math.Min(1, r[2]), 1e-5)
	}
	for _, r := range b.Monthly {
		near(t, "monthly, low sun", DiffuseShareMonthly(r[0], 80*rad), r[1], 1e-5)
		near(t, "monthly, high sun", DiffuseShareMonthly(r[0], 90*rad), r[2], 1e-5)
	}
}

func TestDiffuseShareHourly_Pvlib(t *testing.T) {
	var b struct {
		Inputs []struct {
			Date        string
			Doy         int
			GHI, Zenith float64
		}
		KT, DHI, DNI []float64
	}
	block(t, "erbs_tests", &b)
	for i, in := range b.Inputs {
		z := math.Cos(in.Zenith * rad)
		share := DiffuseShareHourly(b.KT[i])
		near(t, "diffuse", share*in.GHI, b.DHI[i], 1)
		near(t, "beam normal", (1-share)*in.GHI/z, b.DNI[i], 1)
	}
}

func TestAirMass_KastenYoung(t *testing.T) {
	var b struct {
		Zenith []float64
		Want   []float64 `json:"kastenyoung1989"`
	}
	block(t, "air_mass", &b)
	for i, z := range b.Zenith {
		near(t, fmt.Sprintf("zenith %g", z), AirMass((90-z)*rad), b.Want[i], 0.001)
	}
}

func TestClearSky_Haurwitz(t *testing.T) {
	var b struct{ Elevation, GHI []float64 }
	block(t, "haurwitz", &b)
	for i, e := range b.Elevation {
		near(t, fmt.Sprintf("elevation %g", e), ClearSky(math.Sin(e*rad)), b.GHI[i], 1e-6)
	}
}

func TestClearSky_Property(t *testing.T) {
	last := 0.0
	for c := 0.0; c <= 1; c += 0.01 {
		if g := ClearSky(c); g < last || math.IsNaN(g) {
			t.Fatalf("clear sky at cos z %.2f: %g", c, g)
		} else {
			last = g
		}
	}
}
