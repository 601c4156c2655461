package year

import (
	"math"
	"slices"
	"strconv"

	"suncask/engine/plan"
	"suncask/engine/simulate"
	"suncask/ui/dots"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// yearHeads are the columns of the table of many years.
var yearHeads = []words.Key{words.YearsThis, words.YearsGood, words.YearsMiddle, words.YearsBad}

// Years shows what many drawn years would come to, one dot each. What it shows is worked out
// once a render.
type Years struct {
	Page *page.Page

	known     bool
	values    []float64 // cost, or, where years hardly differ in cost, days with cool water
	now       float64   // that of the year shown
	days      bool      // they are days
	low, high float64   // tenths
	most      float64
	picture   *dots.Picture
}

// Compute works it out.
func (c *Years) Compute() {
	spread, known := c.Page.Store.Spread()
	if c.known = known; !known {
		return
	}
	total := &c.Page.Store.Results.Year.Total
	c.values, c.now, c.days = spread.Cost, total.Cost, false
	if most := slices.Max(spread.Cost); most-slices.Min(spread.Cost) < most/100 || most == 0 {
		c.values, c.now, c.days = spread.CoolDays, float64(total.CoolDays), true
	}
	c.low, c.high, c.most = plan.Quantile(c.values, 0.1), plan.Quantile(c.values, 0.9), slices.Max(c.values)
	c.picture = dots.Layout(c.values, c.low, c.high)
}

func (c *Years) help() string {
	return c.Page.View.Words.Text(words.YearsHelp, plan.YearCount, plan.YearSpreadPct)
}

// amount writes a value that the dots show.
func (c *Years) amount(v float64) string {
	if c.days {
		return c.Page.View.Words.Text(words.YearsDays, format.Number(v, 0))
	}
	return format.Money(v, c.Page.Store.Scenario.Currency)
}

// key says what the axis counts.
func (c *Years) key() string {
	if c.days {
		return c.Page.T(words.YearsCool)
	}
	return c.Page.View.Words.Text(words.YearsCost, c.Page.Store.Scenario.Currency)
}

// alike tells whether no year is beyond the highest tenth.
func (c *Years) alike() bool { return c.most <= c.high }

func (c *Years) title() string {
	switch {
	case !c.known:
		return c.Page.T(words.YearsTitle)
	case c.alike():
		return c.Page.T(words.YearsAlike)
	case c.days:
		return c.Page.View.Words.Text(words.YearsCooler, c.amount(c.high))
	}
	return c.Page.View.Words.Text(words.YearsDearer, c.amount(c.high))
}

func (c *Years) frame() string {
	return "0 0 " + strconv.Itoa(dots.Width) + " " + strconv.Itoa(dots.Height)
}

func (c *Years) radius() string { return format.Length(c.picture.Radius) }

func dotClass(d dots.Dot) string { return [...]string{"dot-low", "dot-mid", "dot-high"}[d.Tenth+1] }

// axis is its line with ticks, and a line to the year shown.
func (c *Years) axis() string {
	foot := strconv.Itoa(dots.Foot)
	d := "M0 " + foot + "H" + strconv.Itoa(dots.Width)
	for _, v := range c.picture.Ticks {
		d += "M" + format.Length(c.picture.At(v)) + " " + foot + "v4"
	}
	return d + "M" + format.Length(c.nowX()) + " 18V" + foot
}

// nowX is where the year shown stands, at the edge where it is beyond.
func (c *Years) nowX() float64 {
	return math.Max(1, math.Min(dots.Width-1, c.picture.At(c.now)))
}

// marks are the values along the axis, and the year shown; words at the sides stay inside.
func (c *Years) marks() (list []parts.Mark) {
	side := func(class string, x float64) string {
		switch {
		case x < dots.Width*0.3:
			return class + " at-start"
		case x > dots.Width*0.7:
			return class + " at-end"
		}
		return class
	}
	ticks := c.picture.Ticks
	for i, v := range ticks {
		x, class := c.picture.At(v), "dots-tick"
		if i == 0 || i == len(ticks)-1 {
			class = side(class, x)
		}
		list = append(list, parts.NewMark(class, format.Length(x), strconv.Itoa(dots.Foot+18), format.Number(v, 0)))
	}
	return append(list, parts.NewMark(side("dots-now", c.nowX()), format.Length(c.nowX()), "12", c.Page.View.Words.Text(words.YearsShown, c.amount(c.now))))
}

// says reads the picture: the tenths and the worst.
func (c *Years) says() string {
	if c.alike() {
		return ""
	}
	spread, _ := c.Page.Store.Spread()
	return c.Page.View.Words.Text(words.YearsSays, c.amount(c.low), c.amount(c.high), c.amount(c.most), format.Number(slices.Max(spread.CoolDays), 0))
}

// table has bought energy, cost and cool days: this year, and the 10th, 50th and
// 90th percentile of many.
func (c *Years) table() *parts.Sheet {
	spread, _ := c.Page.Store.Spread()
	total := &c.Page.Store.Results.Year.Total
	row := func(name string, now float64, values []float64) parts.SheetRow {
		r := parts.SheetRow{Cells: []any{name, parts.Number(now, 0)}}
		for _, q := range [3]float64{0.1, 0.5, 0.9} {
			r.Cells = append(r.Cells, parts.Number(plan.Quantile(values, q), 0))
		}
		return r
	}
	sh := &parts.Sheet{ID: "years-table", Caption: c.Page.T(words.YearsName), Head: []string{c.Page.T(words.WorthFigure)}, Rows: []parts.SheetRow{
		row(c.Page.T(words.YearsBought), total.BoughtJ/simulate.JPerKWh, spread.BoughtKWh),
		row(c.Page.View.Words.Text(words.YearsCost, c.Page.Store.Scenario.Currency), total.Cost, spread.Cost),
		row(c.Page.T(words.YearsCool), float64(total.CoolDays), spread.CoolDays),
	}}
	for _, key := range yearHeads {
		sh.Head = append(sh.Head, c.Page.T(key))
	}
	return sh
}
