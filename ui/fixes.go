package ui

import (
	"math"
	"strconv"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Fixes lists changes that make the house better, each to be taken at once.
type Fixes struct{ Page *Page }

// fixes are those tried for a scenario.
type fixes struct {
	of   scenario.Scenario
	list []plan.Fix
}

func (c *Fixes) try() {
	s := c.Page.Store
	c.Page.fixes = fixes{s.Scenario, s.Fixes()}
}

// list are the fixes of the present house, as far as they were tried.
func (c *Fixes) list() []plan.Fix {
	if f := &c.Page.fixes; f.of == c.Page.Store.Scenario {
		return f.list
	}
	return nil
}

// note says what came of it.
func (c *Fixes) note() string {
	f := &c.Page.fixes
	switch {
	case f.of != c.Page.Store.Scenario:
		return ""
	case len(f.list) == 0:
		return c.Page.T(words.FixesNone)
	}
	return c.Page.T(words.FixesHelp)
}

func (c *Fixes) text(f plan.Fix) string {
	w, to := c.Page.View.Words, &f.To
	number := format.Input
	hours := c.Page.View.Hours(dial.Window{Start: to.Backup.Start, End: to.Backup.End, AllDay: to.Backup.AllDay})
	change := w.Change(f.Change, hours, number(to.RescueL), w.Fields[scenario.RuleBy].Choices[to.Rule], number(to.ShowerFlow),
		number(to.SunLimitC), number(to.SetC), strconv.Itoa(to.Modules), number(to.TankLitres))
	key := words.FixLess
	if f.Saves < 0 {
		key = words.FixMore
	}
	text := w.Text(key, change, format.Money(math.Abs(f.Saves), to.Currency), f.Year.CoolUses)
	for _, brings := range f.Brings {
		text += " " + w.Text(words.FixBrings, w.Finding(brings))
	}
	return text
}

func (c *Fixes) apply(f plan.Fix) {
	c.Page.Store.Apply(&f)
	c.Page.changed()
}
