package hourly

import (
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"suncask/engine/climate"
)

var lisbon = func() climate.Place {
	p, _ := climate.PlaceBySlug("lisbon")
	return *p
}()

const folder = "../../../testdata/weather/"

func load(t testing.TB, name string) string {
	t.Helper()
	raw, err := os.ReadFile(folder + name)
	if err != nil {
		t.Fatal(err)
	}
	return string(raw)
}

// day is one of testdata's files of a single invented day: the lines before it, its
// rows, and what follows.
type day struct{ head, rows, tail []string }

var dayDates = []string{"2001,1,1,", "01/01/2001", "20010101:", "2001-01-01"}

func loadDay(t testing.TB, name string) day {
	t.Helper()
	var d day
	for _, line := range strings.Split(strings.ReplaceAll(strings.TrimRight(load(t, name), "\n"), "\r\n", "\n"), "\n") {
		dated := false
		for _, date := range dayDates {
			dated = dated || strings.HasPrefix(line, date)
		}
		switch {
		case dated:
			d.rows = append(d.rows, line)
		case len(d.rows) == 0:
			d.head = append(d.head, line)
		default:
			d.tail = append(d.tail, line)
		}
	}
	return d
}

// date moves rows to another day.
func (d day) date(year, month, dom int) []string {
	r := strings.NewReplacer("2001,1,1,", fmt.Sprintf("%d,%d,%d,", year, month, dom), "01/01/2001", fmt.Sprintf("%02d/%02d/%d", month, dom, year),
		"20010101:", fmt.Sprintf("%d%02d%02d:", year, month, dom), "2001-01-01", fmt.Sprintf("%d-%02d-%02d", year, month, dom))
	rows := make([]string, len(d.rows))
	for i, row := range d.rows {
		rows[i] = r.Replace(row)
	}
	return rows
}

// year repeats the day for a year.
func (d day) year(leap bool) []string {
	lines := append([]string{}, d.head...)
	for m := 1; m <= 12; m++ {
		n := climate.DaysIn[m-1]
		if leap && m == 2 {
			n++
		}
		for dom := 1; dom <= n; dom++ {
			lines = append(lines, d.date(2001, m, dom)...)
		}
	}
	return append(lines, d.tail...)
}

func join(lines []string) []byte { return []byte(strings.Join(lines, "\n") + "\n") }

func mustRead(t testing.TB, raw []byte) *Result {
	t.Helper()
	res, err := readBytes(raw, lisbon)
	if err != nil {
		t.Fatalf("refused: %v", err)
	}
	return res
}

// wantDay is the day's irradiance by hour on its own clock, W/m2: 820 cos w - 60
// about solar noon at 12:36, as the files were made.
func wantDay(h int) float64 {
	x := math.Cos((float64(h) + 0.5 - 12.6) * math.Pi / 12)
	if x <= 0.08 {
		return 0
	}
	return math.Max(0, math.Round(820*x-60))
}

func wantDiffuse(h int) float64 {
	if g := wantDay(h); g > 0 {
		return math.Min(g, math.Round(0.25*g+18))
	}
	return 0
}

func wantAir(h float64) float64 { return 12 + 6*math.Cos((h-15)*math.Pi/12) }

func TestReader_EveryLayout(t *testing.T) {
	for _, c := range []struct {
		file, layout string
		rows         int
		light, air   float64 // how far an hour may be off, W/m2 and K
		notes        []NoteCode
	}{
		{"day.epw", "EPW", 8760, 0.06, 0.06, nil},
		{"day-half-hours.epw", "EPW", 17520, 0.06, 0.1, nil},
		{"day.tmy3.csv", "TMY3", 8760, 0.06, 0.06, nil},
		// An instant stands for the hour about it: off by what the day bends in 15 min,
		// most at its ends.
		{"day.pvgis.csv", "PVGIS", 8760, 55, 0.06, nil},
		// On a clock of its own, solar time of the 15-degree swath: -1 h here.
		{"day.power.csv", "NASA POWER", 8760, 0.06, 0.1, nil},
		{"day.nsrdb.csv", "NSRDB", 8760, 0.06, 0.1, nil},
		{"day.plain.csv", "CSV", 8760, 0.06, 0.1, nil},
		{"day.offset.csv", "CSV", 8760, 0.06, 0.1, []NoteCode{SplitByErbs, HeightNotGiven}},
	} {
		t.Run(c.file, func(t *testing.T) {
			res := mustRead(t, join(loadDay(t, c.file).year(false)))
			if res.Layout != c.layout || res.Rows != c.rows || res.Years != 1 {
				t.Errorf("read as %s, %d rows, %d years", res.Layout, res.Rows, res.Years)
			}
			r := res.Record
			if r.LatDeg != 38.7 || r.LonDeg != -9.1 {
				t.Errorf("at %g, %g", r.LatDeg, r.LonDeg)
			}
			var codes []NoteCode
			for _, n := range res.Notes {
				codes = append(codes, n.Code)
			}
			if fmt.Sprint(codes) != fmt.Sprint(c.notes) {
				t.Errorf("notes %v, want %v", codes, c.notes)
			}
			worstL, worstA, sum := 0.0, 0.0, 0.0
			for h := range 24 {
				at := 24*100 + h
				got := float64(r.Global[at]) * climate.LightStep
				sum += got - wantDay(h)
				worstL = math.Max(worstL, math.Abs(got-wantDay(h)))
				mean := (wantAir(float64(h)) + wantAir(float64(h)+1)) / 2
				worstA = math.Max(worstA, math.Abs(float64(r.Air[at])*climate.AirStep-mean))
				if c.light < 1 && len(c.notes) == 0 {
					if d := float64(r.Diffuse[at]) * climate.LightStep; math.Abs(d-wantDiffuse(h)) > c.light {
						t.Errorf("hour %d: diffuse %.1f, want %.1f", h, d, wantDiffuse(h))
					}
				}
			}
			if worstL > c.light || worstA > c.air {
				t.Errorf("hours off by up to %.2f W/m2, %.2f K", worstL, worstA)
			}
			if math.Abs(sum) > 25 {
				t.Errorf("the day's sum is off by %.1f Wh/m2", sum)
			}
		})
	}
}

// Bytes that mean the same are read the same.
func TestReader_SameWhateverTheBytes(t *testing.T) {
	want := mustRead(t, join(loadDay(t, "day.epw").year(false))).Record.Key()
	lines := loadDay(t, "day.epw").year(false)
	backwards := append([]string{}, lines[:8]...)
	for i := len(lines) - 1; i >= 8; i-- {
		backwards = append(backwards, lines[i])
	}
	for name, text := range map[string]string{
		"byte order mark, CR LF":      "\ufeff" + strings.Join(lines, "\r\n") + "\r\n",
		"CR alone":                    strings.Join(lines, "\r"),
		"mixed ends, no final one":    strings.Join(lines[:100], "\r\n") + "\n" + strings.Join(lines[100:], "\n"),
		"blank lines between":         strings.Join(lines, "\n\n"),
		"blank lines with CR LF":      strings.Join(lines, "\r\n\r\n"),
		"letters beyond ASCII":        strings.Replace(strings.Join(lines, "\n"), "Inventia", "Invent\xefa", 1),
		"columns beyond the 35th":     strings.Join(lines[:8], "\n") + "\n" + strings.Join(lines[8:], ",,\n"),
		"rows in any order":           strings.Join(backwards, "\n"),
		"night a little below 0":      strings.ReplaceAll(strings.Join(lines, "\n"), ",300,0,9999,0,", ",300,-3,9999,-0.0,"),
		"hours written with decimals": strings.ReplaceAll(strings.Join(lines, "\n"), ",1,1,1,60,", ",1.0,1,1,60,"),
	} {
		res, err := readBytes([]byte(text), lisbon)
		if err != nil {
			t.Errorf("%s: %v", name, err)
		} else if res.Record.Key() != want {
			t.Errorf("%s: another record", name)
		}
	}
}

func TestReader_Oddities(t *testing.T) {
	epw, plain := loadDay(t, "day.epw"), loadDay(t, "day.plain.csv")
	lose := func(d day, days map[int]bool, hours map[int]bool) []byte {
		lines := d.year(false)
		n := len(d.head)
		for i := n; i < len(lines); i++ {
			if days[(i-n)/24] && hours[(i-n)%24] {
				f := strings.Split(lines[i], ",")
				f[6], f[13], f[15] = "99.9", "9999", "-999"
				lines[i] = strings.Join(f, ",")
			}
		}
		return join(lines)
	}
	all := map[int]bool{}
	for h := range 24 {
		all[h] = true
	}
	note := func(res *Result, code NoteCode) int {
		for _, n := range res.Notes {
			if n.Code == code {
				return n.N
			}
		}
		return 0
	}

	t.Run("leap day left out", func(t *testing.T) {
		res := mustRead(t, join(epw.year(true)))
		if note(res, LeapDayLeft) != 1 || res.Rows != 8784 {
			t.Errorf("%d rows, notes %v", res.Rows, res.Notes)
		}
		if res.Record.Key() != mustRead(t, join(epw.year(false))).Record.Key() {
			t.Error("another record")
		}
	})
	t.Run("three missing hours filled between neighbours", func(t *testing.T) {
		res := mustRead(t, lose(epw, map[int]bool{50: true}, map[int]bool{10: true, 11: true, 12: true}))
		if note(res, FilledShort) != 3 || note(res, FilledLong) != 0 {
			t.Errorf("notes %v", res.Notes)
		}
		for h := 10; h <= 12; h++ {
			if got := float64(res.Record.Global[50*24+h]) * climate.LightStep; math.Abs(got-wantDay(h)) > 0.1*wantDay(h) {
				t.Errorf("hour %d filled with %.0f, the day has %.0f", h, got, wantDay(h))
			}
		}
	})
	t.Run("two missing days filled from the days around", func(t *testing.T) {
		res := mustRead(t, lose(epw, map[int]bool{50: true, 51: true}, all))
		if note(res, FilledLong) != 48 || note(res, AirJoined) != 48 {
			t.Errorf("notes %v", res.Notes)
		}
		if got := float64(res.Record.Global[50*24+12]) * climate.LightStep; math.Abs(got-wantDay(12)) > 0.01*wantDay(12) {
			t.Errorf("noon filled with %.0f, the days around have %.0f", got, wantDay(12))
		}
	})
	t.Run("the last and the first day missing", func(t *testing.T) {
		res := mustRead(t, lose(epw, map[int]bool{0: true, 364: true}, all))
		if note(res, FilledLong) != 48 {
			t.Errorf("notes %v", res.Notes)
		}
	})
	t.Run("clock put forward and back", func(t *testing.T) {
		var lines []string
		lines = append(lines, plain.head...)
		for m := 1; m <= 12; m++ {
			for dom := 1; dom <= climate.DaysIn[m-1]; dom++ {
				rows := plain.date(2001, m, dom)
				if m == 3 && dom == 25 {
					rows = append(rows[:2:2], rows[3:]...)
				}
				if m == 10 && dom == 28 {
					rows = append(rows[:3:3], rows[2:]...)
				}
				lines = append(lines, rows...)
			}
		}
		res := mustRead(t, join(lines))
		if note(res, FilledShort) != 1 || note(res, DoubledHours) != 1 {
			t.Errorf("notes %v", res.Notes)
		}
	})
	t.Run("months of different years", func(t *testing.T) {
		lines := append([]string{}, epw.head...)
		for m := 1; m <= 12; m++ {
			for dom := 1; dom <= climate.DaysIn[m-1]; dom++ {
				lines = append(lines, epw.date(1990+m%3, m, dom)...)
			}
		}
		if res := mustRead(t, join(lines)); res.Years != 3 || note(res, MixedYears) != 3 {
			t.Errorf("%d years, notes %v", res.Years, res.Notes)
		}
	})
	t.Run("radiation an hour early", func(t *testing.T) {
		base := mustRead(t, join(epw.year(false)))
		lines := epw.year(false)
		for i := 8; i < len(lines)-1; i++ {
			f, next := strings.Split(lines[i], ","), strings.Split(lines[i+1], ",")
			f[13], f[15] = next[13], next[15]
			lines[i] = strings.Join(f, ",")
		}
		early := mustRead(t, join(lines))
		if math.Abs(base.ClockMin) > 2 || math.Abs(early.ClockMin-base.ClockMin+60) > 0.5 {
			t.Errorf("clock %.1f min, an hour early %.1f", base.ClockMin, early.ClockMin)
		}
	})
	t.Run("no place and no clock in the file", func(t *testing.T) {
		lines := plain.year(false)
		res := mustRead(t, join(lines[5:]))
		if note(res, FilledShort) != 0 || res.Record.LatDeg != lisbon.LatDeg || len(res.Notes) < 2 || res.Notes[0].Code != NoPlaceInFile || res.Notes[1].Code != NoZoneInFile {
			t.Errorf("at %g, notes %v", res.Record.LatDeg, res.Notes)
		}
	})
	t.Run("no temperature", func(t *testing.T) {
		lines := plain.year(false)
		for i := 5; i < len(lines); i++ {
			lines[i] = lines[i][:strings.LastIndex(lines[i], ";")]
		}
		res := mustRead(t, join(lines))
		_, air := means(res.Record)
		near := climate.Point(38.7, -9.1, 95)
		if note(res, NoTemperature) == 0 || math.Abs(air[0]-near.TempC[0]) > 0.05 {
			t.Errorf("January %.2f degC, notes %v", air[0], res.Notes)
		}
	})
	t.Run("global from beam and diffuse", func(t *testing.T) {
		var lines []string
		for i, line := range epw.year(false) {
			if i >= 8 {
				f := strings.Split(line, ",")
				if f[13] != "0" {
					f[14] = "400"
				} else {
					f[14] = "0"
				}
				f[13] = "9999"
				line = strings.Join(f, ",")
			}
			lines = append(lines, line)
		}
		res := mustRead(t, join(lines))
		// Noon of 1 July: 400 W/m2 times the cosine of 38.7 - 23.1 = 15.6 deg, and the diffuse.
		want := 400*math.Cos(15.6*math.Pi/180) + wantDiffuse(12)
		if got := float64(res.Record.Global[181*24+12]) * climate.LightStep; math.Abs(got-want) > 5 {
			t.Errorf("noon %.0f W/m2, want %.0f", got, want)
		}
	})
	t.Run("global that differs from beam and diffuse", func(t *testing.T) {
		lines := strings.ReplaceAll(string(join(epw.year(false))), ",9999,", ",900,")
		if res := mustRead(t, []byte(lines)); note(res, GlobalDiffers) < 5 {
			t.Errorf("notes %v", res.Notes)
		}
	})
}

func TestReader_Refused(t *testing.T) {
	two := join(append(loadDay(t, "day.epw").year(false), loadDay(t, "day.epw").year(false)[8:]...))
	long := []byte("LOCATION," + strings.Repeat("x", 70<<10))
	missing := join(loadDay(t, "day.plain.csv").year(false)[:6+7800])
	for _, c := range []struct {
		file         string
		raw          []byte
		code         Code
		line, column int
		got, want    string
	}{
		{file: "refused/tilted.csv", code: OnAPlane, line: 6, column: 2, got: "Gb(i)"},
		{file: "refused/typical.json", code: NotRead, line: 1, want: "JSON"},
		{file: "refused/typical.tm2", code: NotRead, line: 1, want: "TMY2"},
		{file: "refused/page.html", code: NotRead, line: 1, want: "HTML"},
		{file: "refused/daily.csv", code: NotHourly, line: 6, want: "HR"},
		{file: "refused/no-light.csv", code: NoColumn, line: 1, want: "ghi"},
		{file: "refused/letter.txt", code: NotKnown, line: 1},
		{file: "refused/three-hourly.csv", code: TooManyMissing},
		{file: "refused/hour-25.epw", code: OutOfRange, line: 12, column: 4, got: "25", want: "1 to 24"},
		{file: "refused/day-x.epw", code: Unexpected, line: 11, column: 3, got: "x"},
		{file: "refused/short-row.epw", code: TooFewFields, line: 9, column: 14, want: "14"},
		{file: "refused/latitude.epw", code: OutOfRange, line: 1, column: 7, got: "98.70", want: "-90 to 90"},
		{file: "refused/per-hour.epw", code: OutOfRange, line: 8, column: 3, got: "7", want: "a divisor of 60"},
		{file: "refused/no-periods.epw", code: Unexpected, line: 8, column: 1, want: "DATA PERIODS"},
		{file: "refused/no-zone.csv", code: NoColumn, line: 1, want: "Time Zone"},
		{file: "refused/one-day.epw", code: TooManyMissing, want: "876"},
		{file: "refused/unit.csv", code: WrongUnit, line: 8, got: "btu/hr"},
		{file: "refused/too-bright.csv", code: OutOfRange, line: 20, column: 5, want: "0 to 2000"},
		{file: "two years", raw: two, code: SeveralYears, line: 8769},
		{file: "a line of 70 kB", raw: long, code: LineTooLong, line: 1},
		{file: "ends in November", raw: missing, code: TooManyMissing, got: "960"},
		{file: "nothing", raw: []byte{}, code: Empty},
		{file: "spaces", raw: []byte("\n \r\n"), code: Empty},
	} {
		raw := c.raw
		if raw == nil {
			raw = []byte(load(t, c.file))
		}
		_, err := readBytes(raw, lisbon)
		var e *Error
		if !errors.As(err, &e) {
			t.Errorf("%s: %v", c.file, err)
			continue
		}
		if e.Code != c.code || e.Line != c.line || e.Column != c.column || c.got != "" && e.Got != c.got || c.want != "" && e.Want != c.want {
			t.Errorf("%s: %+v, want %+v", c.file, *e, c)
		}
	}
	list, _ := filepath.Glob(folder + "refused/*")
	if len(list) != 18 {
		t.Errorf("%d files in refused, 18 are tested", len(list))
	}
}
