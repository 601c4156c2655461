// Package band draws under the day's curves who heats: the grid, the sun, nobody because the
// water is hot enough, or nobody at all.
package band

import (
	"strconv"

	"suncask/engine/simulate"
)

// State of a stretch of the day.
type State int8

const (
	Nobody State = iota
	Sun
	Grid
	HotEnough // the grid might heat, and its thermostat is satisfied
	States
)

// Width is the day in the picture's units, minutes; Height its height.
const (
	Width  = 1440
	Height = 12
)

// leastJ is the energy between two points of the trace below which nothing heats: 10 W over a
// quarter of an hour.
const leastJ = 9000.0

// Stretch is a stretch of the day in one state, minutes.
type Stretch struct {
	From, To float64
	State    State
}

// Of cuts a day into stretches; open tells whether the grid may heat at a minute.
func Of(trace []simulate.Point, open func(minute float64) bool) (list []Stretch) {
	for i := 1; i < len(trace); i++ {
		a, b := &trace[i-1], &trace[i]
		if b.Minute <= a.Minute {
			continue
		}
		state := Nobody
		switch least := leastJ * (b.Minute - a.Minute) / 15; {
		case b.BoughtJ-a.BoughtJ > least:
			state = Grid
		case b.SunJ-a.SunJ > least:
			state = Sun
		case open((a.Minute + b.Minute) / 2):
			state = HotEnough
		}
		if n := len(list); n > 0 && list[n-1].State == state && list[n-1].To == a.Minute {
			list[n-1].To = b.Minute
			continue
		}
		list = append(list, Stretch{a.Minute, b.Minute, state})
	}
	return list
}

// shapes are how far from the top each state reaches: they differ without colour.
var shapes = [States][2]int{Sun: {4, Height}, Grid: {0, Height}, HotEnough: {5, 7}}

// Path draws the stretches of a state.
func Path(list []Stretch, of State) string {
	path := ""
	for _, s := range list {
		if s.State == of {
			path += "M" + whole(s.From) + " " + strconv.Itoa(shapes[of][0]) + "H" + whole(s.To) + "V" + strconv.Itoa(shapes[of][1]) + "H" + whole(s.From) + "z"
		}
	}
	return path
}

// leastWord is how long a stretch must be for a word to stand in it, minutes.
const leastWord = 150

// Word is the middle of a state's longest stretch, where its word fits; ok is false where it
// does not.
func Word(list []Stretch, of State) (minute float64, ok bool) {
	longest := 0.0
	for _, s := range list {
		if s.State == of && s.To-s.From > longest {
			longest, minute = s.To-s.From, (s.From+s.To)/2
		}
	}
	return minute, longest >= leastWord
}

func whole(v float64) string { return strconv.Itoa(int(v + 0.5)) }
