// Package house is the place of the inputs: a card for each group of them, with the pictures that
// belong to it.
package house

import (
	"slices"

	"suncask/engine/care"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

//go:generate go tool vugugen -skip-go-mod -skip-main .

// House shows the inputs as cards, each with its content in one line, one open at a time.
type House struct{ Page *page.Page }

// tabs are the cards of the entry.
func (c *House) tabs() (list []int) {
	for i := range panels {
		if entry := panels[i].entry; entry == state.Home || entry == c.Page.Store.Entry {
			list = append(list, i)
		}
	}
	return list
}

func (c *House) class(i int) string {
	if c.Page.Shows(panels[i].id) {
		return "card open"
	}
	return "card"
}

// turn opens a card, or closes it; one is open at a time.
func (c *House) turn(i int) {
	id := panels[i].id
	switch {
	case c.Page.Shows(id):
		id = ""
	case c.Page.Panel != "": // it closes above, and this one moves
		c.Page.Reveal(id)
	}
	c.Page.Panel, c.Page.More, c.Page.Question = id, false, -1
	c.Page.Visit.Part = page.NoPart
}

// inviteClass hides the invitation once the house is somebody's. It stays in the document, so
// that a box that has the focus keeps its place.
func (c *House) inviteClass() string {
	if c.Page.Store.Example() {
		return "invite"
	}
	return "none"
}

// assumed counts a card's fields that nobody confirmed, of those that say something.
func (c *House) assumed(i int) int {
	n, s := 0, &c.Page.Store.Scenario
	if panels[i].entry != state.Home { // its fields stand on other cards too
		return 0
	}
	for _, id := range panels[i].all() {
		if state.Applies(s, id) && !s.Known.Has(id) {
			n++
		}
	}
	return n
}

func (c *House) assumedAll() (n int) {
	for i := range panels {
		n += c.assumed(i)
	}
	return n
}

func (c *House) assumedText(n int) string { return c.Page.View.Words.Text(words.AssumedCount, n) }

// minds counts what a card's fields have to be minded for, notes aside.
func (c *House) minds(i int) (n int) {
	fields := panels[i].all()
	for _, f := range c.Page.Findings {
		if f.Severity > care.Note && slices.Contains(fields, f.Field) {
			n++
		}
	}
	return n
}

// confirmAll takes all assumed values of a card for right.
func (c *House) confirmAll(i int) {
	c.Page.Store.Confirm(panels[i].all()...)
	c.Page.Changed()
}
