package ui

import (
	"math"
	"slices"
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/dots"
	"suncask/ui/format"
	"suncask/ui/words"
)

// yearHeads are the columns of the table of many years.
var yearHeads = []words.Key{words.YearsThis, words.YearsGood, words.YearsMiddle, words.YearsBad}

// Years shows what many drawn years would come to, one dot each.
type Years struct {
	Page *Page
	kept *dots.Picture
}

func (c *Years) help() string {
	return c.Page.View.Words.Text(words.YearsHelp, plan.YearCount, plan.YearSpreadPct)
}

func (c *Years) known() bool { _, ok := c.Page.Store.Spread(); return ok }

// values are what the dots show: cost, or, where years hardly differ in cost, days with cool
// water; now is that of the year shown.
func (c *Years) values() (values []float64, now float64, days bool) {
	spread, _ := c.Page.Store.Spread()
	total := &c.Page.Store.Results.Year.Total
	if most := slices.Max(spread.Cost); most-slices.Min(spread.Cost) < most/100 || most == 0 {
		return spread.CoolDays, float64(total.CoolDays), true
	}
	return spread.Cost, total.Cost, false
}

// amount writes a value that the dots show.
func (c *Years) amount(v float64) string {
	if _, _, days := c.values(); days {
		return c.Page.View.Words.Text(words.YearsDays, format.Number(v, 0))
	}
	return format.Money(v, c.Page.Store.Scenario.Currency)
}

func (c *Years) tenths() (low, high float64) {
	values, _, _ := c.values()
	return plan.Quantile(values, 0.1), plan.Quantile(values, 0.9)
}

func (c *Years) title() string {
	if !c.known() {
		return c.Page.T(words.YearsTitle)
	}
	values, _, days := c.values()
	_, high := c.tenths()
	if slices.Max(values) <= high {
		return c.Page.T(words.YearsAlike)
	}
	key := words.YearsDearer
	if days {
		key = words.YearsCooler
	}
	return c.Page.View.Words.Text(key, c.amount(high))
}

func (c *Years) picture() *dots.Picture {
	if c.kept == nil {
		values, _, _ := c.values()
		low, high := c.tenths()
		c.kept = dots.Layout(values, low, high)
	}
	return c.kept
}

// Compute lays the dots out anew in every render.
func (c *Years) Compute(vugu.ComputeCtx) { c.kept = nil }

func (c *Years) frame() string {
	return "0 0 " + strconv.Itoa(dots.Width) + " " + strconv.Itoa(dots.Height)
}

func (c *Years) radius() string { return svgNumber(c.picture().Radius) }

func dotClass(d dots.Dot) string { return [...]string{"dot-low", "dot-mid", "dot-high"}[d.Tenth+1] }

// axis is its line with ticks, and a line to the year shown.
func (c *Years) axis() string {
	p := c.picture()
	foot := strconv.Itoa(dots.Foot)
	d := "M0 " + foot + "H" + strconv.Itoa(dots.Width)
	for _, v := range p.Ticks {
		d += "M" + svgNumber(p.At(v)) + " " + foot + "v4"
	}
	return d + "M" + svgNumber(c.nowX()) + " 18V" + foot
}

// nowX is where the year shown stands, at the edge where it is beyond.
func (c *Years) nowX() float64 {
	_, now, _ := c.values()
	return math.Max(1, math.Min(dots.Width-1, c.picture().At(now)))
}

// marks are the values along the axis, and the year shown.
func (c *Years) marks() (list []textMark) {
	p, w := c.picture(), c.Page.View.Words
	for i, v := range p.Ticks {
		class := "dots-tick"
		switch i {
		case 0:
			class = "dots-tick first"
		case len(p.Ticks) - 1:
			class = "dots-tick last"
		}
		list = append(list, textMark{class, svgNumber(p.At(v)), strconv.Itoa(dots.Foot + 18), format.Number(v, 0)})
	}
	_, now, _ := c.values()
	class := "dots-now"
	if c.nowX() > dots.Width*0.7 {
		class = "dots-now last"
	} else if c.nowX() < dots.Width*0.3 {
		class = "dots-now first"
	}
	return append(list, textMark{class, svgNumber(c.nowX()), "12", w.Text(words.YearsShown, c.amount(now))})
}

// says reads the picture: the middle, the tenths, and the worst.
func (c *Years) says() string {
	spread, _ := c.Page.Store.Spread()
	values, _, _ := c.values()
	low, high := c.tenths()
	if slices.Max(values) <= high {
		return ""
	}
	return c.Page.View.Words.Text(words.YearsSays, c.amount(low), c.amount(high), c.amount(slices.Max(values)), format.Number(slices.Max(spread.CoolDays), 0))
}

// table has bought energy, cost and cool days: this year, and the 10th, 50th and
// 90th percentile of many.
func (c *Years) table() *sheet {
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
