package year

import (
	"math"
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/simulate"
	"suncask/ui/calendar"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

func (c *Yearly) daysTitle() string {
	w, y := c.Page.View.Words, &c.Page.Store.Results.Year
	days := 0
	for day := range y.Day {
		if y.Day[day].BoughtJ > 0 {
			days++
		}
	}
	text := w.Text(words.DaysGrid, days)
	if y.Total.CoolDays > 0 {
		return text + w.Text(words.DaysCool, y.Total.CoolDays)
	}
	return text + w.Text(words.DaysWarm)
}

func (c *Yearly) dayKey() string {
	return c.Page.View.Words.Text(words.DayKeyBought, format.KWh(math.Ceil(calendar.Most(&c.Page.Store.Results.Year)/simulate.JPerKWh)*simulate.JPerKWh, 0))
}

func (c *Yearly) daySays() string {
	s := c.Page.Store
	f := &s.Results.Year.Day[c.Page.DayShown]
	return c.Page.View.Words.Text(words.DaySays, c.dayName(), format.KWh(f.BoughtJ, 1), format.Money(f.Cost, s.Scenario.Currency), format.KWh(f.SunJ, 1))
}

func (c *Yearly) frame() string {
	return "0 0 " + strconv.Itoa(calendar.Width) + " " + strconv.Itoa(calendar.Height)
}

func (c *Yearly) levels() []string {
	paths := calendar.Bought(&c.Page.Store.Results.Year)
	return paths[:]
}

func levelClass(i int) string { return "bought-" + strconv.Itoa(i) }

// coolDays are strokes across the days on which a use ran cool.
func (c *Yearly) coolDays() string { return calendar.Cool(&c.Page.Store.Results.Year) }

func (c *Yearly) ring() string {
	if c.Page.DayShown < 0 {
		return ""
	}
	return calendar.Ring(c.Page.DayShown)
}

func (c *Yearly) monthMarks() (list []parts.Mark) {
	for m := range 12 {
		list = append(list, parts.NewMark("calendar-month", "0", strconv.Itoa(calendar.Top+m*calendar.CellHigh+12), short(c.Page.View.Words.Months[m])))
	}
	for _, d := range []int{1, 10, 20, 31} {
		list = append(list, parts.NewMark("calendar-day", strconv.Itoa(calendar.Left+(d-1)*calendar.CellWide+4), "11", strconv.Itoa(d)))
	}
	return list
}

// short is the beginning of a month's name.
func short(name string) string {
	r := []rune(name)
	return string(r[:min(3, len(r))])
}

func (c *Yearly) calendarTwin() string {
	days := 0
	var first []string
	for day := range c.Page.Store.Results.Year.Day {
		if c.Page.Store.Results.Year.Day[day].CoolUses > 0 {
			if days++; days <= 12 {
				first = append(first, c.Page.View.Date(day))
			}
		}
	}
	if days == 0 {
		return c.Page.T(words.CalendarNone)
	}
	return c.Page.View.Words.Text(words.CalendarSome, days, strings.Join(first, ", "))
}

func (c *Yearly) anyCool() bool { return c.Page.Store.Results.Year.Total.CoolDays > 0 }

// turnDay shows the next day with a cool use, or the one before.
func (c *Yearly) turnDay(by int) {
	y := &c.Page.Store.Results.Year
	day := c.Page.DayShown
	if day < 0 && by < 0 {
		day = 0
	}
	for range climate.Days {
		day = (day + by + climate.Days) % climate.Days
		if y.Day[day].CoolUses > 0 {
			c.Page.ShowDay(day)
			return
		}
	}
}

// onDial shows the day on the dial.
func (c *Yearly) onDial() {
	c.Page.Store.ShowDay(c.Page.DayShown)
	c.Page.ShowDay(-1)
	c.Page.GoTo(page.DayPlace)
	c.Page.Reveal("month-back")
}

func (c *Yearly) dayName() string { return c.Page.View.Date(c.Page.DayShown) }

// CalendarTapped shows the day at a point of the calendar, in its units.
func CalendarTapped(c *page.Page, x, y float64) {
	if day, ok := calendar.DayAt(x, y); ok {
		c.ShowDay(day)
	}
}
