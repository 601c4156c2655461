package simulate

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// sameWeather tells whether two scenarios have the same weather from the same file.
func sameWeather(a, b *scenario.Scenario) bool {
	return a.Place == b.Place && a.ZoneH == b.ZoneH && a.Summer == b.Summer && a.Weather == b.Weather && a.ShiftMin == b.ShiftMin &&
		a.GHI == b.GHI && a.TempC == b.TempC && a.ColdC == b.ColdC && a.Draws == b.Draws
}

// weather makes a scenario's year: from its file, or drawn from the months of its
// place.
func weather(s *scenario.Scenario, file *climate.Record, turn func()) (*climate.Year, error) {
	at, ok := s.At()
	if !ok {
		panic("simulate: scenario has problems: unknown place")
	}
	if file != nil {
		return climate.FromRecord(&at.Place, file, s.ShiftMin), nil
	}
	return climate.TypicalInTurns(&at.Place, s.Draws, Seed, turn)
}

// Years draws many years of a scenario's climate, as years differ; of a file's, if
// it has one. spreadPct is a month's standard deviation from year to year.
func (p *Prepared) Years(n int, spreadPct float64) (*climate.Many, error) {
	return climate.NewMany(&p.Weather.Place, p.Scenario.Draws, Seed, n, spreadPct)
}
