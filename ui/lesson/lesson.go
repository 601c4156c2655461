// Package lesson is a class's questions: each is looked at, guessed, seen and explained, and then one
// thing is changed.
package lesson

import (
	"math"
	"strconv"
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/lesson"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Lesson lists the questions, or shows the one that is open.
type Lesson struct{ Page *page.Page }

func (c *Lesson) l() *page.Lesson { return &c.Page.Lesson }

func (c *Lesson) open() bool { return c.l().At >= 0 }

func (c *Lesson) e() *lesson.Experiment { return c.Page.Experiment() }

func (c *Lesson) card() *words.Card { return &c.Page.View.Words.Cards[c.l().At] }

func (c *Lesson) round() *words.CardRound { return &c.card().Rounds[c.l().Round] }

// staves are the steps of a question.
var staves = [...]words.Key{words.LessonLook, words.LessonGuess, words.LessonSee, words.LessonWhy, words.LessonChange}

// stave is the one that the class is at: rounds that follow belong to the last.
func (c *Lesson) stave() int {
	if c.l().Round > 0 {
		return len(staves) - 1
	}
	return int(c.l().Step)
}

func (c *Lesson) staveClass(i int) string {
	switch at := c.stave(); {
	case i == at:
		return "stave here"
	case i < at:
		return "stave done"
	}
	return "stave"
}

func (c *Lesson) current(i int) string {
	if i == c.stave() {
		return "step"
	}
	return "false"
}

func (c *Lesson) number() string {
	return c.Page.View.Words.Text(words.LessonStep, c.l().At+1, len(lesson.Experiments()))
}

// shown tells whether the outcome is.
func (c *Lesson) shown() bool { return c.l().Step >= page.See }

func (c *Lesson) guessing() bool { return c.l().Step == page.Guess }

// unit is that of the figure which is asked for.
func (c *Lesson) unit() string {
	switch c.e().Asks {
	case lesson.ShowerHotL, lesson.ReadyL:
		return "L"
	case lesson.ElementPower, lesson.CablePower:
		return "W"
	case lesson.CoolingC:
		return "°C"
	case lesson.WorthMoney, lesson.StartCost:
		return c.Page.Store.Scenario.Currency
	}
	return c.Page.T(words.KWh)
}

// decimals are those of its scale.
func (c *Lesson) decimals() int {
	if c.e().Scale.Step < 1 {
		return 1
	}
	return 0
}

// value writes it with its unit.
func (c *Lesson) value(v float64) string {
	text := format.Number(v, c.decimals())
	if c.e().Asks == lesson.WorthMoney || c.e().Asks == lesson.StartCost {
		return c.unit() + format.Space + text
	}
	return text + format.Space + c.unit()
}

// Begin goes from looking to guessing.
func (c *Lesson) begin() {
	c.l().Step = page.Guess
	if c.curved() {
		c.reveal("track-0")
		return
	}
	c.reveal("guess")
}

func (c *Lesson) reveal(id string) {
	if c.Page.Host != nil {
		c.Page.Host.Reveal(id)
	}
}

// slid is a guess on the scale.
func (c *Lesson) slid(e vugu.DOMEvent) {
	if v, err := strconv.ParseFloat(e.PropString("target", "value"), 64); err == nil && c.guessing() {
		c.guess(v)
	}
}

func (c *Lesson) guess(v float64) {
	l := c.l()
	l.Guess, l.Set, l.Typed = c.e().Scale.Snap(v), true, ""
}

// by moves the guess by so many steps; the first sets the lowest.
func (c *Lesson) by(steps float64) {
	if !c.l().Set {
		c.guess(c.e().Scale.Least)
		return
	}
	c.guess(c.l().Guess + steps*c.e().Scale.Step)
}

// typed is a guess as a number.
func (c *Lesson) typed(e vugu.DOMEvent) {
	l := c.l()
	text := strings.TrimSpace(e.PropString("target", "value"))
	v, ok := format.Parse(text)
	switch {
	case text == "":
		l.Set, l.Typed = false, ""
	case ok && c.e().Scale.Fit(v):
		l.Guess, l.Set, l.Typed = v, true, ""
	default:
		l.Set, l.Typed = false, text
	}
}

// box is what stands in the box of the guess.
func (c *Lesson) box() string {
	switch l := c.l(); {
	case l.Typed != "":
		return l.Typed
	case l.Set:
		return format.Input(l.Guess)
	}
	return ""
}

// wrong says why what was typed is no guess.
func (c *Lesson) wrong() string {
	if c.l().Typed == "" {
		return ""
	}
	s := c.e().Scale
	return c.Page.View.Words.Text(words.LessonWrong, c.value(s.Least), c.value(s.Most))
}

// says is the guess in words.
func (c *Lesson) says() string {
	if !c.l().Set {
		return c.Page.T(words.LessonNoGuess)
	}
	return c.Page.View.Words.Text(words.LessonSays, c.value(c.l().Guess))
}

func (c *Lesson) sliderClass() string {
	if c.l().Set {
		return "guess"
	}
	return "guess empty"
}

// at is where a value stands on the scale, as a share of its length.
func (c *Lesson) at(v float64) string {
	s := c.e().Scale
	return strconv.FormatFloat(100*(v-s.Least)/(s.Most-s.Least), 'f', 2, 64) + "%"
}

// tick is a number of the scale.
type tick struct{ x, text string }

// ticks are those of the scale: its ends and what divides it into four.
func (c *Lesson) ticks() (list []tick) {
	s := c.e().Scale
	for i := range 5 {
		v := s.Least + float64(i)*(s.Most-s.Least)/4
		list = append(list, tick{c.at(v), format.Number(v, 0)})
	}
	return list
}

// gap is where the hatched span begins between guess and outcome, and how wide it is.
func (c *Lesson) gap() (from, wide string) {
	s := c.e().Scale
	a, b := math.Min(c.l().Guess, c.l().Outcome.Value), math.Max(c.l().Guess, c.l().Outcome.Value)
	return c.at(a), strconv.FormatFloat(100*(b-a)/(s.Most-s.Least), 'f', 2, 64) + "%"
}

func (c *Lesson) gapFrom() string { from, _ := c.gap(); return from }
func (c *Lesson) gapWide() string { _, wide := c.gap(); return wide }

// gapSays says how far the guess was off, in numbers as they are shown.
func (c *Lesson) gapSays() string {
	if c.curved() {
		return c.curveGap()
	}
	l, scale := c.l(), math.Pow(10, float64(c.decimals()))
	round := func(v float64) float64 { return math.Round(v*scale) / scale }
	by := round(l.Outcome.Value) - round(l.Guess)
	key := words.LessonMore
	switch {
	case by == 0:
		return c.Page.View.Words.Text(words.LessonNear, c.value(l.Guess), c.value(l.Outcome.Value))
	case by < 0:
		key = words.LessonLess
	}
	return c.Page.View.Words.Text(key, c.value(l.Guess), c.value(l.Outcome.Value), c.value(math.Abs(by)))
}

// picks are the sentences to pick from, each time in another order.
func (c *Lesson) picks() (list []string) {
	says := c.round().Says
	for i := range says {
		list = append(list, says[(i+c.turned())%len(says)])
	}
	return list
}

// turned is by how much their order is turned.
func (c *Lesson) turned() int { return c.l().At%2 + 1 }

// right tells whether the sentence was picked that says what happened; where there is none to pick
// from, nothing waits for it.
func (c *Lesson) right() bool {
	n := len(c.round().Says)
	return n == 0 || c.l().Picked >= 0 && (c.l().Picked+c.turned())%n == 0
}

func (c *Lesson) picked(i int) bool { return c.l().Picked == i }

func (c *Lesson) why() {
	c.l().Step, c.l().Lines = page.Why, 1
	c.reveal("lesson-why")
}

// lines are those of the reason that are shown, with the engine's numbers.
func (c *Lesson) lines() (list []string) {
	l := c.l()
	numbers := []string{significant(l.Outcome.Value)}
	for _, v := range l.Outcome.Terms {
		numbers = append(numbers, significant(v))
	}
	for _, line := range c.round().Why[:min(l.Lines, len(c.round().Why))] {
		list = append(list, words.Fill(line, numbers))
	}
	return list
}

func (c *Lesson) moreLines() bool { return c.l().Lines < len(c.round().Why) }

// significant writes three digits of a number at least, without zeros that say nothing.
func significant(v float64) string {
	decimals := 0
	if v != 0 {
		decimals = max(0, 2-int(math.Floor(math.Log10(math.Abs(v)))))
	}
	for decimals > 0 && format.Number(v, decimals) == format.Number(math.Round(v*math.Pow(10, float64(decimals-1)))/math.Pow(10, float64(decimals-1)), decimals) {
		decimals--
	}
	return format.Number(v, decimals)
}

// trap is what a guess is told that a known mistake leads to; empty for others.
func (c *Lesson) trap() string {
	l := c.l()
	at := c.e().Trapped(l.Round, l.Guess)
	if c.curved() {
		at = c.e().Misshapen(l.Round, l.Curve)
	}
	if at < 0 {
		return ""
	}
	return c.round().Traps[at]
}

// on names what follows the reason.
func (c *Lesson) on() string {
	if c.l().Round+1 < len(c.e().Rounds) {
		return c.Page.T(words.LessonChange) + ": " + c.card().Rounds[c.l().Round+1].Ask
	}
	return c.Page.T(words.LessonNext)
}
