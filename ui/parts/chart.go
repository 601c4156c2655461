package parts

import (
	"suncask/ui/page"
)

// Chart is a chart with its legend, its words for those who cannot see it, and a button
// that saves it as a picture.
type Chart struct {
	Page   *page.Page
	ID     string
	Legend []Legend
	Twin   string
}

// Legend names a line or bars of a chart in its colour.
type Legend struct{ Class, Text string }

func (c *Chart) class() string { return "chart chart-" + c.ID }
