package parts

import (
	"math"

	"suncask/ui/page"
)

// Reading reads an item of a chart: what tells most, until somebody chooses another by a tap on
// the chart or by its buttons.
type Reading struct {
	Page  *page.Page
	Of    string // the chart
	Items Items
}

// Items are what can be read of a chart: its items by their places across, which of them tells
// most, and what is said of one.
type Items struct {
	Across []float64
	Tells  int
	Says   func(i int) string
}

// Months are items of the twelve months.
func Months(tells int, says func(month int) string) (r Items) {
	for m := range 12 {
		r.Across = append(r.Across, float64(m+1))
	}
	r.Tells, r.Says = tells, says
	return r
}

// Read is which item of a chart is read.
func (r Items) Read(c *page.Page, chart string) int {
	if i, chosen := c.Reads[chart]; chosen && i < len(r.Across) {
		return i
	}
	return r.Tells
}

// Near is the item that is nearest to a place across.
func (r Items) Near(x float64) (near int) {
	for i := range r.Across {
		if math.Abs(r.Across[i]-x) < math.Abs(r.Across[near]-x) {
			near = i
		}
	}
	return near
}

func (c *Reading) id(part string) string { return "read-" + c.Of + "-" + part }

func (c *Reading) says() string {
	if len(c.Items.Across) == 0 {
		return ""
	}
	return c.Items.Says(c.Items.Read(c.Page, c.Of))
}

func (c *Reading) turn(by int) {
	if n := len(c.Items.Across); n > 0 {
		c.Page.Reads[c.Of] = (c.Items.Read(c.Page, c.Of) + by + n) % n
	}
}
