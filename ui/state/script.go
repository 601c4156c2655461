package state

import (
	"encoding/json"

	"suncask/engine/simulate"
	"suncask/ui/words"
)

// ScriptVersion is the version of what Simulate returns.
const ScriptVersion = 1

// Answer is what a script gets for a link. Energies are in kWh, money in the
// scenario's currency.
type Answer struct {
	Version       int      `json:"version"`
	Link          string   `json:"link"`
	Place         string   `json:"place"`
	Currency      string   `json:"currency"`
	BoughtYearKWh float64  `json:"bought_year_kwh"`
	CostYear      float64  `json:"cost_year"`
	SunYearKWh    float64  `json:"sun_year_kwh"`
	LostYearKWh   float64  `json:"lost_year_kwh"`
	UnusedSunKWh  float64  `json:"unused_sun_year_kwh"`
	SolarFraction float64  `json:"solar_fraction"`
	ColdDaysYear  int      `json:"cold_days_year"`
	BoughtDayKWh  float64  `json:"bought_day_kwh"`
	CostDay       float64  `json:"cost_day"`
	WorstBalance  float64  `json:"worst_balance_relative"`
	Refused       []string `json:"refused"`
}

// Answer returns the store's results for a script.
func (s *Store) Answer() Answer {
	y, d := &s.Results.Year, &s.Results.Day.Flows
	a := Answer{
		Version: ScriptVersion, Link: s.Link(), Place: s.Scenario.Place, Currency: s.Scenario.Currency,
		BoughtYearKWh: y.Total.BoughtJ / simulate.JPerKWh, CostYear: y.Total.Cost,
		SunYearKWh: y.Total.SunJ / simulate.JPerKWh, LostYearKWh: y.Total.LostJ / simulate.JPerKWh,
		UnusedSunKWh: y.Total.UnusedSunJ / simulate.JPerKWh, SolarFraction: y.Total.SolarFraction(),
		ColdDaysYear: int(y.Total.CoolDays), BoughtDayKWh: d.BoughtJ / simulate.JPerKWh, CostDay: d.Cost,
		WorstBalance: y.WorstBalance, Refused: []string{},
	}
	if s.Prepared.FileMissing {
		a.Refused = append(a.Refused, words.English().Text(words.FileAbsent, s.Scenario.Weather))
	}
	for _, p := range s.LinkProblems {
		a.Refused = append(a.Refused, words.English().Problem(p))
	}
	return a
}

// Simulate answers a script: the results of a link as JSON, whatever the page
// shows. It accepts anything and never fails.
func Simulate(fragment string) string {
	raw, err := json.Marshal(Open(fragment).Answer())
	if err != nil {
		panic("state: " + err.Error()) // finite numbers and strings only
	}
	return string(raw)
}
