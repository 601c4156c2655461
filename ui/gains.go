package ui

import (
	"math"

	"suncask/ui/format"
	"suncask/ui/words"
)

// Gains lists what somebody could do, each with what it saves a year as a bar from a common
// zero: less to the left, more to the right.
type Gains struct {
	Page *Page
	List []gain
}

// gain is one thing to do.
type gain struct {
	name, note string
	class      string
	saves      float64 // a year, in the house's currency
	warns      bool    // it brings a caution
	button     string
	take       func() // nil where it cannot be taken at once
}

// gainHalf is how long the longest bar is, of a picture that is 100 wide with its zero in the
// middle.
const gainHalf = 48.0

func (c *Gains) bar(g gain) string {
	most := 0.0
	for _, o := range c.List {
		most = max(most, math.Abs(o.saves))
	}
	if most == 0 {
		return ""
	}
	return "M50 1v8h" + svgNumber(-gainHalf*g.saves/most) + "v-8z"
}

func (g gain) sign() string {
	if g.saves < 0 {
		return "gain-more"
	}
	return "gain-less"
}

func (c *Gains) amount(g gain) string {
	key := words.ChangeLess
	switch {
	case g.saves == 0:
		return c.Page.T(words.ChangeNone)
	case g.saves < 0:
		key = words.ChangeMore
	}
	return c.Page.View.Words.Text(key, format.Money(math.Abs(g.saves), c.Page.Store.Scenario.Currency))
}
