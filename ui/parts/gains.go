package parts

import (
	"math"

	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Gains lists what somebody could do, each with what it saves a year as a bar from a common
// zero: less to the left, more to the right.
type Gains struct {
	Page *page.Page
	List []Gain
}

// Gain is one thing to do.
type Gain struct {
	Name, Note string
	Class      string
	Saves      float64 // a year, in the house's currency
	Warns      bool    // it brings a caution
	Button     string
	Take       func() // nil where it cannot be taken at once
}

// gainHalf is how long the longest bar is, of a picture that is 100 wide with its zero in the
// middle.
const gainHalf = 48.0

func (c *Gains) bar(g Gain) string {
	most := 0.0
	for _, o := range c.List {
		most = max(most, math.Abs(o.Saves))
	}
	if most == 0 {
		return ""
	}
	return "M50 1v8h" + format.Length(-gainHalf*g.Saves/most) + "v-8z"
}

func (g Gain) sign() string {
	if g.Saves < 0 {
		return "gain-more"
	}
	return "gain-less"
}

func (c *Gains) amount(g Gain) string {
	key := words.ChangeLess
	switch {
	case g.Saves == 0:
		return c.Page.T(words.ChangeNone)
	case g.Saves < 0:
		key = words.ChangeMore
	}
	return c.Page.View.Words.Text(key, format.Money(math.Abs(g.Saves), c.Page.Store.Scenario.Currency))
}
