package ui

import (
	"math"

	"suncask/engine/simulate"
	"suncask/ui/calendar"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Titles are statements with today's numbers; below a picture one of its items is read.

// telling is the month that tells most: of most cool uses, else of most that is bought.
func (c *Yearly) telling() (month int) {
	y := &c.Page.Store.Results.Year
	for m := range y.Month {
		a, b := &y.Month[m], &y.Month[month]
		if a.CoolUses > b.CoolUses || y.Total.CoolUses == 0 && a.BoughtJ > b.BoughtJ {
			month = m
		}
	}
	return month
}

func (c *Yearly) monthsTitle() string {
	w, y := c.Page.View.Words, &c.Page.Store.Results.Year
	m := c.telling()
	switch {
	case y.Total.CoolUses > 0:
		return w.Text(words.MonthsCool, w.Months[m], y.Month[m].CoolUses)
	case y.Total.BoughtJ > 0:
		return w.Text(words.MonthsBought, w.Months[m], kWh(y.Month[m].BoughtJ, 0))
	}
	return w.Text(words.MonthsNone)
}

// read is the month that is read.
func (c *Yearly) read() int {
	if c.Page.MonthRead >= 0 {
		return c.Page.MonthRead
	}
	return c.telling()
}

func (c *Yearly) readMonth(by int) { c.Page.MonthRead = (c.read() + by + 12) % 12 }

func (c *Yearly) monthSays() string {
	s, w := c.Page.Store, c.Page.View.Words
	m := c.read()
	f := &s.Results.Year.Month[m]
	text := w.Text(words.MonthSays, w.Months[m], kWh(f.BoughtJ, 0), format.Money(f.Cost, s.Scenario.Currency), kWh(f.SunJ, 0), kWh(f.UnusedSunJ, 0))
	if f.CoolUses > 0 {
		text += w.Text(words.MonthCool, f.CoolUses)
	}
	return text
}

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
	return c.Page.View.Words.Text(words.DayKeyBought, kWh(math.Ceil(calendar.Most(&c.Page.Store.Results.Year)/simulate.JPerKWh)*simulate.JPerKWh, 0))
}

func (c *Yearly) daySays() string {
	s := c.Page.Store
	f := &s.Results.Year.Day[c.Page.DayShown]
	return c.Page.View.Words.Text(words.DaySays, c.dayName(), kWh(f.BoughtJ, 1), format.Money(f.Cost, s.Scenario.Currency), kWh(f.SunJ, 1))
}

func kWh(joules float64, decimals int) string {
	return format.Number(joules/simulate.JPerKWh, decimals)
}

func (c *Worth) title() string {
	s, w := c.Page.Store, c.Page.View.Words
	savings := s.Savings()
	allDay, _ := savings.Worth(&s.Scenario)
	ahead := 0.0
	for _, v := range allDay.Payments {
		ahead += v
	}
	if math.IsInf(allDay.Payback, 1) {
		return w.Text(words.MoneyNever, s.Scenario.HorizonYears, format.Money(math.Max(0, -ahead), s.Scenario.Currency))
	}
	return w.Text(words.MoneyBack, format.Number(allDay.Payback, 1), format.Money(ahead, s.Scenario.Currency), s.Scenario.HorizonYears)
}
