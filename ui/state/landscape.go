package state

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
)

// GoTo makes a window the first backup hours.
func (s *Store) GoTo(w plan.Window) {
	s.Cancel()
	next := s.Scenario
	next.Backup = w.Backup(next.Backup.Second)
	s.change(scenario.BackupHours, next, "")
}
