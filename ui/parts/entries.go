package parts

import (
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Entries are the buttons of the ways into the page.
type Entries struct {
	Page  *page.Page
	Class string
}

var entryNames = [state.Entries]words.Key{state.Home: words.EntryHome, state.Visit: words.EntryVisit, state.Lesson: words.EntryLesson}

func (c *Entries) name(w state.Entry) string { return c.Page.T(entryNames[w]) }

// enter takes one; the menu, where it is on a phone, is done with.
func (c *Entries) enter(w state.Entry) {
	c.Page.Store.Entry = w
	c.Page.CloseSheet()
}
