package ui

import (
	"math"

	"suncask/engine/explain"
	"suncask/engine/finance"
	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Worth shows what the system saves and is worth.
type Worth struct{ Page *Page }

// notes are sentences on what is beside the table.
func (c *Worth) notes() []string {
	s, w := c.Page.Store, c.Page.View.Words
	v := s.Savings()
	list := []string{c.split()}
	if s.Scenario.OtherKWh > 0 || s.Scenario.Standing > 0 {
		bill := func(f *simulate.Flows) string {
			return format.Money(plan.Bill(&s.Scenario, f.Cost), s.Scenario.Currency)
		}
		list = append(list, w.Text(words.WorthBill, bill(&v.Now), bill(&v.AllDay)))
	}
	if s.Scenario.GridCO2 > 0 {
		kg := func(f *simulate.Flows) string { return format.Number(plan.CarbonKg(&s.Scenario, f), 0) }
		list = append(list, w.Text(words.WorthCarbon, kg(&v.Now), kg(&v.AllDay)))
	}
	return list
}

// rows are the figures against both years without modules.
func (c *Worth) sheet() *sheet {
	s, t := c.Page.Store, c.Page.T
	savings := s.Savings()
	allDay, hours := savings.Worth(&s.Scenario)
	row := func(name words.Key, of func(finance.Worth) string) sheetRow {
		return sheetRow{cells: []any{t(name), of(allDay), of(hours)}}
	}
	opens := func(q explain.Quantity, r sheetRow) sheetRow {
		r.take = func() { c.Page.explainFigure(q) }
		return r
	}
	money := func(v float64) string { return format.Money(v, s.Scenario.Currency) }
	rows := []sheetRow{
		{cells: []any{t(words.WorthSaving), money(c.sum(savings.Timer(), savings.Sun())), money(savings.Sun())}},
		opens(explain.Payback, row(words.WorthPayback, func(w finance.Worth) string { return c.years(w.Payback) })),
		row(words.WorthDiscounted, func(w finance.Worth) string { return c.years(w.DiscountPayback) }),
		opens(explain.NetValue, row(words.WorthNPV, func(w finance.Worth) string { return money(w.NPV) })),
		row(words.WorthRate, c.rate),
		opens(explain.KWhCost, row(words.WorthKWh, func(w finance.Worth) string {
			if math.IsInf(w.KWhCost, 1) {
				return t(words.WorthNoRate)
			}
			return format.PerKWh(w.KWhCost, s.Scenario.Currency)
		})),
	}
	return &sheet{id: "worth", caption: t(words.WorthName), head: []string{t(words.WorthFigure), t(words.WorthAllDay), t(words.WorthHours)}, rows: rows}
}

// sum is that of two amounts as they are shown elsewhere.
func (c *Worth) sum(a, b float64) float64 {
	return format.Less(a, -b, c.Page.Store.Scenario.Currency)
}

func (c *Worth) legend() []legend {
	w := c.Page.View.Words
	return []legend{{"key key-cash", w.Text(words.KeyCash, c.Page.Store.Scenario.Currency)}, {"key key-lost", c.Page.T(words.KeyCashToday)}}
}

// cash is the table of payments, year by year.
func (c *Worth) cash() *sheet {
	s, w := c.Page.Store, c.Page.View.Words
	head := func(k words.Key) string { return w.Text(k, s.Scenario.Currency) }
	sh := &sheet{id: "cash-years", caption: c.Page.T(words.CashYears), head: []string{c.Page.T(words.CashYear), head(words.CashPaid), head(words.CashSum), head(words.CashSumToday)}}
	payments := s.Payments()
	sums, today := finance.Cumulative(0, payments), finance.Cumulative(s.Scenario.DiscountPct/100, payments)
	steps := format.Steps(payments, 0)
	for year := range payments {
		sh.rows = append(sh.rows, sheetRow{cells: []any{figure{float64(year), 0}, part{figure{payments[year], 0}, steps[year]}, figure{sums[year], 0}, figure{today[year], 0}}})
	}
	return sh
}

func (c *Worth) years(v float64) string {
	if math.IsInf(v, 1) {
		return c.Page.T(words.WorthNever)
	}
	return c.Page.View.Words.Text(words.WorthYears, format.Number(v, 1))
}

func (c *Worth) rate(w finance.Worth) string {
	switch len(w.Rates) {
	case 0:
		return c.Page.T(words.WorthNoRate)
	case 1:
		return format.Number(100*w.Rate, 1) + format.Space + "%"
	}
	return c.Page.T(words.WorthManyRates)
}

func (c *Worth) split() string {
	s := c.Page.Store
	v := s.Savings()
	money := func(x float64) string { return format.Money(x, s.Scenario.Currency) }
	return c.Page.View.Words.Text(words.WorthSplit, money(plan.SystemCost(&s.Scenario)), money(v.Timer()), money(v.Sun()),
		v.AllDay.CoolDays, v.Hours.CoolDays, v.Now.CoolDays, money(v.AtEqualComfort()))
}
