package page

import (
	"math"
	"slices"
	"sort"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/state"
)

// MuchWaits is how much of the sun must wait for the grid to be worth a word, J a year.
const MuchWaits = 100 * simulate.JPerKWh

// foundAt is what findings are of.
type foundAt struct {
	house    *simulate.Prepared
	scenario scenario.Scenario // hours and uses move in a drag under the same house
	bought   state.Bought
	known    bool // bought is
}

// findings looks for what to mind. It does so anew where the house is another, never in a drag.
func (c *Page) findings() {
	bought, known := c.Store.Bought()
	at := foundAt{c.Store.Prepared, c.Store.Scenario, bought, known}
	if at == c.foundAt {
		return
	}
	if !known {
		bought = state.Bought{Both: math.NaN(), Down: math.NaN()}
	}
	list := append(care.Findings(at.house), care.OfYears(at.house, bought.Both, bought.Down)...)
	sort.SliceStable(list, func(i, j int) bool { return list[i].Severity > list[j].Severity })
	c.Findings, c.foundAt = list, at
}

// Minds counts what there is to be minded, notes aside.
func (c *Page) Minds() int {
	return care.Count(c.Findings, care.Stop) + care.Count(c.Findings, care.Caution)
}

// ShowCare shows it.
func (c *Page) ShowCare() {
	c.GoTo(AdvicePlace)
	c.Reveal("care")
}

// StepsOpen tells whether a finding waits for the years with both kinds of converter.
func (c *Page) StepsOpen() bool {
	return slices.ContainsFunc(c.Findings, func(f care.Finding) bool { return f.Code == care.StepDownOpen })
}
