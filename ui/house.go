package ui

import (
	"slices"
	"strconv"
	"strings"

	"suncask/engine/care"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// House shows the inputs as cards, each with its content in one line, one open at a time.
type House struct{ Page *Page }

// tabs are the cards of the entry.
func (c *House) tabs() (list []int) {
	for i := range panels {
		if entry := panels[i].entry; entry == state.Home || entry == c.Page.Store.Entry {
			list = append(list, i)
		}
	}
	return list
}

func (c *House) class(i int) string {
	if c.Page.Panel == i {
		return "card open"
	}
	return "card"
}

// inviteClass hides the invitation once the house is somebody's. It stays in the document, so
// that a box that has the focus keeps its place.
func (c *House) inviteClass() string {
	if c.Page.Store.Example() {
		return "invite"
	}
	return "none"
}

// assumed counts a card's fields that nobody confirmed, of those that say something.
func (c *House) assumed(i int) int {
	n, s := 0, &c.Page.Store.Scenario
	if panels[i].entry != state.Home { // its fields stand on other cards too
		return 0
	}
	for _, id := range panels[i].all() {
		if shown(s, id) && !s.Known.Has(id) {
			n++
		}
	}
	return n
}

func (c *House) assumedAll() (n int) {
	for i := range panels {
		n += c.assumed(i)
	}
	return n
}

func (c *House) assumedText(n int) string { return c.Page.View.Words.Text(words.AssumedCount, n) }

// minds counts what a card's fields have to be minded for, notes aside.
func (c *House) minds(i int) (n int) {
	fields := panels[i].all()
	for _, f := range c.Page.minded {
		if f.Severity > care.Note && slices.Contains(fields, f.Field) {
			n++
		}
	}
	return n
}

// confirmAll takes all assumed values of a card for right.
func (c *Page) confirmAll(i int) {
	c.Store.Confirm(panels[i].all()...)
	c.changed()
}

// line is what a card says while it is closed.
func (c *House) line(i int) string {
	s, w := &c.Page.Store.Scenario, c.Page.View.Words
	value := func(id scenario.FieldID) string {
		f := scenario.FieldOf(id)
		return format.Value(f, f.Get(s))
	}
	choice := func(id scenario.FieldID) string {
		return w.Fields[id].Choices[int(scenario.FieldOf(id).Get(s))]
	}
	switch panels[i].id {
	case PlatesPanel:
		return w.Text(words.CardPlates)
	case LessonPanel:
		return w.Text(words.CardLesson)
	case WeatherPanel:
		p, _ := s.At()
		mean := 0.0
		for _, v := range c.Page.Store.Prepared.Weather.Place.GHI {
			mean += v / 12
		}
		return w.Text(words.CardWeather, p.Name, format.Number(mean, 1))
	case HomePanel:
		switch s.Uses {
		case scenario.Habits:
			return w.Text(words.CardHome, s.People, value(scenario.ShowerMinutes), value(scenario.ShowerFlow))
		case scenario.NoUses:
			return w.Text(words.CardNoUses)
		}
		return choice(scenario.UsesFrom)
	case RoofPanel:
		all := s.AllModules()
		if all == 0 {
			return w.Text(words.CardNoRoof)
		}
		line := w.Text(words.CardRoof, s.Modules, value(scenario.ModuleW), value(scenario.TiltDeg), c.Page.direction(s.AzimuthDeg))
		if further := all - s.Modules; further > 0 {
			line += w.Text(words.CardRoofMore, further)
		}
		return line
	case WiringPanel:
		return w.Text(words.CardWiring, (&Offers{Page: c.Page}).strings(s), choice(scenario.CoupledBy))
	case TankPanel:
		_, loss := c.Page.Store.Prepared.StandingLoss()
		return w.Text(words.CardTank, value(scenario.TankLitres), value(scenario.SetC), format.Number(loss, 1))
	case BackupPanel:
		hours := c.Page.View.AllHours(c.Page.Store)
		if hours == "" {
			hours = w.Text(words.NoBackup)
		}
		if shown(s, scenario.RuleBy) {
			hours += "; " + choice(scenario.RuleBy)
		}
		return hours
	case PricesPanel:
		return w.Text(words.CardPrices, format.PerKWh(s.Price, s.Currency), format.Money(plan.SystemCost(s), s.Currency))
	}
	return ""
}

// direction is the nearest of eight directions of an azimuth, degrees clockwise from north.
func (c *Page) direction(azimuth float64) string {
	names := c.compass()
	return names[int(azimuth/45+0.5)%len(names)]
}

// compass are the names of eight directions from north on.
func (c *Page) compass() []string { return strings.Fields(c.T(words.Compass)) }

// turnTo faces modules in a direction of the compass.
func (c *Page) turnTo(id scenario.FieldID, direction int) {
	c.Store.Type(id, strconv.Itoa(45*direction))
	c.changed()
}

// input is a field for the printed list.
type input struct {
	name, value string
	assumed     bool
}

// inputs are all fields that the house has.
func (c *House) inputs() (list []input) {
	s := c.Page.Store
	houses := Houses{c.Page}
	for _, f := range scenario.Fields() {
		if f.Kind == scenario.Months && !s.Scenario.Known.Has(f.ID) {
			continue
		}
		if v := houses.value(s, f.ID); shown(&s.Scenario, f.ID) && v != "" {
			list = append(list, input{c.Page.View.Words.Fields[f.ID].Name, v, !s.Scenario.Known.Has(f.ID)})
		}
	}
	return list
}
