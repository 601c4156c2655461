package ui

import (
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// house names whose house is shown, or the way in by which one works on it.
func (c *Root) house() string {
	switch c.Page.Store.Entry {
	case state.Visit:
		return c.Page.T(words.EntryVisit)
	case state.Lesson:
		return c.Page.T(words.EntryLesson)
	}
	if c.Page.Store.Example() {
		return c.Page.T(words.ExampleHouse)
	}
	return c.Page.T(words.YourHouse)
}

func (c *Root) houseLine() string {
	if c.Page.Store.Example() {
		return c.Page.T(words.ExampleMine)
	}
	s := &c.Page.Store.Scenario
	p, _ := s.At()
	f := scenario.FieldOf(scenario.TankLitres)
	return p.Name + ", " + c.Page.View.Words.Text(words.HouseIn, format.Value(f, s.TankLitres), s.AllModules())
}

// change asks whose house it is, or opens the houses, from the header.
func (c *Root) change() {
	if c.Page.Store.Example() {
		c.Page.AskMine()
		return
	}
	c.Page.OpenSheet(page.HousesSheet)
}

func (c *Root) share() {
	c.Page.Copied = false
	if c.Page.Host != nil {
		c.Page.LinkShown = c.Page.Host.Share(func() { c.Page.Copied = true })
	}
}

// redoClass hides the button where there is nothing to make again. It stays in the document, so that
// the one beside it keeps its place and its focus.
func (c *Root) redoClass() string {
	if c.Page.Store.CanRedo() {
		return "ib"
	}
	return "none"
}
