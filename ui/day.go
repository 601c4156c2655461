package ui

import (
	"suncask/engine/scenario"
	"suncask/ui/words"
)

func (c *Page) month() string {
	if day, ok := c.Store.RealDay(); ok {
		return c.date(day)
	}
	return c.View.Words.Months[c.Store.Scenario.Month]
}

// dayShown names the day on the dial: a real one, or a month's under its sky.
func (c *Page) dayShown() string {
	if _, real := c.Store.RealDay(); real {
		return c.month()
	}
	return c.month() + ", " + c.View.Words.Fields[scenario.SkyKind].Choices[c.Store.Scenario.Sky]
}

// underSky tells whether the day shown is a month's under that sky.
func (c *Page) underSky(i int) bool {
	_, real := c.Store.RealDay()
	return !real && int(c.Store.Scenario.Sky) == i
}

func (c *Page) turnMonth(by int) {
	c.Store.Choose(scenario.Month, (int(c.Store.Scenario.Month)+by+12)%12)
	c.changed()
}

func (c *Page) dayNote() string {
	if c.Store.Results.Day.Varies {
		return c.T(words.AsIfEveryDay) + "; " + c.T(words.VariesDaily)
	}
	return c.T(words.AsIfEveryDay)
}
