package climate

import "math"

// ColdWater returns the temperature of the water main on a day of the year
// (0-364), degC, never below 1 degC. Burch & Christensen 2007, in degF:
//
//	T = T_avg + 6 + R (dT/2) sin(0.986 (day - 15 - lag) - 90)    (degrees; + 90 in the south)
//	R = 0.4 + 0.01 (T_avg - 44),  lag = 35 - (T_avg - 44)
//
// with the yearly mean T_avg of the air and the difference dT of its warmest and
// coldest month. Its data are from the United States; in hot lands it reads high.
func ColdWater(meanC, swingK float64, south bool, day int) float64 {
	avg := meanC*1.8 + 32
	ratio := 0.4 + 0.01*(avg-44)
	lag := 35 - (avg - 44)
	phase := -90.0
	if south {
		phase = 90
	}
	angle := 0.986*(float64(day+1)-15-lag) + phase
	f := avg + 6 + ratio*swingK*1.8/2*math.Sin(angle*math.Pi/180)
	return math.Max(1, (f-32)/1.8)
}

// coldYear returns the cold water of every day: after Burch & Christensen for this
// place's air, with the months that are known instead of their means.
func (p *Place) coldYear() (year [Days]float64) {
	mean, low, high := 0.0, math.Inf(1), math.Inf(-1)
	for m, t := range p.TempC {
		mean += t * float64(DaysIn[m]) / Days
		low, high = math.Min(low, t), math.Max(high, t)
	}
	for day := range year {
		year[day] = ColdWater(mean, high-low, p.LatDeg < 0, day)
	}
	if p.Cold.Known == [12]bool{} {
		return year
	}
	nodes := joinedMeans(p.Cold.Over(MonthMeans(&year)))
	for day := range year {
		year[day] = joined(&nodes, day)
	}
	return year
}

// MonthMeans are the monthly means of daily values.
func MonthMeans(year *[Days]float64) (mean [12]float64) {
	for day, v := range year {
		m := MonthOf(day)
		mean[m] += v / float64(DaysIn[m])
	}
	return mean
}
