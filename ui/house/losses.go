package house

import (
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

// losses are the fields that are parts of the light that is lost.
var losses = [...]scenario.FieldID{scenario.SoilPct, scenario.ShadePct, scenario.MismatchPct, scenario.ConnectPct, scenario.FirstLightPct,
	scenario.PlatePct, scenario.DownPct, scenario.AgeYears}

// lightLost says what the losses of the modules come to, part by part.
func (c *Card) lightLost() string {
	s, w := c.Page.Store, c.Page.View.Words
	parts := ""
	for _, id := range losses {
		if f := scenario.FieldOf(id); f.Get(&s.Scenario) > 0 {
			if parts != "" {
				parts += "; "
			}
			parts += w.Fields[id].Name + " " + s.Text(id) + format.Space + w.Units[f.Unit]
		}
	}
	if parts == "" {
		return ""
	}
	return w.Text(words.LightLostNote, format.Number(100*s.Prepared.LightLost(), 1), parts)
}

// standingLoss says what the tank loses, in both ways in which people know it.
func (c *Card) standingLoss() string {
	wPerK, kWh := c.Page.Store.Prepared.StandingLoss()
	w := c.Page.View.Words
	return w.Text(words.StandingLossNote, format.In(scenario.WattPerKelvin, wPerK, 2), format.Number(kWh, 2), w.Units[scenario.WattPerKelvin])
}
