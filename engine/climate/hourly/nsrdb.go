package hourly

import "strings"

// nsrdb is the CSV of the National Solar Radiation Database: a line of names and one
// of values about the place, then a plain CSV whose stamps are the middles of their
// steps.
type nsrdb struct {
	lines int
	about []string
	plain
}

func (*nsrdb) name() string { return "NSRDB" }

func (l *nsrdb) header(r *Reader, line string) *Error {
	l.lines++
	switch l.lines {
	case 1:
		l.about = strings.Split(line, ",")
		return nil
	case 2:
		for _, want := range [...]string{"Latitude", "Longitude", "Elevation", "Time Zone"} {
			if indexOf(l.about, want) < 0 {
				return &Error{Code: NoColumn, Line: r.line - 1, Got: strings.Join(l.about, ","), Want: want}
			}
		}
		c := cut(line, ",", l.about)
		l.place = [4]float64{
			c.number(indexOf(l.about, "Latitude"), -90, 90), c.number(indexOf(l.about, "Longitude"), -180, 180),
			c.number(indexOf(l.about, "Elevation"), -430, 6000), c.number(indexOf(l.about, "Time Zone"), -14, 14)}
		l.has = [4]bool{true, true, true, true}
		return c.err
	}
	l.stamp = middles
	return l.plain.header(r, line)
}
