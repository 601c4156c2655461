package state

import (
	"suncask/engine/scenario"
	"suncask/engine/visit"
)

// Household is what a sheet for the household tells beside the year.
type Household struct {
	Seasons        [3]visit.Season
	More, Less     [visit.Settings]visit.Effect
	TypicalL       float64 // ready before the first use in midwinter
	DullL          float64
	ReadyKnown     bool
	ShowerMinutes  float64 // of the grid, until a shower is ready
	ShowerPossible bool
}

// Household works that out for the present house, some dozen simulated years.
func (s *Store) Household() *Household {
	return s.household.get(&s.Scenario, func() *Household {
		h := &Household{Seasons: visit.Seasons(s.Prepared, &s.ws)}
		h.More, h.Less = visit.Effects(s.Prepared, s.File(), &s.ws)
		winter := h.Seasons[0].Month
		h.TypicalL, h.ReadyKnown = visit.Ready(s.Prepared, winter, scenario.Typical, &s.ws)
		h.DullL, _ = visit.Ready(s.Prepared, winter, scenario.Dull, &s.ws)
		_, h.ShowerMinutes, h.ShowerPossible = visit.FirstShower(s.Prepared, winter, &s.ws)
		return h
	})
}
