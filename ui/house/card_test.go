package house

import (
	"slices"
	"strings"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// Every field stands in a panel of some house, those on the dial in none.
func TestPanels_Fields(t *testing.T) {
	seen := map[scenario.FieldID]bool{}
	for _, link := range []string{"v=1&tank=200&modules2=2&modules3=1&modules4=1", "v=1&rule=sun&awaydays=5&elements=two&lossby=overnight&switching=cycle", "v=1&elements=tanks&couple=staged&exportfirst=50&expand=vessel"} {
		p := page.New(state.Open(link), view.New())
		for i := range panels {
			p.Panel, p.More = panels[i].id, true
			for _, id := range (&Card{p}).fields() {
				seen[id] = true
			}
		}
	}
	p := page.New(state.Open("v=1&modules2=2&modules3=1&modules4=1"), view.New())
	if len((&Card{p}).furtherPlanes()) != 3 || (&Card{p}).canAddPlane() {
		t.Error("three further planes are all there may be")
	}
	for _, f := range scenario.Fields() {
		if f.Kind == scenario.Months || f.ID == scenario.WeatherFile || f.ID == scenario.ShiftMin || f.ID == scenario.Town || f.ID == scenario.Country {
			continue // in the weather panel or with the place, not as rows
		}
		onDial := f.ID == scenario.Month || f.ID == scenario.SkyKind || f.ID == scenario.BackupHours || f.ID == scenario.SecondHours
		if seen[f.ID] == onDial {
			t.Errorf("field %s: in a panel %v", f.Key, seen[f.ID])
		}
	}
}

// A card shows at first what most houses need, and of the rest what somebody gave.
func TestCard_More(t *testing.T) {
	p := page.New(state.Open("v=2&v40=200"), view.New())
	p.Panel = page.TankPanel
	shown := func() map[scenario.FieldID]bool {
		ids := map[scenario.FieldID]bool{}
		for _, id := range (&Card{p}).fields() {
			ids[id] = true
		}
		return ids
	}
	if ids := shown(); !ids[scenario.TankLitres] || !ids[scenario.MixedLitres] || ids[scenario.WallOf] {
		t.Errorf("at first %v", ids)
	}
	p.Store.Type(scenario.PipeLoss, "much")
	if !shown()[scenario.PipeLoss] {
		t.Error("a field that was refused is hidden")
	}
	if p.More = true; !shown()[scenario.WallOf] {
		t.Error("a field is missing of all")
	}
}

// What is known of the expansion stands in the tank's card: the vessel's box is there where a vessel
// takes the water, with the finding that it is too small, and not else.
func TestCard_Vessel(t *testing.T) {
	for link, want := range map[string]bool{"v=2&expand=vessel&relief=60&supply=35&vessel=2": true, "v=2&expand=valve&relief=60&supply=35&vessel=2": false} {
		p := page.New(state.Open(link), view.New())
		p.Compute()
		p.More, p.Panel = true, page.TankPanel
		small := slices.ContainsFunc(p.Findings, func(f care.Finding) bool { return f.Code == care.VesselSmall && f.Field == scenario.VesselL })
		if there := slices.Contains((&Card{p}).fields(), scenario.VesselL); there != want || small != want {
			t.Errorf("%s: a field %v, too small %v", link, there, small)
		}
	}
}

// A house without uses shows no fields of a household.
func TestPanels_NoUses(t *testing.T) {
	p := page.New(state.Open("v=2&uses=none"), view.New())
	for i := range panels {
		p.Panel, p.More = panels[i].id, true
		for _, id := range (&Card{p}).fields() {
			if id == scenario.People || id == scenario.ShowerMinutes || id >= scenario.MorningShowers && id <= scenario.PipeLitres {
				t.Errorf("field %s is shown", scenario.FieldOf(id).Key)
			}
		}
	}
}

// The roof's panel says what all losses come to, each part beside its value; none where there
// are none.
func TestPanels_LightLost(t *testing.T) {
	line := func(link string) string {
		return (&Card{page.New(state.Open(link), view.New())}).lightLost()
	}
	text := line("v=2&age=10")
	for _, part := range []string{"16.6 %", "Light lost by dirt 2\u202f%;", "in connections 0.5\u202f%", "Age of the modules 10\u202fyears"} { // 1 - 0.8768 x 0.995^10
		if !strings.Contains(text, part) {
			t.Errorf("%q does not say %q", text, part)
		}
	}
	if text := line("v=1"); !strings.Contains(text, "4.9 %") || strings.Contains(text, "connections") {
		t.Errorf("version 1: %q", text)
	}
	if text := line("v=1&soil=0&mismatch=0"); text != "" {
		t.Errorf("without losses: %q", text)
	}
}
