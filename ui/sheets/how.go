package sheets

import (
	"strconv"

	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// How is the sheet that says how the day is read.
type How struct{ Page *page.Page }

// marked say what the numbers on the dial stand at, in their order.
func (c *How) marked() []string {
	t := c.Page.T
	return []string{t(words.HowDay), t(words.HowPetals), t(words.GripHelp), t(words.HowRing), t(words.HowDrops), c.legend(), t(words.HowMiddle) + " " + t(words.AheadHelp)}
}

// lines say how the strip is read and what the buttons do.
func (c *How) lines() []string {
	return []string{c.Page.T(words.StripHelp), c.Page.T(words.FindHelp), c.rule()}
}

// drops are the dial's.
func (c *How) drops() (list []string) {
	for i := range c.Page.Store.Drops() {
		list = append(list, "#drop-"+strconv.Itoa(i))
	}
	return list
}

// noHours is where the number of the backup hours stands where there are none.
const noHours = 15 * 60

// numbers are the dial's marks.
func (c *How) numbers() (list []numbered) {
	s := c.Page.Store
	window, use := float64(noHours), 7*60.0
	if w := s.Window(0); w.Length() > 0 {
		window = float64(w.Start) + float64(w.Length())/2
	}
	if marks := s.Marks(nil); len(marks) > 0 {
		use = marks[0].Minute
	}
	for i, m := range dial.Numbers(window, use) {
		list = append(list, numbered{format.Length(m.X), format.Length(m.Y), format.Length(m.Y + 5), "M" + format.Length(m.X) + " " + format.Length(m.Y) + "L" + format.Length(m.ToX) + " " + format.Length(m.ToY), i + 1})
	}
	return list
}

// numbered is a number on the dial as the template draws it.
type numbered struct {
	x, y, text, leader string
	n                  int
}

// showMe closes the sheet and shows on the dial what it says.
func (c *How) showMe() {
	if c.Page.Place != page.DayPlace && c.Page.Wide == 0 {
		c.Page.GoTo(page.DayPlace)
	} else {
		c.Page.CloseSheet()
	}
	if c.Page.Host != nil {
		c.Page.Host.ShowMe()
	}
}

// legend explains the middle of the dial.
func (c *How) legend() string {
	list := ""
	for i, n := range dial.Rings(c.Page.Store.ShowerL(), c.Page.Store.Results.Day.FullL) {
		if i > 0 {
			list += ", "
		}
		list += format.Number(float64(n), 0)
	}
	text := c.Page.View.Words.Text(words.PoolLegend, list)
	if s := &c.Page.Store.Scenario; s.OutFrom != s.OutTo {
		text += " " + c.Page.View.Words.Text(words.OutagePart, format.Clock(s.OutFrom), format.Clock(s.OutTo))
	}
	return text
}

// rule says who has the element in the backup hours.
func (c *How) rule() string {
	s := &c.Page.Store.Scenario
	if !state.Applies(s, scenario.RuleBy) {
		return c.Page.T(words.RuleApart)
	}
	text := c.Page.View.Words.Fields[scenario.RuleBy]
	return text.Name + ": " + text.Choices[s.Rule] + "."
}
