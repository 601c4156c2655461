package house

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// heatTimes says how long grid and sun take to heat the tank.
func (c *Cutaway) heatTimes() string {
	w, s := c.Page.View.Words, c.Page.Store
	h := s.HeatTimes()
	cold, to := format.Degrees(h.ColdC), format.Degrees(h.ToC)
	text := w.Text(words.HeatGridNever, cold, to)
	if h.GridOK {
		text = w.Text(words.HeatGrid, cold, to, format.Duration(int(math.Ceil(h.GridMinutes))))
	}
	month := w.Months[s.Scenario.Month]
	switch {
	case h.SunOK:
		text += " " + w.Text(words.HeatSun, month, format.Duration(int(math.Ceil(h.SunMinutes))), format.Clock(int(math.Ceil(h.SunFrom+h.SunMinutes))))
	case s.Prepared.Wiring().Strings > 0:
		text += " " + w.Text(words.HeatSunNever, month)
	}
	return text
}

// hygiene says how often the year's water is heated through, and how much stands where
// bacteria grow.
func (c *Cutaway) hygiene() string {
	w, h := c.Page.View.Words, c.Page.Store.Hygiene()
	heated := w.Text(words.HygieneNever, format.Degrees(simulate.HygieneC), simulate.HygieneMinutes)
	if h.HeatUps > 0 {
		heated = w.Text(words.HygieneHeated, format.Degrees(simulate.HygieneC), simulate.HygieneMinutes, h.HeatUps, format.Number(h.LongestDays, 1))
	}
	dose := w.Text(words.DoseNone)
	switch {
	case c.Page.Store.Scenario.Uses == scenario.NoUses: // nobody draws
		dose = ""
	case h.LeastDose >= 0.05:
		dose = w.Text(words.DoseSome, format.Number(h.LeastDose, 1))
	}
	return heated + " " + dose + " " + w.Text(words.HygieneGrow, format.Number(h.GrowHours, 0), format.In(scenario.Litre, h.GrowLitres, 0), format.Degrees(simulate.GrowFromC), format.Degrees(simulate.GrowToC))
}

// ready says how many showers the tank gives at the hour.
func (c *Cutaway) ready() string {
	if !c.showers() {
		return ""
	}
	p := &c.Page.Store.Results.Day.Trace.Points[c.point()]
	return c.Page.View.Words.Text(words.TankReady, format.Number(math.Floor(10*p.UsableL/c.Page.Store.ShowerL())/10, 1))
}

// showers tells whether the household has showers to wait for.
func (c *Cutaway) showers() bool {
	return c.Page.Store.ShowerL() > 0 && c.Page.Store.Scenario.Uses != scenario.NoUses
}

func (c *Cutaway) twin() string {
	at := c.point()
	layers, p := c.Page.Store.Results.Day.Trace.Layers(at), c.Page.Store.Results.Day.Trace.Points[at]
	text := c.Page.View.Words.Text(words.TankTwin, format.Degrees(layers[len(layers)-1].TempC), format.Degrees(layers[0].TempC),
		format.Degrees(p.MeanC), format.In(scenario.Litre, p.UsableL, 0))
	if sun := c.Page.Store.Results.Day.Trace.Ahead(at); len(sun) > 0 {
		text += " " + c.Page.View.Words.Text(words.TankTwinAhead, format.Degrees(sun[len(sun)-1].TempC), format.Degrees(sun[0].TempC))
	}
	return text
}
