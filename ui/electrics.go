package ui

import (
	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Electrics shows the strings' curve and what becomes of their potential.
type Electrics struct{ Page *Page }

// parts are the rows of the potential: name, kWh a year, share.
func (c *Electrics) parts() (rows [][3]string) {
	s := c.Page.Store
	q, f := &s.Prepared.Potential, &s.Results.Year.Total
	for _, part := range []struct {
		name   words.Key
		joules float64
	}{
		{words.PotentialAll, q.MaximumJ}, {words.PotentialCoupling, q.CouplingJ}, {words.PotentialCable, q.CableJ},
		{words.PotentialConverter, q.ConverterJ}, {words.PotentialOver, q.OverJ}, {words.PotentialDisplaced, f.DisplacedJ},
		{words.PotentialFull, f.UnusedSunJ - f.DisplacedJ}, {words.PotentialWater, f.SunJ},
	} {
		share := 0.0
		if q.MaximumJ > 0 {
			share = 100 * part.joules / q.MaximumJ
		}
		rows = append(rows, [3]string{c.Page.T(part.name), format.Number(part.joules/simulate.JPerKWh, 0) + format.Space + "kWh",
			format.Number(share, 0) + format.Space + "%"})
	}
	return rows
}

// severity is the class of a finding.
func severity(f care.Finding) string {
	switch f.Severity {
	case care.Stop:
		return "finding stop"
	case care.Note:
		return "finding remark"
	}
	return "finding"
}

// boost says what a boost would come to, where something runs cool.
func (c *Panels) boost() string {
	s, w := c.Page.Store, c.Page.View.Words
	if s.Results.Year.Total.CoolUses == 0 {
		return ""
	}
	b := s.Boost()
	return w.Text(words.BoostHelp, simulate.BoostKWh, b.Presses, format.Money(b.Cost-s.Results.Year.Total.Cost, s.Scenario.Currency), b.CoolUses)
}

// ruleChanges say what a year under each of the other rules would come to.
func (c *Panels) ruleChanges() (list []string) {
	s, v := c.Page.Store, c.Page.View
	choices := v.Words.Fields[scenario.RuleBy].Choices
	for i, f := range s.Rules() {
		if scenario.Rule(i) == s.Scenario.Rule {
			continue
		}
		list = append(list, v.Words.Text(words.RuleChanges, choices[i], format.Money(f.Cost, s.Scenario.Currency), v.CoolDays(f.CoolDays)))
	}
	return list
}
