package advice

import (
	"math"

	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Hours is what the best hours would come to, beside the house's own, once a worker knows them.
type Hours struct{ Page *page.Page }

// better are the best hours; ok is false where they are not known, or no better.
func (c *Hours) better() (w dial.Window, cost float64, cool int32, ok bool) {
	s := c.Page.Store
	b, ok := s.Better()
	if !ok || s.Before != nil {
		return w, 0, 0, false
	}
	now := &s.Results.Year.Total
	w = dial.Window{Start: b.Backup.Start, End: b.Backup.End, AllDay: b.Backup.AllDay}
	keeps := b.CoolUses <= max(int32(s.Scenario.AcceptUses), now.CoolUses)
	return w, b.Cost, b.CoolUses, b.CoolUses < now.CoolUses && now.CoolUses > int32(s.Scenario.AcceptUses) || keeps && b.Cost < now.Cost
}

func (c *Hours) some() bool {
	_, _, _, ok := c.better()
	return ok
}

// title says what they would cost, and how much less or more that is.
func (c *Hours) title() string {
	s, w := c.Page.Store, c.Page.View.Words
	window, cost, _, _ := c.better()
	money := func(v float64) string { return format.Money(v, s.Scenario.Currency) }
	less := format.Less(s.Results.Year.Total.Cost, cost, s.Scenario.Currency)
	key := words.HoursLess
	if less < 0 {
		key = words.HoursMore
	}
	return w.Text(key, c.Page.View.Hours(window), money(cost), money(math.Abs(less)))
}

func (c *Hours) cool() string {
	_, _, cool, _ := c.better()
	return c.Page.View.Words.Text(words.GainCool, cool)
}

// bar is a day of 24 hours with a window's staves, as a path in a picture 240 wide.
type bar struct{ name, class, d string }

func (c *Hours) bars() []bar {
	best, _, _, _ := c.better()
	return []bar{
		{c.Page.T(words.HoursYours), "hours-yours", staves(c.Page.Store.Window(0))},
		{c.Page.T(words.HoursBest), "hours-best", staves(best)},
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

func (c *Hours) take() {
	if c.Page.Host != nil {
		c.Page.Host.Find()
	}
}

func (c *Hours) button() string {
	w, _, _, _ := c.better()
	return c.Page.View.Words.Text(words.HoursTry, c.Page.View.Hours(w))
}
