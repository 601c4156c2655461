package parts

import (
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/vugu/vugu"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Row is a field with its box or choices, what was refused, and what to mind. What it shows is
// worked out once a render.
type Row struct {
	Page  *page.Page
	ID    scenario.FieldID
	Plain bool // without what to mind

	key, name, help           string
	value, unit, allowed      string
	problem                   string
	choices                   []string
	findings                  []care.Finding
	chosen                    int
	assumed, decimal, isPlace bool
	text                      bool     // no number and no time
	compass                   []string // directions to turn to, of an azimuth
	span                      *spanned // of a slider, nil for none
}

// FieldID is the id of a field's box or choices.
func FieldID(id scenario.FieldID) string { return "field-" + scenario.FieldOf(id).Key }

// Compute works it out.
func (c *Row) Compute() {
	s, w, f := c.Page.Store, c.Page.View.Words, scenario.FieldOf(c.ID)
	text := w.Fields[c.ID]
	*c = Row{Page: c.Page, ID: c.ID, Plain: c.Plain, key: FieldID(c.ID), name: text.Name, help: text.Help, problem: c.Page.Problem(c.ID),
		assumed: !s.Scenario.Known.Has(c.ID), isPlace: c.ID == scenario.Place, text: f.Kind == scenario.Text, span: spanOf(c.Page, c.ID)}
	for _, f := range c.Page.Findings {
		if f.Field == c.ID && !c.Plain {
			c.findings = append(c.findings, f)
		}
	}
	if c.isPlace {
		c.help = c.Page.PlaceNote(text.Help)
	}
	if f.Kind == scenario.Choice {
		c.choices, c.chosen = text.Choices, int(f.Get(&s.Scenario))
	} else {
		c.value, c.unit = s.Text(c.ID), w.Units[f.Unit]
	}
	if f.Kind == scenario.Number && f.Unit != scenario.ClockMinute {
		c.decimal = true
		least, most := format.Range(f)
		c.allowed = w.Text(words.Range, least, most)
	}
	if c.ID == scenario.AzimuthDeg || c.ID == scenario.Face2 || c.ID == scenario.Face3 || c.ID == scenario.Face4 {
		c.compass, c.chosen = c.Page.View.Compass(), int(f.Get(&s.Scenario)/45+0.5)%8
	}
	if f.Unit.IsMoney() {
		c.unit = strings.TrimSpace(s.Scenario.Currency + " " + c.unit)
	}
}

// class makes room for a row: choices and texts take the whole width.
func (c *Row) class() string {
	switch {
	case c.isPlace || len(c.choices) > 0 || c.span != nil || c.text:
		return "field whole"
	case c.problem != "" || len(c.findings) > 0 || utf8.RuneCountInString(c.value) > 5:
		return "field whole"
	}
	return "field"
}

// longUnit tells whether the unit stands beside the name: in the box it would leave no room for
// five digits.
func (c *Row) longUnit() bool { return utf8.RuneCountInString(c.unit) > 2 }

// nameClass hides a name that stands there already as the button that explains it.
func (c *Row) nameClass() string {
	if c.help != "" && !c.isPlace {
		return "unseen"
	}
	return "name"
}

// mode is the keyboard that a touch screen shows.
func (c *Row) mode() string {
	if c.decimal {
		return "decimal"
	}
	return "text"
}

// turnHelp opens the field's explanation, or closes it; one is open at a time.
func (c *Row) turnHelp() {
	if c.Page.HelpOf == c.key {
		c.Page.HelpOf = ""
	} else {
		c.Page.HelpOf = c.key
	}
}

func (c *Row) helpClass() string {
	if c.Page.HelpOf == c.key {
		return "note help"
	}
	return "note"
}

// helpText is what stands under a box: of a place always, else on demand what the field means
// and what is allowed.
func (c *Row) helpText() string {
	switch {
	case c.isPlace:
		return c.help
	case c.Page.HelpOf == c.key:
		return strings.TrimSpace(c.help + " " + c.allowed)
	}
	return ""
}

// take takes what was typed.
func (c *Row) take(event vugu.DOMEvent) {
	c.Page.Store.Type(c.ID, event.PropString("target", "value"))
	c.Page.Changed()
}

// turnTo faces modules in a direction of the compass.
func (c *Row) turnTo(direction int) {
	c.Page.Store.Type(c.ID, strconv.Itoa(45*direction))
	c.Page.Changed()
}

// nudge moves a number by a step that can be felt, in its range.
func (c *Row) nudge(by float64) {
	f := scenario.FieldOf(c.ID)
	v := f.Get(&c.Page.Store.Scenario)
	if f.Empty(v) {
		v = f.Min
	}
	v = math.Max(f.Min, math.Min(f.Max, f.Snap(v+by*nudgeOf(f, v))))
	c.Page.Store.Set(c.ID, v)
	c.Page.Changed()
}

// nudgeOf is that step: a tenth of what is usual, or a digit of the amount.
func nudgeOf(f *scenario.Field, v float64) float64 {
	switch {
	case f.ID == scenario.TankLitres, f.ID == scenario.SunTankL, f.ID == scenario.KeepLitres, f.ID == scenario.RescueLitres:
		return 10
	case f.ID == scenario.ElementW, f.ID == scenario.ConverterW:
		return 100
	case f.ID == scenario.ModuleW:
		return 10
	case f.Unit == scenario.Degree, f.Unit == scenario.Percent && f.Step < 1 && f.Max > 50:
		return 5
	case f.Unit == scenario.KWhPerDay:
		return 0.1
	case f.Unit.IsMoney():
		return math.Max(f.Step, math.Pow(10, math.Floor(math.Log10(math.Max(v, 10*f.Step)))-1))
	}
	return f.Step
}
