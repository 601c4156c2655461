package ui

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// coldWater is what cold water of other temperatures would change in a year.
type coldWater struct {
	at             mindedAt
	colder, warmer float64 // J bought more or less
	ws             simulate.Workspace
	year           *simulate.Year
}

// otherWaterK is how much colder and warmer.
const otherWaterK = 3.0

// waterNote says which cold water acts and what another would change. It is reckoned anew
// where the house or its hours are others, never in a drag.
func (c *Page) waterNote() string {
	s, w := c.Store, c.View.Words
	at := mindedAt{house: s.Prepared, scenario: s.Scenario}
	if at != c.water.at {
		bought := s.Results.Year.Total.BoughtJ
		if c.water.year == nil {
			c.water.year = new(simulate.Year)
		}
		change := func(k float64) float64 {
			at.house.WithColdWater(k).RunYear(at.scenario.Backup, &c.water.ws, c.water.year)
			return c.water.year.Total.BoughtJ - bought
		}
		c.water.at, c.water.colder, c.water.warmer = at, change(-otherWaterK), change(otherWaterK)
	}
	kWh := func(j float64) string {
		text := format.Number(j/simulate.JPerKWh, 0)
		if j > 0 {
			return "+" + text
		}
		return text
	}
	mean := format.In(scenario.Celsius, s.Prepared.ColdWaterC(), 0)
	return w.Text(words.ColdWaterNote, mean, w.Text(waterModelNames[c.waterModel()]), kWh(c.water.colder), kWh(c.water.warmer))
}

// waterModel counts waterModelNames.
func (c *Page) waterModel() int {
	if c.Store.Scenario.ColdC.Known != [12]bool{} {
		return len(waterModelNames) - 1
	}
	return int(c.Store.Prepared.Weather.Place.Water)
}

// waterModelNames are those of climate.WaterModel, and of months that somebody overtyped.
var waterModelNames = [...]words.Key{
	climate.AirMean:       words.WaterOfAir,
	climate.NorthAmerica:  words.WaterOfNorthAmerica,
	climate.Spain:         words.WaterOfSpain,
	climate.UnitedKingdom: words.WaterOfUnitedKingdom,
	climate.Germany:       words.WaterOfGermany,
	climate.Germany + 1:   words.WaterTyped,
}
