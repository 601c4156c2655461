package year

import (
	"math"

	"suncask/engine/explain"
	"suncask/engine/finance"
	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Worth shows what the system saves and is worth.
type Worth struct{ Page *page.Page }

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
func (c *Worth) sheet() *parts.Sheet {
	s, t := c.Page.Store, c.Page.T
	savings := s.Savings()
	allDay, hours := savings.Worth(&s.Scenario)
	row := func(name words.Key, of func(finance.Worth) string) parts.SheetRow {
		return parts.SheetRow{Cells: []any{t(name), of(allDay), of(hours)}}
	}
	opens := func(q explain.Quantity, r parts.SheetRow) parts.SheetRow {
		r.Take = func() { c.Page.Explain(q) }
		return r
	}
	money := func(v float64) string { return format.Money(v, s.Scenario.Currency) }
	rows := []parts.SheetRow{
		{Cells: []any{t(words.WorthSaving), money(c.sum(savings.Timer(), savings.Sun())), money(savings.Sun())}},
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
	return &parts.Sheet{ID: "worth", Caption: t(words.WorthName), Head: []string{t(words.WorthFigure), t(words.WorthAllDay), t(words.WorthHours)}, Rows: rows}
}

// sum is that of two amounts as they are shown elsewhere.
func (c *Worth) sum(a, b float64) float64 {
	return format.Less(a, -b, c.Page.Store.Scenario.Currency)
}

func (c *Worth) legend() []parts.Legend {
	w := c.Page.View.Words
	return []parts.Legend{{Class: "key key-cash", Text: w.Text(words.KeyCash, c.Page.Store.Scenario.Currency)}, {Class: "key key-lost", Text: c.Page.T(words.KeyCashToday)}}
}

// cash is the table of payments, year by year.
func (c *Worth) cash() *parts.Sheet {
	s, w := c.Page.Store, c.Page.View.Words
	head := func(k words.Key) string { return w.Text(k, s.Scenario.Currency) }
	sh := &parts.Sheet{ID: "cash-years", Caption: c.Page.T(words.CashYears), Head: []string{c.Page.T(words.CashYear), head(words.CashPaid), head(words.CashSum), head(words.CashSumToday)}}
	payments := s.Payments()
	sums, today := finance.Cumulative(0, payments), finance.Cumulative(s.Scenario.DiscountPct/100, payments)
	steps := format.Steps(payments, 0)
	for year := range payments {
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{parts.Number(float64(year), 0), parts.Part{Figure: parts.Number(payments[year], 0), Shown: steps[year]}, parts.Number(sums[year], 0), parts.Number(today[year], 0)}})
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

// ReadCash are what can be read of the payments' chart: years, of which that in which the system has
// paid itself back tells most.
func ReadCash(c *page.Page) (r parts.Items) {
	s := c.Store
	payments := s.Payments()
	sums, today := finance.Cumulative(0, payments), finance.Cumulative(s.Scenario.DiscountPct/100, payments)
	for year, sum := range sums {
		r.Across = append(r.Across, float64(year))
		if sum < 0 {
			r.Tells = min(year+1, len(sums)-1)
		}
	}
	r.Says = func(year int) string {
		money := func(v float64) string { return format.Money(v, s.Scenario.Currency) }
		return c.View.Words.Text(words.CashSays, year, money(sums[year]), money(today[year]))
	}
	return r
}
