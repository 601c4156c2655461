package ui

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/words"
)

// findName is what the main button says: to look for better hours, or, where they are known
// already, what they would come to.
func (c *Page) findName() string {
	s, w := c.Store, c.View.Words
	better, ok := s.Better()
	if !ok || s.Before != nil {
		return c.T(words.FindHours)
	}
	now, accept := &s.Results.Year.Total, int32(s.Scenario.AcceptUses)
	saved := format.Less(now.Cost, better.Cost, s.Scenario.Currency)
	amount := format.Money(math.Abs(saved), s.Scenario.Currency)
	hours := c.View.Hours(dial.Window{Start: better.Backup.Start, End: better.Backup.End, AllDay: better.Backup.AllDay})
	switch {
	case now.CoolUses > accept && better.CoolUses == 0 && saved <= 0:
		return w.Text(words.FindEvery, amount)
	case now.CoolUses > accept && better.CoolUses == 0:
		return w.Text(words.FindEveryLess, amount)
	case now.CoolUses > accept && better.CoolUses < now.CoolUses && saved <= 0:
		return w.Text(words.FindCool, better.CoolUses, amount)
	case saved > 0 && better.CoolUses <= max(accept, now.CoolUses):
		return w.Text(words.FindLess, hours, amount)
	}
	return c.T(words.FindBest)
}

// muchWaits is how much of the sun must wait for the grid to be worth a word, a year.
const muchWaits = 100 * simulate.JPerKWh

// sunWaits says that the modules wait while the grid has the element, and what changes it.
func (c *Page) sunWaits() string {
	s := c.Store
	waits := s.Results.Year.Total.DisplacedJ
	if waits < muchWaits || s.Scenario.Rule != scenario.WholeWindow || !shown(&s.Scenario, scenario.RuleBy) {
		return ""
	}
	return c.View.Words.Text(words.SunWaits, kWh(waits, 0))
}
