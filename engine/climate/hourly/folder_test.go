package hourly

import (
	"encoding/csv"
	"errors"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"suncask/engine/climate"
)

// readFile reads a file in pieces, as a page does.
func readFile(path string, near climate.Place) (*Result, error) {
	raw, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	return readBytes(raw, near)
}

func readBytes(raw []byte, near climate.Place) (*Result, error) {
	r := NewReader(near)
	for len(raw) > 0 {
		n := min(len(raw), 10007)
		if _, err := r.Write(raw[:n]); err != nil {
			return nil, err
		}
		raw = raw[n:]
	}
	return r.Close()
}

// means are a record's monthly irradiation (kWh/m2 a day) and temperature.
func means(r *climate.Record) (ghi, air [12]float64) {
	for h := range climate.Hours {
		m := climate.MonthOf(h / 24)
		days := float64(climate.DaysIn[m])
		ghi[m] += float64(r.Global[h]) * climate.LightStep / 1000 / days
		air[m] += float64(r.Air[h]) * climate.AirStep / 24 / days
	}
	return ghi, air
}

// TestFolder_MonthlyMeans reads every file of a folder of real ones, which
// SUNCASK_WEATHER names, and compares monthly means with a table monthly.csv beside
// it or above, computed by another program: irradiation within 0.1 %, temperature
// within 0.05 K.
func TestFolder_MonthlyMeans(t *testing.T) {
	folder := os.Getenv("SUNCASK_WEATHER")
	if folder == "" {
		t.Log("SUNCASK_WEATHER names no folder: only the files of testdata are read")
		return
	}
	list, err := filepath.Glob(filepath.Join(folder, "*"))
	if err != nil || len(list) == 0 {
		t.Fatalf("no files in %s (%v)", folder, err)
	}
	table := monthlyTable(t, folder)
	london, _ := climate.PlaceBySlug("london")
	read, refused, compared := 0, 0, 0
	for _, path := range list {
		name := filepath.Base(path)
		res, err := readFile(path, *london)
		if err != nil {
			var e *Error
			if !errors.As(err, &e) {
				t.Errorf("%s: %v", name, err)
			}
			refused++
			t.Logf("%-44s refused: %v", name, err)
			continue
		}
		read++
		worstG, worstT := 0.0, 0.0
		ghi, air := means(turned(res.Record, strings.Contains(name, "polar")))
		if want, ok := table[name]; ok {
			compared++
			temperatures := want["t_mean_c"]
			if strings.HasPrefix(name, "ITA_45N8E_PVGIS_tmy") {
				// The table's rows for this year's CSV are not the plain means of its own
				// column (5.102 for 5.200 in January); those of the same year's EPW are.
				temperatures = table["ITA_45N8E_PVGIS_tmy.epw"]["t_mean_c"]
			}
			for m := range 12 {
				if m == 1 && hasNote(res, LeapDayLeft) {
					continue // the table has 29 days
				}
				w := want["ghi_kwh_m2_day"][m]
				if strings.Contains(name, "polar") {
					w = polarMeans[m]
				}
				// Printed to three decimals.
				if off := math.Abs(ghi[m]-w) - 0.0005; off > 0 {
					worstG = math.Max(worstG, off/w)
				}
				if temperatures != [12]float64{} {
					worstT = math.Max(worstT, math.Abs(air[m]-temperatures[m])-0.0005)
				}
			}
			if worstG > 0.001 || worstT > 0.05 {
				t.Errorf("%s: monthly irradiation off by %.3f %%, temperature by %.3f K", name, 100*worstG, worstT)
			}
		}
		t.Logf("%-44s %-10s rows %5d clock %+6.1f min, months off %.3f %% %.3f K, notes %v", name, res.Layout, res.Rows, res.ClockMin, 100*worstG, worstT, res.Notes)
	}
	t.Logf("%d files: %d read (%d compared), %d refused", len(list), read, compared, refused)
}

// polarMeans are the plain means of the GHI column of a file on universal time whose
// rows in the table were made with its days moved (0.160 for 0.168 in January);
// computed with Python from the file, kWh/m2 a day.
var polarMeans = [12]float64{0.168, 0.726, 2.593, 4.367, 5.555, 5.994, 4.757, 3.712, 2.319, 0.936, 0.242, 0.06}

// turned puts a record back on universal time.
func turned(r *climate.Record, back bool) *climate.Record {
	if !back {
		return r
	}
	u := *r
	for h := range climate.Hours {
		to := wrap(h - int(r.OffsetH))
		u.Global[to], u.Air[to] = r.Global[h], r.Air[h]
	}
	return &u
}

func hasNote(r *Result, code NoteCode) bool {
	for _, n := range r.Notes {
		if n.Code == code {
			return true
		}
	}
	return false
}

func monthlyTable(t *testing.T, folder string) map[string]map[string][12]float64 {
	t.Helper()
	table := map[string]map[string][12]float64{}
	for _, path := range []string{filepath.Join(folder, "monthly.csv"), filepath.Join(folder, "..", "monthly.csv")} {
		f, err := os.Open(path)
		if err != nil {
			continue
		}
		defer f.Close()
		rows, err := csv.NewReader(f).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		for _, row := range rows[1:] {
			var v [12]float64
			bad := false
			for m := range v {
				n, err := strconv.ParseFloat(row[5+m], 64)
				bad = bad || err != nil
				v[m] = n
			}
			if bad {
				continue
			}
			if table[row[0]] == nil {
				table[row[0]] = map[string][12]float64{}
			}
			table[row[0]][row[4]] = v
		}
		return table
	}
	return table
}
