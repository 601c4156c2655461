package sheets

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/explain"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Explain opens a figure into its formula, its terms, and the months and days it sums up.
type Explain struct{ Page *page.Page }

// title is the figure with its value.
func (c *Explain) title() string {
	return c.name(c.Page.Explained) + ": " + c.shown(c.value().Value)
}

var quantityIDs = [explain.Quantities]string{"bought", "sun", "cost", "fraction", "cool", "saved", "lost", "tap", "day-bought", "day-cost", "payback", "value", "kwh"}

var quantityNames = [explain.Quantities]words.Key{words.ExplainBought, words.ExplainSun, words.ExplainCost, words.ExplainFraction,
	words.ExplainCool, words.ExplainSaved, words.ExplainLost, words.ExplainTap, words.ExplainDayBought, words.ExplainDayCost,
	words.WorthPayback, words.WorthNPV, words.WorthKWh}

var symbolNames = [explain.Symbols]words.Key{words.TermSun, words.TermGrid, words.TermBare, words.TermCost, words.TermBase,
	words.TermPrice, words.TermBands, words.TermBlocks, words.TermFed, words.TermFedPrice, words.TermFedLess, words.TermInvestment, words.TermSaving, words.TermRise,
	words.TermAgeing, words.TermDiscount, words.TermUpkeep, words.TermReplacement, words.TermReplaceYear, words.TermHorizon}

func (c *Explain) quantities() (list []explain.Quantity) {
	for q := range explain.Quantities {
		list = append(list, q)
	}
	return list
}

func (c *Explain) id(q explain.Quantity) string { return "explain-" + quantityIDs[q] }

func (c *Explain) name(q explain.Quantity) string {
	name := c.Page.T(quantityNames[q])
	switch q {
	case explain.Cost, explain.Saved, explain.DayCost, explain.NetValue, explain.KWhCost:
		name += ", " + c.Page.Store.Scenario.Currency
	}
	return name
}

func (c *Explain) choose(q explain.Quantity) { c.Page.Explained, c.Page.ExplainedAt = q, explain.Year }

func (c *Explain) chosen(q explain.Quantity) bool { return c.Page.Explained == q }

func (c *Explain) house() *explain.House {
	s := c.Page.Store
	return &explain.House{Prepared: s.Prepared, Year: &s.Results.Year, Bare: &s.Bare, Day: &s.Results.Day.Flows}
}

func (c *Explain) value() explain.Explanation {
	return explain.Of(c.Page.Explained, c.Page.ExplainedAt, c.house())
}

// span names the year, a month or a day.
func (c *Explain) span(at explain.Span) string {
	switch {
	case at.Day >= 0:
		return c.Page.View.Date(at.Day)
	case at.Month >= 0:
		return c.Page.View.Words.Months[at.Month]
	}
	return c.Page.T(words.PanelYear)
}

// figure is a value of the quantity that is opened.
func (c *Explain) figure(v float64) parts.Figure {
	currency := c.Page.Store.Scenario.Currency
	switch c.Page.Explained {
	case explain.CoolDays:
		return parts.Number(v, 0)
	case explain.Cost, explain.Saved, explain.DayCost, explain.NetValue:
		return parts.Number(v, format.Cents(currency))
	case explain.KWhCost:
		return parts.Number(v, 1+format.Cents(currency))
	}
	return parts.Number(v, 2)
}

// of names the span of the figure that is opened.
func (c *Explain) of() string {
	switch q := c.Page.Explained; q {
	case explain.DayBought, explain.DayCost:
		return c.Page.View.Day(c.Page.Store)
	case explain.Payback, explain.NetValue, explain.KWhCost:
		return c.Page.T(words.WorthAllDay)
	}
	return c.span(c.Page.ExplainedAt)
}

// shown is a value as text.
func (c *Explain) shown(v float64) string {
	if math.IsInf(v, 1) {
		return c.Page.T(words.WorthNever)
	}
	return parts.Text(c.figure(v))
}

// text is the figure with its formula.
func (c *Explain) text() string {
	q, at := c.Page.Explained, c.Page.ExplainedAt
	formula := explain.Formula(q, at)
	switch {
	case formula == "":
		formula = c.Page.T(words.ExplainRun)
	case formula == "\u03a3" && at.Month >= 0:
		formula = c.Page.T(words.ExplainDays)
	case formula == "\u03a3":
		formula = c.Page.T(words.ExplainMonths)
	}
	return c.Page.View.Words.Text(words.ExplainText, c.name(q), c.of(), c.shown(c.value().Value), formula)
}

// sheet has the terms, or the parts, of which months open into days and days are shown.
func (c *Explain) sheet() *parts.Sheet {
	t, e := c.Page.T, c.value()
	sh := &parts.Sheet{ID: "explain", Caption: c.name(c.Page.Explained) + ", " + c.of(), Head: []string{t(words.WorthFigure), t(words.ExplainValue)}}
	for _, term := range e.Terms {
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{explain.Letters[term.Symbol] + ": " + t(symbolNames[term.Symbol]), termFigure(term.Value)}})
	}
	for _, p := range e.Parts {
		r := parts.SheetRow{Cells: []any{c.span(p.Span), c.figure(p.Value)}}
		r.Take = func() {
			if c.Page.ExplainedAt = p.Span; p.Span.Day >= 0 {
				c.Page.GoTo(page.YearPlace)
				c.Page.ShowDay(p.Span.Day)
				c.Page.Reveal("day-uses")
			}
		}
		sh.Rows = append(sh.Rows, r)
	}
	if len(e.Parts) > 0 {
		sh.AddUp(1, len(e.Terms))
	}
	return sh
}

// termFigure is a term's value: counts and years have no decimals.
func termFigure(v float64) parts.Figure {
	if v == math.Trunc(v) {
		return parts.Number(v, 0)
	}
	return parts.Number(v, 3)
}

func (c *Explain) some() bool { e := c.value(); return len(e.Terms)+len(e.Parts) > 0 }

func (c *Explain) below() bool { return c.Page.ExplainedAt != explain.Year }

// up goes from a day to its month, from a month to the year.
func (c *Explain) up() {
	at := &c.Page.ExplainedAt
	if at.Day >= 0 {
		at.Month, at.Day = climate.MonthOf(at.Day), -1
	} else {
		*at = explain.Year
	}
}

// source says by what the figure was come to.
func (c *Explain) source() string {
	return c.Page.View.Words.Text(words.ExplainSource, c.Page.View.Words.Fields[scenario.Place].Name, c.Page.Store.Text(scenario.Place))
}
