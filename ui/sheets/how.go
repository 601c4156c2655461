package sheets

import (
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// How is the sheet that says how the day is read.
type How struct{ Page *page.Page }

// lines say how dial and strip are read.
func (c *How) lines() []string {
	return []string{c.legend(), c.Page.T(words.GripHelp), c.Page.T(words.StripHelp), c.Page.T(words.AheadHelp), c.Page.T(words.FindHelp), c.rule()}
}

// showMe closes the sheet and shows on the dial what it says.
func (c *How) showMe() {
	if c.Page.Place != page.DayPlace && c.Page.Wide == 0 {
		c.Page.GoTo(page.DayPlace)
	} else {
		c.Page.CloseSheet()
	}
	if c.Page.Host != nil {
		c.Page.Host.ShowMe()
	}
}

// legend explains the middle of the dial.
func (c *How) legend() string {
	list := ""
	for i, n := range dial.Rings(c.Page.Store.ShowerL(), c.Page.Store.Results.Day.FullL) {
		if i > 0 {
			list += ", "
		}
		list += format.Number(float64(n), 0)
	}
	text := c.Page.View.Words.Text(words.PoolLegend, list)
	if s := &c.Page.Store.Scenario; s.OutFrom != s.OutTo {
		text += " " + c.Page.View.Words.Text(words.OutagePart, format.Clock(s.OutFrom), format.Clock(s.OutTo))
	}
	return text
}

// rule says who has the element in the backup hours.
func (c *How) rule() string {
	s := &c.Page.Store.Scenario
	if !state.Applies(s, scenario.RuleBy) {
		return c.Page.T(words.RuleApart)
	}
	text := c.Page.View.Words.Fields[scenario.RuleBy]
	return text.Name + ": " + text.Choices[s.Rule] + "."
}
