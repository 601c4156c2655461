package day

import (
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Figures are the year in four figures, each with how it changed, and what the last edit was.
type Figures struct{ Page *page.Page }

// since says what the last edit changed, else what the figures are of.
func (c *Figures) since() string {
	s, w := c.Page.Store, c.Page.View.Words
	if s.Since == nil {
		p, _ := s.Scenario.At()
		return w.Text(words.SinceRest, p.Name, format.Degrees(s.Prepared.ColdWaterC()), c.Page.WaterModel())
	}
	f := scenario.FieldOf(s.Since.Field)
	hours := func(of *scenario.Scenario) string {
		house := *s
		house.Before, house.Scenario = nil, *of
		if text := c.Page.View.AllHours(&house); text != "" {
			return text
		}
		return w.Text(words.NoBackup)
	}
	shown := func(of *scenario.Scenario) string {
		switch {
		case f.Kind == scenario.Choice:
			return w.Fields[f.ID].Choices[int(f.Get(of))]
		case f.Unit == scenario.ClockMinute:
			return format.Clock(int(f.Get(of)))
		}
		text := format.Value(f, f.Get(of))
		if unit := w.Units[f.Unit]; unit != "" && text != "" {
			text += format.Space + unit
		}
		return text
	}
	switch {
	case f.Kind == scenario.Hours:
		return w.Text(words.SinceHours, hours(&s.Scenario), hours(&s.Since.Was))
	case f.Kind != scenario.Number && f.Kind != scenario.Choice:
		return w.Text(words.SinceChange, w.Fields[f.ID].Name)
	}
	return w.Text(words.SinceWas, w.Fields[f.ID].Name, shown(&s.Scenario), shown(&s.Since.Was))
}

// The button beside that takes the edit back, or says how the year is figured.

func (c *Figures) sinceID() string {
	if c.Page.Store.Since == nil {
		return "figured"
	}
	return "since-undo"
}

func (c *Figures) sinceName() string {
	if c.Page.Store.Since == nil {
		return c.Page.T(words.MenuFigured)
	}
	return c.Page.T(words.Undo)
}

func (c *Figures) sinceDo() {
	if c.Page.Store.Since == nil {
		c.Page.OpenSheet(page.MenuSheet)
		c.Page.Reveal("cold-water")
		return
	}
	c.Page.Undo()
}

func (c *Figures) sinceClass() string {
	if c.Page.Store.Since == nil {
		return "since rest"
	}
	if c.Page.Store.Since == c.Page.SinceSeen {
		return "since seen"
	}
	return "since"
}
