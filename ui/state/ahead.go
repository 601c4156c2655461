package state

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
)

// AheadPlaces is how many places of a grip are looked at: one a quarter of an hour.
const AheadPlaces = dial.DayMinutes / Coarse

// Ahead is what each place of the held grip would make of the year, filled bit by
// bit in idle time.
type Ahead struct {
	Done     int // places simulated so far
	Cost     [AheadPlaces]float64
	CoolDays [AheadPlaces]int32

	ws   simulate.Workspace
	year simulate.Year
}

// Best returns the place of the lowest cost among those that bring no more cool
// days than limit; ok is false until all are simulated, or if there is none.
func (a *Ahead) Best(limit int32) (place int, ok bool) {
	if a.Done < AheadPlaces {
		return 0, false
	}
	place = -1
	for i := range a.Cost {
		if a.CoolDays[i] <= limit && (place < 0 || a.Cost[i] < a.Cost[place]) {
			place = i
		}
	}
	return place, place >= 0
}

// LookAhead simulates the next place of the held grip, the other edge as it was
// when the gesture began. It returns false when there is nothing to do: no grip is
// held, or all places are known.
func (s *Store) LookAhead() bool {
	if s.Before == nil || s.Held == dial.Body || s.Ahead.Done == AheadPlaces {
		return false
	}
	b := s.backupWith(s.Before.Windows[s.On].Put(s.Held, s.Ahead.Done*Coarse))
	s.Prepared.RunYear(b, &s.Ahead.ws, &s.Ahead.year)
	s.Ahead.Cost[s.Ahead.Done] = s.Ahead.year.Total.Cost
	s.Ahead.CoolDays[s.Ahead.Done] = s.Ahead.year.Total.CoolDays
	s.Ahead.Done++
	return true
}

// AtBest tells whether the held grip stands on the best of its places.
func (s *Store) AtBest() bool {
	if s.Before == nil || s.Held == dial.Body {
		return false
	}
	best, ok := s.Ahead.Best(s.Before.Total.CoolDays)
	return ok && s.Window(s.On).Edge(s.Held) == best*Coarse
}

// backupWith is the scenario's backup with the gesture's window exchanged.
func (s *Store) backupWith(w dial.Window) scenario.Backup {
	kept := s.Scenario.Backup
	s.setWindow(s.On, w)
	b := s.Scenario.Backup
	s.Scenario.Backup = kept
	return b
}
