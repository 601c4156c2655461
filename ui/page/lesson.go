package page

import (
	"math"

	"suncask/engine/lesson"
	"suncask/ui/state"
)

// LessonStep is how far a class has come with a question.
type LessonStep int8

// Steps of a question.
const (
	Look LessonStep = iota
	Guess
	See
	Why
)

// Lesson is the question that is open. Guesses are in no link and kept nowhere.
type Lesson struct {
	At      int // of the experiments, -1: all are listed
	Round   int
	Step    LessonStep
	Guess   float64
	Curve   []float64 // the guess where a curve is asked for; NaN at tracks without one
	Set     bool      // a guess is made, not yet given
	Typed   string    // what was typed instead and is none
	Picked  int       // the sentence that was picked, -1 none
	Lines   int       // of the reason that are shown
	Outcome lesson.Outcome
	House   bool // what else there is of the house is shown, too

	before string // the house before the lesson, as a link
}

// SeesLesson tells whether a lesson is on the screen.
func (c *Page) SeesLesson() bool { return c.Store.Entry == state.Lesson && c.Sees(HousePlace) }

// Hides tells whether the outcome of a question must not be seen yet: then no figure of the house is
// on the page.
func (c *Page) Hides() bool {
	return c.Store.Entry == state.Lesson && c.Lesson.At >= 0 && c.Lesson.Step < See
}

// Stage tells whether a question has the page for itself, beside the dial.
func (c *Page) Stage() bool {
	return c.Store.Entry == state.Lesson && c.Lesson.At >= 0 && !c.Lesson.House
}

// Experiment is the one that is open.
func (c *Page) Experiment() *lesson.Experiment { return &lesson.Experiments()[c.Lesson.At] }

// Ask opens a round of an experiment, at its beginning or, of those that follow, at the guess.
func (c *Page) Ask(at, round int) {
	c.Lesson = Lesson{At: at, Round: round, Picked: -1, before: c.Lesson.before}
	if round > 0 {
		c.Lesson.Step = Guess
	}
	e := c.Experiment()
	c.teach(e.House)
	for i := range e.Tracks {
		if c.Lesson.Curve = append(c.Lesson.Curve, math.NaN()); e.Tracks[i].Given {
			c.Lesson.Curve[i] = c.outcome().Curve[i]
		}
	}
	c.Reveal("lesson")
}

// outcome is that of the round that is open.
func (c *Page) outcome() lesson.Outcome {
	o, err := c.Experiment().Simulate(c.Lesson.Round, c.Store.Prepared)
	if err != nil { // no house of an experiment is refused
		panic("page: " + err.Error())
	}
	return o
}

// AskNext opens the round or experiment that follows; after the last all are listed.
func (c *Page) AskNext() {
	switch e := c.Experiment(); {
	case c.Lesson.Round+1 < len(e.Rounds):
		c.Ask(c.Lesson.At, c.Lesson.Round+1)
	case c.Lesson.At+1 < len(lesson.Experiments()):
		c.Ask(c.Lesson.At+1, 0)
	default:
		c.AskNone()
	}
}

// AskNone lists all experiments.
func (c *Page) AskNone() {
	c.Lesson = Lesson{At: -1, before: c.Lesson.before}
	c.Store.Exp = ""
	c.Reveal("lesson")
}

// teach shows a house in the lesson.
func (c *Page) teach(house string) {
	c.Store.Exp = c.Experiment().Name
	c.Store.Load(c.Store.In(house))
	c.Changed()
}

// Give ends the guess: what happens is simulated, and the page shows that house.
func (c *Page) Give() {
	l := &c.Lesson
	if !l.Set {
		return
	}
	l.Outcome, l.Step = c.outcome(), See
	c.teach(c.Experiment().Case(l.Round))
	c.Reveal("lesson-gap")
}

// beginLesson opens what a link asks for, or lists what there is.
func (c *Page) beginLesson() {
	if at, ok := lesson.ByName(c.Store.Exp); ok {
		link := c.Store.Link()
		c.Ask(at, 0)
		c.Store.Load(c.Store.In(link)) // with fields of the link's own
		return
	}
	c.Lesson = Lesson{At: -1, before: c.Store.Link()}
}

// endLesson brings the house back that was there before.
func (c *Page) endLesson() {
	c.Store.Exp, c.Store.Big = "", false
	if before := c.Lesson.before; before != "" && before != c.Store.Link() {
		entry := c.Store.Entry
		c.Store.Load(before)
		c.Store.Entry = entry
		c.Changed()
	}
	c.Lesson = Lesson{At: -1}
}
