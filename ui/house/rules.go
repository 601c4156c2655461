package house

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// boost says what a boost would come to, where something runs cool.
func (c *Card) boost() string {
	s, w := c.Page.Store, c.Page.View.Words
	if s.Results.Year.Total.CoolUses == 0 {
		return ""
	}
	b := s.Boost()
	return w.Text(words.BoostHelp, simulate.BoostKWh, b.Presses, format.Money(b.Cost-s.Results.Year.Total.Cost, s.Scenario.Currency), b.CoolUses)
}

// ruleChanges say what a year under each of the other rules would come to.
func (c *Card) ruleChanges() (list []string) {
	s, v := c.Page.Store, c.Page.View
	if !state.Applies(&s.Scenario, scenario.RuleBy) {
		return nil
	}
	choices := v.Words.Fields[scenario.RuleBy].Choices
	for i, f := range s.Rules() {
		if scenario.Rule(i) == s.Scenario.Rule {
			continue
		}
		list = append(list, v.Words.Text(words.RuleChanges, choices[i], format.Money(f.Cost, s.Scenario.Currency), v.CoolDays(f.CoolDays)))
	}
	return list
}
