package state

import "suncask/engine/plan"

// Fixes tries changes of the present house.
func (s *Store) Fixes() []plan.Fix { return plan.Fixes(s.Prepared, s.File(), &s.ws) }

// FixesFor tries changes that keep a use warm.
func (s *Store) FixesFor(at plan.CoolUse) []plan.Fix {
	return plan.FixesFor(s.Prepared, s.File(), at, &s.ws)
}

// Apply makes the house of a fix the present one, as one change.
func (s *Store) Apply(f *plan.Fix) {
	s.Cancel()
	s.change(f.Field, f.To, "")
}
