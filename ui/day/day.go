// Package day is the place of the day: the dial with its hours, the strip of the tank's day, the
// uses, and above them what the year comes to.
package day

import (
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/words"
)

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Day is the place, with what the year comes to above it.
type Day struct{ Page *page.Page }

func (c *Day) turnMonth(by int) {
	c.Page.Store.Choose(scenario.Month, (int(c.Page.Store.Scenario.Month)+by+12)%12)
	c.Page.Changed()
}

// underSky tells whether the day shown is a month's under that sky.
func (c *Day) underSky(i int) bool {
	_, real := c.Page.Store.RealDay()
	return !real && int(c.Page.Store.Scenario.Sky) == i
}

func (c *Day) dayNote() string {
	if c.Page.Store.Results.Day.Varies {
		return c.Page.T(words.AsIfEveryDay) + "; " + c.Page.T(words.VariesDaily)
	}
	return c.Page.T(words.AsIfEveryDay)
}

func skyID(sky int) string { return "sky-" + scenario.FieldOf(scenario.SkyKind).Choices[sky] }

// cautions says how many things there are to be minded, notes aside.
func (c *Day) cautions() string {
	n := c.Page.Minds()
	switch n {
	case 0:
		return c.Page.T(words.CareNone)
	case 1:
		return c.Page.T(words.CareOne)
	}
	return c.Page.View.Words.Text(words.CareCount, n)
}
