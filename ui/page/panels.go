package page

import "suncask/ui/state"

// The ids of the groups of inputs, each a card.
const (
	LessonPanel  = "panel-lesson" // of a lesson alone
	WeatherPanel = "panel-weather"
	HomePanel    = "panel-home"
	RoofPanel    = "panel-roof"
	WiringPanel  = "panel-wiring"
	TankPanel    = "panel-tank"
	BackupPanel  = "panel-backup"
	PricesPanel  = "panel-prices"
)

// entryPanels are the groups that entries begin with.
var entryPanels = [state.Entries]string{state.Lesson: LessonPanel}

// begin opens the group of an entry that was just entered, and closes that of the one left.
func (c *Page) begin() {
	if c.entry == c.Store.Entry {
		return
	}
	if c.Shows(entryPanels[c.entry]) {
		c.Panel = ""
	}
	c.entry = c.Store.Entry
	switch id := entryPanels[c.entry]; {
	case id != "":
		c.Panel, c.Place = id, HousePlace
	case c.entry == state.Visit:
		c.OpenPart(Survey)
		c.Place = HousePlace
	}
}

// Show opens a group and goes there.
func (c *Page) Show(panel string) {
	c.Panel, c.Question, c.Visit.Part = panel, -1, NoPart
	c.GoTo(HousePlace)
}

// Shows tells whether a group is open.
func (c *Page) Shows(panel string) bool { return c.Panel == panel }
