// Package lesson is what a class is asked: houses, the one figure of each that is hidden until a guess
// is made, the scale on which it is guessed, and which guesses come from which mistake. The figure
// itself is always simulated, never kept here.
package lesson

import (
	"fmt"
	"math"
	"strings"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Experiment is one question put to a class, and those that follow once it is answered.
type Experiment struct {
	Name   string // in links
	House  string // a link's fragment: the house that is shown
	Asks   Figure
	At     float64 // see Figure.Of
	Scale  Scale
	Rounds []Round // the first is the question itself
	Tracks []Track // where a curve is guessed, at each of these; none: one figure is
}

// Track is one of the places at which a curve is guessed, see Figure.curve; a Given one is shown.
type Track struct {
	X     float64
	Given bool
}

// Scale is that of a guess, in the figure's unit.
type Scale struct{ Least, Most, Step float64 }

// Round is the question for a house in which some fields differ: joined by &, as in links; none where
// the house that is shown is asked for itself. At is another than the experiment's, 0 none.
type Round struct {
	Fields string
	At     float64
	Traps  []Trap
	Shapes []Shape // traps of curves
}

// Trap is a range of guesses that one mistake leads to.
type Trap struct{ From, To float64 }

// Experiments in the order of a course: the first for pupils of twelve, the last for apprentices.
func Experiments() []Experiment { return experiments[:] }

// ByName finds one; ok is false where there is none of that name.
func ByName(name string) (at int, ok bool) {
	for i := range experiments {
		if experiments[i].Name == name {
			return i, true
		}
	}
	return 0, false
}

// Case is the link's fragment of a round's house: the one shown, with the fields changed that differ.
func (e *Experiment) Case(round int) string { return e.With(e.Rounds[round].Fields) }

// With is the link's fragment of the house that is shown with other fields, joined as in links; they
// take the place of those of the same keys.
func (e *Experiment) With(fields string) string {
	parts := strings.Split(e.House, "&")
	for _, field := range strings.FieldsFunc(fields, func(r rune) bool { return r == '&' }) {
		key, _, _ := strings.Cut(field, "=")
		kept := parts[:0:0]
		for _, p := range parts {
			if was, _, _ := strings.Cut(p, "="); was != key {
				kept = append(kept, p)
			}
		}
		parts = append(kept, field)
	}
	return strings.Join(parts, "&")
}

// at is what the figure of a round is taken at.
func (e *Experiment) at(round int) float64 {
	if at := e.Rounds[round].At; at != 0 {
		return at
	}
	return e.At
}

// Outcome is a figure with the numbers from which it follows.
type Outcome struct {
	Value float64
	Terms []float64 // see Figure
	Curve []float64 // at the tracks, where there are any
}

// Simulate works out a round; prev may be a prepared house that shares its weather, or nil.
func (e *Experiment) Simulate(round int, prev *simulate.Prepared) (o Outcome, err error) {
	s, problems := scenario.Decode(e.Case(round))
	if len(problems) > 0 {
		return o, fmt.Errorf("lesson: %s: field %d of the house is refused", e.Name, problems[0].Field)
	}
	p, err := simulate.Prepare(&s, nil, prev)
	if err != nil {
		return o, fmt.Errorf("lesson: %s: %w", e.Name, err)
	}
	if len(e.Tracks) > 0 {
		return e.Asks.curve(p, e.Tracks), nil
	}
	return e.Asks.of(p, e.at(round)), nil
}

// Trapped is the trap of a round that a guess fell into, -1 none.
func (e *Experiment) Trapped(round int, guess float64) int {
	for i, t := range e.Rounds[round].Traps {
		if guess >= t.From && guess <= t.To {
			return i
		}
	}
	return -1
}

// Fit tells whether a guess lies on the scale.
func (s Scale) Fit(guess float64) bool { return guess >= s.Least && guess <= s.Most }

// Snap is the mark of the scale that is nearest.
func (s Scale) Snap(v float64) float64 {
	return math.Min(s.Most, math.Max(s.Least, s.Least+math.Round((v-s.Least)/s.Step)*s.Step))
}
