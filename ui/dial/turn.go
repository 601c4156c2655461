package dial

import "math"

// Part is what a gesture moves.
type Part int

const (
	StartGrip Part = iota
	EndGrip
	Body // both edges
)

// Window is the backup hours as the dial moves them.
type Window struct {
	Start, End int // minutes, 0 to 1439
	AllDay     bool
}

// Edge is the minute of the start or the end grip.
func (w Window) Edge(p Part) int {
	if p == StartGrip {
		return w.Start
	}
	return w.End
}

// Length in minutes.
func (w Window) Length() int { return Length(w.Start, w.End, w.AllDay) }

// Holds tells whether a minute of the day, 0 to 1440, is in the window.
func (w Window) Holds(minute float64) bool {
	from, to := float64(w.Start), float64(w.Start+w.Length())
	return w.AllDay || minute >= from && minute < to || minute+DayMinutes < to
}

// Turn is a drag in progress: relative, in minutes that the finger has turned
// about the centre. Dragging an edge onto the other stops there (no backup),
// dragging it round the other way stops at all day; both hold until the finger
// has come back by releaseMinutes.
type Turn struct {
	part    Part
	from    Window
	turned  float64 // minutes since the drag began
	offset  float64 // added to turned: what the stops have swallowed
	stop    int     // -1 at no backup, +1 at all day
	extreme float64
	last    float64 // angle of the finger, minutes
}

const releaseMinutes = 30

// Begin starts a drag of a part with the finger at an angle in minutes.
func Begin(w Window, part Part, finger float64) Turn {
	return Turn{part: part, from: w, last: finger}
}

// To moves the finger to another angle and returns the window, its edges on a
// grid of step minutes.
func (t *Turn) To(finger float64, step int) Window {
	t.turned += math.Remainder(finger-t.last, DayMinutes)
	t.last = finger
	if t.part == Body {
		return t.from.shifted(t.turned, step)
	}
	// Growth of the window: the end grip grows it clockwise, the start grip the
	// other way.
	grow := t.turned
	if t.part == StartGrip {
		grow = -grow
	}
	length := float64(t.from.Length()) + grow + t.offset
	switch {
	case t.stop == 0 && length <= 0:
		t.stop, t.extreme = -1, grow
	case t.stop == 0 && length >= DayMinutes:
		t.stop, t.extreme = 1, grow
	case t.stop < 0:
		t.extreme = math.Min(t.extreme, grow)
		if grow-t.extreme >= releaseMinutes {
			t.stop = 0
			t.offset = -float64(t.from.Length()) - t.extreme
			length = grow - t.extreme
		}
	case t.stop > 0:
		t.extreme = math.Max(t.extreme, grow)
		if t.extreme-grow >= releaseMinutes {
			t.stop = 0
			t.offset = DayMinutes - float64(t.from.Length()) - t.extreme
			length = DayMinutes - (t.extreme - grow)
		}
	}
	switch {
	case t.stop < 0:
		length = 0
	case t.stop > 0:
		length = DayMinutes
	}
	return t.from.resized(t.part, length, step)
}

// shifted moves both edges together.
func (w Window) shifted(minutes float64, step int) Window {
	start := wrap(snap(float64(w.Start)+minutes, step))
	return Window{Start: start, End: wrap(start + w.End - w.Start), AllDay: w.AllDay}
}

// resized moves one edge so that the window has about that length; the other
// edge stays.
func (w Window) resized(part Part, length float64, step int) Window {
	if length >= DayMinutes {
		return w.met(part, true)
	}
	if length <= 0 {
		return w.met(part, false)
	}
	if part == EndGrip {
		w.End = wrap(snap(float64(w.Start)+length, step))
	} else {
		w.Start = wrap(snap(float64(w.End)-length, step))
	}
	// Snapped onto the other edge: the nearer of the two stops.
	w.AllDay = w.Start == w.End && length > DayMinutes/2
	return w
}

// met puts the moved edge on the other.
func (w Window) met(part Part, allDay bool) Window {
	if part == EndGrip {
		w.End = w.Start
	} else {
		w.Start = w.End
	}
	w.AllDay = allDay
	return w
}

// Step moves an edge by minutes, with the same stops as a drag.
func (w Window) Step(part Part, minutes int) Window {
	t := Begin(w, part, 0)
	grid := 5
	if minutes%15 == 0 {
		grid = 15
	}
	return t.To(float64(Step(w.Edge(part), minutes)), grid)
}

// NoBackup and FullDay are the limits that Home and End go to.
func (w Window) NoBackup(part Part) Window { return w.met(part, false) }

// FullDay is NoBackup's counterpart.
func (w Window) FullDay(part Part) Window { return w.met(part, true) }

// Put moves an edge to a minute of the day as typed or tapped: the window from
// the other edge to there. Onto the other edge means no backup.
func (w Window) Put(part Part, minute int) Window {
	if part == EndGrip {
		w.End = minute
	} else {
		w.Start = minute
	}
	w.AllDay = false
	return w
}

// Nearest returns the grip that is nearest to a minute.
func Nearest(windows []Window, minute float64) (window int, part Part) {
	least := math.Inf(1)
	for i, w := range windows {
		for p := StartGrip; p <= EndGrip; p++ {
			if d := math.Abs(math.Remainder(minute-float64(w.Edge(p)), DayMinutes)); d < least {
				least, window, part = d, i, p
			}
		}
	}
	return window, part
}

func snap(minute float64, step int) int {
	return int(math.Round(minute/float64(step))) * step
}

func wrap(minute int) int { return ((minute % DayMinutes) + DayMinutes) % DayMinutes }
