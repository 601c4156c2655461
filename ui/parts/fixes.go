package parts

import (
	"strconv"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Fixes lists changes that make the house better, or keep one use warm, each to be taken
// at once.
type Fixes struct {
	Page *page.Page
	Use  bool // for the last of the uses shown that ran cool
}

func (c *Fixes) try() {
	s := c.Page.Store
	if c.Use {
		if at, _, ok := c.Page.CoolUse(); ok {
			c.Page.Tried = page.Tried{Of: s.Scenario, At: at, List: s.FixesFor(at)}
		}
	} else if c.Page.Host != nil {
		c.Page.Host.Start(state.FixesJob, s.BeginJob(state.FixesJob))
	}
}

// found are those found; known tells whether any were looked for, for what the page shows.
func (c *Fixes) found() (list []plan.Fix, known bool) {
	if !c.Use {
		return c.Page.Store.Fixes()
	}
	f := &c.Page.Tried
	at, _, ok := c.Page.CoolUse()
	return f.List, ok && at == f.At && f.Of == c.Page.Store.Scenario
}

func (c *Fixes) list() (list []Gain) {
	found, known := c.found()
	if !known {
		return nil
	}
	for _, f := range found {
		g := Gain{Name: c.change(&f), Note: c.Page.View.Words.Text(words.GainCool, f.Year.CoolUses), Class: "gain", Saves: f.Saves, Warns: len(f.Brings) > 0, Button: c.Page.T(words.FixApply)}
		for _, brings := range f.Brings {
			g.Note += ". " + c.Page.View.Words.Text(words.FixBrings, c.Page.View.Words.Finding(brings))
		}
		if f.Presses == 0 {
			g.Take = func() { c.apply(f) }
		}
		list = append(list, g)
	}
	return list
}

func (c *Fixes) id(part string) string {
	if c.Use {
		return "use-" + part
	}
	return "fixes-" + part
}

func (c *Fixes) name() string {
	if !c.Use {
		return c.Page.T(words.FixesName)
	}
	_, minute, _ := c.Page.CoolUse()
	return c.Page.View.Words.Text(words.FixesUse, format.Clock(minute))
}

// note says what came of it.
func (c *Fixes) note() string {
	list, known := c.found()
	_, running := c.Page.Store.Running(state.FixesJob)
	switch {
	case !c.Use && running:
		return c.Page.T(words.Finding)
	case !known:
		return ""
	case len(list) == 0:
		return c.Page.T(words.FixesNone)
	case c.Use:
		return c.Page.T(words.FixesUseHelp)
	}
	return c.Page.T(words.FixesHelp)
}

// change says what is changed.
func (c *Fixes) change(f *plan.Fix) string {
	w, to := c.Page.View.Words, &f.To
	number := func(id scenario.FieldID) string {
		f := scenario.FieldOf(id)
		return format.Value(f, f.Get(to))
	}
	span := func(start, end int) string {
		return c.Page.View.Hours(dial.Window{Start: start, End: end, AllDay: to.Backup.AllDay})
	}
	return w.Change(f.Change, span(to.Backup.Start, to.Backup.End), number(scenario.RescueLitres), w.Fields[scenario.RuleBy].Choices[to.Rule], number(scenario.ShowerFlow),
		number(scenario.SunLimitC), number(scenario.SetC), strconv.Itoa(to.Modules), number(scenario.TankLitres), span(to.Backup.Second.Start, to.Backup.Second.End),
		number(scenario.ShowerMinutes), w.Fields[scenario.Showers].Choices[to.When], strconv.Itoa(f.Presses))
}

func (c *Fixes) apply(f plan.Fix) {
	c.Page.Store.Apply(&f)
	c.Page.Changed()
}
