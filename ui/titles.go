package ui

import (
	"math"

	"suncask/engine/plan"
	"suncask/engine/pv"
	"suncask/engine/simulate"
	"suncask/ui/calendar"
	"suncask/ui/dial"
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

func (c *Yearly) monthSays(m int) string {
	s, w := c.Page.Store, c.Page.View.Words
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

// flowTitle names what of sun and grid is lost most, else what reaches the tap.
func (c *Yearly) flowTitle() string {
	y, w := &c.Page.Store.Results.Year.Total, c.Page.View.Words
	in := y.SunJ + y.BoughtJ
	switch {
	case in == 0:
		return c.Page.T(words.FlowYear)
	case y.DisplacedJ > math.Max(y.LostJ, muchWaits):
		return w.Text(words.FlowWaits, kWh(y.DisplacedJ, 0))
	case y.LostJ > in/5:
		return w.Text(words.FlowLost, kWh(y.LostJ, 0), kWh(in, 0))
	}
	return w.Text(words.FlowReach, kWh(y.DeliveredJ, 0), kWh(in, 0))
}

// title names the cheapest of all hours once the short ones are known.
func (c *Landscape) title() string {
	s, w := c.Page.Store, c.Page.View.Words
	m, ok := s.Landscape()
	switch {
	case !ok || m.Known < 2+plan.Places*plan.ShortSteps:
		return c.Page.T(words.HoursTitle)
	case math.IsNaN(m.LeastCost):
		return c.Page.T(words.LandNone)
	}
	b := m.Least.Backup(s.Scenario.Backup.Second)
	hours := c.Page.View.Hours(dial.Window{Start: b.Start, End: b.End, AllDay: b.AllDay})
	return w.Text(words.LandBest, hours, format.Money(m.LeastCost, s.Scenario.Currency), format.Money(s.Results.Year.Total.Cost, s.Scenario.Currency))
}

// title says which length is enough.
func (c *Lengths) title() string {
	s := c.Page.Store
	for _, l := range s.Lengths() {
		switch {
		case l.CoolUses > float64(s.Scenario.AcceptUses):
		case l.Hours == 0:
			return c.Page.T(words.LengthNone)
		default:
			return c.Page.View.Words.Text(words.LengthEnough, format.Number(l.Hours, 1), format.Money(l.Cost, s.Scenario.Currency))
		}
	}
	return c.Page.T(words.LengthNever)
}

// title says what of the strings' power in full sun reaches the element.
func (c *Electrics) title() string {
	s := c.Page.Store
	p, _ := s.Prepared.Working(pv.StandardWm2, pv.StandardC)
	if p.MaximumW == 0 {
		return c.Page.T(words.IVName)
	}
	return c.Page.View.Words.Text(words.IVFull, format.Number(p.ElementW, 0), format.Number(p.MaximumW, 0))
}

// title compares the light of the brightest and the darkest month.
func (c *Weather) title() string {
	w, y := c.Page.View.Words, c.Page.Store.Prepared.Weather
	light := &y.Place.GHI
	bright, dark := 0, 0
	for m, v := range light {
		if v > light[bright] {
			bright = m
		}
		if v < light[dark] {
			dark = m
		}
	}
	if light[dark] < 0.1 { // the sun hardly rises
		return w.Text(words.ClimateDark, w.Months[bright], format.Number(light[bright], 1), w.Months[dark])
	}
	return w.Text(words.ClimateTimes, format.Number(light[bright]/light[dark], 1), w.Months[bright], w.Months[dark])
}
