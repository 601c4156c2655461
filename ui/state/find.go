package state

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
)

// StartFind begins the search for better hours from the present ones.
func (s *Store) StartFind() {
	s.Cancel()
	s.find = plan.NewBetter(s.Prepared, s.Scenario.Backup)
	s.findFrom = s.Scenario
}

// FindStep simulates one year of the search; false when it is over, or when
// something else has been changed meanwhile.
func (s *Store) FindStep() bool {
	return s.find != nil && s.Before == nil && s.Scenario == s.findFrom && s.find.Step()
}

// FindRuns is how many years the search has simulated.
func (s *Store) FindRuns() int {
	if s.find == nil {
		return 0
	}
	return s.find.Runs()
}

// EndFind takes the hours that were found, as one change, and returns by how much
// a year costs less; ok is false if something else was changed meanwhile.
func (s *Store) EndFind() (saved float64, ok bool) {
	find := s.find
	s.find = nil
	if find == nil || s.Before != nil || s.Scenario != s.findFrom {
		return 0, false
	}
	before := s.Results.Year.Total.Cost
	b, cost := find.Result()
	next := s.Scenario
	next.Backup = b
	s.change(scenario.BackupHours, next, "")
	return before - cost, true
}
