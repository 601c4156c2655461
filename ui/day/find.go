package day

import (
	"math"

	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// findName is what the main button says: to look for better hours, or, where they are known
// already, what they would come to.
func (c *Day) findName() string {
	s, w := c.Page.Store, c.Page.View.Words
	better, known := c.Page.Better()
	if !known {
		return c.Page.T(words.FindHours)
	}
	now, tooMany := s.Results.Year.Total.CoolUses, s.Results.Year.Total.CoolUses > int32(s.Scenario.AcceptUses)
	amount := format.Money(math.Abs(better.Saves), s.Scenario.Currency)
	hours := c.Page.View.Hours(state.FirstWindow(better.Backup))
	switch {
	case !better.Worth:
		return c.Page.T(words.FindBest)
	case tooMany && better.CoolUses == 0 && better.Saves <= 0:
		return w.Text(words.FindEvery, amount)
	case tooMany && better.CoolUses == 0:
		return w.Text(words.FindEveryLess, amount)
	case better.Saves <= 0:
		return w.Text(words.FindCool, better.CoolUses, amount)
	case better.CoolUses > now:
		return w.Text(words.FindLessCool, hours, amount, better.CoolUses)
	}
	return w.Text(words.FindLess, hours, amount)
}

// sunWaits says that the day shown is worse than any of the year, else that the modules wait while
// the grid has the element, and what changes it.
func (c *Day) sunWaits() string {
	s := c.Page.Store
	if day := &s.Results.Day.Flows; day.CoolUses > 0 && s.Results.Year.Total.CoolUses == 0 {
		return c.Page.T(words.DayWorse)
	}
	waits := s.Results.Year.Total.DisplacedJ
	if waits < page.MuchWaits || s.Scenario.Rule != scenario.WholeWindow || !state.Applies(&s.Scenario, scenario.RuleBy) {
		return ""
	}
	return c.Page.View.Words.Text(words.SunWaits, format.KWh(waits, 0))
}

// Found ends the search for better hours and says what came of it.
func Found(c *page.Page) {
	f, ok := c.Store.EndFind()
	s, w := &c.Store.Scenario, c.View.Words
	hours := c.View.Hours(c.Store.Window(0))
	if was := c.Store.Reference(); was != nil { // as the figures say it
		f.Saved = format.Less(was.Cost, c.Store.Results.Year.Total.Cost, s.Currency)
	}
	switch {
	case !ok:
		c.FindNote = ""
		return
	case !f.Kept && f.Took:
		c.FindNote = w.Text(words.FoundFewest, hours, s.AcceptUses, f.CoolUses)
		return
	case !f.Took:
		c.FindNote = c.T(words.FoundNone)
		return
	case f.Saved >= 0 && f.CoolUses > f.Before:
		c.FindNote = w.Text(words.FoundLessCool, hours, format.Money(f.Saved, s.Currency), f.CoolUses)
	case f.Saved >= 0:
		c.FindNote = w.Text(words.FoundLess, hours, format.Money(f.Saved, s.Currency))
	default:
		c.FindNote = w.Text(words.FoundKeeps, hours, f.CoolUses, f.Before, format.Money(-f.Saved, s.Currency))
	}
	if f.FlatFrom != f.FlatTo {
		c.FindNote += " " + w.Text(words.FoundFlat, format.Clock(f.FlatFrom), format.Clock(f.FlatTo))
	}
}
