package ui

import (
	"math"
	"slices"
	"sort"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/state"
)

// mindedAt is what findings are of.
type mindedAt struct {
	house    *simulate.Prepared
	scenario scenario.Scenario // hours and uses move in a drag under the same house
	bought   state.Bought
	known    bool // bought is
}

// findings are what to mind, worst first. They are looked for anew where the house is
// another, never in a drag.
func (c *Page) findings() []care.Finding {
	bought, known := c.Store.Bought()
	at := mindedAt{c.Store.Prepared, c.Store.Scenario, bought, known}
	if at == c.mindedAt {
		return c.minded
	}
	if !known {
		bought = state.Bought{Both: math.NaN(), Down: math.NaN()}
	}
	list := append(care.Findings(at.house), care.OfYears(at.house, bought.Both, bought.Down)...)
	sort.SliceStable(list, func(i, j int) bool { return list[i].Severity > list[j].Severity })
	c.mindedAt = at
	return list
}

// StepsOpen tells whether a finding waits for the years with both kinds of converter.
func (c *Page) StepsOpen() bool {
	return slices.ContainsFunc(c.minded, func(f care.Finding) bool { return f.Code == care.StepDownOpen })
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
