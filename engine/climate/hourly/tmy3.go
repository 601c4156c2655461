package hourly

import (
	"strconv"
	"strings"
)

// tmy3 is the CSV of the third typical meteorological years (Wilcox & Marion 2008,
// NREL/TP-581-43156): two lines of header, stamps 01:00 to 24:00 at the hour's end,
// radiation of the hour before, local standard time.
type tmy3 struct {
	place [4]float64
	read  bool
	names []string
	at    [6]int // date, time, global, direct, diffuse, dry bulb
}

func (*tmy3) name() string { return "TMY3" }

func (l *tmy3) header(r *Reader, line string) *Error {
	if !l.read {
		l.read = true
		c := cut(line, ",", strings.Split("station,name,state,time zone,latitude,longitude,elevation", ","))
		l.place = [4]float64{c.number(4, -90, 90), c.number(5, -180, 180), c.number(3, -14, 14), c.number(6, -430, 6000)}
		return c.err
	}
	l.names = strings.Split(line, ",")
	for i, want := range [6]string{"Date (MM/DD/YYYY)", "Time (HH:MM)", "GHI (W/m^2)", "DNI (W/m^2)", "DHI (W/m^2)", "Dry-bulb (C)"} {
		l.at[i] = indexOf(l.names, want)
		if l.at[i] < 0 {
			return &Error{Code: NoColumn, Want: want, Got: line}
		}
	}
	return r.at(l.place[0], l.place[1], l.place[3], l.place[2])
}

func (l *tmy3) row(r *Reader, line string) *Error {
	c := cut(line, ",", l.names)
	var s sample
	date := strings.Split(c.text(l.at[0]), "/")
	if len(date) != 3 {
		c.fail(Unexpected, l.at[0], c.text(l.at[0]), "MM/DD/YYYY")
		return c.err
	}
	d := columns{field: date}
	s.month = d.whole(0, 1, 12)
	s.day, s.year = d.whole(1, 1, daysOf(s.month)), d.whole(2, 0, 9999)
	minute, ok := clockMinutes(c.text(l.at[1]))
	if d.err != nil {
		c.fail(d.err.Code, l.at[0], c.text(l.at[0]), "MM/DD/YYYY")
	}
	if !ok {
		c.fail(Unexpected, l.at[1], c.text(l.at[1]), "HH:MM")
	}
	s.start, s.length, s.tempAt = minute-60, 60, minute
	s.airC = c.air(l.at[5])
	s.global, s.direct, s.diff = c.light(l.at[2], 9900, &r.sum.clipped), c.light(l.at[3], 9900, &r.sum.clipped), c.light(l.at[4], 9900, &r.sum.clipped)
	if c.err != nil {
		return c.err
	}
	return r.sum.add(s, r.line)
}

// clockMinutes reads HH:MM or HH:MM:SS, 00:00 to 24:00.
func clockMinutes(text string) (float64, bool) {
	parts := strings.Split(text, ":")
	if len(parts) < 2 || len(parts) > 3 {
		return 0, false
	}
	v := [3]float64{}
	for i, p := range parts {
		n, err := strconv.ParseFloat(p, 64)
		if err != nil || !(n >= 0) || n >= 60 || i < 2 && n != float64(int(n)) {
			return 0, false
		}
		v[i] = n
	}
	minute := v[0]*60 + v[1] + v[2]/60
	return minute, minute <= 1440
}

// indexOf finds a column by name, whatever its case; -1 if there is none.
func indexOf(names []string, want string) int {
	for i, n := range names {
		if strings.EqualFold(strings.TrimSpace(n), want) {
			return i
		}
	}
	return -1
}
