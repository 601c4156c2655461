package page

import (
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Better are the best hours for the house shown.
type Better struct {
	state.Better
	Saves float64 // a year, as the figures show it; below 0 they cost more
	Worth bool    // fewer uses run cool where too many do, or they cost less within what is accepted
}

// Better is what is known of them; known is false while nobody knows, and in a gesture.
func (c *Page) Better() (b Better, known bool) {
	s := c.Store
	if b.Better, known = s.Better(); !known || s.Before != nil {
		return b, false
	}
	now, accept := &s.Results.Year.Total, int32(s.Scenario.AcceptUses)
	b.Saves = format.Less(now.Cost, b.Cost, s.Scenario.Currency)
	b.Worth = now.CoolUses > accept && b.CoolUses < now.CoolUses || b.Saves > 0 && b.CoolUses <= max(accept, now.CoolUses)
	return b, true
}

// FindHours looks for them and takes them.
func (c *Page) FindHours() {
	c.FindNote = c.T(words.Finding)
	if c.Host != nil {
		c.Host.Find()
	}
}
