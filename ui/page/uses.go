package page

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Use is a use of a day with its place in it.
type Use struct {
	At int
	simulate.UseResult
}

// UsesOf are the uses behind a mark of the day shown.
func (c *Page) UsesOf(mark int) (list []Use) {
	marks := c.Store.Drops()
	if mark < 0 || mark >= len(marks) {
		return nil
	}
	for n, u := range c.Store.Results.Day.Uses {
		if u.Minute >= marks[mark].First && u.Minute <= marks[mark].Last {
			list = append(list, Use{n, u})
		}
	}
	return list
}

// Listed are the uses that the page lists: behind a mark, or of a day of the year.
func (c *Page) Listed() (list []Use) {
	if c.DayShown < 0 {
		return c.UsesOf(c.UsesShown) // of the day on the dial
	}
	for n, u := range c.Store.Replay(c.DayShown).Uses {
		list = append(list, Use{n, u})
	}
	return list
}

// UseTexts say of uses when they are, what they take and whether they run cool.
func (c *Page) UseTexts(uses []Use) (list []string) {
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

// CoolUse is the last of the uses listed that ran cool, with its minute of the day.
func (c *Page) CoolUse() (at plan.CoolUse, minute int, ok bool) {
	day := c.DayShown
	if real, some := c.Store.RealDay(); day < 0 && some {
		day = real
	}
	for _, u := range c.Listed() {
		if u.RanCool {
			at, minute, ok = plan.CoolUse{Day: day, Use: u.At}, int(u.Minute+0.5), true
		}
	}
	return at, minute, ok
}

// HasCoolUse tells whether there is one.
func (c *Page) HasCoolUse() bool { _, _, ok := c.CoolUse(); return ok }

// ShowUses opens the list behind a mark; -1 closes it.
func (c *Page) ShowUses(mark int) { c.UsesShown, c.DayShown = mark, -1 }

// ShowDay lists the uses of a day of the year; -1 closes the list.
func (c *Page) ShowDay(day int) { c.DayShown, c.UsesShown = day, -1 }

// openUses are the occasions of the open mark, which can be moved.
func (c *Page) openUses() state.Occasions {
	if list := c.Store.OccasionsOf(); c.UsesShown >= 0 && c.UsesShown < len(list) {
		return list[c.UsesShown]
	}
	return 0
}
