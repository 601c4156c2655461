package ui

import (
	"math"

	"suncask/engine/finance"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Reading reads an item of a chart: what tells most, until somebody chooses another by a tap on
// the chart or by its buttons.
type Reading struct {
	Page *Page
	Of   string // the chart
}

// readable is what can be read of a chart: its items by their places across, which of them tells
// most, and what is said of one.
type readable struct {
	across []float64
	tells  int
	says   func(i int) string
}

// ReadCharts are the charts with a reading.
func ReadCharts() []string { return []string{"year", "cash", "lengths", "climate"} }

func (c *Page) readable(chart string) readable {
	switch chart {
	case "year":
		y := &Yearly{c}
		return readable{monthsAcross(), y.telling(), y.monthSays}
	case "cash":
		return c.readCash()
	case "lengths":
		return c.readLengths()
	case "climate":
		return readable{monthsAcross(), int(c.Store.Scenario.Month), c.climateSays}
	}
	return readable{}
}

func monthsAcross() (list []float64) {
	for m := range 12 {
		list = append(list, float64(m+1))
	}
	return list
}

// readCash reads years; the one in which the system has paid itself back tells most.
func (c *Page) readCash() (r readable) {
	s := c.Store
	payments := s.Payments()
	sums, today := finance.Cumulative(0, payments), finance.Cumulative(s.Scenario.DiscountPct/100, payments)
	for year, sum := range sums {
		r.across = append(r.across, float64(year))
		if sum < 0 {
			r.tells = min(year+1, len(sums)-1)
		}
	}
	r.says = func(year int) string {
		money := func(v float64) string { return format.Money(v, s.Scenario.Currency) }
		return c.View.Words.Text(words.CashSays, year, money(sums[year]), money(today[year]))
	}
	return r
}

// readLengths reads windows; that as long as the hours now tells most.
func (c *Page) readLengths() (r readable) {
	list, now := c.Store.Lengths(), float64(c.Store.Window(0).Length())/60
	for i, l := range list {
		r.across = append(r.across, l.Hours)
		if math.Abs(l.Hours-now) < math.Abs(list[r.tells].Hours-now) {
			r.tells = i
		}
	}
	r.says = func(i int) string {
		l := &list[i]
		return c.View.Words.Text(words.LengthSays, format.Number(l.Hours, 1), format.Money(l.Cost, c.Store.Scenario.Currency), format.Number(l.CoolUses, 0))
	}
	return r
}

func (c *Page) climateSays(m int) string {
	w, p := c.View.Words, &c.Store.Prepared.Weather.Place
	return w.Text(words.ClimateSays, w.Months[m], format.Number(p.GHI[m], 1), degrees(p.TempC[m]), degrees(c.Store.Prepared.ColdC(m)))
}

// reads is which item of a chart is read.
func (c *Page) reads(chart string, r *readable) int {
	if i, chosen := c.Reads[chart]; chosen && i < len(r.across) {
		return i
	}
	return r.tells
}

// ReadNear reads the item of a chart that is nearest to a place across.
func (c *Page) ReadNear(chart string, x float64) {
	near := 0
	across := c.readable(chart).across
	for i := range across {
		if math.Abs(across[i]-x) < math.Abs(across[near]-x) {
			near = i
		}
	}
	c.Reads[chart] = near
}

// ReadAt is where across a chart the item is that is read; ok is false where it has none.
func (c *Page) ReadAt(chart string) (x float64, ok bool) {
	r := c.readable(chart)
	if len(r.across) == 0 {
		return 0, false
	}
	return r.across[c.reads(chart, &r)], true
}

func (c *Reading) id(part string) string { return "read-" + c.Of + "-" + part }

func (c *Reading) says() string {
	r := c.Page.readable(c.Of)
	if len(r.across) == 0 {
		return ""
	}
	return r.says(c.Page.reads(c.Of, &r))
}

func (c *Reading) turn(by int) {
	r := c.Page.readable(c.Of)
	if n := len(r.across); n > 0 {
		c.Page.Reads[c.Of] = (c.Page.reads(c.Of, &r) + by + n) % n
	}
}
