package state

import (
	"math"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/dial"
)

// StartFind begins the search for the best hours.
func (s *Store) StartFind() {
	s.Cancel()
	if s.find != nil {
		s.find.Stop()
	}
	s.find = plan.NewBest(plan.NewGrid(s.Prepared, s.Scenario.Backup.Second), s.Scenario.AcceptUses)
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

// Found is what a search came to.
type Found struct {
	Took             bool    // the hours were changed
	Kept             bool    // they keep the promise
	Saved            float64 // a year
	Before, CoolUses int32   // cool uses of a year
	FlatFrom, FlatTo int     // starts that are as good, minutes of the day; see plan.Best.Flat
}

// EndFind takes the hours that were found, where they are better, as one change; ok is
// false if something else was changed meanwhile.
func (s *Store) EndFind() (f Found, ok bool) {
	find := s.find
	s.find = nil
	if find == nil || s.Before != nil || s.Scenario != s.findFrom {
		if find != nil {
			find.Stop()
		}
		return f, false
	}
	was := s.Results.Year.Total
	w, o, kept := find.Result()
	f = Found{Kept: kept, Saved: was.Cost - o.Cost, Before: was.CoolUses, CoolUses: o.CoolUses}
	if !find.Beats(plan.Outcome{Cost: was.Cost, CoolUses: was.CoolUses}, s.Scenario.Backup.Length()) {
		return f, true
	}
	f.Took = true
	f.FlatFrom, f.FlatTo = find.Flat()
	next := s.Scenario
	next.Backup = w.Backup(next.Backup.Second)
	s.change(scenario.BackupHours, next, "")
	return f, true
}

// FoundAway tells whether a search that is over found better hours that the dial can turn
// to: both by the clock, neither none nor all day.
func (s *Store) FoundAway() bool {
	if s.find == nil || s.Before != nil || s.Scenario != s.findFrom {
		return false
	}
	was := s.Results.Year.Total
	w, _, _ := s.find.Result()
	b := s.Scenario.Backup
	return s.find.Beats(plan.Outcome{Cost: was.Cost, CoolUses: was.CoolUses}, b.Length()) && !b.FollowsSun() &&
		w.Steps > 0 && w.Steps < plan.Places && b.Length() > 0 && !b.AllDay
}

// Slide shows hours on the way to those that were found: share 0 to 1. Cancel ends it.
func (s *Store) Slide(share float64) {
	if s.Before == nil {
		s.Begin(0, dial.Body, 0)
	}
	w, _, _ := s.find.Result()
	to := w.Backup(scenario.Span{})
	from := s.Before.Windows[0]
	part := func(a, b int) int {
		way := math.Remainder(float64(b-a), dial.DayMinutes) * share
		return (a + int(math.Round(way/Fine))*Fine + dial.DayMinutes) % dial.DayMinutes
	}
	s.preview(dial.Window{Start: part(from.Start, to.Start), End: part(from.End, to.End)})
}
