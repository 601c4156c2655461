package visit

import (
	"errors"
	"math"

	"github.com/vugu/vugu"

	"suncask/engine/care"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Meters says what meters should read in the light and at the cells' temperature that somebody
// gives, and judges what was read.
type Meters struct {
	Page *page.Page

	wiring   simulate.Wiring // worked out once a render
	given    visit.Given
	expected visit.Expected
	bands    [visit.QuantityCount]visit.Band
	problem  string // why there is nothing to expect
}

// What the cells' temperature is known by.
const (
	byBack = iota
	byAir
	byOpen
)

var cellsBy = []struct{ name, label words.Key }{{words.TestByBack, words.TestBackC}, {words.TestByAir, words.TestAirC}, {words.TestByOpen, words.TestOpenV}}

// box is a number that is typed here, with its limits and what it is taken as while it is empty.
type box struct {
	id                 string
	least, most, usual float64
}

// Boxes of the light and of the strings' open circuit.
var (
	lightBox = box{"test-light", 20, 1400, 800}
	ampsBox  = box{"test-amps", 0.1, 60, 10}
	openBox  = box{"test-open", 1, 1500, math.NaN()}
)

// tempBox is one of a temperature, in the unit that is shown.
func tempBox(id string, leastC, mostC float64) box {
	return box{id, math.Round(format.Shown(scenario.Celsius, leastC)), math.Round(format.Shown(scenario.Celsius, mostC)), math.NaN()}
}

// measured are the readings that are judged, in the order of the test.
var measured = []struct {
	id   string
	q    visit.Quantity
	name words.Key
}{
	{"read-open", visit.OpenVolts, words.TestOpenV},
	{"read-short", visit.ShortAmps, words.TestShortA},
	{"read-volts", visit.ElementVolts, words.TestElementV},
	{"read-amps", visit.ElementAmps, words.TestElementA},
	{"read-watts", visit.ElementWatts, words.TestElementW},
}

// readings are those that can be expected: with several planes the light of one says nothing of the
// others' current.
func (c *Meters) readings() []int {
	planes := 0
	for _, p := range c.Page.Store.Scenario.Planes() {
		if p.Modules > 0 {
			planes++
		}
	}
	if planes > 1 {
		return []int{0}
	}
	return []int{0, 1, 2, 3, 4}
}

// readingMost bounds what a meter can read here, V, A or W.
const readingMost = 20_000

func (c *Meters) modules() bool { return c.wiring.Strings > 0 }

// Compute works out what is expected.
func (c *Meters) Compute() {
	p := c.Page.Store.Prepared
	*c = Meters{Page: c.Page, wiring: p.Wiring()}
	if !c.modules() {
		c.problem = c.Page.T(words.VisitNoModules)
		return
	}
	v, s := &c.Page.Visit, &p.Scenario
	g := &c.given
	g.LightShare = visit.ByMeter
	light, lightOK := c.number(lightBox)
	// The light by amps needs the cells, and the cells by their back or the air need the light: a
	// degree is 0.05 % of the light, so a few rounds settle it.
	cells := func(wm2 float64) (float64, bool) {
		switch typed, ok := c.number(c.cellBox()); {
		case !ok:
			return 0, false
		case v.Cells == byOpen:
			g.CellK, g.VoltsAreCells = visit.OpenVoltsK, true
			at, err := visit.CellOf(p, typed, wm2)
			var none *visit.CellError
			if errors.As(err, &none) {
				c.problem = c.Page.View.Words.Text(words.CellsNone, format.Number(typed, 0), format.Number(none.Least, 0), format.Number(none.Most, 0))
			}
			return at, err == nil
		case v.Cells == byAir:
			g.CellK = visit.AirK
			return visit.CellOfAir(s, format.Metric(scenario.Celsius, typed), wm2), true
		default:
			g.CellK = visit.SensorK
			return visit.CellOfBack(s, format.Metric(scenario.Celsius, typed), wm2), true
		}
	}
	cellC, cellOK := 0.0, true
	if v.ByAmps {
		amps, ok := c.number(ampsBox)
		g.AmpsAreLight, lightOK = true, ok
		cellC = pv.StandardC
		for range 4 {
			if light = visit.LightOf(p, 1, amps, cellC); lightOK && cellOK {
				cellC, cellOK = cells(light)
			}
		}
	} else if lightOK {
		cellC, cellOK = cells(light)
	}
	switch {
	case c.problem != "":
	case !lightOK || !cellOK:
		c.problem = c.Page.T(words.TestEmpty)
	default:
		g.Wm2, g.CellC = light, cellC
		c.expected, c.bands = visit.Expect(p, light, cellC), visit.Bands(p, *g)
	}
}

// cellBox is the one for the cells.
func (c *Meters) cellBox() box {
	switch c.Page.Visit.Cells {
	case byOpen:
		return openBox
	case byAir:
		return tempBox("test-air", -45, 55)
	}
	return tempBox("test-back", -45, 95)
}

// number is what a box holds; ok is false where it is no number within its limits, or empty without
// a usual one.
func (c *Meters) number(b box) (v float64, ok bool) {
	text := c.Page.Visit.Typed[b.id]
	if text == "" {
		return b.usual, !math.IsNaN(b.usual)
	}
	v, ok = format.Parse(text)
	return v, ok && v >= b.least && v <= b.most
}

func (c *Meters) typed(event vugu.DOMEvent, id string) {
	c.Page.Visit.Typed[id] = event.PropString("target", "value")
}

func (c *Meters) shown(b box) string {
	text := c.Page.Visit.Typed[b.id]
	if c.assumes(b) {
		text = format.Input(b.usual)
	}
	return c.Page.Box(b.id, text)
}

// assumes tells whether a box shows what nobody typed.
func (c *Meters) assumes(b box) bool { return c.Page.Visit.Typed[b.id] == "" && !math.IsNaN(b.usual) }

// wrong says what a box allows where it holds something else.
func (c *Meters) wrong(b box) string {
	if _, ok := c.number(b); ok || c.Page.Visit.Typed[b.id] == "" {
		return ""
	}
	return c.Page.View.Words.Text(words.TestWrong, format.Input(b.least), format.Input(b.most))
}

func (c *Meters) lightBox() box {
	if c.Page.Visit.ByAmps {
		return ampsBox
	}
	return lightBox
}

func (c *Meters) lightName() string {
	if c.Page.Visit.ByAmps {
		return c.Page.T(words.TestAmps)
	}
	return c.Page.T(words.TestWm2)
}

func (c *Meters) cellName() string { return c.Page.T(cellsBy[c.Page.Visit.Cells].label) }

// caution names the voltage that meters must bear.
func (c *Meters) caution() string {
	return c.Page.View.Words.Text(words.TestCaution, format.AtLeast(care.HighestV(&c.Page.Store.Scenario, &c.wiring), 0))
}

func (c *Meters) cells() string {
	return c.Page.View.Words.Text(words.TestCellsAre, format.Degrees(c.given.CellC), format.Number(c.given.Wm2, 0))
}

// decimals of a quantity.
func decimals(q visit.Quantity) int {
	if q.Volts() || q.Watts() {
		return 0
	}
	return 1
}

// band is what a meter may read.
func (c *Meters) band(q visit.Quantity) string {
	least, most := visit.Limits(q, c.expected.Of(q), c.bands[q])
	return c.Page.View.Words.Text(words.TestBand, format.Number(least, decimals(q)), format.Number(most, decimals(q)))
}

func (c *Meters) expects(q visit.Quantity) string {
	return format.Number(c.expected.Of(q), decimals(q))
}

// readingBox is that of a reading.
func readingBox(i int) box {
	return box{measured[i].id, -readingMost, readingMost, math.NaN()}
}

// outcome says what a reading comes to; nothing where none was typed.
func (c *Meters) outcome(i int) string {
	v, ok := c.number(readingBox(i))
	if !ok {
		return ""
	}
	w, q := c.Page.View.Words, measured[i].q
	o, off := visit.JudgeReading(q, v, c.expected.Of(q), c.bands[q], c.given)
	switch pct := format.Number(100*off, 0); o {
	case visit.Within:
		return w.Text(words.OutcomeWithin)
	case visit.Higher:
		return w.Text(words.OutcomeHigher, pct)
	case visit.NoJudge:
		return w.Text(words.OutcomeNone)
	case visit.Reversed:
		return w.Text(words.OutcomeReversed)
	default:
		text := w.Text(words.OutcomeLower, pct)
		if q == visit.OpenVolts {
			text += c.missing(v)
		}
		return text
	}
}

// missing says what a low open circuit looks like.
func (c *Meters) missing(volts float64) string {
	w, inString := c.Page.View.Words, c.wiring.InString
	m := visit.MissingOf(volts, c.expected.OpenV, inString, c.bands[visit.OpenVolts])
	text := ""
	switch {
	case m.Thirds > 0:
		text = "; " + w.Text(words.MissingThirds, m.Thirds)
	case m.Modules > 0:
		text = "; " + w.Text(words.MissingModules, m.Modules, inString)
	}
	if m.Reversed > 0 {
		text += " " + w.Text(words.MissingReversed, m.Reversed)
	}
	if m.Untold {
		text += "; " + w.Text(words.MissingUntold)
	}
	return text
}

// insulation says what is asked of it.
func (c *Meters) insulation() string {
	megohm, volts := care.InsulationTest(c.wiring.InString, c.Page.Store.Scenario.OpenV)
	return c.Page.View.Words.Text(words.InsulationAsks, format.Number(megohm, 1), format.Number(volts, 0))
}
