package ui

import (
	"suncask/ui/page"
	"suncask/ui/words"
)

// places are those of the buttons, in their order.
var places = [...]struct {
	place page.Place
	name  string // in ids, and of the icon
	title words.Key
}{
	{page.DayPlace, "day", words.PlaceDay}, {page.HousePlace, "house", words.PlaceHouse}, {page.YearPlace, "year", words.PlaceYear}, {page.AdvicePlace, "advice", words.PlaceAdvice},
}

func (c *Root) placeName() string {
	if c.Page.Printing {
		return "all"
	}
	return places[c.Page.Place].name
}

// current marks the button of the place that is shown.
func (c *Root) current(p page.Place) string {
	if c.Page.Place == p {
		return "page"
	}
	return "false"
}
