package visit

import (
	"strconv"
	"strings"

	"rsc.io/qr/coding"

	"suncask/engine/care"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Sheet is the page that stays at the house: one sheet of paper, whatever its size, language and
// units.
type Sheet struct {
	Page *page.Page

	of     *state.Household // worked out once a render
	now    *visit.Commission
	wiring simulate.Wiring
}

// Compute works out what it says.
func (c *Sheet) Compute() {
	c.of = c.Page.Store.Household()
	c.now, _ = commission(c.Page)
	c.wiring = c.Page.Store.Prepared.Wiring()
}

func (c *Sheet) text(k words.Key, args ...any) string { return c.Page.View.Words.Text(k, args...) }

func (c *Sheet) s() *scenario.Scenario { return &c.Page.Store.Scenario }

func (c *Sheet) date() string {
	if c.Page.Host == nil {
		return ""
	}
	return c.Page.Host.Date()
}

// stops are what must be mended first.
func (c *Sheet) stops() (list []string) {
	for _, f := range c.Page.Findings {
		if f.Severity == care.Stop {
			list = append(list, c.Page.View.Words.Finding(f))
		}
	}
	return list
}

var seasons = [3]words.Key{words.SheetWinter, words.SheetSpring, words.SheetSummer}

// seasonName says what a day of a season buys.
func (c *Sheet) seasonName(i int) string {
	name, kWh := c.Page.T(seasons[i]), c.of.Seasons[i].BoughtJ/simulate.JPerKWh
	if kWh < 0.05 {
		return c.text(words.SheetBuysNone, name)
	}
	return c.text(words.SheetBuys, name, format.Number(kWh, 1))
}

// title names what heats here.
func (c *Sheet) title() string {
	if c.wiring.Strings == 0 {
		return c.Page.T(words.SheetTitleGrid)
	}
	return c.Page.T(words.SheetTitle)
}

// legend says what the drawings show.
func (c *Sheet) legend() string {
	says := c.text(words.SheetLegend, c.hours())
	if c.wiring.Strings > 0 {
		says = c.Page.T(words.SheetLegendSun) + " " + says
	}
	return says
}

// hours are the backup hours in words.
func (c *Sheet) hours() string { return backupText(c.Page) }

func (c *Sheet) year() string {
	y := &c.Page.Store.Results.Year.Total
	return c.text(words.SheetYear, format.KWh(y.BoughtJ, 0), format.Money(y.Cost, c.s().Currency), format.Number(100*y.SolarFraction(), 0))
}

func (c *Sheet) ready() string {
	if !c.of.ReadyKnown {
		return ""
	}
	return c.text(words.SheetReady, format.In(scenario.Litre, c.of.TypicalL, 0), format.In(scenario.Litre, c.of.DullL, 0))
}

// setting is a row of what the household sets.
type setting struct{ name, now, more, less string }

func (c *Sheet) sets() (list []setting) {
	s, w := c.s(), c.Page.View.Words
	value := func(id scenario.FieldID, v float64) string {
		f := scenario.FieldOf(id)
		return format.Value(f, v) + format.Space + w.Units[f.Unit]
	}
	row := func(of visit.Setting, name words.Key, now string, more, less func(visit.Effect) string) {
		say := func(e visit.Effect, of func(visit.Effect) string) string {
			if !e.OK {
				return "\u2013"
			}
			return of(e) + ": " + c.effect(e)
		}
		list = append(list, setting{c.Page.T(name), now, say(c.of.More[of], more), say(c.of.Less[of], less)})
	}
	at := func(id scenario.FieldID) func(visit.Effect) string {
		return func(e visit.Effect) string { return value(id, e.Value) }
	}
	says := func(k words.Key) func(visit.Effect) string {
		return func(visit.Effect) string { return c.Page.T(k) }
	}
	row(visit.SetHours, words.SheetHours, c.hours(), says(words.SheetHourMore), says(words.SheetHourLess))
	row(visit.SetStat, words.SheetStat, value(scenario.SetC, s.SetC), at(scenario.SetC), at(scenario.SetC))
	if s.AllModules() > 0 {
		row(visit.SetSun, words.SheetSun, value(scenario.SunLimitC, s.SunLimitC), at(scenario.SunLimitC), at(scenario.SunLimitC))
	}
	on := words.SheetOff
	if s.HeatUp == 1 {
		on = words.SheetOn
	}
	row(visit.SetHeatUp, words.SheetHeatUp, c.Page.T(on), says(words.SheetOn), says(words.SheetOff))
	if s.Uses == scenario.Habits {
		row(visit.SetShower, words.SheetShower, value(scenario.ShowerMinutes, s.ShowerMinutes)+", "+value(scenario.ShowerFlow, s.ShowerFlow), at(scenario.ShowerMinutes), at(scenario.ShowerMinutes))
	}
	return list
}

// effect says what a step changes in a year.
func (c *Sheet) effect(e visit.Effect) string {
	text := c.Page.T(words.EffectSame)
	currency := c.s().Currency
	if same := format.Money(0, currency); format.Money(e.Cost, currency) != same && format.Money(-e.Cost, currency) != same {
		if e.Cost > 0 {
			text = c.text(words.EffectMore, format.Money(e.Cost, currency))
		} else {
			text = c.text(words.EffectLess, format.Money(-e.Cost, currency))
		}
	}
	switch days := e.CoolDays; {
	case days > 0:
		text += ", " + c.text(words.EffectCool, strconv.Itoa(int(days)))
	case days < 0:
		text += ", " + c.text(words.EffectWarm, strconv.Itoa(int(-days)))
	}
	return text
}

// cool are the steps when water runs cool: their text, and whether a line for a pen follows.
func (c *Sheet) cool() (list []penned) {
	off := penned{c.Page.T(words.SheetCool3), true}
	if len(c.stops()) > 0 {
		return []penned{off}
	}
	if !c.of.ShowerPossible {
		return []penned{{c.Page.T(words.SheetCool1Not), false}, {c.text(words.SheetCool2, c.hours()), false}, off}
	}
	needs := duration(c.of.ShowerMinutes)
	return []penned{{c.text(words.SheetCool1, needs), false}, {c.text(words.SheetCool2, c.hours()), false}, off, {c.text(words.SheetCool4, needs), true}}
}

// penned is a text, and whether a line for a pen follows it.
type penned struct {
	text string
	pen  bool
}

// mind is what the household must know.
func (c *Sheet) mind() (list []string) {
	s, p := c.s(), c.Page.Store.Prepared
	hot := care.HottestC(s)
	degrees := func(v float64) string {
		return format.Degrees(v) + format.Space + c.Page.View.Words.Units[scenario.Celsius]
	}
	switch {
	case s.ValveC > 0 && s.ValveC <= s.TapC:
		list = append(list, c.text(words.SheetMixed, degrees(s.ValveC)))
	case hot > s.TapC:
		list = append(list, c.text(words.SheetBurns, degrees(hot), format.Number(max(1, care.BurnSeconds(hot)), 0)))
	}
	if c.wiring.Strings > 0 {
		list = append(list, cautionText(c.Page, words.SheetLive))
	}
	if s.ExpandBy == scenario.ExpandVessel || s.ExpandBy == scenario.ExpandVent {
		list = append(list, c.Page.T(words.SheetReliefDry))
	} else {
		pushed, _, _ := visit.Pushed(p)
		list = append(list, c.text(words.SheetRelief, format.In(scenario.Litre, pushed, 1)))
	}
	return append(list, c.Page.T(words.SheetDecide))
}

// sheetRow is a reading with what was expected and what came of it.
type sheetRow struct{ name, expected, read, outcome string }

// measured are the readings of the test, first the strings'.
func (c *Sheet) measured() (list []sheetRow) {
	m := &Meters{Page: c.Page, now: c.now, wiring: c.wiring}
	for _, t := range m.tests() {
		for _, r := range t.rows {
			value, band := expects(c.Page, c.now, r.code)
			if band != "" && value != "" {
				band = value + " (" + band + ")"
			}
			read, name := "", r.name
			if v, ok := c.now.Readings[r.code]; ok {
				read = number(r.code, v)
			}
			if unit, ok := strings.CutPrefix(r.name[strings.LastIndex(r.name, ",")+1:], " "); ok && len(t.rows) == 1 && t.id != "open" && t.id != "amps" { // a box in its test says no more than its unit
				name = c.Page.T(t.name) + ", " + unit
			}
			if read == "" && !printedEmpty[t.id] {
				continue
			}
			list = append(list, sheetRow{name, band, read, outcome(c.Page, c.now, r.code)})
		}
	}
	if len(list) > mostRows {
		list = list[:mostRows]
	}
	if c.wiring.Strings > 0 {
		megohm, volts := care.InsulationTest(c.wiring.InString, c.s().OpenV, c.s().MaxSystemV)
		row := sheetRow{name: c.Page.T(words.SheetInsulation), expected: c.text(words.TestAtLeast, format.Number(megohm, 1)) + format.Space + "MΩ, " + format.Number(volts, 0) + format.Space + "V"}
		if v := c.s().InsulationM; v != scenario.Unknown {
			row.read = format.Input(v)
			if row.outcome = c.Page.T(words.OutcomeWithin); v < megohm {
				row.outcome = c.text(words.OutcomeLower, format.Number(100*(1-v/megohm), 0))
			}
		}
		list = append(list, row)
	}
	return list
}

// printedEmpty are the tests that have a line for a pen where nothing was read.
var printedEmpty = map[string]bool{"open": true, "amps": true, "ohms": true, "sheath": true}

// mostRows is how many readings fit the sheet.
const mostRows = 9

func (c *Sheet) expectedHead() string {
	if !c.now.Lit || c.wiring.Strings == 0 {
		return c.Page.T(words.SheetExpectedDark)
	}
	return c.text(words.SheetExpected, format.Number(c.now.Given.Wm2, 0), format.Degrees(c.now.Given.CellC)+format.Space+c.Page.View.Words.Units[scenario.Celsius])
}

// built says what is fitted.
func (c *Sheet) built() string {
	s, w := c.s(), c.Page.View.Words
	if c.wiring.Strings == 0 {
		return c.Page.T(words.VisitNoModules)
	}
	cable := format.In(scenario.Metre, s.CableM, 0) + format.Space + w.Units[scenario.Metre]
	size := strings.Split(w.Fields[scenario.CableSize].Choices[s.CableSize], " ")[0]
	return c.text(words.SheetBuilt, s.AllModules(), format.Number(s.ModuleW, 0), c.wiring.InString, c.wiring.Strings) + " " +
		c.text(words.SheetBuiltMore, cable, size, format.Number(pv.Ohms(s.ElementW, s.ElementV), 1))
}

// fitted are ratings that are asked, with a line for what was fitted.
func (c *Sheet) fitted() (list []string) {
	if c.wiring.Strings == 0 {
		return nil
	}
	r := visit.RatingsOf(c.Page.Store.Prepared)
	list = append(list, c.text(words.SheetBreaks, format.AtLeast(r.Volts, 0), format.AtLeast(r.DesignA, 1)))
	if r.Fused {
		w := &Wiring{Page: c.Page, now: visit.Judge(c.Page.Store.Prepared)}
		list = append(list, c.text(words.SheetFuse, w.sizes(w.now)))
	}
	return list
}

// link opens the household's own way in, without readings.
func (c *Sheet) link() string {
	base := ""
	if c.Page.Host != nil {
		base = c.Page.Host.Base()
	}
	return base + "#" + c.Page.Store.Link()
}

func (c *Sheet) here() string {
	if page.OnlyHere(c.link()) {
		return c.Page.T(words.LinkOnlyHere)
	}
	return ""
}

func (c *Sheet) dark() string { path, _ := parts.QR(c.link(), coding.M); return path }

func (c *Sheet) frame() string { _, frame := parts.QR(c.link(), coding.M); return frame }

func (c *Sheet) print() {
	if c.Page.Host != nil {
		c.Page.Host.Print()
	}
}

func (c *Sheet) penClass(t penned) string {
	if t.pen {
		return "pen"
	}
	return ""
}

// Parts of the sheet that make room for what stops the house, which is written in full: how many
// lines of that they bear.
const (
	away     = 0
	settings = 0
	drawings = 6
)

// lineRunes is how many letters a line of what stops the house has.
const lineRunes = 115

// room tells whether a part of the sheet has its place.
func (c *Sheet) room(bears int) bool {
	lines := 0
	for _, text := range c.stops() {
		lines += 1 + len(text)/lineRunes
	}
	return lines <= bears
}
