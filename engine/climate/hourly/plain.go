package hourly

import (
	"math"
	"strconv"
	"strings"
)

// stampKind says what part of its time a row's stamp marks.
type stampKind uint8

const (
	starts  stampKind = iota // of a step
	ends                     // of a step: hours 1 to 24
	middles                  // of a step: hourly stamps at half past
	instant                  // the layout says
)

// plain is a CSV with a line that names its columns: a time (one column, or year,
// month, day and hour) and ghi, and if there are dhi, dni and temp. Before it there
// may be lines such as "latitude, 38.7", "longitude, -9.1", "elevation, 95" and
// "time zone, 0". Fields are separated by comma, semicolon or tab; with semicolons a
// decimal comma is read.
type plain struct {
	place     [4]float64 // latitude, longitude, elevation, zone
	has       [4]bool
	separator string
	names     []string
	at        [plainColumns]int
	utc       bool
	stamp     stampKind
	step      float64 // minutes, from the first rows
	waiting   []plainRow
}

type plainRow struct {
	s    sample
	line int
}

// Columns of a plain CSV.
const (
	colTime = iota
	colYear
	colMonth
	colDay
	colHour
	colMinute
	colGlobal
	colDirect
	colDiffuse
	colAir
	plainColumns
)

// plainNames are the names under which a column is known, in lower case without
// spaces and units.
var plainNames = map[string]int{
	"time": colTime, "datetime": colTime, "timestamp": colTime, "date": colTime, "time(utc)": colTime, "utc": colTime,
	"year": colYear, "yr": colYear, "month": colMonth, "mo": colMonth, "day": colDay, "dy": colDay, "hour": colHour, "hr": colHour,
	"minute": colMinute, "ghi": colGlobal, "g(h)": colGlobal, "global": colGlobal, "globalhorizontal": colGlobal,
	"dni": colDirect, "gb(n)": colDirect, "directnormal": colDirect, "dhi": colDiffuse, "gd(h)": colDiffuse, "diffuse": colDiffuse,
	"diffusehorizontal": colDiffuse, "temp": colAir, "temperature": colAir, "t2m": colAir, "airtemperature": colAir, "drybulb": colAir, "tair": colAir,
}

// metaNames are the lines that may stand before the names.
var metaNames = map[string]int{
	"latitude": 0, "lat": 0, "longitude": 1, "lon": 1, "elevation": 2, "altitude": 2, "timezone": 3, "utcoffset": 3, "zone": 3,
}

// bare is a name without its unit, spaces and case.
func bare(name string) string {
	name = strings.ToLower(strings.Trim(strings.TrimSpace(name), "\"#"))
	for _, unit := range [...]string{"(w/m^2)", "(w/m2)", "[w/m2]", "(wh/m^2)", "(c)", "(degc)", "[degc]", "(h)", "(m)", "(deg)"} {
		if len(name) > len(unit)+2 {
			name = strings.TrimSuffix(name, unit)
		}
	}
	return strings.NewReplacer(" ", "", "-", "", "_", "").Replace(name)
}

// separatorOf is the one a line uses.
func separatorOf(line string) string {
	for _, s := range [...]string{";", "\t", ","} {
		if strings.Contains(line, s) {
			return s
		}
	}
	return ","
}

// plainLike tells whether a first line can begin a plain CSV.
func plainLike(line string) bool {
	if _, _, ok := meta(line); ok {
		return true
	}
	known := 0
	for _, f := range strings.Split(line, separatorOf(line)) {
		if _, ok := plainNames[bare(f)]; ok {
			known++
		}
	}
	return known >= 1 && strings.Contains(line, separatorOf(line))
}

// meta reads a line such as "latitude, 38.7".
func meta(line string) (which int, value string, ok bool) {
	i := strings.IndexAny(line, ",;:=\t")
	if i < 0 {
		return 0, "", false
	}
	which, ok = metaNames[bare(line[:i])]
	value = strings.Trim(line[i+1:], " ,;\t")
	if line[i] == ';' {
		value = strings.ReplaceAll(value, ",", ".")
	}
	return which, value, ok && !strings.ContainsAny(value, ",;\t")
}

func (*plain) name() string { return "CSV" }

func (l *plain) header(r *Reader, line string) *Error {
	if which, value, ok := meta(line); ok {
		lo, hi := [4]float64{-90, -180, -430, -14}[which], [4]float64{90, 180, 6000, 14}[which]
		c := columns{field: []string{"", value}, names: []string{"", bare(line[:strings.IndexAny(line, ",;:=\t")])}}
		l.place[which], l.has[which] = c.number(1, lo, hi), true
		return c.err
	}
	if strings.HasPrefix(line, "#") && !plainLike(line) {
		return nil
	}
	if e := l.columns(line); e != nil {
		return e
	}
	switch {
	case l.has[0] && !l.has[1]:
		return &Error{Code: NoPlace, Want: "longitude", Got: line}
	case l.has[1] && !l.has[0]:
		return &Error{Code: NoPlace, Want: "latitude", Got: line}
	}
	lat, lon, elevation := l.place[0], l.place[1], l.place[2]
	if !l.has[2] {
		elevation = math.NaN()
	}
	noted := []Note{}
	if !l.has[0] {
		lat, lon, elevation = r.near.LatDeg, r.near.LonDeg, r.near.ElevationM
		noted = append(noted, Note{NoPlaceInFile, 0})
	}
	zone := l.place[3]
	if l.utc {
		zone = 0
	} else if !l.has[3] {
		zone = math.Round(lon / 15)
		if !l.has[0] {
			zone = r.near.Clock.OffsetH
		}
		noted = append(noted, Note{NoZoneInFile, 0})
	}
	if e := r.at(lat, lon, elevation, zone); e != nil {
		return e
	}
	r.sum.notes = noted
	return nil
}

// columns reads the line of names.
func (l *plain) columns(line string) *Error {
	l.separator = separatorOf(line)
	l.names = strings.Split(line, l.separator)
	for i := range l.at {
		l.at[i] = -1
	}
	for i, n := range l.names {
		name := bare(n)
		if name == "gb(i)" || name == "g(i)" || name == "poa" {
			return &Error{Code: OnAPlane, Column: i + 1, Name: n, Got: n, Want: "GHI"}
		}
		if col, ok := plainNames[name]; ok && l.at[col] < 0 {
			l.at[col] = i
			l.utc = l.utc || col == colTime && strings.Contains(name, "utc")
		}
	}
	need := func(cols ...int) *Error {
		for _, c := range cols {
			if l.at[c] < 0 {
				return &Error{Code: NoColumn, Got: line, Want: [...]string{"time", "year", "month", "day", "hour", "minute", "ghi", "dni", "dhi", "temp"}[c]}
			}
		}
		return nil
	}
	if l.at[colTime] < 0 {
		if l.at[colMonth] < 0 && l.at[colDay] < 0 {
			return need(colTime)
		}
		if e := need(colMonth, colDay, colHour); e != nil {
			return e
		}
	}
	return need(colGlobal)
}

// row keeps the first day's rows until the step and the meaning of the stamps are
// known.
func (l *plain) row(r *Reader, line string) *Error {
	if strings.HasPrefix(line, "#") {
		return nil
	}
	s, e := l.sample(r, line)
	if e != nil {
		return e
	}
	if l.step == 0 {
		l.waiting = append(l.waiting, plainRow{s, r.line})
		if len(l.waiting) < 30 {
			return nil
		}
		return l.begin(r)
	}
	return l.pass(r, s, r.line)
}

// begin learns from the rows that waited, and passes them on.
func (l *plain) begin(r *Reader) *Error {
	l.step = 60
	latest := 0.0
	for i, w := range l.waiting {
		latest = math.Max(latest, w.s.tempAt)
		if i > 0 {
			gap := w.s.tempAt - l.waiting[i-1].s.tempAt
			if gap > 0 && gap < l.step {
				l.step = gap
			} else if gap > 60 && i == 1 {
				return &Error{Code: TooCoarse, Got: strconv.Itoa(int(gap)), Line: w.line}
			}
		}
	}
	switch half := math.Mod(l.waiting[0].s.tempAt, 60); {
	case l.stamp == middles:
	case latest >= 1440:
		l.stamp = ends
	case l.step == 60 && half == 30:
		l.stamp = middles
	}
	for _, w := range l.waiting {
		if e := l.pass(r, w.s, w.line); e != nil {
			return e
		}
	}
	l.waiting = nil
	return nil
}

func (l *plain) pass(r *Reader, s sample, line int) *Error {
	s.length = l.step
	switch l.stamp {
	case starts:
		s.start = s.tempAt
	case ends:
		s.start = s.tempAt - l.step
	case middles:
		s.start = s.tempAt - l.step/2
	}
	return r.sum.add(s, line)
}

// sample reads a row but for the stretch of time that it stands for.
func (l *plain) sample(r *Reader, line string) (sample, *Error) {
	if l.separator == ";" {
		line = strings.ReplaceAll(line, ",", ".")
	}
	c := cut(line, l.separator, l.names)
	s := sample{airC: c.air(l.at[colAir])}
	clipped := &r.sum.clipped
	s.global, s.direct, s.diff = c.light(l.at[colGlobal], 9000, clipped), c.light(l.at[colDirect], 9000, clipped), c.light(l.at[colDiffuse], 9000, clipped)
	if l.at[colTime] >= 0 {
		l.readTime(&c, &s, r.sum.rec.OffsetH-r.sum.ahead/60)
	} else {
		if l.at[colYear] >= 0 {
			s.year = c.whole(l.at[colYear], 0, 9999)
		}
		s.month = c.whole(l.at[colMonth], 1, 12)
		s.day = c.whole(l.at[colDay], 1, daysOf(s.month))
		s.tempAt = 60 * float64(c.whole(l.at[colHour], 0, 24))
		if l.at[colMinute] >= 0 {
			s.tempAt += float64(c.whole(l.at[colMinute], 0, 59))
		}
	}
	return s, c.err
}

func (l *plain) readTime(c *columns, s *sample, zone float64) {
	text := strings.Trim(c.text(l.at[colTime]), "\"")
	if c.err != nil {
		return
	}
	date, clock := text, ""
	if i := strings.IndexAny(text, " T"); i > 0 {
		date, clock = text[:i], strings.TrimSpace(text[i+1:])
	} else if i := strings.IndexByte(text, ':'); i == 8 { // 20250131:1400
		date, clock = text[:i], text[i+1:]
	}
	minute, offset, ok := clockAndOffset(clock)
	digits := strings.NewReplacer("-", "", "/", "").Replace(date)
	n, err := strconv.ParseUint(digits, 10, 32)
	if !ok || err != nil || len(digits) != 8 {
		c.fail(Unexpected, l.at[colTime], text, "YYYY-MM-DD HH:MM")
		return
	}
	s.year, s.month, s.day = int(n/10000), int(n/100%100), int(n%100)
	if s.month < 1 || s.month > 12 || s.day < 1 || s.day > daysOf(s.month) {
		c.fail(OutOfRange, l.at[colTime], text, "YYYY-MM-DD HH:MM")
		return
	}
	s.tempAt = minute
	if !math.IsNaN(offset) {
		s.tempAt += (zone - offset) * 60 // may leave the day that is written
	}
}

// clockAndOffset reads 14:00, 14:00:00 or 1400, with Z, +01:00 or -0330 after it or
// not; offset is in hours, NaN where there is none.
func clockAndOffset(text string) (minute, offset float64, ok bool) {
	offset = missing
	if i := strings.LastIndexAny(text, "+-Z"); i > 0 {
		zone := text[i:]
		text = strings.TrimSpace(text[:i])
		offset = 0
		if zone != "Z" {
			m, ok := clockMinutes(colons(zone[1:]))
			if !ok {
				return 0, 0, false
			}
			offset = m / 60
			if zone[0] == '-' {
				offset = -offset
			}
		}
	}
	minute, ok = clockMinutes(colons(text))
	return minute, offset, ok
}

// colons puts one into four digits.
func colons(text string) string {
	if len(text) == 4 && !strings.Contains(text, ":") {
		return text[:2] + ":" + text[2:]
	}
	return text
}
