package year

import (
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

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
		return w.Text(words.MonthsBought, w.Months[m], format.KWh(y.Month[m].BoughtJ, 0))
	}
	return w.Text(words.MonthsNone)
}

func (c *Yearly) monthSays(m int) string {
	s, w := c.Page.Store, c.Page.View.Words
	f := &s.Results.Year.Month[m]
	text := w.Text(words.MonthSays, w.Months[m], format.KWh(f.BoughtJ, 0), format.Money(f.Cost, s.Scenario.Currency), format.KWh(f.SunJ, 0), format.KWh(f.UnusedSunJ, 0))
	if f.CoolUses > 0 {
		text += w.Text(words.MonthCool, f.CoolUses)
	}
	return text
}

// months is the table of the year.
func (c *Yearly) months() *parts.Sheet {
	s, t := c.Page.Store, c.Page.T
	w := c.Page.View.Words
	sh := &parts.Sheet{ID: "months", Caption: t(words.HeatName), Head: []string{t(words.Month), t(words.KeySun), t(words.KeyGrid), t(words.KeyLost), t(words.KeyUnused),
		w.Text(words.MonthsCost, s.Scenario.Currency), t(words.OfferCool), t(words.MonthsNeed), t(words.MonthsCan)}}
	needs := s.Needs()
	energy := func(joules float64, decimals int) parts.Figure {
		return parts.Number(joules/simulate.JPerKWh, decimals)
	}
	for m := range s.Results.Year.Month {
		f := &s.Results.Year.Month[m]
		r := parts.SheetRow{Cells: []any{w.Months[m], energy(f.SunJ, 0), energy(f.BoughtJ, 0), energy(f.LostJ, 0), energy(f.UnusedSunJ, 0), parts.Number(f.Cost, format.Cents(s.Scenario.Currency)),
			parts.Number(float64(f.CoolUses), 0), energy(needs[m].NeededJ, 1), energy(needs[m].CanJ, 1)}}
		if needs[m].NeededJ > needs[m].CanJ {
			r.Mark = "missed"
		}
		sh.Rows = append(sh.Rows, r)
	}
	for column := 1; column <= 5; column++ { // the year's figures are their sums
		sh.AddUp(column, 0)
	}
	return sh
}

// ReadMonths are what can be read of the months' chart.
func ReadMonths(c *page.Page) parts.Items {
	y := &Yearly{c}
	return parts.Months(y.telling(), y.monthSays)
}
