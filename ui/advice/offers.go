package advice

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Offers lists the houses that a search tried, each to be taken at once.
type Offers struct {
	Page *page.Page
	Of   state.Job
}

func (c *Offers) help() string {
	return c.Page.T(map[state.Job]words.Key{state.SizesJob: words.SizesHelp, state.ElementsJob: words.ElementsHelp, state.WaysJob: words.WaysHelp}[c.Of])
}

// some tells whether there is a list.
func (c *Offers) some() bool { return len(c.Page.Store.Offers(c.Of)) > 0 }

// sheet lists the offers: of the sizes the best for each number of modules.
func (c *Offers) sheet() *parts.Sheet {
	s, t := c.Page.Store, c.Page.T
	list := s.Offers(c.Of)
	if c.Of == state.SizesJob {
		list = bestByModules(list)
	}
	best := bestOffer(list)
	title := map[state.Job]words.Key{state.SizesJob: words.SizesName, state.ElementsJob: words.ElementsName, state.WaysJob: words.WaysName}[c.Of]
	sh := &parts.Sheet{ID: parts.JobID(c.Of), Caption: t(title), Head: []string{t(words.OfferTry), c.Page.View.Words.Text(words.OfferCost, s.Scenario.Currency), t(words.OfferCool), c.Page.View.Words.Text(words.OfferWorth, s.Scenario.Currency), t(words.OfferSun)}}
	for i := range list {
		o := &list[i]
		r := parts.SheetRow{Cells: []any{c.what(o), parts.Number(o.Year.Cost, 0), parts.Number(float64(o.Year.CoolUses), 0), parts.Number(o.Worth, 0), parts.Number(100*o.Year.SolarFraction(), 0)}}
		if o == best {
			r.Mark = "best"
			r.Cells[0] = c.Page.View.Words.Text(words.OfferBest, r.Cells[0])
		}
		if sameHouse(&o.To, &s.Scenario) {
			r.Mark += " here"
		}
		if !o.Kept {
			r.Mark += " missed"
		}
		if o.Months == nil {
			r.Take = func() { s.TakeOffer(o) }
		}
		sh.Rows = append(sh.Rows, r)
	}
	return sh
}

// gains lists the offers by what they save.
func (c *Offers) gains() (list []parts.Gain) {
	s := c.Page.Store
	offers := s.Offers(c.Of)
	best := bestOffer(offers)
	for i := range offers {
		o := &offers[i]
		g := parts.Gain{Name: c.what(o), Note: c.Page.View.Words.Text(words.GainCool, o.Year.CoolUses), Class: "gain", Saves: s.Results.Year.Total.Cost - o.Year.Cost, Warns: len(o.Mind) > 0, Button: c.Page.T(words.OfferTry)}
		if o == best {
			g.Class += " best"
		}
		if !o.Kept {
			g.Class += " missed"
		}
		if sameHouse(&o.To, &s.Scenario) {
			g.Class += " here"
		} else if o.Months == nil {
			g.Take = func() {
				s.TakeOffer(o)
				c.Page.Changed()
			}
		}
		list = append(list, g)
	}
	return list
}

// what names an offer.
func (c *Offers) what(o *plan.Offer) string {
	w, to := c.Page.View.Words, &o.To
	hours := c.Page.View.Backup(to.Backup)
	switch c.Of {
	case state.SizesJob:
		litres := format.Value(scenario.FieldOf(scenario.TankLitres), to.TankLitres)
		text := w.Text(words.OfferNone, litres, hours)
		if to.Modules > 0 {
			text = w.Text(words.OfferSize, to.Modules, litres, w.Fields[scenario.CoupledBy].Choices[to.Coupling], c.Page.View.Strings(to), hours)
		}
		if len(o.Mind) > 0 {
			text += "; " + c.Page.T(words.OfferMind)
		}
		return text
	case state.ElementsJob:
		return w.Text(words.OfferElement, format.Input(to.ElementW), hours)
	}
	name := c.Page.T([plan.WayCount]words.Key{words.WayClock, words.WaySun, words.WayTwo, words.WayMonths, words.WayYears}[o.Way])
	if o.Months == nil {
		return name + ": " + hours
	}
	for m, b := range o.Months {
		name += "; " + w.Months[m] + " " + c.Page.View.Backup(b)
	}
	return name
}
