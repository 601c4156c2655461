package house

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

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
	case page.LessonPanel:
		return w.Text(words.CardLesson)
	case page.WeatherPanel:
		p, _ := s.At()
		mean := 0.0
		for _, v := range c.Page.Store.Prepared.Weather.Place.GHI {
			mean += v / 12
		}
		return w.Text(words.CardWeather, p.Name, format.Number(mean, 1))
	case page.HomePanel:
		switch s.Uses {
		case scenario.Habits:
			return w.Text(words.CardHome, s.People, value(scenario.ShowerMinutes), value(scenario.ShowerFlow))
		case scenario.NoUses:
			return w.Text(words.CardNoUses)
		}
		return choice(scenario.UsesFrom)
	case page.RoofPanel:
		all := s.AllModules()
		if all == 0 {
			return w.Text(words.CardNoRoof)
		}
		line := w.Text(words.CardRoof, s.Modules, value(scenario.ModuleW), value(scenario.TiltDeg), c.Page.View.Direction(s.AzimuthDeg))
		if further := all - s.Modules; further > 0 {
			line += w.Text(words.CardRoofMore, further)
		}
		return line
	case page.WiringPanel:
		return w.Text(words.CardWiring, c.Page.View.Strings(s), choice(scenario.CoupledBy))
	case page.TankPanel:
		_, loss := c.Page.Store.Prepared.StandingLoss()
		return w.Text(words.CardTank, value(scenario.TankLitres), value(scenario.SetC), format.Number(loss, 1))
	case page.BackupPanel:
		hours := c.Page.View.AllHours(c.Page.Store)
		if hours == "" {
			hours = w.Text(words.NoBackup)
		}
		if state.Applies(s, scenario.RuleBy) {
			hours += "; " + choice(scenario.RuleBy)
		}
		return hours
	case page.PricesPanel:
		return w.Text(words.CardPrices, format.PerKWh(s.Price, s.Currency), format.Money(plan.SystemCost(s), s.Currency))
	}
	return ""
}
