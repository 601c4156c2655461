package page

import (
	"suncask/engine/explain"
	"suncask/ui/state"
)

// Place is a part of the page: all stand side by side on a wide screen, one is shown at a time
// on a phone.
type Place int8

// The places, in the order of their buttons.
const (
	DayPlace Place = iota
	HousePlace
	YearPlace
	AdvicePlace
)

// Sheet is what lies over the page.
type Sheet int8

// The sheets.
const (
	NoSheet Sheet = iota
	MenuSheet
	HowSheet
	FigureSheet
	HousesSheet
	sheetCount
)

// openers are the buttons by which sheets are opened.
var openers = map[Sheet]string{MenuSheet: "menu", HowSheet: "how", FigureSheet: "figure-cost", HousesSheet: "house"}

// Sees tells whether a place is on the screen: on a phone the one chosen, beside the day on a
// tablet, all of them where it is wide.
func (c *Page) Sees(p Place) bool {
	if (c.Hides() || c.Stage()) && (p == YearPlace || p == AdvicePlace) {
		return false
	}
	return c.Wide == 2 || c.Printing || c.Place == p || c.Wide == 1 && p == HousePlace && c.Place == DayPlace
}

// SeesVisit tells whether the parts of a visit are on the screen.
func (c *Page) SeesVisit() bool { return c.Store.Entry == state.Visit && c.Sees(HousePlace) }

// GoTo shows a place; the browser's Back returns.
func (c *Page) GoTo(p Place) {
	if c.Place == p && c.Over == NoSheet {
		return
	}
	c.Place, c.Over, c.SinceSeen = p, NoSheet, c.Store.Since
	c.went(true)
}

// OpenSheet lays a sheet over the page; the browser's Back takes it away.
func (c *Page) OpenSheet(s Sheet) {
	if s == FigureSheet && c.Hides() {
		return
	}
	c.Over = s
	c.went(false)
	c.Reveal("over")
}

// CloseSheet takes it away, if there is one; the focus is back where it was opened.
func (c *Page) CloseSheet() {
	if c.Over == NoSheet {
		return
	}
	from := openers[c.Over]
	c.Over = NoSheet
	c.went(false)
	c.Reveal(from)
}

// Return shows a place and a sheet that the browser's Back or Forward came to.
func (c *Page) Return(p Place, s Sheet) {
	if p < DayPlace || p > AdvicePlace || s < NoSheet || s >= sheetCount {
		return
	}
	switch {
	case s != NoSheet:
		c.Reveal("over")
	case c.Over != NoSheet:
		c.Reveal(openers[c.Over])
	}
	c.Place, c.Over = p, s
}

// went tells the browser's history of the place and sheet that are shown now.
func (c *Page) went(top bool) {
	c.Printing = false // where the browser never said that it had printed
	if c.Host != nil {
		c.Host.Went(top)
	}
}

// Reveal brings an element into sight once the page is rendered.
func (c *Page) Reveal(id string) {
	if c.Host != nil {
		c.Host.Reveal(id)
	}
}

// Explain opens a figure of the year, or of the day shown.
func (c *Page) Explain(q explain.Quantity) {
	c.Explained, c.ExplainedAt = q, explain.Year
	c.OpenSheet(FigureSheet)
}

// AskMine begins the questions that make the house somebody's own.
func (c *Page) AskMine() {
	c.Question, c.Panel = 0, ""
	c.Reveal("ask")
}
