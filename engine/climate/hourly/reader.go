// Package hourly reads a year of hourly weather from the files that people have:
// EPW, TMY3, PVGIS and NSRDB typical years, NASA POWER, and plain CSV with a named
// header. A file is read as it comes, line by line; a bad one is refused with line
// and column, never half read.
package hourly

import (
	"bytes"
	"math"
	"strings"

	"suncask/engine/climate"
)

// Reader takes a file's bytes in pieces of any size.
type Reader struct {
	near   climate.Place // of files that do not say where they are
	rest   []byte        // of a line not yet whole
	line   int
	lastCR bool
	layout layout
	sum    *collector // nil before the data
	err    *Error
}

// layout is one kind of file. header takes the lines before the data; at the last of
// them it calls Reader.at.
type layout interface {
	name() string
	header(r *Reader, line string) *Error
	row(r *Reader, line string) *Error
}

// Result is a file that was read.
type Result struct {
	Record   *climate.Record
	Layout   string // its kind, by its own name
	Rows     int
	Years    int     // different years in it
	ClockMin float64 // mean time of its light, by energy, less solar noon, minutes
	Notes    []Note
}

// OffClockMin is how far radiation may be off a file's clock before a shift is
// offered: morning and afternoon cloud alone give up to ten.
const OffClockMin = 20

const maxLine = 64 << 10

// NewReader starts a file. near stands in where a file does not say where it is, and
// gives temperatures where it has none.
func NewReader(near climate.Place) *Reader { return &Reader{near: near} }

// Write reads the next piece. An error ends the file.
func (r *Reader) Write(piece []byte) (int, error) {
	if r.err != nil {
		return 0, r.err
	}
	n := len(piece)
	for {
		end := bytes.IndexAny(piece, "\r\n")
		if end < 0 {
			break
		}
		line := piece[:end]
		if len(r.rest) > 0 {
			r.rest = append(r.rest, line...)
			line = r.rest
		}
		r.take(line, piece[end] == '\n')
		r.rest = r.rest[:0]
		piece = piece[end+1:]
		if r.err != nil {
			return 0, r.err
		}
	}
	r.rest = append(r.rest, piece...)
	if len(r.rest) > maxLine {
		if r.layout == nil {
			// A file of one long line may still be one that is known.
			if _, r.err = recognise(strings.TrimSpace(string(r.rest))); r.err != nil {
				r.err.Line, r.err.Got = 1, shorten(strings.ToValidUTF8(r.err.Got, "?"))
				return 0, r.err
			}
		}
		r.err = &Error{Code: LineTooLong, Line: r.line + 1, Want: "65536"}
		return 0, r.err
	}
	return n, nil
}

// take reads one line. Lines end in CR LF, LF or CR; the empty line between CR and
// LF does not count.
func (r *Reader) take(raw []byte, byLF bool) {
	if !(byLF && len(raw) == 0 && r.line > 0 && r.lastCR) {
		r.line++
	}
	r.lastCR = !byLF
	if r.line == 1 {
		raw = bytes.TrimPrefix(raw, []byte("\xef\xbb\xbf"))
	}
	line := strings.TrimSpace(string(raw))
	if line == "" {
		return
	}
	if e := r.read(line); e != nil {
		e.Got = shorten(strings.ToValidUTF8(e.Got, "?"))
		if e.Line == 0 {
			e.Line = r.line
		}
		r.err = e
	}
}

// read hands a line to its layout, which the first line decides.
func (r *Reader) read(line string) *Error {
	if r.layout == nil {
		l, e := recognise(line)
		if e != nil {
			return e
		}
		r.layout = l
	}
	if r.sum != nil {
		return r.layout.row(r, line)
	}
	return r.layout.header(r, line)
}

// at begins the data of a place: NaN for a height that is not given.
func (r *Reader) at(latDeg, lonDeg, elevationM, offsetH float64) *Error {
	if what := climate.PointProblem(latDeg, lonDeg, elevationM); what != "" {
		return &Error{Code: NoPlace, Want: what}
	}
	if !(math.Abs(offsetH) <= 14) {
		return &Error{Code: NoPlace, Want: "time zone"}
	}
	r.sum = newCollector(latDeg, lonDeg, elevationM, offsetH)
	return nil
}

// recognise tells a layout by a file's first line.
func recognise(line string) (layout, *Error) {
	low := strings.ToLower(line)
	fields := strings.Split(line, ",")
	refuse := func(what string) (layout, *Error) { return nil, &Error{Code: NotRead, Got: line, Want: what} }
	switch {
	case strings.HasPrefix(low, "location,"):
		return &epw{}, nil
	case strings.HasPrefix(low, "latitude (decimal degrees)"):
		return &pvgis{}, nil
	case strings.HasPrefix(low, "-begin header-"):
		return &power{}, nil
	case strings.HasPrefix(low, "source,location id"):
		return &nsrdb{}, nil
	case len(fields) == 7 && isNumber(fields[0]) && isNumber(fields[4]) && isNumber(fields[5]):
		return &tmy3{}, nil
	case strings.HasPrefix(line, "{") || strings.HasPrefix(line, "["):
		return refuse("JSON")
	case strings.HasPrefix(line, "<"):
		return refuse("HTML")
	case strings.HasPrefix(line, "PK\x03\x04"):
		return refuse("ZIP")
	case isTMY2(line):
		return refuse("TMY2")
	case strings.HasPrefix(line, "#"), plainLike(line):
		return &plain{}, nil
	}
	return nil, &Error{Code: NotKnown, Got: line}
}

// isTMY2 knows the fixed columns of a TMY2 header: station, city, state, zone, N or
// S with degrees and minutes, E or W.
func isTMY2(line string) bool {
	f := strings.Fields(line)
	if len(f) < 10 || !isNumber(f[0]) {
		return false
	}
	f = f[len(f)-8:] // zone, N, deg, min, W, deg, min, elevation
	return isNumber(f[0]) && (f[1] == "N" || f[1] == "S") && isNumber(f[2]) && (f[4] == "E" || f[4] == "W")
}

// Close ends the file and returns what was read.
func (r *Reader) Close() (*Result, error) {
	if r.err == nil && len(r.rest) > 0 {
		r.take(r.rest, true)
		r.rest = nil
	}
	if r.err == nil && r.sum == nil {
		switch {
		case r.layout == nil:
			r.err = &Error{Code: Empty}
		default:
			r.err = &Error{Code: TooManyMissing, Got: "8760", Want: "876", Line: r.line}
		}
	}
	if r.err != nil {
		return nil, r.err
	}
	res, e := r.sum.result(&r.near)
	if e != nil {
		r.err = e
		return nil, e
	}
	res.Layout = r.layout.name()
	return res, nil
}
