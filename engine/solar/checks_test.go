package solar

import (
	"encoding/json"
	"flag"
	"math"
	"os"
	"testing"
	"time"
)

const rad = math.Pi / 180

// sunBlocks are the blocks of testdata/sun.json that this package checks, with the
// number of values in each. A block that no test reads, or that has lost a row,
// fails the run.
var sunBlocks = map[string]int{
	"spa_report": 53, "solar_position_tests": 65, "julian_day": 18, "meeus": 33, "fao56": 14, "incidence": 98,
	"altitude": 22, "madison": 168, "klein_theilacker": 60, "almanac": 48, "average_days": 24, "sun_positions": 350,
	"rise_set": 126, "H0_daily_MJ": 168, "rt_rd": 70, "noaa": 24, "earth_sun": 16, "air_mass": 6, "haurwitz": 16,
	"erbs": 51, "erbs_tests": 24, "transposition_tests": 108, "transposition": 120, "iam_ashrae": 8,
}

var blocksRead = map[string]bool{}

// block reads one block of testdata/sun.json, which names the sources.
func block(t *testing.T, name string, into any) {
	t.Helper()
	blocksRead[name] = true
	if err := json.Unmarshal(sunData(t)[name], into); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
}

func sunData(t *testing.T) map[string]json.RawMessage {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/sun.json")
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]json.RawMessage{}
	if err := json.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	return all
}

// values counts the numbers and texts of a block, its source aside.
func values(v any) int {
	n := 0
	switch v := v.(type) {
	case map[string]any:
		for key, x := range v {
			if key != "source" && key != "conditions" && key != "columns" {
				n += values(x)
			}
		}
	case []any:
		for _, x := range v {
			n += values(x)
		}
	default:
		n = 1
	}
	return n
}

func TestChecks_NoRowLost(t *testing.T) {
	for name, raw := range sunData(t) {
		var v any
		if err := json.Unmarshal(raw, &v); err != nil {
			t.Fatal(err)
		}
		if want, ours := sunBlocks[name]; ours && values(v) != want {
			t.Errorf("%s has %d values, want %d", name, values(v), want)
		}
	}
}

// TestMain fails a full run in which a block was read by no test.
func TestMain(m *testing.M) {
	code := m.Run()
	if f := flag.Lookup("test.run"); code == 0 && f.Value.String() == "" && flag.Lookup("test.fuzz").Value.String() == "" {
		for name := range sunBlocks {
			if !blocksRead[name] {
				println("no test reads", name)
				code = 1
			}
		}
	}
	os.Exit(code)
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

// cooper is the declination of Cooper 1969 that worked examples use; the engine
// has an ephemeris instead.
func cooper(n float64) float64 { return 23.45 * rad * math.Sin(2*math.Pi*(284+n)/365) }

// normal1367 is the extraterrestrial irradiance those examples use.
func normal1367(n float64) float64 { return 1367 * (1 + 0.033*math.Cos(2*math.Pi*n/365)) }

// south makes a plane of an azimuth counted from south, west positive (deg).
func south(tilt, azimuth float64) Plane { return Plane{tilt * rad, (azimuth + 180) * rad} }
