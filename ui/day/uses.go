package day

import (
	"github.com/vugu/vugu"

	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Uses lists the uses behind the open mark, which can be moved.
type Uses struct{ Page *page.Page }

// latest says until when the backup may start for the last use behind the open mark.
func (c *Uses) latest() string {
	uses := c.Page.Listed()
	if _, real := c.Page.Store.RealDay(); real || c.Page.DayShown >= 0 || len(uses) == 0 {
		return ""
	}
	last := uses[len(uses)-1]
	at, ok := c.Page.Store.LatestStart(last.At)
	switch {
	case !ok:
		return ""
	case at == c.Page.Store.Scenario.Backup.End:
		return c.Page.View.Words.Text(words.LatestNone, format.Clock(int(last.Minute+0.5)))
	}
	return c.Page.View.Words.Text(words.LatestStart, format.Clock(at), format.Clock(c.Page.Store.Scenario.Backup.End), format.Clock(int(last.Minute+0.5)))
}

func (c *Uses) name(o draw.Occasion) string { return c.Page.View.Words.Fields[scenario.TimeOf(o)].Name }

func (c *Uses) typed(event vugu.DOMEvent, o draw.Occasion) {
	c.Page.Store.Type(scenario.TimeOf(o), event.PropString("target", "value"))
	FollowUses(c.Page, state.Of(o))
	c.Page.Changed()
}

// problem is the sentence about a typed time of a use, empty if all were good.
func (c *Uses) problem() (text string) {
	for _, o := range c.Page.View.Open.List() {
		if p := c.Page.Problem(scenario.TimeOf(o)); p != "" {
			text = p
		}
	}
	return text
}

// help says how the open mark is moved, or why it is not.
func (c *Uses) help() string {
	if c.Page.View.Open == 0 {
		return c.Page.T(words.StandardHours)
	}
	return c.Page.T(words.UsesHelp)
}

// FollowUses keeps the list at the mark that some uses are behind now.
func FollowUses(c *page.Page, set state.Occasions) {
	for i, of := range c.Store.OccasionsOf() {
		if of&set != 0 {
			c.ShowUses(i)
		}
	}
}
