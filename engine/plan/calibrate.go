package plan

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Calibration is what a meter's reading says of a house's showers.
type Calibration struct {
	Minutes  float64 // of a shower, with which the month's bought energy is nearest to the reading
	KWh      float64 // bought in that month then
	Possible bool    // the reading lies between the shortest and the longest shower
	Least    float64 // kWh with the shortest
	Most     float64 // kWh with the longest
}

// Showers between which a reading is fitted, minutes.
const shortestShower, longestShower = 1.0, 15.0

// Calibrate fits the minutes of a shower to what a meter says was bought in a month
// (0 to 11), kWh: longer showers buy more. For uses from habits.
func Calibrate(p *simulate.Prepared, file *climate.Record, month int, kWh float64, ws *simulate.Workspace) (c Calibration, err error) {
	y := new(simulate.Year)
	bought := func(minutes float64) float64 {
		s := p.Scenario
		s.ShowerMinutes = minutes
		q, e := simulate.Prepare(&s, file, p)
		if e != nil {
			err = e
			return 0
		}
		q.RunYear(s.Backup, ws, y)
		return y.Month[month].BoughtJ / simulate.JPerKWh
	}
	step := scenario.FieldOf(scenario.ShowerMinutes).Step
	c.Least, c.Most = bought(shortestShower), bought(longestShower)
	c.Possible = kWh >= c.Least && kWh <= c.Most
	low, high := 0, int((longestShower-shortestShower)/step)
	at := func(i int) float64 { return shortestShower + float64(i)*step }
	for high-low > 1 {
		if mid := (low + high) / 2; bought(at(mid)) <= kWh {
			low = mid
		} else {
			high = mid
		}
	}
	below, above := bought(at(low)), bought(at(high))
	c.Minutes, c.KWh = at(low), below
	if math.Abs(above-kWh) < math.Abs(below-kWh) {
		c.Minutes, c.KWh = at(high), above
	}
	return c, err
}
