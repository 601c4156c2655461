package scenario

import (
	"strconv"
	"strings"
)

// Anchor is what an edge of the backup hours is counted from.
type Anchor int8

const (
	Clock     Anchor = iota // local midnight
	SolarNoon               // the sun's highest stand that day
	Sunset
)

// Span is a part of the day that may wrap past midnight: minutes after local
// midnight, 0 to 1435 in steps of 5. Equal edges: nothing.
type Span struct{ Start, End int }

// Backup says when heating from the grid is allowed.
//
// Hours of which an edge follows the sun are, each day, the interval from start to
// end in minutes of that day, which may reach into its neighbours. Where the end does
// not come after the start there are none that day; they never wrap. An end of clock
// time 0 is the day's end then.
type Backup struct {
	Start, End         int    // as a Span's; minutes after the sun's mark, -1435 to 1435, where one is set
	StartFrom, EndFrom Anchor // what the edges are counted from
	AllDay             bool   // clock edges meet, and all the day lies between them
	Second             Span   // more hours, by the clock; where both overlap they count once
}

// DayMinutes is the length of the clock.
const DayMinutes = 24 * 60

// FollowsSun tells whether an edge of the first hours moves with the sun.
func (b *Backup) FollowsSun() bool { return b.StartFrom != Clock || b.EndFrom != Clock }

// Length of the first hours, minutes, where both edges keep the clock.
func (b *Backup) Length() int {
	if b.AllDay {
		return DayMinutes
	}
	return (b.End - b.Start + DayMinutes) % DayMinutes
}

// hoursOf returns the first or the second hours, each as a Backup of its own.
func hoursOf(s *Scenario, id FieldID) Backup {
	if id == SecondHours {
		return Backup{Start: s.Backup.Second.Start, End: s.Backup.Second.End}
	}
	b := s.Backup
	b.Second = Span{}
	return b
}

// problem is what is wrong with hours, nil if nothing is.
func (b *Backup) problem(id FieldID) *Problem {
	ok := !b.AllDay || b.Start == b.End && !b.FollowsSun()
	for _, e := range [2]struct {
		at   int
		from Anchor
	}{{b.Start, b.StartFrom}, {b.End, b.EndFrom}} {
		least := 0
		if e.from != Clock {
			least = 1 - DayMinutes
		}
		ok = ok && e.from >= Clock && e.from <= Sunset && e.at >= least && e.at < DayMinutes && e.at%5 == 0
	}
	if ok {
		return nil
	}
	return &Problem{Field: id, Code: WrongHours, Got: writeHours(*b)}
}

// anchorNames are how links write what an edge is counted from.
var anchorNames = [...]string{Clock: "", SolarNoon: "noon", Sunset: "set"}

// writeHours writes 1500-1800, none1500 and all1500 where clock edges meet, and
// noon0130to1800 or set-0200toset0000 where an edge follows the sun.
func writeHours(b Backup) string {
	edge := func(from Anchor, m int) string {
		sign := ""
		if m < 0 {
			sign, m = "-", -m
		}
		name := ""
		if from >= 0 && int(from) < len(anchorNames) {
			name = anchorNames[from]
		}
		return name + sign + pad(m/60) + pad(m%60)
	}
	start, end := edge(b.StartFrom, b.Start), edge(b.EndFrom, b.End)
	switch {
	case b.FollowsSun():
		return start + "to" + end
	case b.AllDay:
		return "all" + start
	case b.Start == b.End:
		return "none" + start
	}
	return start + "-" + end
}

func pad(n int) string {
	if n < 10 {
		return "0" + strconv.Itoa(n)
	}
	return strconv.Itoa(n)
}

func readHours(value string) (b Backup, ok bool) {
	if edge, ok := strings.CutPrefix(value, "all"); ok {
		at, ok := readMeeting(edge)
		return Backup{Start: at, End: at, AllDay: true}, ok
	}
	if edge, ok := strings.CutPrefix(value, "none"); ok {
		at, ok := readMeeting(edge)
		return Backup{Start: at, End: at}, ok
	}
	if from, to, ok := strings.Cut(value, "to"); ok {
		var ok1, ok2 bool
		b.StartFrom, b.Start, ok1 = readEdge(from)
		b.EndFrom, b.End, ok2 = readEdge(to)
		return b, ok1 && ok2 && b.FollowsSun()
	}
	from, to, _ := strings.Cut(value, "-")
	start, ok1 := readClock(from)
	end, ok2 := readClock(to)
	return Backup{Start: start, End: end}, ok1 && ok2 && start != end
}

// readEdge reads noon0130, set-0200 or 1800.
func readEdge(text string) (from Anchor, minute int, ok bool) {
	for a := SolarNoon; a <= Sunset; a++ {
		if rest, found := strings.CutPrefix(text, anchorNames[a]); found {
			after, negative := strings.CutPrefix(rest, "-")
			minute, ok = readClock(after)
			if negative {
				minute, ok = -minute, ok && minute > 0
			}
			return a, minute, ok
		}
	}
	minute, ok = readClock(text)
	return Clock, minute, ok
}

// readMeeting reads where two edges meet; nothing is midnight.
func readMeeting(text string) (int, bool) {
	if text == "" {
		return 0, true
	}
	return readClock(text)
}

func readClock(text string) (int, bool) {
	if len(text) != 4 {
		return 0, false
	}
	n, err := strconv.ParseUint(text, 10, 16)
	if err != nil || n/100 > 23 || n%100 > 59 || n%5 != 0 {
		return 0, false
	}
	return int(n/100*60 + n%100), true
}
