package climate

// joinedMeans returns the mid-month values whose straight joins have those monthly
// means.
func joinedMeans(mean [12]float64) (nodes [12]float64) {
	nodes = mean
	for range 60 {
		var year [Days]float64
		for day := range year {
			year[day] = joined(&nodes, day)
		}
		for m, v := range MonthMeans(&year) {
			nodes[m] += mean[m] - v
		}
	}
	return nodes
}

// joined is the value of straight lines between mid-month nodes on a day.
func joined(nodes *[12]float64, day int) float64 {
	m := MonthOf(day)
	pos := (float64(day-FirstDay(m)) + 0.5) / float64(DaysIn[m])
	if pos > 0.5 {
		return nodes[m]*(1.5-pos) + nodes[(m+1)%12]*(pos-0.5)
	}
	return nodes[m]*(0.5+pos) + nodes[(m+11)%12]*(0.5-pos)
}
