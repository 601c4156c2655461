package ui

import (
	"cmp"
	"slices"
	"strconv"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Offers lists the houses that a search tried, each to be taken at once.
type Offers struct {
	Page *Page
	Of   state.Job
}

func (c *Offers) help() string {
	return c.Page.T(map[state.Job]words.Key{state.SizesJob: words.SizesHelp, state.ElementsJob: words.ElementsHelp, state.WaysJob: words.WaysHelp}[c.Of])
}

// some tells whether there is a list.
func (c *Offers) some() bool { return len(c.Page.Store.Offers(c.Of)) > 0 }

// sheet lists the offers: of the sizes the best for each number of modules.
func (c *Offers) sheet() *sheet {
	s, t := c.Page.Store, c.Page.T
	list := s.Offers(c.Of)
	if c.Of == state.SizesJob {
		list = bestByModules(list)
	}
	best := bestOffer(list)
	title := map[state.Job]words.Key{state.SizesJob: words.SizesName, state.ElementsJob: words.ElementsName, state.WaysJob: words.WaysName}[c.Of]
	sh := &sheet{id: JobID(c.Of), caption: t(title), head: []string{t(words.OfferTry), c.Page.View.Words.Text(words.OfferCost, s.Scenario.Currency), t(words.OfferCool), c.Page.View.Words.Text(words.OfferWorth, s.Scenario.Currency), t(words.OfferSun)}}
	for i := range list {
		o := &list[i]
		r := sheetRow{cells: []any{c.what(o), figure{o.Year.Cost, 0}, figure{float64(o.Year.CoolUses), 0}, figure{o.Worth, 0}, figure{100 * o.Year.SolarFraction(), 0}}}
		if o == best {
			r.mark = "best"
			r.cells[0] = c.Page.View.Words.Text(words.OfferBest, r.cells[0])
		}
		if sameHouse(&o.To, &s.Scenario) {
			r.mark += " here"
		}
		if !o.Kept {
			r.mark += " missed"
		}
		if o.Months == nil {
			r.take = func() { s.TakeOffer(o) }
		}
		sh.rows = append(sh.rows, r)
	}
	return sh
}

// gains lists the offers by what they save.
func (c *Offers) gains() (list []gain) {
	s := c.Page.Store
	offers := s.Offers(c.Of)
	best := bestOffer(offers)
	for i := range offers {
		o := &offers[i]
		g := gain{name: c.what(o), note: c.Page.View.Words.Text(words.GainCool, o.Year.CoolUses), class: "gain", saves: s.Results.Year.Total.Cost - o.Year.Cost, warns: len(o.Mind) > 0, button: c.Page.T(words.OfferTry)}
		if o == best {
			g.class += " best"
		}
		if !o.Kept {
			g.class += " missed"
		}
		if sameHouse(&o.To, &s.Scenario) {
			g.class += " here"
		} else if o.Months == nil {
			g.take = func() {
				s.TakeOffer(o)
				c.Page.changed()
			}
		}
		list = append(list, g)
	}
	return list
}

// bestByModules keeps of each number of modules the best offer, in their order.
func bestByModules(list []plan.Offer) (best []plan.Offer) {
	at := map[int]int{}
	for _, o := range list {
		i, ok := at[o.To.Modules]
		if !ok {
			at[o.To.Modules] = len(best)
			best = append(best, o)
		} else if beats(&o, &best[i]) {
			best[i] = o
		}
	}
	slices.SortFunc(best, func(a, b plan.Offer) int { return cmp.Compare(a.To.Modules, b.To.Modules) })
	return best
}

// beats tells whether an offer is better: the promise, no caution brought, then worth.
func beats(o, than *plan.Offer) bool {
	if o.Kept != than.Kept {
		return o.Kept
	}
	if a, b := len(o.Mind) > 0, len(than.Mind) > 0; a != b {
		return b
	}
	return o.Worth > than.Worth
}

// bestOffer is the best of those that keep the promise; nil where none does.
func bestOffer(list []plan.Offer) (best *plan.Offer) {
	for i := range list {
		if o := &list[i]; o.Kept && (best == nil || beats(o, best)) {
			best = o
		}
	}
	return best
}

// sameHouse tells whether an offer is the house shown.
func sameHouse(o, now *scenario.Scenario) bool {
	a := *o
	a.Month, a.Sky, a.Known = now.Month, now.Sky, now.Known
	return a == *now
}

// what names an offer.
func (c *Offers) what(o *plan.Offer) string {
	w, to := c.Page.View.Words, &o.To
	hours := c.hours(to.Backup)
	switch c.Of {
	case state.SizesJob:
		litres := format.Value(scenario.FieldOf(scenario.TankLitres), to.TankLitres)
		text := w.Text(words.OfferNone, litres, hours)
		if to.Modules > 0 {
			text = w.Text(words.OfferSize, to.Modules, litres, w.Fields[scenario.CoupledBy].Choices[to.Coupling], c.strings(to), hours)
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
		name += "; " + w.Months[m] + " " + c.hours(b)
	}
	return name
}

// strings says how the modules are wired.
func (c *Offers) strings(s *scenario.Scenario) string {
	if s.InString == 0 || s.InString == s.Modules {
		return c.Page.T(words.OneString)
	}
	return c.Page.View.Words.Text(words.ManyStrings, strconv.Itoa(s.Modules/s.InString), strconv.Itoa(s.InString))
}

// hours writes backup hours, those that follow the sun too.
func (c *Offers) hours(b scenario.Backup) string {
	v := c.Page.View
	if b.FollowsSun() {
		return v.SunHours(&b)
	}
	text := v.Hours(dial.Window{Start: b.Start, End: b.End, AllDay: b.AllDay})
	if s := b.Second; s.Start != s.End {
		text += ", " + v.Hours(dial.Window{Start: s.Start, End: s.End})
	}
	return text
}
