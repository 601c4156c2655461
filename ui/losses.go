package ui

import (
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

// lightLost says what the losses of the modules come to.
func (c *Panels) lightLost() string {
	return c.Page.View.Words.Text(words.LightLostNote, format.Number(100*c.Page.Store.Prepared.LightLost(), 1))
}

// standingLoss says what the tank loses, in both ways in which people know it.
func (c *Panels) standingLoss() string {
	wPerK, kWh := c.Page.Store.Prepared.StandingLoss()
	w := c.Page.View.Words
	return w.Text(words.StandingLossNote, format.In(scenario.WattPerKelvin, wPerK, 2), format.Number(kWh, 2), w.Units[scenario.WattPerKelvin])
}
