package state

import (
	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Spread is what many drawn years came to, year by year.
type Spread struct{ BoughtKWh, Cost, CoolDays []float64 }

// OpenYears prepares the drawn years of a link's house; file is the weather record
// that the link names, or nil.
func OpenYears(fragment string, file *climate.Record) (*plan.Years, error) {
	p, err := openHouse(fragment, file)
	if err != nil {
		return nil, err
	}
	return plan.NewYears(p, p.Scenario.Backup)
}

// openHouse prepares a link's house.
func openHouse(fragment string, file *climate.Record) (*simulate.Prepared, error) {
	s, _ := scenario.Decode(fragment)
	return simulate.Prepare(&s, file, nil)
}

// yearsOf is the part of a scenario that a year depends on.
func yearsOf(s scenario.Scenario) scenario.Scenario {
	s.Month, s.Sky, s.Known = 0, 0, scenario.FieldSet{}
	return s
}

// SetSpread keeps what many years of a link's house came to.
func (s *Store) SetSpread(fragment string, spread Spread) {
	of, _ := scenario.Decode(fragment)
	s.spread, s.spreadOf = spread, yearsOf(of)
}

// Spread returns what many years of the present house came to; ok is false while
// that is not known.
func (s *Store) Spread() (spread Spread, ok bool) {
	return s.spread, len(s.spread.Cost) > 0 && s.spreadOf == yearsOf(s.Scenario)
}
