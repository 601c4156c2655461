package state

import (
	"slices"
	"strconv"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
)

// AheadPlaces is how many places of a grip are looked at: one a quarter of an hour.
const AheadPlaces = dial.DayMinutes / Coarse

// Ahead is what each place of the held grip would make of the year, filled bit by
// bit by a worker.
type Ahead struct {
	Done     int // places simulated so far
	Cost     [AheadPlaces]float64
	CoolDays [AheadPlaces]int32
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

// aheadMark stands in a job's link before the window and the grip whose places are looked at.
const aheadMark = "^"

// BeginAhead asks for the places of the held grip, the other edge as it was when the gesture
// began; ok is false where no grip is held.
func (s *Store) BeginAhead() (link string, ok bool) {
	if s.Before == nil || s.Moving != 0 || s.Held == dial.Body {
		return "", false
	}
	s.BeginJob(AheadJob)
	before := s.Scenario
	before.Backup = s.Before.Backup
	before.Known = before.Known.With(scenario.BackupHours, scenario.SecondHours)
	return scenario.Encode(&before) + aheadMark + strconv.Itoa(s.On) + strconv.Itoa(int(s.Held)), true
}

// workAhead simulates the places of a grip one by one.
func workAhead(p *simulate.Prepared, grip string, yield func(Part) bool) {
	if len(grip) != 2 {
		return
	}
	s := Store{Scenario: p.Scenario, On: int(grip[0] - '0')}
	from, held := s.Window(s.On), dial.Part(grip[1]-'0')
	var ws simulate.Workspace
	year := new(simulate.Year)
	for i := range AheadPlaces {
		p.RunYear(s.backupWith(from.Put(held, i*Coarse)), &ws, year)
		if !yield(Part{Steps: 1, Numbers: []float64{year.Total.Cost, float64(year.Total.CoolDays)}}) {
			return
		}
	}
}

// takeAhead adds places that were simulated.
func (s *Store) takeAhead(numbers []float64) {
	for n := range slices.Chunk(numbers, 2) {
		if a := &s.Ahead; a.Done < AheadPlaces {
			a.Cost[a.Done], a.CoolDays[a.Done] = n[0], int32(n[1])
			a.Done++
		}
	}
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
