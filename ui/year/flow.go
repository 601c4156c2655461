package year

import (
	"math"
	"strings"

	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// flowNames is the energy flow in words.
func (c *Yearly) flowNames() string {
	names := c.Page.View.FlowNames(c.Page.Store)
	return strings.ReplaceAll(strings.Join(names[:], "; "), "\n", " ")
}

func (c *Yearly) flowCaption() string {
	if c.Page.View.FlowDay {
		return c.Page.T(words.FlowDay)
	}
	return c.flowTitle()
}

func (c *Yearly) flowOther() string {
	if c.Page.View.FlowDay {
		return c.Page.T(words.FlowShowYear)
	}
	return c.Page.T(words.FlowShowDay)
}

func (c *Yearly) turnFlow() { c.Page.View.FlowDay = !c.Page.View.FlowDay }

// flowTitle names what of sun and grid is lost most, else what reaches the tap.
func (c *Yearly) flowTitle() string {
	y, w := &c.Page.Store.Results.Year.Total, c.Page.View.Words
	in := y.SunJ + y.BoughtJ
	switch {
	case in == 0:
		return c.Page.T(words.FlowYear)
	case y.DisplacedJ > math.Max(y.LostJ, page.MuchWaits):
		return w.Text(words.FlowWaits, format.KWh(y.DisplacedJ, 0))
	case y.LostJ > in/5:
		return w.Text(words.FlowLost, format.KWh(y.LostJ, 0), format.KWh(in, 0))
	}
	return w.Text(words.FlowReach, format.KWh(y.DeliveredJ, 0), format.KWh(in, 0))
}
