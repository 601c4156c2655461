// Package calendar draws the days of a year as a picture: months downward, days to the
// right, shaded by what was bought, struck where a use ran cool.
package calendar

import (
	"math"
	"strconv"

	"suncask/engine/climate"
	"suncask/engine/simulate"
)

// Size of the picture: cells, with room for the months' names.
const (
	CellWide = 9
	CellHigh = 16
	Left     = 40
	Top      = 16
	Width    = Left + 31*CellWide + 4
	Height   = Top + 12*CellHigh + 2
)

// Levels of what a day buys: nothing, and quarters of the most.
const Levels = 5

// Bought are the days of each level, as SVG paths.
func Bought(y *simulate.Year) (paths [Levels]string) {
	most := Most(y)
	for day := range y.Day {
		x, top := corner(day)
		level := 0
		if bought := y.Day[day].BoughtJ; bought > 0 && most > 0 {
			level = max(1, min(Levels-1, int(math.Ceil(bought/most*(Levels-1)))))
		}
		paths[level] += "M" + strconv.Itoa(x) + " " + strconv.Itoa(top) + "h8v14h-8z"
	}
	return paths
}

// Cool is a stroke across each day on which a use ran cool.
func Cool(y *simulate.Year) (path string) {
	for day := range y.Day {
		if y.Day[day].CoolUses > 0 {
			x, top := corner(day)
			path += "M" + strconv.Itoa(x+1) + " " + strconv.Itoa(top+13) + "l6 -12"
		}
	}
	return path
}

// Most is what the day of most buys, J.
func Most(y *simulate.Year) (most float64) {
	for day := range y.Day {
		most = math.Max(most, y.Day[day].BoughtJ)
	}
	return most
}

// corner is a day's upper left.
func corner(day int) (x, y int) {
	m := climate.MonthOf(day)
	return Left + (day-climate.FirstDay(m))*CellWide, Top + m*CellHigh
}

// DayAt is the day (0 to 364) at a point of the picture; ok is false beside them.
func DayAt(x, y float64) (day int, ok bool) {
	m, d := int(math.Floor((y-Top)/CellHigh)), int(math.Floor((x-Left)/CellWide))
	if m < 0 || m > 11 || d < 0 || d >= climate.DaysIn[m] {
		return 0, false
	}
	return climate.FirstDay(m) + d, true
}

// Ring is the outline of a day.
func Ring(day int) string {
	x, y := corner(day)
	return "M" + strconv.Itoa(x-1) + " " + strconv.Itoa(y-1) + "h10v16h-10z"
}
