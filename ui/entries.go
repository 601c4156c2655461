package ui

import (
	"suncask/engine/explain"
	"suncask/ui/state"
	"suncask/ui/words"
)

// The groups that only one entry has.
const (
	PlatesPanel = "panel-plates"
	LessonPanel = "panel-lesson"
)

// entryPanels are the groups that entries begin with.
var entryPanels = [state.Entries]string{state.Visit: PlatesPanel, state.Lesson: LessonPanel}

func (c *Page) entries() []state.Entry { return []state.Entry{state.Home, state.Visit, state.Lesson} }

func (c *Page) entryName(w state.Entry) string {
	return c.T([state.Entries]words.Key{words.EntryHome, words.EntryVisit, words.EntryLesson}[w])
}

// enter goes into the page by another entry.
func (c *Page) enter(w state.Entry) { c.Store.Entry = w }

// begin opens the group of an entry that was just entered, and closes that of the one left.
func (c *Page) begin() {
	if c.entry == c.Store.Entry {
		return
	}
	if c.Shows(entryPanels[c.entry]) {
		c.Panel = -1
	}
	c.entry = c.Store.Entry
	for i := range panels {
		if panels[i].id == entryPanels[c.entry] {
			c.Panel, c.Place = i, HousePlace
		}
	}
}

// playDay lets the day pass in the tank's group.
func (c *Page) playDay() {
	c.show(TankPanel)
	c.Playing, c.TankMinute = false, 0
	c.play()
	c.reveal("tank-play")
}

// explainCost opens the first figure.
func (c *Page) explainCost() { c.explainFigure(explain.Cost) }
