package ui

import (
	"math"
	"strconv"

	"suncask/engine/plan"
	"suncask/ui/bars"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// The sizes as bars: what each number of modules is worth today, at its best hours.

func (c *Page) sizes() []plan.Offer { return bestByModules(c.Store.Offers(state.SizesJob)) }

// sizesTitle names the number of modules that is worth most, once it is known.
func (c *Page) sizesTitle() string {
	best := bestOffer(c.sizes())
	if !c.Store.Done(state.SizesJob) || best == nil {
		return c.T(words.SizesTitle)
	}
	return c.View.Words.Text(words.SizesMost, best.To.Modules, format.Money(best.Worth, best.To.Currency), best.To.HorizonYears)
}

func (c *Offers) hasBars() bool { return c.Of == state.SizesJob && c.some() }

func (c *Offers) bars() *bars.Picture {
	var worth []float64
	for _, o := range c.Page.sizes() {
		worth = append(worth, o.Worth)
	}
	return bars.Layout(worth)
}

func (c *Offers) barsFrame() string {
	return "0 0 " + strconv.Itoa(bars.Width) + " " + strconv.Itoa(bars.Height)
}

func (c *Offers) barsAxis() (d string) {
	for _, t := range c.bars().Ticks {
		d += "M" + strconv.Itoa(bars.Left) + " " + svgNumber(t.Y) + "H" + strconv.Itoa(bars.Width)
	}
	return d
}

// barClass marks the house's own number, the best, and those that miss the promise.
func (c *Offers) barClass(i int) string {
	list := c.Page.sizes()
	o := &list[i]
	class := "size-bar"
	if !o.Kept {
		class += " missed"
	}
	if best := bestOffer(list); best != nil && best.To.Modules == o.To.Modules {
		class += " best"
	} else if o.To.Modules == c.Page.Store.Scenario.Modules {
		class += " here"
	}
	return class
}

// barMarks are the numbers of modules below, amounts along the side, and names on the bars
// that are marked.
func (c *Offers) barMarks() (list []textMark) {
	p, offers := c.bars(), c.Page.sizes()
	for _, t := range p.Ticks {
		list = append(list, textMark{"size-tick", strconv.Itoa(bars.Left - 4), svgNumber(t.Y + 4), format.Number(t.Value, 0)})
	}
	best, last := bestOffer(offers), math.Inf(-1)
	for i := range offers {
		b, o := p.Bars[i], &offers[i]
		if len(o.Mind) > 0 {
			list = append(list, textMark{"size-mind", svgNumber(b.Middle), svgNumber(b.Y + 14), "△"})
		}
		list = append(list, textMark{"size-count", svgNumber(b.Middle), strconv.Itoa(bars.Foot + 18), strconv.Itoa(o.To.Modules)})
		name := ""
		switch {
		case best != nil && o.To.Modules == best.To.Modules:
			name = c.Page.T(words.SizesBest)
		case o.To.Modules == c.Page.Store.Scenario.Modules:
			name = c.Page.T(words.SizesYours)
		}
		if name != "" {
			y := b.Y - 5
			if b.Middle-last < 60 {
				y -= 12 // the other name is beside it
			}
			last = b.Middle
			list = append(list, textMark{"size-named", svgNumber(b.Middle), svgNumber(y), name})
		}
	}
	return list
}
