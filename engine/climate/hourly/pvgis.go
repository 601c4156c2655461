package hourly

import "strings"

// pvgis is the typical-year CSV of the European Commission's PVGIS: a few lines of
// header, then time(UTC), ... Its radiation is that of an instant, a fixed part of an
// hour after the stamp, and stands for the hour about it; universal time.
type pvgis struct {
	place  [3]float64 // latitude, longitude, elevation
	offset float64    // minutes after the stamp
	plain
}

func (*pvgis) name() string { return "PVGIS" }

func (l *pvgis) header(r *Reader, line string) *Error {
	key, value, _ := strings.Cut(line, ":")
	low := strings.ToLower(key)
	c := columns{field: []string{key, value}, names: []string{key, key}}
	switch {
	case strings.HasPrefix(low, "latitude"):
		l.place[0] = c.number(1, -90, 90)
	case strings.HasPrefix(low, "longitude"):
		l.place[1] = c.number(1, -180, 180)
	case strings.HasPrefix(low, "elevation"):
		l.place[2] = c.number(1, -430, 6000)
	case strings.HasPrefix(low, "irradiance time offset"):
		l.offset = c.number(1, -1, 1) * 60
	case strings.HasPrefix(low, "time"):
		if e := l.columns(line); e != nil {
			return e
		}
		l.stamp = instant
		return r.at(l.place[0], l.place[1], l.place[2], 0)
	}
	return c.err
}

func (l *pvgis) row(r *Reader, line string) *Error {
	// The legend after the last hour.
	if r.sum.rows >= 8760 && (line[0] < '0' || line[0] > '9') {
		return nil
	}
	s, e := l.sample(r, line)
	if e != nil {
		return e
	}
	s.start, s.length = s.tempAt+l.offset-30, 60
	return r.sum.add(s, r.line)
}
