package advice

import (
	"math"
	"slices"
	"strconv"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/bars"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// sizes are the best offers for each number of modules.
func sizes(c *page.Page) []plan.Offer { return bestByModules(c.Store.Offers(state.SizesJob)) }

// sizesTitle names the number of modules that is worth most, once it is known.
func (c *Advice) sizesTitle() string {
	best := bestOffer(sizes(c.Page))
	if !c.Page.Store.Done(state.SizesJob) || best == nil {
		return c.Page.T(words.SizesTitle)
	}
	return c.Page.View.Words.Text(words.SizesMost, best.To.Modules, format.Money(best.Worth, best.To.Currency), best.To.HorizonYears)
}

// Sizes shows as bars what each number of modules is worth today, at its best hours. What it
// shows is worked out once a render.
type Sizes struct {
	Page *page.Page

	list    []plan.Offer
	best    *plan.Offer // nil where none keeps the promise
	picture *bars.Picture
}

// Compute works it out.
func (c *Sizes) Compute() {
	c.list = sizes(c.Page)
	c.best = bestOffer(c.list)
	var worth []float64
	for _, o := range c.list {
		worth = append(worth, o.Worth)
	}
	c.picture = bars.Layout(worth)
}

// key says what bars and numbers are, and what the sign on a bar means.
func (c *Sizes) key() string {
	w := c.Page.View.Words
	text := w.Fields[scenario.Modules].Name + ": " + w.Text(words.OfferWorth, c.Page.Store.Scenario.Currency)
	if slices.ContainsFunc(c.list, func(o plan.Offer) bool { return len(o.Mind) > 0 }) {
		text += "; " + mindSign + " " + c.Page.T(words.OfferMind)
	}
	return text
}

// mindSign stands on the bar of an offer that brings a caution.
const mindSign = "△"

func (c *Sizes) frame() string {
	return "0 0 " + strconv.Itoa(bars.Width) + " " + strconv.Itoa(bars.Height)
}

func (c *Sizes) axis() (d string) {
	for _, t := range c.picture.Ticks {
		d += "M" + strconv.Itoa(bars.Left) + " " + format.Length(t.Y) + "H" + strconv.Itoa(bars.Width)
	}
	return d
}

// isBest and isHere tell whether a bar is the best offer's, or of the house's own number.
func (c *Sizes) isBest(i int) bool {
	return c.best != nil && c.best.To.Modules == c.list[i].To.Modules
}

func (c *Sizes) isHere(i int) bool { return c.list[i].To.Modules == c.Page.Store.Scenario.Modules }

// class marks those, and the bars that miss the promise.
func (c *Sizes) class(i int) string {
	class := "size-bar"
	if !c.list[i].Kept {
		class += " missed"
	}
	if c.isBest(i) {
		class += " best"
	} else if c.isHere(i) {
		class += " here"
	}
	return class
}

// marks are the numbers of modules below, amounts along the side, and names on the bars that
// are marked.
func (c *Sizes) marks() (list []parts.Mark) {
	for _, t := range c.picture.Ticks {
		list = append(list, parts.NewMark("size-tick", strconv.Itoa(bars.Left-4), format.Length(t.Y+4), format.Number(t.Value, 0)))
	}
	last := math.Inf(-1)
	for i, b := range c.picture.Bars {
		o := &c.list[i]
		if len(o.Mind) > 0 {
			list = append(list, parts.NewMark("size-mind", format.Length(b.Middle), format.Length(b.Y+14), mindSign))
		}
		list = append(list, parts.NewMark("size-count", format.Length(b.Middle), strconv.Itoa(bars.Foot+18), strconv.Itoa(o.To.Modules)))
		name := words.SizesYours
		if c.isBest(i) {
			name = words.SizesBest
		} else if !c.isHere(i) {
			continue
		}
		y := b.Y - 5
		if b.Middle-last < 60 {
			y -= 12 // the other name is beside it
		}
		last = b.Middle
		list = append(list, parts.NewMark("size-named", format.Length(b.Middle), format.Length(y), c.Page.T(name)))
	}
	return list
}
