package day

import (
	"suncask/ui/page"
	"suncask/ui/words"
)

// Strip is the chart of the tank's day.
type Strip struct{ Page *page.Page }

// stripName says what the strip counts: litres, or showers of the household.
func (c *Strip) stripName() string {
	if c.Page.View.InShowers {
		return c.Page.T(words.StripShowers)
	}
	return c.Page.T(words.StripWater)
}

func (c *Strip) turnStrip() { c.Page.View.InShowers = !c.Page.View.InShowers }
