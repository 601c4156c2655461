package visit

import (
	"suncask/engine/visit"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Box is where a reading is typed, with what it should be and what it comes to.
type Box struct {
	Page     *page.Page
	Code     visit.Code
	Name     string
	Kind     string // of the input: text or date
	Expected string
	Outcome  string
}

func (c *Box) label() string { return c.Page.View.Words.Text(words.TestBox, c.Name) }
