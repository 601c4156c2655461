package parts

import (
	"math"
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/foresight"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// A slider stands over the curve of what each of its values would cost a year.

// spanned is the range of a field's slider with the picture behind it.
type spanned struct {
	plan.Range
	line, area, bars string  // the curve, the area under it, bars where water runs cool
	least, most      float64 // money of a year along the curve
	stale            bool    // it is of the house before the last edit
}

// spanOf is nil of a field that has no slider.
func spanOf(c *page.Page, id scenario.FieldID) *spanned {
	r, ok := plan.RangeOf(id)
	if !ok {
		return nil
	}
	points, stale := c.Store.Curve(id)
	line, area, bars := foresight.Curve(points, r.From, r.To(), c.Store.Scenario.AcceptUses)
	least, most := math.Inf(1), math.Inf(-1)
	for _, p := range points {
		least, most = math.Min(least, p.Cost), math.Max(most, p.Cost)
	}
	return &spanned{r, line, area, bars, least, most, stale}
}

func (c *Row) curveClass() string {
	if c.span.stale {
		return "curve stale"
	}
	return "curve"
}

// was marks the value before the last edit.
func (c *Row) was() string {
	if since := c.Page.Store.Since; since != nil && since.Field == c.ID {
		return foresight.Mark(scenario.FieldOf(c.ID).Get(&since.Was), c.span.From, c.span.To())
	}
	return ""
}

func (c *Row) least() string { return format.Exact(c.span.From) }
func (c *Row) most() string  { return format.Exact(c.span.To()) }

// step is the slider's: as fine as buttons go, and no coarser than its curve.
func (c *Row) step() string {
	f := scenario.FieldOf(c.ID)
	return format.Exact(min(c.span.Step, nudgeOf(f, f.Get(&c.Page.Store.Scenario))))
}

func (c *Row) at() string { return format.Exact(scenario.FieldOf(c.ID).Get(&c.Page.Store.Scenario)) }

// end is a value at the slider's end; a long unit stands above already.
func (c *Row) end(v float64) string {
	text := format.Value(scenario.FieldOf(c.ID), v)
	if c.unit != "" && !c.longUnit() {
		text += format.Space + c.unit
	}
	return text
}

// scale says between which sums the curve runs, and what its bars are.
func (c *Row) scale() string {
	span, s, w := c.span, &c.Page.Store.Scenario, c.Page.View.Words
	if span.line == "" {
		return ""
	}
	text := w.Text(words.CurveSays, format.Money(span.least, s.Currency), format.Money(span.most, s.Currency))
	if span.bars != "" {
		text += w.Text(words.CurveBars, s.AcceptUses)
	}
	return text
}

// says is what a screen reader hears of the slider: its value and what the year comes to.
func (c *Row) says() string {
	s := c.Page.Store
	y := &s.Results.Year.Total
	return c.Page.View.Words.Text(words.SliderSays, s.Text(c.ID)+" "+c.unit, format.Money(y.Cost, s.Scenario.Currency), c.Page.View.CoolDays(y.CoolDays))
}

// slide takes the slider's value.
func (c *Row) slide(event vugu.DOMEvent) {
	v, err := strconv.ParseFloat(event.PropString("target", "value"), 64)
	f := scenario.FieldOf(c.ID)
	if err != nil || f.Check(f.Snap(v)) != nil {
		return
	}
	c.Page.Store.Set(c.ID, f.Snap(v))
	c.Page.Changed()
}
