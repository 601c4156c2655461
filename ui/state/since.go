package state

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Since is the last edit: what it changed, and the house and its year before it. Edits of one
// field in a row are one edit.
type Since struct {
	Field scenario.FieldID
	Was   scenario.Scenario
	Total simulate.Flows
}

// note begins the account of an edit; call it before the new year is simulated.
func (s *Store) note(field scenario.FieldID, was *scenario.Scenario, total *simulate.Flows) {
	switch {
	case field == scenario.Month || field == scenario.SkyKind: // another day is looked at
		s.Since = nil
	case !s.goesOn(field):
		s.Since = &Since{field, *was, *total}
	}
}

// goesOn tells whether an edit goes on with the last one: steps of one number in a row are one
// edit, and undone as one.
func (s *Store) goesOn(field scenario.FieldID) bool {
	return s.Since != nil && s.Since.Field == field && scenario.FieldOf(field).Kind == scenario.Number &&
		len(s.undo) > 0 && s.Since.Was == s.undo[len(s.undo)-1]
}

// Reference is the year that changes are counted from: that before the gesture, else that
// before the last edit; nil where there is none.
func (s *Store) Reference() *simulate.Flows {
	switch {
	case s.Before != nil:
		return &s.Before.Total
	case s.Since != nil:
		return &s.Since.Total
	}
	return nil
}
