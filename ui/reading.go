package ui

import (
	"suncask/ui/advice"
	"suncask/ui/house"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/year"
)

// ReadCharts are the charts with a reading.
func ReadCharts() []string { return []string{"year", "cash", "lengths", "climate"} }

// readable are what can be read of a chart.
func readable(c *page.Page, chart string) parts.Items {
	switch chart {
	case "year":
		return year.ReadMonths(c)
	case "cash":
		return year.ReadCash(c)
	case "lengths":
		return advice.ReadLengths(c)
	case "climate":
		return house.ReadClimate(c)
	}
	return parts.Items{}
}

// ReadNear reads the item of a chart that is nearest to a place across.
func ReadNear(c *page.Page, chart string, x float64) { c.Reads[chart] = readable(c, chart).Near(x) }

// ReadAt is where across a chart the item is that is read; ok is false where it has none.
func ReadAt(c *page.Page, chart string) (x float64, ok bool) {
	r := readable(c, chart)
	if len(r.Across) == 0 {
		return 0, false
	}
	return r.Across[r.Read(c, chart)], true
}
