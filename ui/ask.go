package ui

import (
	"suncask/engine/scenario"
	"suncask/ui/words"
)

// Ask makes the example somebody's own house in six questions, one at a time, while the
// dial stays in sight.
type Ask struct{ Page *Page }

// asked are the fields of the questions.
var asked = []scenario.FieldID{scenario.Place, scenario.People, scenario.Showers, scenario.TankLitres, scenario.Modules, scenario.Price}

// askMine begins the questions.
func (c *Page) askMine() {
	c.Question, c.Panel = 0, -1
}

func (c *Ask) id() scenario.FieldID { return asked[c.Page.Question] }

func (c *Ask) rows() []row {
	p := &Panels{c.Page}
	return p.rowsOf([]scenario.FieldID{c.id()})
}

func (c *Ask) count() string {
	return c.Page.View.Words.Text(words.AskCount, c.Page.Question+1, len(asked))
}

// yes takes what the box shows and goes on.
func (c *Ask) yes() {
	if c.Page.problem(c.id()) != "" {
		return // it says what is allowed
	}
	c.Page.confirm(c.id())
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
	if c.Page.Host != nil {
		c.Page.Host.Reveal("house")
	}
}
