package sheets

import (
	"strings"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// mostName is how long a name may be, characters.
const mostName = 40

// Houses keeps houses on the device and compares one with the house shown.
type Houses struct{ Page *page.Page }

func (c *Houses) list() []page.Kept {
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

func (c *Houses) open(k page.Kept) {
	c.Page.Host.Open(c.Page.Store.In(k.Link))
	c.Page.CloseSheet()
	c.Page.Changed()
}

func (c *Houses) compare(k page.Kept) {
	c.Page.Other, c.Page.OtherName = c.Page.Host.Beside(k.Link), k.Name
	c.Page.Other.ShowDayOf(c.Page.Store)
	c.Page.Reveal("over")
}

func (c *Houses) compares() bool { return c.Page.Other != nil }

func (c *Houses) endCompare() { c.Page.Other = nil }

func (c *Houses) drop(k page.Kept) {
	c.Page.Host.Drop(k.Name)
	if c.Page.OtherName == k.Name {
		c.Page.Other = nil
	}
}

func (c *Houses) named(key words.Key, k page.Kept) string { return c.Page.T(key) + ": " + k.Name }

// missing says that the other house is shown without its weather file.
func (c *Houses) missing() string {
	if o := c.Page.Other; o != nil && o.Prepared.FileMissing {
		return c.Page.View.Words.Text(words.FileAbsent, o.Scenario.Weather)
	}
	return ""
}

// beside are the house shown and the one compared with, each as a small dial.
func (c *Houses) beside() []smallDial {
	return []smallDial{{c.Page.T(words.CompareThis), frameOf(c.Page.Store)}, {c.Page.OtherName, frameOf(c.Page.Other)}}
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
	c.Page.AskMine()
}

// sheet has the results of both houses with their difference, and what differs between them.
func (c *Houses) sheet() *parts.Sheet {
	s, o, t := c.Page.Store, c.Page.Other, c.Page.T
	sh := &parts.Sheet{ID: "compare", Caption: c.Page.View.Words.Text(words.CompareName, c.Page.OtherName),
		Head: []string{t(words.WorthFigure), t(words.CompareThis), c.Page.OtherName, t(words.CompareMore)}}
	figures := func(name string, decimals int, of func(*state.Store) float64) {
		a, b := of(s), of(o)
		sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{name, parts.Number(a, decimals), parts.Number(b, decimals), parts.Number(a-b, decimals)}})
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
		if a, b := c.Page.View.Field(s, f.ID), c.Page.View.Field(o, f.ID); a != b {
			sh.Rows = append(sh.Rows, parts.SheetRow{Cells: []any{w.Fields[f.ID].Name, a, b, ""}})
		}
	}
	return sh
}
