package state

import (
	"math"

	"suncask/ui/dial"
)

// showMinutes is how far a grip goes that shows itself.
const showMinutes = 120

// CanShow tells whether a grip can show itself: there are hours, not all day, and no better ones are
// looked for.
func (s *Store) CanShow() bool {
	w := s.Window(0)
	return s.Before == nil && s.find == nil && w.Length() > 0 && !w.AllDay
}

// ShowGrip shows the end of the first window on its way there and back: share 0 to 1. Cancel
// ends it.
func (s *Store) ShowGrip(share float64) {
	if s.Before == nil {
		s.Begin(0, dial.EndGrip, 0)
	}
	w := s.Before.Windows[0]
	far := showMinutes
	if w.Length()+2*showMinutes > dial.DayMinutes {
		far = -far // there is no room for more
	}
	by := int(math.Round(float64(far)*math.Sin(math.Pi*share)/Fine)) * Fine
	w.End = (w.End + by + dial.DayMinutes) % dial.DayMinutes
	s.preview(w)
}
