package page

import (
	"math"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// TownsState says whether the list of towns is there; the store has it then.
type TownsState int8

// What may be of the list of towns.
const (
	TownsUnasked TownsState = iota
	TownsComing
	TownsThere
	TownsAbsent // it could not be fetched
)

// MostOffers is how many places the box offers at a time.
const MostOffers = 8

// leastTyped is how many bytes are typed before places are offered: one letter of most
// scripts but the Latin.
const leastTyped = 2

// Offers are the places that the box offers for a text.
func (c *Page) Offers(text string) []state.PlaceOffer {
	if len(strings.TrimSpace(text)) < leastTyped {
		return nil
	}
	return c.Store.PlaceOffers(text, MostOffers)
}

// Beside is what stands beside an offer's name.
func (c *Page) Beside(o state.PlaceOffer) string {
	w := c.View.Words
	text := o.Country
	if o.Region != "" {
		text = w.Text(words.PlaceIn, o.Region, o.Country)
	}
	if o.NextTo != "" {
		text = w.Text(words.PlaceNextTo, o.NextTo)
	}
	if o.Also != "" {
		text = strings.TrimPrefix(text+"; "+w.Text(words.PlaceBy, o.Also), "; ")
	}
	return text
}

// TakePlace takes an offer.
func (c *Page) TakePlace(o state.PlaceOffer) {
	c.Store.TakePlace(o)
	c.Changed()
}

// AskPlace asks the device where it is.
func (c *Page) AskPlace() {
	c.PlaceRefused = false
	if c.Host != nil {
		c.Host.DevicePlace()
	}
}

// At takes the device's answer: its place to a hundredth of a degree, or a refusal.
func (c *Page) At(latDeg, lonDeg float64, ok bool) {
	if ok {
		c.Store.Type(scenario.Place, climate.PointName(latDeg, lonDeg, math.NaN()))
		c.Changed()
	}
	c.PlaceRefused = !ok
}

// nearly names what is spelled nearly as a refused place.
func (c *Page) nearly(p scenario.Problem) string {
	if p.Code != scenario.UnknownPlace || len(c.Store.Near) == 0 {
		return ""
	}
	return c.View.Words.Text(words.PlaceNearly, strings.Join(c.Store.Near, "; "))
}

// PlaceNote stands under the place's box: how to type one, or of a point its clock and how
// near a built-in climate is.
func (c *Page) PlaceNote(help string) string {
	s, w := &c.Store.Scenario, c.View.Words
	switch c.Towns {
	case TownsComing:
		help += " " + w.Text(words.TownsComing)
	case TownsAbsent:
		help += " " + w.Text(words.TownsAbsent)
	}
	p, _ := s.At()
	if !p.Between {
		return help
	}
	clock := w.Text(words.ClockGuessed, p.Nearest)
	switch {
	case s.Known.Has(scenario.Zone):
		clock = c.clock(p.Clock)
	case p.NearestKm > climate.ReachKm:
		clock = w.Text(words.ClockOfSun)
	}
	if c.Towns != TownsAbsent && c.Towns != TownsComing {
		help = ""
	}
	return strings.TrimSpace(help + " " + clock + " " + c.Accuracy())
}

// clock says a clock's offset and summer time.
func (c *Page) clock(k climate.Clock) string {
	w := c.View.Words
	summer := w.Text(words.ClockNoShift)
	if k.From != k.To {
		summer = w.Text(words.ClockSummer, c.View.Date(k.From), c.View.Date(k.To))
	}
	sign := "+"
	if k.OffsetH < 0 {
		sign = "\u2212"
	}
	minutes := int(math.Round(math.Abs(k.OffsetH) * 60))
	return w.Text(words.ClockIs, sign+format.Clock(minutes), summer)
}

// Accuracy says where the weather comes from and how good it is.
func (c *Page) Accuracy() string {
	s, w := c.Store, c.View.Words
	p, _ := s.Scenario.At()
	missing := ""
	if s.Prepared.FileMissing {
		missing = w.Text(words.FileAbsent, s.Scenario.Weather) + " "
	}
	switch {
	case s.Prepared.Weather.Measured:
		return w.Text(words.AccuracyFile, p.Name)
	case !p.Between:
		return missing + w.Text(words.Accuracy, p.Name, p.Country, climate.IrradiationErrorPct, format.In(scenario.Kelvin, climate.TemperatureErrorK, 0))
	}
	text := w.Text(words.AccuracyPoint, p.Name, p.Nearest, format.Kilometres(p.NearestKm), climate.IrradiationErrorPct, format.In(scenario.Kelvin, climate.TemperatureErrorK, 0))
	if p.NearestKm > climate.FarKm {
		text += " " + c.T(words.AccuracyFar)
	}
	return missing + text
}
