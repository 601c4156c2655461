package state

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Rules are the years under each rule for who has the element, the house otherwise as
// it is.
func (s *Store) Rules() [3]simulate.Flows {
	return s.rules.get(&s.Scenario, func() (years [3]simulate.Flows) {
		for rule := range years {
			next := s.Scenario
			next.Rule = scenario.Rule(rule)
			if next.Rule == s.Scenario.Rule {
				years[rule] = s.Results.Year.Total
				continue
			}
			p, err := simulate.Prepare(&next, s.File(), s.Prepared)
			if err != nil {
				panic("state: a house in use cannot be prepared: " + err.Error())
			}
			p.RunYear(next.Backup, &s.ws, &s.year)
			years[rule] = s.year.Total
		}
		return years
	})
}

// Hygiene are the year's figures of the water in the tank.
func (s *Store) Hygiene() simulate.Hygiene {
	return s.hygiene.get(&s.Scenario, func() simulate.Hygiene { return s.Prepared.RunHygiene(s.Scenario.Backup, &s.ws) })
}

// Savings are the years without modules beside the present one.
func (s *Store) Savings() plan.Savings {
	return s.savings.get(&s.Scenario, func() plan.Savings {
		s.bare.RunYear(s.Scenario.Backup, &s.ws, &s.year)
		return plan.Savings{AllDay: s.Bare, Hours: s.year.Total, Now: s.Results.Year.Total}
	})
}

// Boost is the year with a boost pressed before each use that would run cool.
func (s *Store) Boost() simulate.Boost {
	return s.boost.get(&s.Scenario, func() simulate.Boost { return s.Prepared.RunBoost(s.Scenario.Backup, &s.ws) })
}
