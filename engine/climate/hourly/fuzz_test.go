package hourly

import (
	"errors"
	"strings"
	"testing"

	"suncask/engine/climate"
)

// Every reader takes anything: it reads a whole year or refuses with an *Error, and
// the pieces in which the bytes come make no difference.
func fuzzLayout(f *testing.F, file string) {
	text := load(f, file)
	f.Add([]byte(text), 100)
	f.Add([]byte(strings.ReplaceAll(text, "\n", "\r\n")), 7)
	f.Add([]byte(strings.ReplaceAll(text, "1", "-9999")), 1000)
	f.Add([]byte(text[:len(text)/2]), 33)
	f.Fuzz(func(t *testing.T, raw []byte, piece int) {
		if piece < 1 || len(raw) > 1<<20 {
			return
		}
		r := NewReader(lisbon)
		var err error
		for rest := raw; len(rest) > 0 && err == nil; {
			n := min(piece, len(rest))
			_, err = r.Write(rest[:n])
			rest = rest[n:]
		}
		var res *Result
		if err == nil {
			res, err = r.Close()
		}
		whole := NewReader(lisbon)
		_, again := whole.Write(raw)
		if again == nil {
			_, again = whole.Close()
		}
		if (err == nil) != (again == nil) {
			t.Fatalf("in pieces %v, in one %v", err, again)
		}
		if err != nil {
			var e, o *Error
			if !errors.As(err, &e) || !errors.As(again, &o) || *e != *o {
				t.Fatalf("in pieces %v, in one %v", err, again)
			}
			return
		}
		for h := range climate.Hours {
			if res.Record.Diffuse[h] > res.Record.Global[h] || res.Record.Global[h] > 20000 || res.Record.Air[h] > 6500 || res.Record.Air[h] < -9000 {
				t.Fatalf("hour %d: %d, %d, %d", h, res.Record.Global[h], res.Record.Diffuse[h], res.Record.Air[h])
			}
		}
	})
}

func FuzzEPW(f *testing.F)   { fuzzLayout(f, "day.epw") }
func FuzzTMY3(f *testing.F)  { fuzzLayout(f, "day.tmy3.csv") }
func FuzzPVGIS(f *testing.F) { fuzzLayout(f, "day.pvgis.csv") }
func FuzzPOWER(f *testing.F) { fuzzLayout(f, "day.power.csv") }
func FuzzNSRDB(f *testing.F) { fuzzLayout(f, "day.nsrdb.csv") }
func FuzzPlain(f *testing.F) { fuzzLayout(f, "day.plain.csv") }
