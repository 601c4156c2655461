package advice

import (
	"math"

	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Hours is what the best hours would come to, beside the house's own, once a worker knows them.
type Hours struct{ Page *page.Page }

func (c *Hours) some() bool {
	b, known := c.Page.Better()
	return known && b.Worth
}

// title says what they would cost, and how much less or more that is.
func (c *Hours) title() string {
	b, _ := c.Page.Better()
	money := func(v float64) string { return format.Money(v, c.Page.Store.Scenario.Currency) }
	key := words.HoursLess
	if b.Saves < 0 {
		key = words.HoursMore
	}
	return c.Page.View.Words.Text(key, c.hours(), money(b.Cost), money(math.Abs(b.Saves)))
}

func (c *Hours) cool() string {
	b, _ := c.Page.Better()
	return c.Page.View.Words.Text(words.GainCool, b.CoolUses)
}

// best is their window.
func (c *Hours) best() dial.Window {
	b, _ := c.Page.Better()
	return state.FirstWindow(b.Backup)
}

func (c *Hours) hours() string { return c.Page.View.Hours(c.best()) }

// bar is a day of 24 hours with a window's staves, as a path in a picture 240 wide.
type bar struct{ name, class, d string }

func (c *Hours) bars() []bar {
	return []bar{
		{c.Page.T(words.HoursYours), "hours-yours", staves(c.Page.Store.Window(0))},
		{c.Page.T(words.HoursBest), "hours-best", staves(c.best())},
	}
}

// staves draws a window; one over midnight in two parts.
func staves(w dial.Window) string {
	part := func(from, to int) string {
		return "M" + format.Length(float64(from)/6) + " 0H" + format.Length(float64(to)/6) + "v16H" + format.Length(float64(from)/6) + "z"
	}
	switch {
	case w.AllDay:
		return part(0, dial.DayMinutes)
	case w.Length() == 0:
		return ""
	case w.End < w.Start:
		return part(0, w.End) + part(w.Start, dial.DayMinutes)
	}
	return part(w.Start, w.End)
}

func (c *Hours) button() string { return c.Page.View.Words.Text(words.HoursTry, c.hours()) }
