package advice

import (
	"math"

	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/words"
)

// Lengths shows yearly cost and cool uses over the length of the window.
type Lengths struct{ Page *page.Page }

func (c *Lengths) some() bool { return len(c.Page.Store.Lengths()) > 1 }

func (c *Lengths) legend() []parts.Legend {
	return []parts.Legend{{Class: "key key-cash", Text: c.Page.View.Words.Text(words.KeyLengthCost, c.Page.Store.Scenario.Currency)}, {Class: "key key-water", Text: c.Page.T(words.KeyLengthCool)}}
}

func (c *Lengths) sheet() *parts.Sheet {
	w := c.Page.View.Words
	sh := &parts.Sheet{ID: "lengths-table", Caption: c.Page.T(words.LengthsName), Head: []string{c.Page.T(words.LengthHours), w.Text(words.OfferCost, c.Page.Store.Scenario.Currency), c.Page.T(words.OfferCool)}}
	for _, l := range c.Page.Store.Lengths() {
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{parts.Number(l.Hours, 1), parts.Number(l.Cost, 0), parts.Number(l.CoolUses, 0)}})
	}
	return sh
}

// title says which length is enough.
func (c *Lengths) title() string {
	s := c.Page.Store
	for _, l := range s.Lengths() {
		switch {
		case l.CoolUses > float64(s.Scenario.AcceptUses):
		case l.Hours == 0:
			return c.Page.T(words.LengthNone)
		default:
			return c.Page.View.Words.Text(words.LengthEnough, format.Number(l.Hours, 1), format.Money(l.Cost, s.Scenario.Currency))
		}
	}
	return c.Page.T(words.LengthNever)
}

// ReadLengths are what can be read of the lengths' chart: windows, of which that as long as the
// hours now tells most.
func ReadLengths(c *page.Page) (r parts.Items) {
	list, now := c.Store.Lengths(), float64(c.Store.Window(0).Length())/60
	for i, l := range list {
		r.Across = append(r.Across, l.Hours)
		if math.Abs(l.Hours-now) < math.Abs(list[r.Tells].Hours-now) {
			r.Tells = i
		}
	}
	r.Says = func(i int) string {
		l := &list[i]
		return c.View.Words.Text(words.LengthSays, format.Number(l.Hours, 1), format.Money(l.Cost, c.Store.Scenario.Currency), format.Number(l.CoolUses, 0))
	}
	return r
}
