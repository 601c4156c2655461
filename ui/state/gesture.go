package state

import (
	"math"

	"suncask/engine/simulate"
	"suncask/ui/dial"
)

// Steps of the dial, minutes.
const (
	Coarse = 15
	Fine   = 5
	Page   = 60
)

// Begin starts a gesture on a part of a window and keeps what is shown now.
func (s *Store) Begin(window int, part dial.Part, finger float64) {
	if s.Moving != 0 {
		s.Cancel()
	}
	s.Before = nil
	s.keep()
	s.On, s.Held, s.Ghost, s.Moving = window, part, -1, 0
	s.Ahead.Done = 0
	s.EndJob(AheadJob) // of another gesture
	s.turn = dial.Begin(s.Window(window), part, finger)
}

// keep keeps what is shown now.
func (s *Store) keep() {
	s.before = Before{
		Windows: s.Windows(), Backup: s.Scenario.Backup, UseAt: s.Scenario.UseAt, Total: s.Results.Year.Total, Day: s.Results.Day.Flows,
		Trace: append(s.before.Trace[:0], s.Results.Day.Trace.Points...),
	}
	s.Before = &s.before
}

// Drag moves the gesture to another angle of the finger and simulates. It
// returns whether anything changed.
func (s *Store) Drag(finger float64, step int) bool {
	switch {
	case s.Before == nil:
		return false
	case s.Moving != 0:
		return s.move(s.slide.To(finger, step))
	}
	return s.preview(s.turn.To(finger, step))
}

// preview shows other hours in the gesture's window without keeping them.
func (s *Store) preview(w dial.Window) bool {
	before := s.Scenario.Backup
	s.setWindow(s.On, w)
	if s.Scenario.Backup == before {
		return false
	}
	s.simulate()
	return true
}

// Preview moves the gesture's edge, or its uses, by minutes: a held button or key.
func (s *Store) Preview(minutes int) bool {
	switch {
	case s.Before == nil:
		return false
	case s.Moving != 0:
		first, _ := s.MovedTo()
		return s.move(s.slide.Within(first + dial.Step(first, minutes)))
	}
	return s.preview(s.Stepped(s.On, s.Held, minutes))
}

// Commit ends the gesture and keeps its hours.
func (s *Store) Commit() {
	switch {
	case s.Before == nil:
		return
	case s.Moving != 0:
		s.commitUses()
		return
	}
	now, total := s.Scenario.Backup, s.Before.Total
	s.Scenario.Backup = s.Before.Backup
	s.Before = nil
	if now == s.Scenario.Backup {
		return
	}
	s.remember()
	s.note(hoursField(s.On), &s.Scenario, &total)
	s.Scenario.Backup = now
	delete(s.Refused, hoursField(s.On))
	s.Scenario.Known = s.Scenario.Known.With(hoursField(s.On))
}

// Cancel ends the gesture and restores what was before it.
func (s *Store) Cancel() {
	if s.Before == nil {
		return
	}
	changed := s.Scenario.Backup != s.Before.Backup || s.Scenario.UseAt != s.Before.UseAt
	s.Scenario.Backup = s.Before.Backup
	if s.Moving != 0 {
		s.placeUses(s.Before.UseAt)
	}
	s.Before, s.Ghost, s.Moving = nil, -1, 0
	if changed {
		s.simulate()
	}
}

// SetWindow sets a window's hours in one go: a key, a typed time.
func (s *Store) SetWindow(window int, w dial.Window) {
	s.Begin(window, dial.Body, 0)
	s.preview(w)
	s.Commit()
	delete(s.Refused, hoursField(window))
}

// Tap shows what moving the nearest grip to a minute would do; a second tap near
// it keeps it, another one shows that instead.
func (s *Store) Tap(minute float64) {
	if s.SettleTap(minute) {
		return
	}
	to := int(minute/Coarse+0.5) * Coarse % dial.DayMinutes
	window, part := dial.Nearest(s.Windows(), float64(to))
	s.Begin(window, part, 0)
	s.Ghost = to
	s.preview(s.Window(window).Put(part, to))
}

// SettleTap ends a tap that waits for its second: keeps it if that is near, else
// takes it back. It returns whether it was kept.
func (s *Store) SettleTap(minute float64) bool {
	if s.Before == nil || s.Ghost < 0 {
		return false
	}
	near := math.Abs(math.Remainder(minute-float64(s.Ghost), dial.DayMinutes)) <= tapMinutes
	if near {
		s.Ghost = -1
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
