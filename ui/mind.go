package ui

import (
	"sort"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// mindedAt is what findings are of.
type mindedAt struct {
	house    *simulate.Prepared
	scenario scenario.Scenario // hours and uses move in a drag under the same house
}

// findings are what to mind, worst first. They are looked for anew where the house is
// another, never in a drag.
func (c *Page) findings() []care.Finding {
	at := mindedAt{c.Store.Prepared, c.Store.Scenario}
	if at == c.mindedAt {
		return c.minded
	}
	list := append(care.Findings(at.house), care.OfTheYear(at.house, at.scenario.Backup)...)
	sort.SliceStable(list, func(i, j int) bool { return list[i].Severity > list[j].Severity })
	c.mindedAt = at
	return list
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
