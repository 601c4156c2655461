package sheets

import (
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Ask makes the example somebody's own house in six questions, one at a time, while the
// dial stays in sight.
type Ask struct{ Page *page.Page }

// asked are the fields of the questions.
var asked = [][]scenario.FieldID{{scenario.Place}, {scenario.People}, {scenario.Showers}, {scenario.TankLitres, scenario.ElementW}, {scenario.Modules, scenario.AzimuthDeg}, {scenario.Price}}

func (c *Ask) ids() []scenario.FieldID { return asked[c.Page.Question] }

// fields are those of its question that say something about this house.
func (c *Ask) fields() (list []scenario.FieldID) {
	for _, id := range c.ids() {
		if state.Applies(&c.Page.Store.Scenario, id) {
			list = append(list, id)
		}
	}
	return list
}

func (c *Ask) count() string {
	return c.Page.View.Words.Text(words.AskCount, c.Page.Question+1, len(asked))
}

// yes takes what the box shows and goes on.
func (c *Ask) yes() {
	for _, id := range c.ids() {
		if c.Page.Problem(id) != "" {
			return // it says what is allowed
		}
	}
	c.Page.Store.Confirm(c.ids()...)
	c.Page.Changed()
	c.skip()
}

// skip leaves the value assumed and goes on.
func (c *Ask) skip() {
	if c.Page.Question++; c.Page.Question == len(asked) {
		c.end()
	}
}

// end closes the questions; the focus is back where they were asked for.
func (c *Ask) end() {
	c.Page.Question = -1
	c.Page.Store.ShowWorst()
	c.Page.Reveal("house")
}

// back asks the question before.
func (c *Ask) back() { c.Page.Question = max(0, c.Page.Question-1) }

// deviceClass hides the offer to ask the device, but where the place is asked for.
func (c *Ask) deviceClass() string {
	if c.asksPlace() {
		return "ask-device"
	}
	return "none"
}

// asksPlace tells whether it is the question for the place.
func (c *Ask) asksPlace() bool { return c.ids()[0] == scenario.Place }
