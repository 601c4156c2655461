package state

import (
	"suncask/engine/simulate"
	"suncask/ui/words"
)

// ScriptVersion is the version of what Answer returns.
const ScriptVersion = 1

// Named is one value of an answer: a float64, an int, a string or a list of
// strings ([]any).
type Named struct {
	Name  string
	Value any
}

// Answer is what a script gets for a link, whatever the page shows. Energies are in
// kWh, money in the scenario's currency. It accepts anything and never fails:
// refused parts of the link are listed.
func Answer(fragment string) []Named { return Open(fragment).answer() }

func (s *Store) answer() []Named {
	y, d := &s.Results.Year, &s.Results.Day.Flows
	refused := []any{}
	if s.Prepared.FileMissing {
		refused = append(refused, words.Shown().Text(words.FileAbsent, s.Scenario.Weather))
	}
	for _, p := range s.LinkProblems {
		refused = append(refused, words.Shown().Problem(p))
	}
	return []Named{
		{"version", ScriptVersion},
		{"link", s.Link()},
		{"place", s.Scenario.Place},
		{"currency", s.Scenario.Currency},
		{"bought_year_kwh", y.Total.BoughtJ / simulate.JPerKWh},
		{"cost_year", y.Total.Cost},
		{"sun_year_kwh", y.Total.SunJ / simulate.JPerKWh},
		{"lost_year_kwh", y.Total.LostJ / simulate.JPerKWh},
		{"unused_sun_year_kwh", y.Total.UnusedSunJ / simulate.JPerKWh},
		{"solar_fraction", y.Total.SolarFraction()},
		{"cold_days_year", int(y.Total.CoolDays)},
		{"bought_day_kwh", d.BoughtJ / simulate.JPerKWh},
		{"cost_day", d.Cost},
		{"worst_balance_relative", y.WorstBalance},
		{"refused", refused},
	}
}
