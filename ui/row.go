package ui

import (
	"math"
	"strings"
	"unicode/utf8"

	"suncask/engine/scenario"
)

// Row is a field with its box or choices, what was refused, and what to mind.
type Row struct {
	Page *Page
	R    row
}

// class makes room for a row: choices and texts take the whole width.
func (r row) class() string {
	switch {
	case r.isPlace || len(r.choices) > 0 || r.span != nil || r.text:
		return "field whole"
	case r.problem != "" || len(r.findings) > 0 || utf8.RuneCountInString(r.value) > 5:
		return "field whole"
	}
	return "field"
}

// longUnit tells whether the unit stands beside the name: in the box it would leave no room for
// five digits.
func (r row) longUnit() bool { return utf8.RuneCountInString(r.unit) > 2 }

// nameClass hides a name that stands there already as the button that explains it.
func (r row) nameClass() string {
	if r.help != "" && !r.isPlace {
		return "unseen"
	}
	return "name"
}

// turnHelp opens a field's explanation, or closes it; one is open at a time.
func (c *Page) turnHelp(key string) {
	if c.HelpOf == key {
		key = ""
	}
	c.HelpOf = key
}

func (c *Page) helpClass(r row) string {
	if c.HelpOf == r.key {
		return "note help"
	}
	return "note"
}

// helpText is what stands under a box: of a place always, else on demand what the field means
// and what is allowed.
func (c *Page) helpText(r row) string {
	switch {
	case r.isPlace:
		return r.help
	case c.HelpOf == r.key:
		return strings.TrimSpace(r.help + " " + r.allowed)
	}
	return ""
}

// nudge moves a number by a step that can be felt, in its range.
func (c *Page) nudge(id scenario.FieldID, by float64) {
	f := scenario.FieldOf(id)
	v := f.Get(&c.Store.Scenario)
	if f.Empty(v) {
		v = f.Min
	}
	v = math.Max(f.Min, math.Min(f.Max, f.Snap(v+by*nudgeOf(f, v))))
	c.Store.Set(id, v)
	c.changed()
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
