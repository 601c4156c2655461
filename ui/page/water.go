package page

import (
	"suncask/engine/climate"
	"suncask/ui/words"
)

// waterModels are those of climate.WaterModel, and of months that somebody overtyped.
var waterModels = [...]words.Key{
	climate.AirMean:       words.WaterOfAir,
	climate.NorthAmerica:  words.WaterOfNorthAmerica,
	climate.Spain:         words.WaterOfSpain,
	climate.UnitedKingdom: words.WaterOfUnitedKingdom,
	climate.Germany:       words.WaterOfGermany,
	climate.Germany + 1:   words.WaterTyped,
}

// WaterModel says whence the cold water is.
func (c *Page) WaterModel() string {
	model := int(c.Store.Prepared.Weather.Place.Water)
	if c.Store.Scenario.ColdC.Known != [12]bool{} {
		model = len(waterModels) - 1
	}
	return c.T(waterModels[model])
}
