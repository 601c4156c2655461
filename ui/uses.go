package ui

import (
	"strings"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/view"
	"suncask/ui/words"
)

func (c *Page) marks() []dial.Drop { return dial.Drops(view.Marks(c.Store, nil)) }

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

// showUses opens the list behind a mark, or closes it.
func (c *Page) showUses(i int) {
	if c.UsesShown == i {
		i = -1
	}
	c.UsesShown, c.DayShown = i, -1
}

// showDay lists the uses of a day of the year; -1 closes the list.
func (c *Page) showDay(day int) { c.DayShown, c.UsesShown = day, -1 }
