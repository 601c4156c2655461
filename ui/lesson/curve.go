package lesson

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/lesson"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Where the curve's picture has its scale, px: the stylesheet has the same height.
const plotTop, plotFoot = 16.0, 216.0

// pageSteps is how many steps a page's key moves a mark.
const pageSteps = 5

// curved tells whether a curve is guessed.
func (c *Lesson) curved() bool { return len(c.e().Tracks) > 0 }

// track is one of the places at which a curve is guessed.
type track struct {
	id, name, x  string
	set, given   bool
	value, says  string // of the guess
	guessY, isY  string
	line, isLine segment // to the next track; of no length at the last
}

type segment struct{ x1, x2, y1, y2 string }

// tracks are those of the experiment.
func (c *Lesson) tracks() (list []track) {
	l, e := c.l(), c.e()
	x := func(i int) string {
		return strconv.FormatFloat(100*(float64(i)+0.5)/float64(len(e.Tracks)), 'f', 2, 64) + "%"
	}
	at := func(values []float64, i int) string {
		if i >= len(values) || math.IsNaN(values[i]) {
			return ""
		}
		return strconv.FormatFloat(plotFoot-(plotFoot-plotTop)*(values[i]-e.Scale.Least)/(e.Scale.Most-e.Scale.Least), 'f', 1, 64)
	}
	between := func(values []float64, i int) (s segment) {
		if a, b := at(values, i), at(values, i+1); a != "" && b != "" {
			s = segment{x(i), x(i + 1), a, b}
		}
		return s
	}
	for i, tr := range e.Tracks {
		t := track{id: "track-" + strconv.Itoa(i), name: c.trackName(tr.X), x: x(i), given: tr.Given, set: !math.IsNaN(l.Curve[i]),
			guessY: at(l.Curve, i), line: between(l.Curve, i)}
		t.says = c.Page.T(words.LessonNoGuess)
		if t.set {
			t.value, t.says = format.Exact(l.Curve[i]), c.value(l.Curve[i])
		}
		if c.shown() {
			t.isY, t.isLine = at(l.Outcome.Curve, i), between(l.Outcome.Curve, i)
		}
		list = append(list, t)
	}
	return list
}

// trackName is what stands under a track.
func (c *Lesson) trackName(x float64) string {
	if c.e().Asks == lesson.MonthSun {
		return string([]rune(c.Page.View.Words.Months[int(x)])[:3])
	}
	return strconv.Itoa(int(x))
}

// level is a number of the curve's scale, with its height.
type level struct{ y, text string }

func (c *Lesson) levels() (list []level) {
	s := c.e().Scale
	for i := range 5 {
		part := float64(i) / 4
		list = append(list, level{strconv.FormatFloat(plotFoot-(plotFoot-plotTop)*part, 'f', 1, 64), format.Number(s.Least+part*(s.Most-s.Least), 0)})
	}
	return list
}

// mark sets the guess at a track; once all have one, the curve can be given.
func (c *Lesson) mark(i int, v float64) {
	l := c.l()
	if !c.guessing() || i < 0 || i >= len(l.Curve) || c.e().Tracks[i].Given {
		return
	}
	l.Curve[i] = c.e().Scale.Snap(v)
	l.Set = !slices.ContainsFunc(l.Curve, math.IsNaN)
}

// stroke sets every track that a finger or mouse touches or crosses.
func (c *Lesson) stroke(e vugu.DOMEvent) {
	if e.PropString("type") == "pointermove" && int(e.PropFloat64("buttons"))&1 == 0 {
		return
	}
	wide := e.PropFloat64("target", "clientWidth")
	if wide <= 0 {
		return
	}
	s := c.e().Scale
	part := (plotFoot - e.PropFloat64("offsetY")) / (plotFoot - plotTop)
	c.mark(int(e.PropFloat64("offsetX")/wide*float64(len(c.e().Tracks))), s.Least+part*(s.Most-s.Least))
}

// key moves the mark of the track that has the focus; the first sets the lowest.
func (c *Lesson) key(e vugu.DOMEvent) {
	i, err := strconv.Atoi(strings.TrimPrefix(e.PropString("target", "id"), "track-"))
	if err != nil || i < 0 || i >= len(c.l().Curve) {
		return
	}
	s, now := c.e().Scale, c.l().Curve[i]
	if math.IsNaN(now) {
		now = s.Least - s.Step
	}
	switch e.PropString("key") {
	case "ArrowUp", "ArrowRight":
		now += s.Step
	case "ArrowDown", "ArrowLeft":
		now -= s.Step
	case "PageUp":
		now += pageSteps * s.Step
	case "PageDown":
		now -= pageSteps * s.Step
	case "Home":
		now = s.Least
	case "End":
		now = s.Most
	default:
		return
	}
	e.PreventDefault()
	c.mark(i, now)
}

// curveGap says where guess and outcome are furthest apart.
func (c *Lesson) curveGap() string {
	l, at := c.l(), 0
	for i := range l.Curve {
		if math.Abs(l.Curve[i]-l.Outcome.Curve[i]) > math.Abs(l.Curve[at]-l.Outcome.Curve[at]) {
			at = i
		}
	}
	return c.Page.View.Words.Text(words.LessonCurveGap, c.trackName(c.e().Tracks[at].X), c.value(l.Curve[at]), c.value(l.Outcome.Curve[at]))
}

// twin is the curve in words: each track's guess and what it was.
func (c *Lesson) twin(i int) string {
	l := c.l()
	return c.trackName(c.e().Tracks[i].X) + ": " + c.Page.View.Words.Text(words.LessonNear, c.value(l.Curve[i]), c.value(l.Outcome.Curve[i]))
}

// now is a track's value for those who cannot see it; the least where it has none.
func (c *Lesson) now(t track) string {
	if t.value == "" {
		return format.Exact(c.e().Scale.Least)
	}
	return t.value
}

func markClass(t track) string {
	if t.given {
		return "mark given"
	}
	return "mark"
}

// help says how a guess is made.
func (c *Lesson) help() string {
	if c.curved() {
		return c.Page.T(words.LessonDrawHelp)
	}
	return c.Page.T(words.LessonGuessHelp)
}
