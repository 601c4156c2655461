package ui

import (
	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// yearHeads are the columns of the table of many years.
var yearHeads = []words.Key{words.YearsThis, words.YearsGood, words.YearsMiddle, words.YearsBad}

func (c *Weather) yearsHelp() string {
	return c.Page.View.Words.Text(words.YearsHelp, plan.YearCount, plan.YearSpreadPct)
}

func (c *Weather) yearsStatus() string {
	if c.Page.YearsRunning {
		return c.Page.YearsProgress(0)
	}
	return ""
}

// yearRows are bought energy, cost and cool days: this year, and the 10th, 50th and
// 90th percentile of many.
func (c *Weather) yearRows() [][5]string {
	spread, ok := c.Page.Store.Spread()
	if !ok {
		return nil
	}
	total := &c.Page.Store.Results.Year.Total
	row := func(name string, now float64, values []float64, decimals int) [5]string {
		r := [5]string{name, format.Number(now, decimals)}
		for i, q := range [3]float64{0.1, 0.5, 0.9} {
			r[2+i] = format.Number(plan.Quantile(values, q), decimals)
		}
		return r
	}
	return [][5]string{
		row(c.Page.T(words.YearsBought), total.BoughtJ/simulate.JPerKWh, spread.BoughtKWh, 0),
		row(c.Page.View.Words.Text(words.YearsCost, c.Page.Store.Scenario.Currency), total.Cost, spread.Cost, 0),
		row(c.Page.T(words.YearsCool), float64(total.CoolDays), spread.CoolDays, 0),
	}
}
