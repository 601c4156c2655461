package house

import (
	"math"
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Waiting says after how much backup the first shower is ready, from what somebody finds in the
// tank now or knows to have used.
type Waiting struct{ Page *page.Page }

// usedMost is the most that may have been used, in litres of the tank.
const usedMost = 2

func (c *Waiting) bounds() (least, most int) {
	s := c.Page.Store
	if c.Page.Wait.ByUse {
		return 1, int(usedMost * s.Prepared.Litres())
	}
	return int(math.Ceil(s.ColdC())), int(s.Scenario.SetC)
}

func (c *Waiting) least() string { least, _ := c.bounds(); return strconv.Itoa(least) }

func (c *Waiting) most() string { _, most := c.bounds(); return strconv.Itoa(most) }

// at is what was found, within what is possible in this house.
func (c *Waiting) at() int {
	least, most := c.bounds()
	found := c.Page.Wait.TempC
	if c.Page.Wait.ByUse {
		found = c.Page.Wait.UsedL
	}
	return max(least, min(most, found))
}

func (c *Waiting) value() string { return strconv.Itoa(c.at()) }

func (c *Waiting) label() string {
	if c.Page.Wait.ByUse {
		return c.Page.View.Words.Text(words.WaitUsed, format.In(scenario.Litre, float64(c.at()), 0))
	}
	return c.Page.View.Words.Text(words.WaitTemp, format.Degrees(float64(c.at())))
}

func (c *Waiting) turn(event vugu.DOMEvent) {
	v, err := strconv.Atoi(event.PropString("target", "value"))
	switch least, most := c.bounds(); {
	case err != nil || v < least || v > most:
	case c.Page.Wait.ByUse:
		c.Page.Wait.UsedL = v
	default:
		c.Page.Wait.TempC = v
	}
}

func (c *Waiting) wait() string {
	left := simulate.Left{TempC: float64(c.at())}
	if c.Page.Wait.ByUse {
		left = simulate.Left{UsedL: float64(c.at())}
	}
	s, w := c.Page.Store, c.Page.View.Words
	switch minutes, ok := s.ReadyAfter(left); {
	case !ok:
		return w.Text(words.WaitNever)
	case minutes == 0:
		return w.Text(words.WaitNow)
	default:
		return w.Text(words.WaitReady, format.Duration(int(minutes)), format.Number(minutes/60*s.Prepared.BackupW()/1000, 1))
	}
}
