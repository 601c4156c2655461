package ui

import (
	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/words"
)

// yearHeads are the columns of the table of many years.
var yearHeads = []words.Key{words.YearsThis, words.YearsGood, words.YearsMiddle, words.YearsBad}

func (c *Weather) yearsHelp() string {
	return c.Page.View.Words.Text(words.YearsHelp, plan.YearCount, plan.YearSpreadPct)
}

func (c *Weather) hasYears() bool { _, ok := c.Page.Store.Spread(); return ok }

// years are bought energy, cost and cool days: this year, and the 10th, 50th and
// 90th percentile of many.
func (c *Weather) years() *sheet {
	spread, _ := c.Page.Store.Spread()
	total := &c.Page.Store.Results.Year.Total
	row := func(name string, now float64, values []float64) sheetRow {
		r := sheetRow{cells: []any{name, figure{now, 0}}}
		for _, q := range [3]float64{0.1, 0.5, 0.9} {
			r.cells = append(r.cells, figure{plan.Quantile(values, q), 0})
		}
		return r
	}
	sh := &sheet{id: "years-table", caption: c.Page.T(words.YearsName), head: []string{c.Page.T(words.WorthFigure)}, rows: []sheetRow{
		row(c.Page.T(words.YearsBought), total.BoughtJ/simulate.JPerKWh, spread.BoughtKWh),
		row(c.Page.View.Words.Text(words.YearsCost, c.Page.Store.Scenario.Currency), total.Cost, spread.Cost),
		row(c.Page.T(words.YearsCool), float64(total.CoolDays), spread.CoolDays),
	}}
	for _, key := range yearHeads {
		sh.head = append(sh.head, c.Page.T(key))
	}
	return sh
}
