package state

// OtherWaterK is how much colder and warmer the cold water of OtherWater is.
const OtherWaterK = 3.0

// OtherWater is what colder and warmer cold water would change in what is bought in the year,
// J.
func (s *Store) OtherWater() (colder, warmer float64) {
	changes := s.water.get(&s.Scenario, func() (changes [2]float64) {
		for i, k := range [...]float64{-OtherWaterK, OtherWaterK} {
			s.Prepared.WithColdWater(k).RunYear(s.Scenario.Backup, &s.ws, &s.year)
			changes[i] = s.year.Total.BoughtJ - s.Results.Year.Total.BoughtJ
		}
		return changes
	})
	return changes[0], changes[1]
}
