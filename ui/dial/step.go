package dial

import "math"

// Step is how far a step of minutes moves a time: to the next line of the grid of quarters
// of an hour from off it, if the step is one of quarters.
func Step(at, minutes int) int {
	off := at % 15
	switch {
	case minutes%15 != 0 || off == 0:
		return minutes
	case minutes > 0:
		return minutes - off
	}
	return minutes + 15 - off
}

// Slide is a drag in progress of something that keeps within its day: relative, in minutes
// that the finger has turned about the centre.
type Slide struct {
	from, least, most int
	turned, last      float64
}

// BeginSlide starts one at a minute of the day that may become least to most, with the
// finger at an angle in minutes.
func BeginSlide(from, least, most int, finger float64) Slide {
	return Slide{from: from, least: least, most: most, last: finger}
}

// To moves the finger to another angle and returns the minute, on a grid of step minutes
// or at the end of what is allowed.
func (t *Slide) To(finger float64, step int) int {
	t.turned += math.Remainder(finger-t.last, DayMinutes)
	t.last = finger
	return t.Within(snap(float64(t.from)+t.turned, step))
}

// Within returns the nearest minute that is allowed.
func (t *Slide) Within(minute int) int { return min(max(minute, t.least), t.most) }
