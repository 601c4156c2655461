package visit

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"suncask/engine/care"
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

	now     *visit.Commission // worked out once a render
	wiring  simulate.Wiring
	problem string // why nothing of the light can be expected
}

// Compute works out what is expected.
func (c *Meters) Compute() {
	c.now, c.problem = commission(c.Page)
	c.wiring = c.Page.Store.Prepared.Wiring()
}

func (c *Meters) modules() bool { return c.wiring.Strings > 0 }

// caution names the voltage that meters must bear.
func (c *Meters) caution() string { return cautionText(c.Page, words.TestCaution) }

// cautionText names the highest voltage of the house's strings.
func cautionText(c *page.Page, key words.Key) string {
	w := c.Store.Prepared.Wiring()
	return c.View.Words.Text(key, format.AtLeast(care.HighestV(&c.Store.Scenario, &w), 0))
}

// works are what may heat while meters are read.
var works = [visit.Works]words.Key{words.WorkSun, words.WorkOpen, words.WorkGrid, words.WorkDusk}

func (c *Meters) setWork(i int) { c.Page.Visit.Work = visit.Work(i) }

// test is one of the tests, in the order of a commissioning.
type test struct {
	id        string
	who       visit.Who
	name, how words.Key
	rows      []meterRow
}

// meterRow is a reading with its box.
type meterRow struct {
	code visit.Code
	name string
}

// planes counts those with modules: with several the light of one says nothing of the others'
// current.
func (c *Meters) planes() (n int) {
	for _, p := range c.Page.Store.Scenario.Planes() {
		if p.Modules > 0 {
			n++
		}
	}
	return n
}

// tests are those that this house has.
func (c *Meters) tests() (list []test) {
	t, w := c.Page.T, c.Page.View.Words
	strings := func(kind rune, name words.Key) (rows []meterRow) {
		for n := 1; n <= min(c.wiring.Strings, visit.MostStrings); n++ {
			rows = append(rows, meterRow{visit.StringCode(kind, n), w.Text(name, n)})
		}
		return rows
	}
	add := func(id string, who visit.Who, name, how words.Key, rows ...meterRow) {
		list = append(list, test{id, who, name, how, rows})
	}
	add("earth", visit.Electrician, words.EarthName, words.EarthHow, meterRow{visit.Earth, t(words.EarthBox)})
	work := false // amps under load wait until what is tested dead has been
	if c.modules() {
		add("open", visit.Trained, words.OpenName, words.OpenHow, strings(visit.OpenOf, words.StringOpen)...)
		if c.planes() == 1 {
			if work = c.Page.Visit.AtWork; !work {
				add("amps", visit.Trained, words.AmpsName, words.AmpsHow, strings(visit.ShortOf, words.StringShort)...)
			}
		}
	}
	add("sheath", visit.Electrician, words.SheathName, words.SheathHow, meterRow{visit.Sheath, t(words.SheathBox)})
	add("ohms", visit.Electrician, words.OhmsName, words.OhmsHow, meterRow{visit.ElementOhm, t(words.OhmsBox)})
	if work {
		add("amps", visit.Trained, words.AmpsName, words.AmpsHow, strings(visit.WorkOf, words.StringWork)...)
	}
	add("grid", visit.Electrician, words.GridName, words.GridHow, meterRow{visit.GridV, t(words.GridVBox)}, meterRow{visit.GridAmps, t(words.GridABox)})
	if c.modules() && c.planes() == 1 {
		add("sun", visit.Trained|visit.Electrician, words.SunName, words.SunHow, meterRow{visit.SunV, t(words.TestElementV)}, meterRow{visit.SunAmps, t(words.TestElementA)})
	}
	add("temps", visit.Household|visit.Plumber, words.TempsName, words.TempsHow, meterRow{visit.TankTopC, t(words.TankBox)}, meterRow{visit.TapC, t(words.TapBox)})
	if c.modules() && c.Page.Visit.LightBy == page.LightByMeter {
		add("again", visit.Trained, words.AgainName, words.AgainHow, meterRow{visit.LightAfter, t(words.AgainBox)})
	}
	return list
}

func (c *Meters) who(of visit.Who) string {
	return c.Page.View.Words.Text(words.WhoLine, of.Letters())
}

// decimals of a reading.
func decimals(code visit.Code) int {
	switch code[0] {
	case 'l':
		return 0
	case 'r', 'e', 'g', 's', 'o':
		if code == visit.SunV || code == visit.GridV {
			return 0
		}
		return 1
	}
	return 0
}

// number writes a reading in the unit that is shown.
func number(code visit.Code, v float64) string {
	if code == visit.TapC || code == visit.TankTopC {
		return format.Degrees(v)
	}
	d := decimals(code)
	if code == visit.Earth {
		d = 2
	}
	return format.Number(v, d)
}

// expects says what a reading should be; empty where nothing is asked.
func expects(c *page.Page, m *visit.Commission, code visit.Code) (value, band string) {
	a, ok := m.Asked(code)
	w := c.View.Words
	switch {
	case !ok:
		return "", ""
	case math.IsInf(a.Most, 1):
		return "", w.Text(words.TestAtLeast, number(code, a.Least))
	case math.IsInf(a.Least, -1):
		return "", w.Text(words.TestAtMost, number(code, a.Most))
	case code == visit.Earth:
		return number(code, a.Value), w.Text(words.TestAtMost, number(code, a.Most))
	}
	return number(code, a.Value), w.Text(words.TestBand, number(code, a.Least), number(code, a.Most))
}

func (c *Meters) expects(code visit.Code) string {
	value, band := expects(c.Page, c.now, code)
	switch {
	case band == "":
		return ""
	case value == "":
		return c.Page.T(words.TestExpected) + " " + band
	}
	return c.Page.T(words.TestExpected) + " " + value + ", " + band
}

// outcome says what a reading comes to; nothing where none was typed, or nothing is asked.
func outcome(c *page.Page, m *visit.Commission, code visit.Code) string {
	o, off, ok := m.Judge(code)
	if !ok {
		return ""
	}
	w, pct := c.View.Words, format.Number(100*off, 0)
	switch o {
	case visit.Within:
		return w.Text(words.OutcomeWithin)
	case visit.Higher:
		return w.Text(words.OutcomeHigher, pct)
	case visit.NoJudge:
		return w.Text(words.OutcomeNone)
	case visit.Reversed:
		return w.Text(words.OutcomeReversed)
	}
	text := w.Text(words.OutcomeLower, pct)
	if code[0] == byte(visit.OpenOf) && m.Lit {
		text += missing(c, m, m.Readings[code])
	}
	return text
}

func (c *Meters) outcome(code visit.Code) string { return outcome(c.Page, c.now, code) }

// missing says what a low open circuit looks like.
func missing(c *page.Page, m *visit.Commission, volts float64) string {
	w, inString := c.View.Words, m.House.Wiring().InString
	of := visit.MissingOf(volts, m.Expected.OpenV, inString, m.Bands[visit.OpenVolts])
	text := ""
	switch {
	case of.Thirds > 0:
		text = "; " + w.Text(words.MissingThirds, of.Thirds)
	case of.Modules > 0:
		text = "; " + w.Text(words.MissingModules, of.Modules, inString)
	}
	if of.Reversed > 0 {
		text += " " + w.Text(words.MissingReversed, of.Reversed)
	}
	if of.Untold {
		text += "; " + w.Text(words.MissingUntold)
	}
	return text
}

// apart names the strings that differ from the others.
func (c *Meters) apart(t test) string {
	kind := map[string]rune{"open": visit.OpenOf, "amps": visit.ShortOf}[t.id]
	if kind == 0 {
		return ""
	}
	if t.id == "amps" && c.Page.Visit.AtWork {
		kind = visit.WorkOf
	}
	var list []string
	for _, n := range c.now.Apart(kind) {
		list = append(list, strconv.Itoa(n))
	}
	if len(list) == 0 {
		return ""
	}
	return c.Page.View.Words.Text(words.StringsApart, strings.Join(list, ", "))
}

// functions are tried out one by one.
var functions = [visit.Functions]words.Key{words.FunctionSwitch, words.FunctionStat, words.FunctionCutOut, words.FunctionStarts, words.FunctionLoss, words.FunctionChange}

func (c *Meters) seen(i int) bool { return c.Page.Visit.Typed[visit.FunctionCode(i+1)] == "1" }

// see ticks a function off, or no longer.
func (c *Meters) see(i int) {
	code := visit.FunctionCode(i + 1)
	if c.seen(i) {
		delete(c.Page.Visit.Typed, code)
	} else {
		c.Page.Visit.Typed[code] = "1"
	}
}

// insulation says what is asked of it.
func (c *Meters) insulation() string {
	w := c.Page.View.Words
	megohm, volts := care.InsulationTest(c.wiring.InString, c.Page.Store.Scenario.OpenV, c.Page.Store.Scenario.MaxSystemV)
	asks := w.Text(words.InsulationAsks, format.Number(megohm, 1), format.Number(volts, 0))
	if n := c.wiring.Strings; n > 1 {
		together, _ := visit.ParallelMegohm(slices.Repeat([]float64{megohm}, n)...)
		asks += " " + w.Text(words.InsulationTogether, n, format.Number(together, 2))
	}
	return asks
}

// insulationField is the one with its reading: findings hang on it.
const insulationField = scenario.Insulation

func tick(seen bool) string {
	if seen {
		return "\u2713"
	}
	return ""
}
