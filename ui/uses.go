package ui

import (
	"strconv"
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/draw"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

func (c *Page) marks() []dial.Drop { return c.Store.Drops() }

// drops are the indices of the marks on the track of uses.
func (c *Page) drops() []int {
	list := make([]int, len(c.marks()))
	for i := range list {
		list[i] = i
	}
	return list
}

// dropName is what a screen reader hears of a mark.
func (c *Page) dropName(i int) string {
	uses := c.useTexts(c.usesOf(i))
	text := strings.Join(uses, "; ")
	if len(uses) > 1 {
		text = c.View.Words.Text(words.UseCount, len(uses), text)
	}
	return text
}

// numbered is a use of a day with its place in it.
type numbered struct {
	i int
	simulate.UseResult
}

// usesOf are the uses behind a mark of the day shown.
func (c *Page) usesOf(i int) (list []numbered) {
	marks := c.marks()
	if i < 0 || i >= len(marks) {
		return nil
	}
	for n, u := range c.Store.Results.Day.Uses {
		if u.Minute >= marks[i].First && u.Minute <= marks[i].Last {
			list = append(list, numbered{n, u})
		}
	}
	return list
}

// listed are the uses that the page lists: behind a mark, or of a day of the year.
func (c *Page) listed() (list []numbered) {
	if c.DayShown < 0 {
		return c.usesOf(c.UsesShown) // of the day on the dial
	}
	for n, u := range c.Store.Replay(c.DayShown).Uses {
		list = append(list, numbered{n, u})
	}
	return list
}

func (c *Page) useTexts(uses []numbered) (list []string) {
	for _, u := range uses {
		text := c.View.Words.Text(words.UseRow, format.Clock(int(u.Minute+0.5)), format.In(scenario.Litre, u.Litres, 0), format.In(scenario.Celsius, u.TempC, 0))
		switch {
		case u.RanCool && u.CoolAfter < 0.05:
			text += ", " + c.T(words.UseCoolAtOnce)
		case u.RanCool:
			text += ", " + c.View.Words.Text(words.UseCool, format.Number(u.CoolAfter, 1))
		}
		list = append(list, text)
	}
	return list
}

func (c *Page) usesShown() []string { return c.useTexts(c.listed()) }

// latest says until when the backup may start for the last use behind the open mark.
func (c *Page) latest() string {
	uses := c.listed()
	if _, real := c.Store.RealDay(); real || c.DayShown >= 0 || len(uses) == 0 {
		return ""
	}
	last := uses[len(uses)-1]
	at, ok := c.Store.LatestStart(last.i)
	switch {
	case !ok:
		return ""
	case at == c.Store.Scenario.Backup.End:
		return c.View.Words.Text(words.LatestNone, format.Clock(int(last.Minute+0.5)))
	}
	return c.View.Words.Text(words.LatestStart, format.Clock(at), format.Clock(c.Store.Scenario.Backup.End), format.Clock(int(last.Minute+0.5)))
}

// coolUse is the last of the uses listed that ran cool, with its minute of the day.
func (c *Page) coolUse() (at plan.CoolUse, minute int, ok bool) {
	day := c.DayShown
	if real, some := c.Store.RealDay(); day < 0 && some {
		day = real
	}
	for _, u := range c.listed() {
		if u.RanCool {
			at, minute, ok = plan.CoolUse{Day: day, Use: u.i}, int(u.Minute+0.5), true
		}
	}
	return at, minute, ok
}

// helps tells whether there is a cool use to help.
func (c *Page) helps() bool { _, _, ok := c.coolUse(); return ok }

// showUses opens the list behind a mark; -1 closes it.
func (c *Page) showUses(i int) { c.UsesShown, c.DayShown = i, -1 }

// open are the occasions of the open mark, which can be moved.
func (c *Page) openUses() state.Occasions {
	if list := c.Store.OccasionsOf(); c.UsesShown >= 0 && c.UsesShown < len(list) {
		return list[c.UsesShown]
	}
	return 0
}

// usesPart is what a mark moves when it is dragged: nothing unless it is open.
func (c *Page) usesPart(i int) string {
	if i != c.UsesShown || c.View.Open == 0 {
		return ""
	}
	return usesData(c.View.Open)
}

// usesData names uses to the listeners.
func usesData(set state.Occasions) string { return "u" + strconv.Itoa(int(set)) }

func (c *Page) dropClass(i int) string {
	if i == c.UsesShown {
		return "drop-mark open"
	}
	return "drop-mark"
}

// FollowUses keeps the list at the mark that some uses are behind now.
func (c *Page) FollowUses(set state.Occasions) {
	for i, of := range c.Store.OccasionsOf() {
		if of&set != 0 {
			c.showUses(i)
		}
	}
}

func (c *Page) useName(o draw.Occasion) string { return c.View.Words.Fields[scenario.TimeOf(o)].Name }

func (c *Page) typedUse(event vugu.DOMEvent, o draw.Occasion) {
	c.Store.Type(scenario.TimeOf(o), event.PropString("target", "value"))
	c.FollowUses(state.Of(o))
	c.changed()
}

// usesProblem is the sentence about a typed time of a use, empty if all were good.
func (c *Page) usesProblem() (text string) {
	for _, o := range c.View.Open.List() {
		if p := c.problem(scenario.TimeOf(o)); p != "" {
			text = p
		}
	}
	return text
}

// usesHelp says how the open mark is moved, or why it is not.
func (c *Page) usesHelp() string {
	if c.View.Open == 0 {
		return c.T(words.StandardHours)
	}
	return c.T(words.UsesHelp)
}

// showDay lists the uses of a day of the year; -1 closes the list.
func (c *Page) showDay(day int) { c.DayShown, c.UsesShown = day, -1 }
