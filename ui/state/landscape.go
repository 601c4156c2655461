package state

import (
	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/landscape"
)

// OpenLandscape prepares the landscape of all hours of a link's house; file is the weather
// record that the link names, or nil.
func OpenLandscape(fragment string, file *climate.Record) (*plan.Landscape, error) {
	p, err := openHouse(fragment, file)
	if err != nil {
		return nil, err
	}
	return plan.NewLandscape(p, p.Scenario.Backup.Second), nil
}

// landscapeOf is the part of a scenario that its landscape depends on.
func landscapeOf(s scenario.Scenario) scenario.Scenario {
	s = yearsOf(s)
	s.Backup = scenario.Backup{Second: s.Backup.Second}
	return s
}

// StartLandscape begins an empty one of the present house.
func (s *Store) StartLandscape() {
	s.land, s.landOf = landscape.New(s.Scenario.AcceptUses), landscapeOf(s.Scenario)
}

// Landscape returns what is known of the present house's; ok is false where nothing was
// asked for.
func (s *Store) Landscape() (m *landscape.Map, ok bool) {
	return s.land, s.land != nil && s.landOf == landscapeOf(s.Scenario)
}

// GoTo makes a window the first backup hours.
func (s *Store) GoTo(w plan.Window) {
	s.Cancel()
	next := s.Scenario
	next.Backup = w.Backup(next.Backup.Second)
	s.change(scenario.BackupHours, next, "")
}
