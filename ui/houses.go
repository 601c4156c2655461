package ui

import (
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Kept is a house that this device keeps under a name.
type Kept struct{ Name, Link string }

// mostName is how long a name may be, characters.
const mostName = 40

// Houses keeps houses on the device and compares one with the house shown.
type Houses struct{ Page *Page }

func (c *Houses) list() []Kept {
	if c.Page.Host == nil {
		return nil
	}
	return c.Page.Host.Kept()
}

func (c *Houses) typed(event vugu.DOMEvent) {
	c.Page.HouseName = strings.TrimSpace(event.PropString("target", "value"))
	c.Page.HouseNote = ""
}

// keep keeps the house shown under the name typed.
func (c *Houses) keep() {
	p := c.Page
	n := len([]rune(p.HouseName))
	switch {
	case n == 0 || n > mostName:
		p.HouseNote = p.View.Words.Text(words.HouseNameWrong, n, mostName)
	case p.Host == nil || !p.Host.Keep(p.HouseName, p.Store.Link()):
		p.HouseNote = p.T(words.HouseNotKept)
	default:
		p.HouseNote = p.View.Words.Text(words.HouseKept, p.HouseName)
	}
}

func (c *Houses) open(k Kept) {
	c.Page.Host.Open(c.Page.Store.In(k.Link))
	c.Page.CloseSheet()
	c.Page.changed()
}

func (c *Houses) compare(k Kept) {
	c.Page.other, c.Page.otherName = c.Page.Host.Beside(k.Link), k.Name
	c.Page.other.ShowDayOf(c.Page.Store)
	c.Page.reveal("over")
}

func (c *Houses) compares() bool { return c.Page.other != nil }

func (c *Houses) endCompare() { c.Page.other = nil }

func (c *Houses) drop(k Kept) {
	c.Page.Host.Drop(k.Name)
	if c.Page.otherName == k.Name {
		c.Page.other = nil
	}
}

func (c *Houses) named(key words.Key, k Kept) string { return c.Page.T(key) + ": " + k.Name }

// missing says that the other house is shown without its weather file.
func (c *Houses) missing() string {
	if o := c.Page.other; o != nil && o.Prepared.FileMissing {
		return c.Page.View.Words.Text(words.FileAbsent, o.Scenario.Weather)
	}
	return ""
}

// beside are the house shown and the one compared with, each as a small dial.
func (c *Houses) beside() []smallDial {
	return []smallDial{{c.Page.T(words.CompareThis), frameOf(c.Page.Store)}, {c.Page.otherName, frameOf(c.Page.other)}}
}

// smallDial is a house's day as a picture without grips and numbers.
type smallDial struct {
	name  string
	paths map[string]string
}

func frameOf(s *state.Store) map[string]string {
	paths := map[string]string{}
	for _, a := range view.New().Frame(s) {
		if a.Name == "d" {
			paths[a.ID] = a.Value
		}
	}
	return paths
}

// again asks the six questions once more.
func (c *Houses) again() {
	c.Page.CloseSheet()
	c.Page.askMine()
}

// sheet has the results of both houses with their difference, and what differs between them.
func (c *Houses) sheet() *sheet {
	s, o, t := c.Page.Store, c.Page.other, c.Page.T
	sh := &sheet{id: "compare", caption: c.Page.View.Words.Text(words.CompareName, c.Page.otherName),
		head: []string{t(words.WorthFigure), t(words.CompareThis), c.Page.otherName, t(words.CompareMore)}}
	figures := func(name string, decimals int, of func(*state.Store) float64) {
		a, b := of(s), of(o)
		sh.rows = append(sh.rows, sheetRow{cells: []any{name, figure{a, decimals}, figure{b, decimals}, figure{a - b, decimals}}})
	}
	year := func(s *state.Store) *simulate.Flows { return &s.Results.Year.Total }
	w := c.Page.View.Words
	figures(w.Text(words.OfferCost, s.Scenario.Currency), 0, func(s *state.Store) float64 { return year(s).Cost })
	figures(t(words.YearsBought), 0, func(s *state.Store) float64 { return year(s).BoughtJ / simulate.JPerKWh })
	figures(t(words.OfferSun), 0, func(s *state.Store) float64 { return 100 * year(s).SolarFraction() })
	figures(t(words.YearsCool), 0, func(s *state.Store) float64 { return float64(year(s).CoolDays) })
	figures(w.Text(words.OfferWorth, s.Scenario.Currency), 0, func(s *state.Store) float64 {
		v := s.Savings()
		worth, _ := v.Worth(&s.Scenario)
		return worth.NPV
	})
	for _, f := range scenario.Fields() {
		if a, b := c.value(s, f.ID), c.value(o, f.ID); a != b {
			sh.rows = append(sh.rows, sheetRow{cells: []any{w.Fields[f.ID].Name, a, b, ""}})
		}
	}
	return sh
}

// value is a field of a house in words.
func (c *Houses) value(s *state.Store, id scenario.FieldID) string {
	f := scenario.FieldOf(id)
	switch {
	case id == scenario.BackupHours:
		return (&Offers{Page: c.Page}).hours(s.Scenario.Backup)
	case id == scenario.SecondHours: // among those
		return ""
	case f.Kind == scenario.Choice:
		return c.Page.View.Words.Fields[id].Choices[int(f.Get(&s.Scenario))]
	case f.Kind == scenario.Months, f.Kind == scenario.Hours, id == scenario.WeatherFile:
		return s.Scenario.Written(id)
	}
	text := s.Text(id)
	if text == "" { // not known
		return ""
	}
	return strings.TrimSpace(text + " " + c.Page.View.Words.Units[f.Unit])
}
