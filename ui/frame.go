package ui

import (
	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Place is a part of the page: all stand side by side on a wide screen, one is shown at a time
// on a phone.
type Place int8

const (
	DayPlace Place = iota
	HousePlace
	YearPlace
	AdvicePlace
)

var places = [...]struct {
	place Place
	name  string // in ids, and of the icon
	title words.Key
}{
	{DayPlace, "day", words.PlaceDay}, {HousePlace, "house", words.PlaceHouse}, {YearPlace, "year", words.PlaceYear}, {AdvicePlace, "advice", words.PlaceAdvice},
}

// Sheet is what lies over the page.
type Sheet int8

const (
	NoSheet Sheet = iota
	MenuSheet
	HowSheet
	FigureSheet
	HousesSheet
	sheetCount
)

func (c *Page) placeName() string {
	if c.Printing {
		return "all"
	}
	return places[c.Place].name
}

// current marks the button of the place that is shown.
func (c *Page) current(p Place) string {
	if c.Place == p {
		return "page"
	}
	return "false"
}

// sees tells whether a place is on the screen: on a phone the one chosen, beside the day on a
// tablet, all of them where it is wide.
func (c *Page) sees(p Place) bool {
	return c.Wide == 2 || c.Printing || c.Place == p || c.Wide == 1 && p == HousePlace && c.Place == DayPlace
}

// goTo shows a place; the browser's Back returns.
func (c *Page) goTo(p Place) {
	if c.Place == p && c.Over == NoSheet {
		return
	}
	c.Place, c.Over = p, NoSheet
	c.went(true)
}

// openSheet lays a sheet over the page; the browser's Back takes it away.
func (c *Page) openSheet(s Sheet) {
	c.Over = s
	c.went(false)
	c.reveal("over")
}

// went tells the browser's history of the place and sheet that are shown now.
func (c *Page) went(top bool) {
	c.Printing = false // where the browser never said that it had printed
	if c.Host != nil {
		c.Host.Went(top)
	}
}

// reveal brings an element into sight once the page is rendered.
func (c *Page) reveal(id string) {
	if c.Host != nil {
		c.Host.Reveal(id)
	}
}

// CloseSheet takes it away, if there is one; the focus is back where it was opened.
func (c *Page) CloseSheet() {
	if c.Over == NoSheet {
		return
	}
	from := openers[c.Over]
	c.Over = NoSheet
	c.went(false)
	c.reveal(from)
}

// openers are the buttons by which sheets are opened.
var openers = map[Sheet]string{MenuSheet: "menu", HowSheet: "how", FigureSheet: "figure-cost", HousesSheet: "house"}

// Return shows a place and a sheet that the browser's Back or Forward came to.
func (c *Page) Return(p Place, s Sheet) {
	if p < DayPlace || p > AdvicePlace || s < NoSheet || s >= sheetCount {
		return
	}
	switch {
	case s != NoSheet:
		c.reveal("over")
	case c.Over != NoSheet:
		c.reveal(openers[c.Over])
	}
	c.Place, c.Over = p, s
}

// themes are the page's lights, by their values on the device.
var themes = [...]struct {
	value string
	name  words.Key
}{{"auto", words.ThemeAuto}, {"light", words.ThemeLight}, {"dark", words.ThemeDark}}

func (c *Page) setTheme(value string) {
	c.Theme = value
	if c.Host != nil {
		c.Host.Light(value)
	}
}

func (c *Page) print() {
	c.CloseSheet()
	if c.Host != nil {
		c.Host.Print()
	}
}

// house names whose house is shown.
func (c *Page) house() string {
	if c.Store.Example() {
		return c.T(words.ExampleHouse)
	}
	return c.T(words.YourHouse)
}

func (c *Page) houseLine() string {
	if c.Store.Example() {
		return c.T(words.ExampleMine)
	}
	s := &c.Store.Scenario
	p, _ := s.At()
	f := scenario.FieldOf(scenario.TankLitres)
	return p.Name + ", " + c.View.Words.Text(words.HouseIn, format.Value(f, s.TankLitres), s.AllModules())
}

// cautions says how many things there are to be minded, notes aside.
func (c *Page) cautions() string {
	n := 0
	for _, f := range c.minded {
		if f.Severity > care.Note {
			n++
		}
	}
	switch n {
	case 0:
		return c.T(words.CareNone)
	case 1:
		return c.T(words.CareOne)
	}
	return c.View.Words.Text(words.CareCount, n)
}

// showCare shows what is to be minded.
func (c *Page) showCare() {
	c.goTo(AdvicePlace)
	c.reveal("care")
}

// since says what the last edit changed, else what the figures are of.
func (c *Page) since() string {
	s, w := c.Store, c.View.Words
	if s.Since == nil {
		p, _ := s.Scenario.At()
		return w.Text(words.SinceRest, p.Name, format.In(scenario.Celsius, s.Prepared.ColdWaterC(), 0), w.Text(waterModelNames[c.waterModel()]))
	}
	f := scenario.FieldOf(s.Since.Field)
	hours := func(of *scenario.Scenario) string {
		house := *s
		house.Before, house.Scenario = nil, *of
		if text := c.View.AllHours(&house); text != "" {
			return text
		}
		return w.Text(words.NoBackup)
	}
	shown := func(of *scenario.Scenario) string {
		switch {
		case f.Kind == scenario.Choice:
			return w.Fields[f.ID].Choices[int(f.Get(of))]
		case f.Unit == scenario.ClockMinute:
			return format.Clock(int(f.Get(of)))
		}
		text := format.Value(f, f.Get(of))
		if unit := w.Units[f.Unit]; unit != "" && text != "" {
			text += format.Space + unit
		}
		return text
	}
	switch {
	case f.Kind == scenario.Hours:
		return w.Text(words.SinceHours, hours(&s.Scenario), hours(&s.Since.Was))
	case f.Kind != scenario.Number && f.Kind != scenario.Choice:
		return w.Text(words.SinceChange, w.Fields[f.ID].Name)
	}
	return w.Text(words.SinceWas, w.Fields[f.ID].Name, shown(&s.Scenario), shown(&s.Since.Was))
}

// The button beside that takes the edit back, or says how the year is figured.

func (c *Page) sinceID() string {
	if c.Store.Since == nil {
		return "figured"
	}
	return "since-undo"
}

func (c *Page) sinceName() string {
	if c.Store.Since == nil {
		return c.T(words.MenuFigured)
	}
	return c.T(words.Undo)
}

func (c *Page) sinceDo() {
	if c.Store.Since == nil {
		c.openSheet(MenuSheet)
		c.reveal("cold-water")
		return
	}
	c.undo()
}

func (c *Page) sinceClass() string {
	if c.Store.Since == nil {
		return "since rest"
	}
	return "since"
}

// stripName says what the strip counts: litres, or showers of the household.
func (c *Page) stripName() string {
	if c.View.InShowers {
		return c.T(words.StripShowers)
	}
	return c.T(words.StripWater)
}

func (c *Page) turnStrip() { c.View.InShowers = !c.View.InShowers }

// howLines say how dial and strip are read.
func (c *Page) howLines() []string {
	return []string{c.legend(), c.T(words.GripHelp), c.T(words.StripHelp), c.T(words.AheadHelp), c.T(words.FindHelp), (&Card{c}).rule()}
}

// showMe closes the sheet and shows on the dial what it says.
func (c *Page) showMe() {
	if c.Place != DayPlace && c.Wide == 0 {
		c.goTo(DayPlace)
	} else {
		c.CloseSheet()
	}
	if c.Host != nil {
		c.Host.ShowMe()
	}
}

// OverHead is the title of a sheet, and what closes it.
type OverHead struct {
	Page  *Page
	Title string
}

// Menu is the sheet of what concerns the page and not the house.
type Menu struct{ Page *Page }

// How is the sheet that says how the day is read.
type How struct{ Page *Page }

// Outcome is the place of what the year comes to.
type Outcome struct{ Page *Page }

// Advice is the place of what to change and what to mind.
type Advice struct{ Page *Page }
