package page

import (
	"os"
	"strings"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/ui/state"
	"suncask/ui/towns"
	"suncask/ui/view"
)

// The note under the place says whose clock it is, how near a built-in climate is and how
// good, and what does not work without the list of towns.
func TestPlaceNote(t *testing.T) {
	for _, c := range []struct {
		link  string
		towns TownsState
		says  []string
	}{
		{"v=2", TownsThere, []string{"A town by name"}},
		{"v=2", TownsAbsent, []string{"A town by name", "cannot be fetched without a network"}},
		{"v=2", TownsComing, []string{"is on its way"}},
		{"v=2&place=53.48,-2.24,51&town=Manchester&in=United%20Kingdom&zone=0&summer=0329-1025", TownsThere,
			[]string{"UTC+00:00, summer time from 29 March to the day before 25 October", "interpolated at Manchester", "km away", "10 %"}},
		{"v=2&place=27.7,85.32&zone=23&summer=none", TownsThere, []string{"UTC+05:45, no summer time"}},
		{"v=2&place=-33,-71&zone=-14&summer=none", TownsThere, []string{"UTC\u221203:30"}},
		{"v=2&place=53.48,-2.24", TownsAbsent, []string{"the nearest built-in place: check it", "cannot be fetched"}},
		{"v=2&place=-40,-120", TownsThere, []string{"nearest to the sun's", "No place of the table is near"}},
	} {
		page := New(state.Open(c.link), view.New())
		page.Towns = c.towns
		note := page.PlaceNote("A town by name.")
		for _, text := range c.says {
			if !strings.Contains(note, text) {
				t.Errorf("%s: %q does not say %q", c.link, note, text)
			}
		}
	}
}

// What is offered is told apart by region and country, another name or the nearest town.
func TestOffers_Beside(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/towns.txt")
	if err != nil {
		t.Fatal(err)
	}
	list, err := towns.Read(string(raw), "en")
	if err != nil {
		t.Fatal(err)
	}
	page := New(state.Open(""), view.New())
	page.Store.Clock = func(zone string) (climate.Clock, bool) {
		offsets, err := published.Offsets(zone, climate.RefYear)
		c, ok := climate.ClockOver(&offsets)
		return c, ok && err == nil
	}
	page.Store.TakeTowns(list)
	for typed, want := range map[string]string{
		"manchester": "Manchester: England, United Kingdom", "colo": "K\u00f6ln: North Rhine-Westphalia, Germany; also Col\u00f2nia",
		"53.4, -2.3": "53.4, -2.3: near Manchester", "-40 -120": "-40, -120: ", "mcmurd": "McMurdo: Antarctica",
	} {
		offers := page.Offers(typed)
		if len(offers) == 0 || offers[0].Name+": "+page.Beside(offers[0]) != want {
			t.Errorf("%q offers %+v, want %q", typed, offers, want)
		}
	}
	for _, typed := range []string{"", "m", "  m "} {
		if offers := page.Offers(typed); len(offers) > 0 {
			t.Errorf("%q offers %d places", typed, len(offers))
		}
	}
	page.TakePlace(page.Offers("manchester")[0])
	if page.Store.Scenario.Town != "Manchester" || page.Store.Text(scenario.Place) != "Manchester, United Kingdom" {
		t.Errorf("taken: %+v", page.Store.Scenario.Place)
	}
	page.Store.Type(scenario.Place, "Manchestre")
	if text := page.Problem(scenario.Place); !strings.Contains(text, "Spelled nearly so: Manchester, United Kingdom") {
		t.Errorf("%q", text)
	}
}
