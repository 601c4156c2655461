package house

import (
	"suncask/engine/explain"
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Card shows the fields of the open card, with what belongs to them.
type Card struct{ Page *page.Page }

// fields are those of the open panel that say something about this house.
func (c *Card) fields() (list []scenario.FieldID) {
	s, p := c.Page.Store, panelOf(c.Page.Panel)
	for i, id := range p.all() {
		_, refused := s.Refused[id]
		first := i < len(p.fields) || c.Page.More || s.Scenario.Known.Has(id) || refused // what somebody gave is shown
		if first && state.Applies(&s.Scenario, id) {
			list = append(list, id)
		}
	}
	return list
}

// hasMore tells whether the open panel has more than it shows at first.
func (c *Card) hasMore() bool { return len(panelOf(c.Page.Panel).more) > 0 }

func (c *Card) moreName() string {
	if c.Page.More {
		return c.Page.T(words.FewerChoices)
	}
	return c.Page.T(words.MoreChoices)
}

// canAddPlane tells whether the roof has room for another plane.
func (c *Card) canAddPlane() bool { return freePlane(&c.Page.Store.Scenario) >= 0 }

// freePlane is the first further plane without modules, -1 if all have some.
func freePlane(s *scenario.Scenario) int {
	for i, p := range s.More {
		if p.Modules == 0 {
			return i
		}
	}
	return -1
}

// newPlaneModules is what an added plane starts with.
const newPlaneModules = 2

func (c *Card) addPlane() {
	c.Page.Store.Plane(freePlane(&c.Page.Store.Scenario), newPlaneModules)
	c.Page.Changed()
}

// furtherPlanes are the indices of those with modules.
func (c *Card) furtherPlanes() (list []int) {
	for i, p := range c.Page.Store.Scenario.More {
		if p.Modules > 0 {
			list = append(list, i)
		}
	}
	return list
}

func (c *Card) removePlane(i int) {
	c.Page.Store.Plane(i, 0)
	c.Page.Changed()
}

func (c *Card) removeName(i int) string { return c.Page.View.Words.Text(words.PlaneRemove, i+2) }

func (c *Card) addSecond() {
	c.Page.Store.AddSecond()
	c.Page.Changed()
}

func (c *Card) removeSecond() {
	c.Page.Store.RemoveSecond()
	c.Page.Changed()
}

// playDay lets the day pass in the tank's group.
func (c *Card) playDay() {
	c.Page.Show(page.TankPanel)
	c.Page.Playing, c.Page.TankMinute = false, 0
	play(c.Page)
	c.Page.Reveal("tank-play")
}

// explainCost opens the first figure.
func (c *Card) explainCost() { c.Page.Explain(explain.Cost) }
