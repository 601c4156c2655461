package hourly

import "strings"

// epw is the EnergyPlus weather format (EnergyPlus Auxiliary Programs, weather data
// dictionary): eight lines of header, 35 columns. Radiation is that of the time
// before the stamp, temperature that at the stamp; no summer time.
type epw struct {
	lines   int
	perHour int
	place   [4]float64 // latitude, longitude, zone, elevation
}

var epwNames = strings.Split("year,month,day,hour,minute,flags,dry bulb,dew point,humidity,pressure,"+
	"extraterrestrial horizontal,extraterrestrial normal,infrared,global horizontal,direct normal,diffuse horizontal", ",")

func (*epw) name() string { return "EPW" }

func (l *epw) header(r *Reader, line string) *Error {
	l.lines++
	c := cut(line, ",", nil)
	switch l.lines {
	case 1:
		c.names = strings.Split("LOCATION,city,region,country,source,WMO,latitude,longitude,time zone,elevation", ",")
		l.place = [4]float64{c.number(6, -90, 90), c.number(7, -180, 180), c.number(8, -14, 14), c.number(9, -430, 6000)}
		return c.err
	case 8:
		l.perHour = 1
		if strings.EqualFold(c.text(0), "DATA PERIODS") {
			c.names = strings.Split("DATA PERIODS,periods,records per hour", ",")
			l.perHour = c.whole(2, 1, 60)
			if c.err == nil && 60%l.perHour != 0 {
				c.fail(OutOfRange, 2, c.text(2), "a divisor of 60")
			}
		} else {
			return &Error{Code: Unexpected, Got: line, Column: 1, Want: "DATA PERIODS"}
		}
		if c.err != nil {
			return c.err
		}
		return r.at(l.place[0], l.place[1], l.place[3], l.place[2])
	}
	return nil
}

func (l *epw) row(r *Reader, line string) *Error {
	c := cut(line, ",", epwNames)
	s := sample{year: c.whole(0, 0, 9999), month: c.whole(1, 1, 12)}
	s.day = c.whole(2, 1, daysOf(s.month))
	s.length = 60 / float64(l.perHour)
	hour := c.whole(3, 1, 24)
	end := float64(hour) * 60
	if l.perHour > 1 {
		if minute := c.whole(4, 0, 60); minute > 0 {
			end = float64(hour-1)*60 + float64(minute)
		}
	}
	s.start, s.tempAt = end-s.length, end
	s.airC = c.air(6)
	s.global, s.direct, s.diff = c.light(13, 9999, &r.sum.clipped), c.light(14, 9999, &r.sum.clipped), c.light(15, 9999, &r.sum.clipped)
	if c.err != nil {
		return c.err
	}
	return r.sum.add(s, r.line)
}

// daysOf is a month's length with a leap day.
func daysOf(month int) int {
	switch month {
	case 2:
		return 29
	case 4, 6, 9, 11:
		return 30
	}
	return 31
}
