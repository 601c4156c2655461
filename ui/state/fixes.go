package state

import "suncask/engine/plan"

// Fixes tries changes of the present house.
func (s *Store) Fixes() []plan.Fix { return plan.Fixes(s.Prepared, s.File(), &s.ws) }

// Apply makes the house of a fix the present one, as one change.
func (s *Store) Apply(f *plan.Fix) {
	s.Cancel()
	s.change(f.Field, f.To, "")
}
