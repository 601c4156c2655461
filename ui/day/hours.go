package day

import (
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/page"
)

// grips are the indices of the grips: two for each window.
func grips(c *page.Page) []int {
	return []int{0, 1, 2, 3}[:2*len(c.Store.Windows())]
}

func timeID(grip int) string { return "time-" + strconv.Itoa(grip) }

func (c *Day) typedEdge(event vugu.DOMEvent, grip int) {
	c.Page.Store.TypeEdge(grip/2, dial.Part(grip%2), event.PropString("target", "value"))
	c.Page.Changed()
}

// hoursProblem is the sentence about a typed time, empty if it was good.
func (c *Day) hoursProblem() string {
	if text := c.Page.Problem(scenario.BackupHours); text != "" {
		return text
	}
	return c.Page.Problem(scenario.SecondHours)
}
