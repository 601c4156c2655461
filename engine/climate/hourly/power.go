package hourly

import (
	"math"
	"strconv"
	"strings"
)

// power is the hourly CSV of NASA POWER: a header between two marks, then YEAR, MO,
// DY, HR and parameters by name. HR is the hour's start; its local time is that of
// the 15-degree swath of the longitude.
type power struct {
	place  [3]float64
	hasLat bool
	utc    bool
	unit   float64 // W/m2 of one of the file's
	ended  bool
	names  []string
	at     [8]int // YEAR, MO, DY, HR, global, direct, diffuse, temperature
}

func (*power) name() string { return "NASA POWER" }

func (l *power) header(r *Reader, line string) *Error {
	low := strings.ToLower(line)
	switch {
	case strings.HasPrefix(low, "-begin"):
		l.unit, l.place[2] = 1, math.NaN()
		return nil
	case strings.HasPrefix(low, "-end"):
		l.ended = true
		return nil
	case l.ended:
		return l.columns(r, line)
	case strings.Contains(low, "in utc"):
		l.utc = true
	case strings.HasPrefix(low, "location:"):
		lat, ok1 := numberAfter(low, "latitude")
		lon, ok2 := numberAfter(low, "longitude")
		if !ok1 || !ok2 {
			return &Error{Code: NoPlace, Got: line, Want: "latitude, longitude"}
		}
		l.place[0], l.place[1], l.hasLat = lat, lon, true
	case strings.Contains(low, "elevation"):
		if _, value, ok := strings.Cut(low, "="); ok {
			if v, ok := numberAfter(value, ""); ok {
				l.place[2] = v
			}
		}
	case strings.HasPrefix(low, "allsky_sfc_sw_dwn "):
		i, j := strings.LastIndex(line, "("), strings.LastIndex(line, ")")
		if i < 0 || j < i {
			return nil
		}
		switch unit := strings.ToLower(strings.ReplaceAll(line[i+1:j], " ", "")); unit {
		case "w/m^2", "wh/m^2", "w/m2", "wh/m2":
		case "mj/hr", "mj/m^2/hr", "mj/m^2/hour", "mj/m^2":
			l.unit = 1e6 / 3600
		case "kwh/m^2", "kwh/m^2/hr":
			l.unit = 1000
		default:
			return &Error{Code: WrongUnit, Got: unit, Want: "Wh/m^2, W/m^2, MJ/hr"}
		}
	}
	return nil
}

func (l *power) columns(r *Reader, line string) *Error {
	l.names = strings.Split(line, ",")
	for i, name := range [8]string{"YEAR", "MO", "DY", "HR", "ALLSKY_SFC_SW_DWN", "ALLSKY_SFC_SW_DNI", "ALLSKY_SFC_SW_DIFF", "T2M"} {
		l.at[i] = indexOf(l.names, name)
		if l.at[i] >= 0 {
			continue
		}
		switch {
		case i == 3 || i == 1 && indexOf(l.names, "PARAMETER") >= 0:
			return &Error{Code: NotHourly, Got: line, Want: "HR"}
		case i <= 4:
			return &Error{Code: NoColumn, Got: line, Want: name}
		}
	}
	if !l.hasLat {
		return &Error{Code: NoPlace, Got: line, Want: "latitude, longitude"}
	}
	zone := math.Round(l.place[1] / 15)
	if l.utc {
		zone = 0
	}
	return r.at(l.place[0], l.place[1], l.place[2], zone)
}

func (l *power) row(r *Reader, line string) *Error {
	c := cut(line, ",", l.names)
	s := sample{year: c.whole(l.at[0], 0, 9999), month: c.whole(l.at[1], 1, 12), length: 60}
	s.day = c.whole(l.at[2], 1, daysOf(s.month))
	s.start = float64(c.whole(l.at[3], 0, 23)) * 60
	s.tempAt = s.start
	light := func(i int) float64 {
		return c.lightIn(l.unit, l.at[i], 9999, &r.sum.clipped)
	}
	s.global, s.direct, s.diff = light(4), light(5), light(6)
	s.airC = c.air(l.at[7])
	if c.err != nil {
		return c.err
	}
	return r.sum.add(s, r.line)
}

// numberAfter reads the first number after a word.
func numberAfter(text, word string) (float64, bool) {
	_, rest, ok := strings.Cut(text, word)
	if !ok {
		return 0, false
	}
	for _, f := range strings.FieldsFunc(rest, func(c rune) bool { return c == ' ' || c == ':' || c == '=' }) {
		if v, err := strconv.ParseFloat(f, 64); err == nil {
			return v, true
		}
	}
	return 0, false
}
