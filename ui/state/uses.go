package state

import (
	"slices"

	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/ui/dial"
)

// Occasions is a set of the household's times, bit by bit: what a gesture on the uses
// moves.
type Occasions uint8

// Of returns the set of one occasion.
func Of(o draw.Occasion) Occasions { return 1 << o }

// Has tells whether an occasion is in the set.
func (set Occasions) Has(o draw.Occasion) bool { return set&Of(o) != 0 }

// List returns the occasions in the set.
func (set Occasions) List() (list []draw.Occasion) {
	for o := range draw.Occasions {
		if set.Has(o) {
			list = append(list, o)
		}
	}
	return list
}

// span is the first and the last time of a set.
func (set Occasions) span(at *[draw.Occasions]int) (first, last int) {
	first = dial.DayMinutes
	for _, o := range set.List() {
		first, last = min(first, at[o]), max(last, at[o])
	}
	return first, last
}

// Marks returns the uses of the day shown for the dial. While some are moved, those that
// run past midnight stay with theirs.
func (s *Store) Marks(into []dial.Mark) []dial.Mark {
	into = into[:0]
	for _, u := range s.Results.Day.Uses {
		m := dial.Mark{Minute: u.Minute, Litres: u.Litres, Cool: u.RanCool}
		if s.Moving != 0 {
			m.Drop = slices.IndexFunc(s.drops, func(set Occasions) bool { return set.Has(u.On) })
			if m.Minute < float64(s.Scenario.UseAt[u.On]) {
				m.Minute += dial.DayMinutes
			}
		}
		into = append(into, m)
	}
	return into
}

// Drops are the marks of the track of uses; while one is moved, those of before.
func (s *Store) Drops() []dial.Drop { return dial.Drops(s.Marks(nil), s.DropCount()) }

// DropCount is how many marks there were when one of them was taken; 0 at rest.
func (s *Store) DropCount() int {
	if s.Moving == 0 {
		return 0
	}
	return len(s.drops)
}

// OccasionsOf returns what the marks at rest are made of; nothing for a standard day,
// whose hours are given.
func (s *Store) OccasionsOf() []Occasions {
	drops := dial.Drops(s.Marks(nil), 0)
	list := make([]Occasions, len(drops))
	if s.Scenario.Uses != scenario.Habits {
		return list
	}
	for _, u := range s.Results.Day.Uses {
		for i, d := range drops {
			if u.Minute >= d.First && u.Minute <= d.Last {
				list[i] |= Of(u.On)
			}
		}
	}
	return list
}

// BeginUses starts a gesture on some of the household's times.
func (s *Store) BeginUses(set Occasions, finger float64) {
	s.Cancel()
	if set == 0 || s.Scenario.Uses != scenario.Habits {
		return
	}
	s.drops = s.OccasionsOf()
	s.keep()
	s.On, s.Held, s.Ghost, s.Moving = 0, dial.Body, -1, set
	first, last := set.span(&s.Scenario.UseAt)
	most := int(scenario.FieldOf(scenario.TimeOf(0)).Max)
	s.slide = dial.BeginSlide(first, 0, most-(last-first), finger)
}

// MovedTo is the first time of what is moved, and by how many minutes it is later than before.
func (s *Store) MovedTo() (first, later int) {
	first, _ = s.Moving.span(&s.Scenario.UseAt)
	was, _ := s.Moving.span(&s.Before.UseAt)
	return first, first - was
}

// move puts the first time of what is moved to a minute, the others by as much.
func (s *Store) move(to int) bool {
	was, _ := s.Moving.span(&s.Before.UseAt)
	at := s.Before.UseAt
	for _, o := range s.Moving.List() {
		at[o] += to - was
	}
	if at == s.Scenario.UseAt {
		return false
	}
	s.placeUses(at)
	s.simulate()
	return true
}

func (s *Store) placeUses(at [draw.Occasions]int) {
	s.Scenario.UseAt = at
	s.Prepared.MoveUses(at)
}

// commitUses ends a gesture on uses and keeps their times.
func (s *Store) commitUses() {
	set, next := s.Moving, s.Scenario
	s.placeUses(s.Before.UseAt)
	s.Before, s.Moving = nil, 0
	if next == s.Scenario {
		return
	}
	for _, o := range set.List() {
		next.Known = next.Known.With(scenario.TimeOf(o))
		delete(s.Refused, scenario.TimeOf(o))
	}
	s.replace(scenario.TimeOf(set.List()[0]), next, "")
}
