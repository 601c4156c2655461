package state

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/dial"
)

// shownDay is the day of the year that the dial shows.
func (s *Store) shownDay() int {
	if day, ok := s.RealDay(); ok {
		return day
	}
	return climate.AverageDay(int(s.Scenario.Month))
}

// SunDay is the sun of the day shown.
func (s *Store) SunDay() *climate.SunDay { return &s.Prepared.Weather.Sun[s.shownDay()] }

// ShownMonth is the month of the day shown, 0 to 11.
func (s *Store) ShownMonth() int { return climate.MonthOf(s.shownDay()) }

// Windows are the backup hours as the dial knows them on the day it shows: one, or
// two. A second window stays through a gesture that closes it and is gone after.
func (s *Store) Windows() []dial.Window {
	b := s.Scenario.Backup
	list := []dial.Window{s.first()}
	if b.Second.Start != b.Second.End || s.Before != nil && len(s.Before.Windows) == 2 {
		list = append(list, dial.Window{Start: b.Second.Start, End: b.Second.End})
	}
	return list
}

// first is the first window on the day shown, to the minute where it follows the sun.
func (s *Store) first() dial.Window {
	b := s.Scenario.Backup
	if !b.FollowsSun() {
		return FirstWindow(b)
	}
	from, to, ok := s.Prepared.Hours(b, s.shownDay())
	w := dial.Window{Start: onDial(from), End: onDial(to), AllDay: ok && to-from >= dial.DayMinutes}
	if !ok || w.AllDay {
		w.End = w.Start
	}
	return w
}

// FirstWindow is the first window of hours that keep the clock.
func FirstWindow(b scenario.Backup) dial.Window {
	return dial.Window{Start: b.Start, End: b.End, AllDay: b.AllDay}
}

func onDial(minute float64) int {
	m := int(math.Round(minute)) % dial.DayMinutes
	return (m + dial.DayMinutes) % dial.DayMinutes
}

// Window returns one window of the backup hours.
func (s *Store) Window(i int) dial.Window { return s.Windows()[i] }

// setWindow puts a window into the scenario. Only the first can be all day: the
// second stops a step before.
func (s *Store) setWindow(i int, w dial.Window) {
	b := &s.Scenario.Backup
	if i == 0 {
		like := *b
		if s.Before != nil {
			like = s.Before.Backup
		}
		*b = s.placed(like, w)
		return
	}
	if w.AllDay {
		w.End = (w.Start - Coarse + dial.DayMinutes) % dial.DayMinutes
	}
	b.Second = scenario.Span{Start: w.Start, End: w.End}
}

// placed is hours whose first window, on the day shown, is that of the dial, counted
// from where like counts it. No hours and all day keep the clock: they are the same
// every day.
func (s *Store) placed(like scenario.Backup, w dial.Window) scenario.Backup {
	b := scenario.Backup{Start: w.Start, End: w.End, AllDay: w.AllDay, Second: s.Scenario.Backup.Second}
	if !like.FollowsSun() || w.AllDay || w.Length() == 0 {
		return b
	}
	b.StartFrom, b.EndFrom = like.StartFrom, like.EndFrom
	day := s.shownDay()
	from := float64(w.Start)
	if b.StartFrom != scenario.Clock {
		mark := s.Prepared.Mark(b.StartFrom, day)
		b.Start = fiveMinutes(math.Remainder(from-mark, dial.DayMinutes))
		from = mark + float64(b.Start)
	}
	if b.EndFrom != scenario.Clock {
		b.End = fiveMinutes(from + float64(w.Length()) - s.Prepared.Mark(b.EndFrom, day))
	} else {
		b.End = w.End / Fine * Fine // an edge shown to the minute may come to keep the clock
	}
	return b
}

// fiveMinutes is the offset that hours can have next to a distance.
func fiveMinutes(minutes float64) int {
	const most = dial.DayMinutes - Fine
	return max(-most, min(most, int(math.Round(minutes/Fine))*Fine))
}

// Stepped is a window with one edge moved by minutes, with the stops of a drag. An
// edge that follows the sun moves by just that much; others go to the grid.
func (s *Store) Stepped(window int, part dial.Part, minutes int) dial.Window {
	w, b := s.Window(window), s.Scenario.Backup
	from := b.StartFrom
	if part == dial.EndGrip {
		from = b.EndFrom
	}
	if window != 0 || part == dial.Body || from == scenario.Clock {
		return w.Step(part, minutes)
	}
	length := w.Length() + minutes
	if part == dial.StartGrip {
		length = w.Length() - minutes
	}
	switch {
	case length <= 0:
		return w.NoBackup(part)
	case length >= dial.DayMinutes:
		return w.FullDay(part)
	}
	return w.Put(part, onDial(float64(w.Edge(part)+minutes)))
}

// usual are the hours that take the place of none and of all day once an edge is to
// follow the sun.
var usual = dial.Window{Start: 15 * 60, End: 18 * 60}

// CountFrom counts an edge of the first window from the clock or from the sun; on the
// day shown it stays where it is, to five minutes.
func (s *Store) CountFrom(part dial.Part, from scenario.Anchor) {
	s.Cancel()
	next, w := s.Scenario, s.first()
	like := next.Backup
	if part == dial.StartGrip {
		like.StartFrom = from
	} else {
		like.EndFrom = from
	}
	if w.AllDay || w.Length() == 0 {
		w = usual
	}
	if like.StartFrom == scenario.Clock {
		w.Start = w.Start / Fine * Fine
	}
	if like.EndFrom == scenario.Clock {
		w.End = w.End / Fine * Fine
	}
	next.Backup = s.placed(like, w)
	s.change(scenario.BackupHours, next, "")
}

// hoursField is the field that a window belongs to.
func hoursField(i int) scenario.FieldID {
	if i == 1 {
		return scenario.SecondHours
	}
	return scenario.BackupHours
}

// AddSecond opens a second window of an hour, opposite the first.
func (s *Store) AddSecond() {
	s.Cancel()
	next := s.Scenario
	start := (s.first().Start + dial.DayMinutes/2) / Page * Page % dial.DayMinutes
	next.Backup.Second = scenario.Span{Start: start, End: (start + Page) % dial.DayMinutes}
	s.change(scenario.SecondHours, next, "")
}

// RemoveSecond takes the second window away.
func (s *Store) RemoveSecond() {
	s.Cancel()
	next := s.Scenario
	next.Backup.Second = scenario.Span{}
	s.change(scenario.SecondHours, next, "")
}
