package state

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Rules are the years under each rule for who has the element, the house otherwise as
// it is.
func (s *Store) Rules() [3]simulate.Flows {
	if s.rulesOf == s.Scenario {
		return s.rules
	}
	s.rulesOf = s.Scenario
	for rule := range s.rules {
		next := s.Scenario
		next.Rule = scenario.Rule(rule)
		if next.Rule == s.Scenario.Rule {
			s.rules[rule] = s.Results.Year.Total
			continue
		}
		p, err := simulate.Prepare(&next, s.File(), s.Prepared)
		if err != nil {
			panic("state: a house in use cannot be prepared: " + err.Error())
		}
		p.RunYear(next.Backup, &s.ws, &s.year)
		s.rules[rule] = s.year.Total
	}
	return s.rules
}

// Hygiene are the year's figures of the water in the tank.
func (s *Store) Hygiene() simulate.Hygiene {
	if s.hygieneOf != s.Scenario {
		s.hygieneOf = s.Scenario
		s.hygiene = s.Prepared.RunHygiene(s.Scenario.Backup, &s.ws)
	}
	return s.hygiene
}

// Boost is the year with a boost pressed before each use that would run cool.
func (s *Store) Boost() simulate.Boost {
	if s.boostOf != s.Scenario {
		s.boostOf = s.Scenario
		s.boost = s.Prepared.RunBoost(s.Scenario.Backup, &s.ws)
	}
	return s.boost
}
