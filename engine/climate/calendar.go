package climate

import (
	"strconv"
	"strings"

	"suncask/engine/solar"
)

// Days and hours of the calculation's year. Every year has 365 days; sun
// positions are those of RefYear.
const (
	Days    = 365
	Hours   = Days * 24
	RefYear = 2026
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
func julian0(day int) float64 { return solar.JulianDay(RefYear, 1, 1+day, 0) }

// Clock is a place's local clock. From and To are days of the year from 0: on days
// from From to the one before To, across the year's end if To comes first, the clock
// is ShiftH ahead of its standard; equal days mean no summer time.
type Clock struct {
	OffsetH  float64 // of the standard clock from UTC
	ShiftH   float64
	From, To int
}

// readSummer reads a clock's summer time as the table of places has it: nothing, or first
// day and first day after as MMDD-MMDD, + its hours where they are not one.
func readSummer(text string) (c Clock, ok bool) {
	if text == "" {
		return c, true
	}
	dates, hours, more := strings.Cut(text, "+")
	c.ShiftH = 1
	if more {
		v, err := strconv.ParseFloat(hours, 64)
		if err != nil {
			return c, false
		}
		c.ShiftH = v
	}
	from, to, _ := strings.Cut(dates, "-")
	var ok1, ok2 bool
	c.From, ok1 = ReadDate(from)
	c.To, ok2 = ReadDate(to)
	return c, ok1 && ok2 && c.From != c.To
}

// ReadDate reads MMDD as a day of the year, from 0; ok is false for anything else.
func ReadDate(text string) (day int, ok bool) {
	n, err := strconv.ParseUint(text, 10, 16)
	if err != nil || len(text) != 4 {
		return 0, false
	}
	m, d := int(n/100), int(n%100)
	if m < 1 || m > 12 || d < 1 || d > DaysIn[m-1] {
		return 0, false
	}
	return FirstDay(m-1) + d - 1, true
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
