package visit

import (
	"slices"
	"strings"

	"suncask/engine/care"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Wiring lists the ways to wire the modules, the least ratings of what is fitted, and cables.
type Wiring struct {
	Page *page.Page

	list []visit.Wiring // worked out once a render
	now  *visit.Wiring  // as the house is wired, but for the year
}

// Compute takes the list and judges what is there now.
func (c *Wiring) Compute() {
	c.list, c.now = c.Page.Store.Wirings(), visit.Judge(c.Page.Store.Prepared)
}

// WiringsWanted tells whether the list is looked at and not known.
func WiringsWanted(c *page.Page) bool {
	return c.Store.Entry == state.Visit && c.Visit.Part == page.Wiring && c.Sees(page.HousePlace) && c.Store.Scenario.Modules > 0 && !c.Store.Done(state.WiringsJob)
}

func (c *Wiring) modules() bool { return c.now.Strings > 0 }

func (c *Wiring) title() string {
	if len(c.list) == 0 {
		return c.Page.T(words.WiringsName)
	}
	return c.Page.View.Words.Text(words.WiringsTitle, len(c.free()), len(c.list))
}

// moduleSteps are how many modules the list is of, beside those of the house.
var moduleSteps = []struct {
	by   int
	name words.Key
}{{-1, words.WiringsFewer}, {0, words.WiringsSame}, {1, words.WiringsMore}}

// canWire tells whether a house can have so many modules.
func (c *Wiring) canWire(by int) bool {
	n := c.Page.Store.Scenario.Modules + by
	return n >= 1 && scenario.FieldOf(scenario.Modules).Check(float64(n)) == nil
}

// minds are the findings of a wiring that do not stop it, where they are opened.
func (c *Wiring) minds(w *visit.Wiring) (list []care.Finding) {
	if c.Page.Visit.MindsOf != c.name(w) {
		return nil
	}
	for _, f := range w.Findings {
		if f.Severity == care.Caution {
			list = append(list, f)
		}
	}
	return list
}

func (c *Wiring) turnMinds(w *visit.Wiring) {
	name := c.name(w)
	if c.Page.Visit.MindsOf == name {
		name = ""
	}
	c.Page.Visit.MindsOf = name
}

// unknown are the fields of which nobody knows more than that they are usual, and on which findings
// hang.
func (c *Wiring) unknown() (list []scenario.FieldID) {
	for _, id := range visit.Assumed(&c.Page.Store.Scenario) {
		if state.Applies(&c.Page.Store.Scenario, id) {
			list = append(list, id)
		}
	}
	return list
}

func (c *Wiring) fieldName(id scenario.FieldID) string { return c.Page.View.Words.Fields[id].Name }

func (c *Wiring) turnAssumed() { c.Page.Visit.AssumedOpen = !c.Page.Visit.AssumedOpen }

// goTo opens the survey at a field.
func (c *Wiring) goTo(id scenario.FieldID) {
	for i, s := range sections {
		if slices.Contains(s.fields, id) {
			c.Page.OpenPart(page.Survey)
			c.Page.Visit.Section = i
			if c.Page.Host != nil {
				c.Page.Host.Reveal(parts.FieldID(id))
			}
		}
	}
}

// assumed says how many of them there are; nothing where there are none.
func (c *Wiring) assumed() string {
	if n := len(c.unknown()); n > 0 {
		return c.Page.View.Words.Text(words.WiringsAssumed, n)
	}
	return ""
}

// name says how the modules are wired.
func (c *Wiring) name(w *visit.Wiring) string {
	coupling := c.Page.View.Words.Fields[scenario.CoupledBy].Choices[w.To.Coupling]
	if w.Strings > 1 {
		return c.Page.View.Words.Text(words.WiringMany, w.To.InString, w.Strings, coupling)
	}
	return c.Page.View.Words.Text(words.WiringOne, w.To.InString, coupling)
}

// fuse says what a string's fuse must be.
func (c *Wiring) fuse(r *visit.Wiring) string {
	w := c.Page.View.Words
	switch {
	case r.Strings > 1 && c.Page.Store.Scenario.MaxFuseA == scenario.Unknown:
		least, _ := care.FuseWindow(care.RearA(&c.Page.Store.Scenario))
		return w.Text(words.FuseLabel, format.AtLeast(least, 1))
	case !r.Fused:
		return w.Text(words.FuseNone)
	case slices.ContainsFunc(r.Findings, func(f care.Finding) bool { return f.Code == care.NoFuseFits }):
		return w.Text(words.FuseUnfit)
	}
	return w.Text(words.FuseBetween, format.AtLeast(r.FuseLeastA, 1), format.AtMost(r.FuseMostA, 1))
}

func (c *Wiring) cable(mm2 float64) string {
	if mm2 == 0 {
		return c.Page.T(words.CableNone)
	}
	return c.Page.View.Words.Text(words.CableLeast, c.size(mm2))
}

// size writes a cross-section as its field does.
func (c *Wiring) size(mm2 float64) string {
	return c.Page.View.Words.Fields[scenario.CableSize].Choices[slices.Index(pv.CableSizes(), mm2)]
}

// line says what a wiring brings, and its limits.
func (c *Wiring) line(w *visit.Wiring) string {
	return c.Page.View.Words.Text(words.WiringLine, format.KWh(w.IntoJ, 0), format.KWh(w.OfferedJ, 0), format.AtLeast(w.Volts, 0), format.AtLeast(w.DesignA, 1), c.fuse(w), c.cable(w.CableMM2))
}

// counts says how many findings stop it and how many are to be minded.
func (c *Wiring) counts(w *visit.Wiring) string {
	return c.Page.View.Words.Text(words.WiringCounts, care.Count(w.Findings, care.Stop), w.Cautions())
}

// free are the wirings that nothing stops.
func (c *Wiring) free() (list []*visit.Wiring) {
	for i := range c.list {
		if w := &c.list[i]; !w.Stops() {
			list = append(list, w)
		}
	}
	return list
}

// stopped says of each of the others what stops it.
func (c *Wiring) stopped() (list []string) {
	for i := range c.list {
		w := &c.list[i]
		var why []string
		for _, f := range w.Findings {
			if f.Severity == care.Stop {
				why = append(why, c.Page.View.Words.Finding(f))
			}
		}
		if len(why) > 0 {
			list = append(list, c.Page.View.Words.Text(words.WiringStopped, c.name(w), strings.Join(why, " ")))
		}
	}
	return list
}

func (c *Wiring) take(w *visit.Wiring) {
	c.Page.Store.TakeWiring(w)
	c.Page.Changed()
}

func (c *Wiring) class(w *visit.Wiring) string {
	if c.Page.Store.Wired(w) {
		return "wiring here"
	}
	return "wiring"
}

// sheet is all of it as a table.
func (c *Wiring) sheet() *parts.Sheet {
	t := c.Page.T
	sh := &parts.Sheet{ID: "wirings", Caption: t(words.WiringsName), Head: []string{t(words.VisitWiring), t(words.WiringOffered), t(words.WiringInto), t(words.WiringCold), t(words.WiringHot), t(words.WiringDesign), t(words.WiringFuse), t(words.WiringCable), t(words.WiringFindings)}}
	for i := range c.list {
		w := &c.list[i]
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{c.name(w), format.KWh(w.OfferedJ, 0), format.KWh(w.IntoJ, 0), format.AtLeast(w.Volts, 0), format.AtMost(w.HotV, 0), format.AtLeast(w.DesignA, 1), c.fuse(w), c.cable(w.CableMM2), c.counts(w)}})
	}
	return sh
}

// ratings are the least of what is fitted in the house as it is wired now.
func (c *Wiring) ratings() *parts.Sheet {
	t, r := c.Page.T, c.now
	volts := func(v float64) string { return format.AtLeast(v, 0) + format.Space + "V" }
	amps := func(v float64) string { return format.AtLeast(v, 1) + format.Space + "A" }
	sh := &parts.Sheet{ID: "ratings", Caption: t(words.RatingsName), Head: []string{t(words.WorthFigure), t(words.RatingLeast)}}
	add := func(name words.Key, value string) {
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{t(name), value}})
	}
	if c.modules() {
		add(words.RatingVolts, volts(r.Volts))
		add(words.RatingSwitch, amps(r.DesignA))
		add(words.RatingString, amps(r.StringA))
		add(words.RatingFuse, c.sizes(r))
	}
	add(words.RatingGrid, amps(r.GridA))
	add(words.RatingGridMore, amps(r.GridContinuousA))
	add(words.RatingRelief, format.AtLeast(r.ReliefW, 0)+format.Space+"W")
	return sh
}

// sizes are the rated currents that a string's fuse can have.
func (c *Wiring) sizes(r *visit.Wiring) string {
	if len(r.FuseSizes) == 0 {
		return c.fuse(r)
	}
	var list []string
	for _, size := range r.FuseSizes {
		list = append(list, format.Input(size))
	}
	return c.Page.View.Words.Text(words.FuseSizes, strings.Join(list, ", "))
}

// cables are the smallest by length and loss, for the house as it is wired now.
func (c *Wiring) cables() *parts.Sheet {
	w, now := c.Page.View.Words, c.now
	sh := &parts.Sheet{ID: "cables", Caption: c.Page.T(words.CablesName), Head: []string{w.Fields[scenario.CableM].Name}}
	for _, pct := range visit.CableLossPcts {
		sh.Head = append(sh.Head, w.Text(words.CablesLoss, format.Number(pct, 0)))
	}
	for _, m := range visit.CableLengthsM {
		row := parts.SheetRow{Cells: []any{w.Text(words.CablesLength, format.In(scenario.Metre, m, 0)+format.Space+w.Units[scenario.Metre])}}
		for _, pct := range visit.CableLossPcts {
			mm2, ok := visit.SmallestCable(m, now.RunV, now.RunA, now.DesignA, pct)
			cell := "\u2013"
			if ok {
				cell = c.size(mm2)
			}
			row.Cells = append(row.Cells, cell)
		}
		sh.Rows = append(sh.Rows, row)
	}
	return sh
}

// loses says what the cable as it is loses.
func (c *Wiring) loses() string {
	s := &c.Page.Store.Scenario
	return c.Page.View.Words.Text(words.CablesNow, format.AtLeast(visit.CableLossPct(s.CableM, pv.CableSizes()[s.CableSize], c.now.RunV, c.now.RunA), 1))
}
