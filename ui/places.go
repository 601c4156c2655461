package ui

import (
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// placed is a place with its button.
type placed struct {
	place page.Place
	name  string // in ids, and of the icon
	title words.Key
}

// places are those of the buttons, in their order.
var places = [...]placed{
	{page.DayPlace, "day", words.PlaceDay}, {page.HousePlace, "house", words.PlaceHouse}, {page.YearPlace, "year", words.PlaceYear}, {page.AdvicePlace, "advice", words.PlaceAdvice},
}

func (c *Root) placeName() string {
	if c.Page.Printing {
		return "all"
	}
	return places[c.Page.Place].name
}

// places are those that can be gone to: a question of a lesson has the page for itself.
func (c *Root) places() []placed {
	if c.Page.Stage() {
		return places[:page.HousePlace+1]
	}
	return places[:]
}

// pageClass says how large its letters are.
func (c *Root) pageClass() string {
	if c.Page.Store.Entry == state.Lesson && c.Page.Store.Big {
		return "page big"
	}
	return "page"
}

// current marks the button of the place that is shown.
func (c *Root) current(p page.Place) string {
	if c.Page.Place == p {
		return "page"
	}
	return "false"
}
