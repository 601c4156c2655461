package house

import (
	"math"

	"suncask/ui/page"
	"suncask/ui/words"
)

// play lets the day pass, from midnight once it is over, or stops it.
func play(c *page.Page) {
	c.Playing = !c.Playing && c.Host != nil
	if c.TankMinute >= 1440 {
		c.TankMinute = 0
	}
	if c.Playing {
		c.Host.Play()
	}
}

// Tick lets a quarter of an hour pass; false where the day is over, or nobody looks.
func Tick(c *page.Page) bool {
	if c.Playing = c.Playing && c.TankMinute < 1440 && c.Shows(page.TankPanel); c.Playing {
		c.TankMinute += 15
	}
	return c.Playing
}

// ShowTank shows the tank at the minute of the day that was tapped, to a quarter of an
// hour.
func ShowTank(c *page.Page, minute float64) {
	c.TankMinute = int(math.Round(minute/15)) * 15
	c.Show(page.TankPanel)
	c.Reveal("tank-hour")
}

func (c *Cutaway) play() { play(c.Page) }

func (c *Cutaway) playName() string {
	if c.Page.Playing {
		return c.Page.T(words.JobStop)
	}
	return c.Page.T(words.TankPlay)
}
