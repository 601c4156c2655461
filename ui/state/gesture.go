package state

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
)

// Steps of the dial, minutes.
const (
	Coarse = 15
	Fine   = 5
	Page   = 60
)

// Begin starts a gesture on a part of the dial and keeps what is shown now.
func (s *Store) Begin(part dial.Part, finger float64) {
	s.before = Before{
		Window: s.window(), Total: s.Results.Year.Total, Day: s.Results.Day.Flows,
		Trace: append(s.before.Trace[:0], s.Results.Day.Trace.Points...),
	}
	s.Before, s.Held, s.Ghost = &s.before, part, -1
	s.turn = dial.Begin(s.window(), part, finger)
}

// Drag moves the gesture to another angle of the finger and simulates. It
// returns whether anything changed.
func (s *Store) Drag(finger float64, step int) bool {
	if s.Before == nil {
		return false
	}
	return s.preview(s.turn.To(finger, step))
}

// preview shows other hours without keeping them.
func (s *Store) preview(w dial.Window) bool {
	if w == s.window() {
		return false
	}
	s.setWindow(w)
	s.simulate()
	return true
}

// Preview moves an edge by minutes within a gesture: a held button or key.
func (s *Store) Preview(part dial.Part, minutes int) bool {
	return s.preview(s.window().Step(part, minutes))
}

// Commit ends the gesture and keeps its hours.
func (s *Store) Commit() {
	if s.Before == nil {
		return
	}
	now := s.window()
	from := s.Before.Window
	s.Before = nil
	if now == from {
		return
	}
	s.setWindow(from)
	s.remember()
	s.setWindow(now)
	s.Scenario.Known = s.Scenario.Known.With(scenario.BackupHours)
}

// Cancel ends the gesture and restores what was before it.
func (s *Store) Cancel() {
	if s.Before == nil {
		return
	}
	from := s.Before.Window
	s.Before, s.Ghost = nil, -1
	s.preview(from)
}

// SetWindow sets the hours in one go: a key, a typed time.
func (s *Store) SetWindow(w dial.Window) {
	s.Begin(dial.Body, 0)
	s.preview(w)
	s.Commit()
	delete(s.Refused, scenario.BackupHours)
}

// Window returns the present hours.
func (s *Store) Window() dial.Window { return s.window() }

// Tap shows what moving the nearer grip to a minute would do; a second tap near
// it keeps it, another one shows that instead.
func (s *Store) Tap(minute float64) {
	if s.SettleTap(minute) {
		return
	}
	to := int(minute/Coarse+0.5) * Coarse % dial.DayMinutes
	part := s.window().Nearer(float64(to))
	s.Begin(part, 0)
	s.Ghost = to
	s.preview(s.window().Put(part, to))
}

// SettleTap ends a tap that waits for its second: keeps it if that is near, else
// takes it back. It returns whether it was kept.
func (s *Store) SettleTap(minute float64) bool {
	if s.Before == nil || s.Ghost < 0 {
		return false
	}
	near := math.Abs(math.Remainder(minute-float64(s.Ghost), dial.DayMinutes)) <= tapMinutes
	s.Ghost = -1
	if near {
		s.Commit()
	} else {
		s.Cancel()
	}
	return near
}

const tapMinutes = 45

// Points returns a day's usable litres for the dial.
func Points(trace []simulate.Point, into []dial.Sample) []dial.Sample {
	into = into[:0]
	for _, p := range trace {
		into = append(into, dial.Sample{Minute: p.Minute, Litres: p.UsableL})
	}
	return into
}
