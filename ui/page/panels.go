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

// begin opens what an entry begins with that was just entered, and ends what was left.
func (c *Page) begin() {
	if c.entry == c.Store.Entry {
		return
	}
	if c.entry == state.Lesson {
		c.endLesson()
	}
	if c.Shows(LessonPanel) {
		c.Panel = ""
	}
	c.entry = c.Store.Entry
	switch c.entry {
	case state.Lesson:
		c.beginLesson()
		c.Panel, c.Place = "", HousePlace
	case state.Visit:
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
