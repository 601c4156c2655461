package house

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// A closed card says of a house what a reader works out by hand from its fields: the loss of a
// day and not the one a kelvin, the modules of all planes, and what all of them cost.
func TestHouse_Lines(t *testing.T) {
	type typed struct {
		id   scenario.FieldID
		text string
	}
	house := []typed{{scenario.Place, "Oslo"}, {scenario.Currency, "EUR"}, {scenario.TankLitres, "150"}, {scenario.SetC, "55"},
		{scenario.LossKWh, "2.2"}, {scenario.Modules, "3"}, {scenario.ModuleW, "400"}, {scenario.TiltDeg, "40"}, {scenario.AzimuthDeg, "180"},
		{scenario.ModuleCost, "100"}, {scenario.FixedCost, "500"}, {scenario.Price, "0.2"}}
	none, further := []typed{{scenario.Modules, "0"}}, []typed{{scenario.Modules2, "2"}}
	for _, c := range []struct {
		also        []typed
		panel, want string
	}{
		{nil, page.TankPanel, "150 L at 55 °C, loses 2.2 kWh a day"},
		{nil, page.RoofPanel, "3 × 400 W, 40° facing S"},
		{further, page.RoofPanel, "3 × 400 W, 40° facing S; 2 more on other planes"},
		{none, page.RoofPanel, "No modules"},
		{nil, page.PricesPanel, "EUR\u202f0.200 a kWh; EUR\u202f800 to buy"},
		{further, page.PricesPanel, "EUR\u202f0.200 a kWh; EUR\u202f1000 to buy"},
		{none, page.PricesPanel, "EUR\u202f0.200 a kWh; EUR\u202f0.00 to buy"},
	} {
		s := state.Open("")
		for _, f := range append(house[:len(house):len(house)], c.also...) {
			if s.Type(f.id, f.text); len(s.Refused) > 0 {
				t.Fatalf("%v: %v", f, s.Refused)
			}
		}
		h := &House{Page: page.New(s, view.New())}
		for i := range panels {
			if panels[i].id != c.panel {
				continue
			}
			if got := h.line(i); got != c.want {
				t.Errorf("%s with %v: %q, want %q", c.panel, c.also, got, c.want)
			}
		}
	}
}
