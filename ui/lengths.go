package ui

import (
	"suncask/ui/words"
)

// Lengths shows yearly cost and cool uses over the length of the window.
type Lengths struct{ Page *Page }

func (c *Lengths) some() bool { return len(c.Page.Store.Lengths()) > 1 }

func (c *Lengths) legend() []legend {
	return []legend{{"key key-cash", c.Page.View.Words.Text(words.KeyLengthCost, c.Page.Store.Scenario.Currency)}, {"key key-water", c.Page.T(words.KeyLengthCool)}}
}

func (c *Lengths) sheet() *sheet {
	w := c.Page.View.Words
	sh := &sheet{id: "lengths-table", caption: c.Page.T(words.LengthsName), head: []string{c.Page.T(words.LengthHours), w.Text(words.OfferCost, c.Page.Store.Scenario.Currency), c.Page.T(words.OfferCool)}}
	for _, l := range c.Page.Store.Lengths() {
		sh.rows = append(sh.rows, sheetRow{cells: []any{figure{l.Hours, 1}, figure{l.Cost, 0}, figure{l.CoolUses, 0}}})
	}
	return sh
}
