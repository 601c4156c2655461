package ui

import (
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/calendar"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Yearly shows the year: by month, by day, and where its energy goes.
type Yearly struct{ Page *Page }

func (c *Yearly) legend() []legend {
	t := c.Page.T
	return []legend{{"key key-sun", t(words.KeySun)}, {"key key-grid", t(words.KeyGrid)}}
}

// months is the table of the year.
func (c *Yearly) months() *sheet {
	s, t := c.Page.Store, c.Page.T
	w := c.Page.View.Words
	sh := &sheet{id: "months", caption: t(words.HeatName), head: []string{t(words.Month), t(words.KeySun), t(words.KeyGrid), t(words.KeyLost), t(words.KeyUnused),
		w.Text(words.MonthsCost, s.Scenario.Currency), t(words.OfferCool), t(words.MonthsNeed), t(words.MonthsCan)}}
	needs := s.Needs()
	kWh := func(joules float64, decimals int) figure { return figure{joules / simulate.JPerKWh, decimals} }
	for m := range s.Results.Year.Month {
		f := &s.Results.Year.Month[m]
		r := sheetRow{cells: []any{w.Months[m], kWh(f.SunJ, 0), kWh(f.BoughtJ, 0), kWh(f.LostJ, 0), kWh(f.UnusedSunJ, 0), figure{f.Cost, format.Cents(s.Scenario.Currency)},
			figure{float64(f.CoolUses), 0}, kWh(needs[m].NeededJ, 1), kWh(needs[m].CanJ, 1)}}
		if needs[m].NeededJ > needs[m].CanJ {
			r.mark = "missed"
		}
		sh.rows = append(sh.rows, r)
	}
	for column := 1; column <= 5; column++ { // the year's figures are their sums
		sh.addUp(column, 0)
	}
	return sh
}

// flowNames is the energy flow in words.
func (c *Yearly) flowNames() string {
	names := c.Page.View.FlowNames(c.Page.Store)
	return strings.ReplaceAll(strings.Join(names[:], "; "), "\n", " ")
}

func (c *Yearly) flowCaption() string {
	if c.Page.View.FlowDay {
		return c.Page.T(words.FlowDay)
	}
	return c.flowTitle()
}

func (c *Yearly) flowOther() string {
	if c.Page.View.FlowDay {
		return c.Page.T(words.FlowShowYear)
	}
	return c.Page.T(words.FlowShowDay)
}

func (c *Yearly) turnFlow() { c.Page.View.FlowDay = !c.Page.View.FlowDay }

// saveHours hands out every hour of the year as CSV.
func (c *Yearly) saveHours() {
	if c.Page.Host == nil {
		return
	}
	t := c.Page.T
	sh := &sheet{id: "hours", head: []string{t(words.Month), t(words.DayOfMonth), t(words.HourFrom), t(words.HourOffer), t(words.KeySun), t(words.KeyGrid),
		c.Page.View.Words.Text(words.MonthsCost, c.Page.Store.Scenario.Currency), t(words.HourLitres), t(words.HourMean)}}
	c.Page.Store.EachHour(func(day, hour int, h *simulate.Hour) {
		m := climate.MonthOf(day)
		whole := func(n int) figure { return figure{float64(n), 0} }
		sh.rows = append(sh.rows, sheetRow{cells: []any{whole(m + 1), whole(day - climate.FirstDay(m) + 1), whole(hour),
			figure{h.OfferJ / simulate.JPerKWh, 3}, figure{h.SunJ / simulate.JPerKWh, 3}, figure{h.BoughtJ / simulate.JPerKWh, 3},
			figure{h.Cost, 4}, figure{format.Shown(scenario.Litre, h.UsableL), 1}, figure{format.Shown(scenario.Celsius, h.MeanC), 2}}})
	})
	c.Page.Host.Save("suncask-hours.csv", sh.csv())
}

// The calendar.

func (c *Yearly) frame() string {
	return "0 0 " + strconv.Itoa(calendar.Width) + " " + strconv.Itoa(calendar.Height)
}

func (c *Yearly) levels() []string {
	paths := calendar.Bought(&c.Page.Store.Results.Year)
	return paths[:]
}

// coolDays are strokes across the days on which a use ran cool.
func (c *Yearly) coolDays() string { return calendar.Cool(&c.Page.Store.Results.Year) }

func levelClass(i int) string { return "bought-" + strconv.Itoa(i) }

func (c *Yearly) monthMarks() (list []textMark) {
	for m := range 12 {
		list = append(list, textMark{"calendar-month", "0", strconv.Itoa(calendar.Top + m*calendar.CellHigh + 12), short(c.Page.View.Words.Months[m])})
	}
	for _, d := range []int{1, 10, 20, 31} {
		list = append(list, textMark{"calendar-day", strconv.Itoa(calendar.Left + (d-1)*calendar.CellWide + 4), "11", strconv.Itoa(d)})
	}
	return list
}

// short is the beginning of a month's name.
func short(name string) string {
	r := []rune(name)
	return string(r[:min(3, len(r))])
}

func (c *Yearly) ring() string {
	if c.Page.DayShown < 0 {
		return ""
	}
	return calendar.Ring(c.Page.DayShown)
}

func (c *Yearly) calendarTwin() string {
	days := 0
	var first []string
	for day := range c.Page.Store.Results.Year.Day {
		if c.Page.Store.Results.Year.Day[day].CoolUses > 0 {
			if days++; days <= 12 {
				first = append(first, c.Page.date(day))
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
			c.Page.showDay(day)
			return
		}
	}
}

// onDial shows the day on the dial.
func (c *Yearly) onDial() {
	c.Page.Store.ShowDay(c.Page.DayShown)
	c.Page.showDay(-1)
	c.Page.goTo(DayPlace)
	c.Page.reveal("month-back")
}

func (c *Yearly) dayName() string { return c.Page.date(c.Page.DayShown) }

// date writes a day of the year.
func (c *Page) date(day int) string {
	m := climate.MonthOf(day)
	return c.View.Words.Text(words.Date, format.Number(float64(day-climate.FirstDay(m)+1), 0), c.View.Words.Months[m])
}

// CalendarTapped shows the day at a point of the calendar, in its units.
func (c *Page) CalendarTapped(x, y float64) {
	if day, ok := calendar.DayAt(x, y); ok {
		c.showDay(day)
	}
}
