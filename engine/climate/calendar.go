package climate

import "suncask/engine/solar"

// Days and hours of the calculation's year. Every year has 365 days; sun
// positions are those of refYear.
const (
	Days    = 365
	Hours   = Days * 24
	refYear = 2026
)

// DaysIn are the days of the months.
var DaysIn = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// averageDay is each month's day whose extraterrestrial irradiation is nearest
// the month's mean, as day of the month. Klein 1977.
var averageDay = [12]int{17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10}

// FirstDay returns the day of the year, from 0, on which a month (0-11) starts.
func FirstDay(month int) int {
	day := 0
	for _, n := range DaysIn[:month] {
		day += n
	}
	return day
}

// MonthOf returns the month (0-11) of a day of the year (0-364).
func MonthOf(day int) int {
	for m, n := range DaysIn {
		if day < n {
			return m
		}
		day -= n
	}
	return 11
}

// AverageDay returns the day of the year, from 0, that stands for a month (0-11).
func AverageDay(month int) int { return FirstDay(month) + averageDay[month] - 1 }

// julian0 is the Julian day of 0 h of a day of the year.
func julian0(day int) float64 { return solar.JulianDay(refYear, 1, 1+day, 0) }

// Clock is a place's local clock. From and To are days of the year from 0: on days
// from From to the one before To, across the year's end if To comes first, the clock
// is ShiftH ahead of its standard; equal days mean no summer time.
type Clock struct {
	OffsetH  float64 // of the standard clock from UTC
	ShiftH   float64
	From, To int
}

// Summer time where a place's own dates are not known: from the last Sunday of March
// to the last of October in the north, from the first Sunday of October to the first
// of April in the south, in refYear. Countries differ by up to three weeks.
const (
	northStart, northEnd = 87, 297
	southStart, southEnd = 276, 94
)

// clockOf gives a place its summer time by hemisphere.
func clockOf(offsetH, shiftH, latDeg float64) Clock {
	c := Clock{OffsetH: offsetH, ShiftH: shiftH}
	switch {
	case shiftH == 0:
	case latDeg < 0:
		c.From, c.To = southStart, southEnd
	default:
		c.From, c.To = northStart, northEnd
	}
	return c
}

// At returns local clock less UTC on a day of the year (0-364). A day of change uses
// one offset from midnight to midnight.
func (c Clock) At(day int) float64 {
	summer := day >= c.From && day < c.To
	if c.To < c.From {
		summer = day >= c.From || day < c.To
	}
	if summer {
		return c.OffsetH + c.ShiftH
	}
	return c.OffsetH
}
