package state

import "suncask/engine/scenario"

// South tells whether the place lies south of the equator, so that the sun stands in
// the north at noon.
func (s *Store) South() bool { return s.Prepared.Weather.Place.LatDeg < 0 }

// DrawSkyline makes a drawn horizon the scenario's.
func (s *Store) DrawSkyline(text string) {
	s.Cancel()
	next := s.Scenario
	next.Skyline = text
	if text == s.Scenario.Skyline {
		return
	}
	s.change(scenario.Horizon, next, text)
}
