package state

import (
	"os"
	"strings"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/ui/towns"
)

// clockOf is a zone's clock by Go's copy of the IANA data.
func clockOf(zone string) (climate.Clock, bool) {
	offsets, err := published.Offsets(zone, climate.RefYear)
	if err != nil {
		return climate.Clock{}, false
	}
	return climate.ClockOver(&offsets)
}

// aStore is one with some towns.
func aStore(t *testing.T) *Store {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/towns.txt")
	if err != nil {
		t.Fatal(err)
	}
	list, err := towns.Read(string(raw), "en")
	if err != nil {
		t.Fatal(err)
	}
	s := Open("")
	s.Clock = clockOf
	s.TakeTowns(list)
	return s
}

// Without the list of towns the built-in places and points are taken as before.
func TestType_PlaceWithoutTowns(t *testing.T) {
	for text, want := range map[string]string{
		"38.7, -9.1": "38.7,-9.1", "38.7 -9.1 95": "38.7,-9.1,95", "38.7 N 9.1 W": "38.7,-9.1", "33.92S, 18.42E": "-33.92,18.42",
		"38.7; -9.1; 95 m": "38.7,-9.1,95", "Oslo, Norway": "oslo", "  OSLO ": "oslo", "mcmurdo": "mcmurdo", "buenos-aires": "buenos-aires",
	} {
		s := Open("")
		if s.Type(scenario.Place, text); s.Scenario.Place != want || len(s.Refused) > 0 || !s.Scenario.Known.Has(scenario.Place) {
			t.Errorf("%q is %q, want %q; refused %v", text, s.Scenario.Place, want, s.Refused)
		}
		if s.Scenario.Known.Has(scenario.Zone) || s.Scenario.Town != "" {
			t.Errorf("%q has its clock confirmed, or a name: %q", text, s.Scenario.Town)
		}
	}
	for _, text := range []string{"", "38.7", "n", "91, 0", "1, 2, 3, 4", "1, 2, 9999", "nan, 0", "atlantis, 3", "lisbo"} {
		s := Open("")
		if s.Type(scenario.Place, text); s.Scenario.Place != "lisbon" || s.Refused[scenario.Place].Typed != text {
			t.Errorf("%q was taken as %q", text, s.Scenario.Place)
		}
	}
}

func TestType_Towns(t *testing.T) {
	for _, c := range []struct {
		typed, link, text string
	}{
		{"manchester", "place=53.48,-2.24,51&town=Manchester&in=United%20Kingdom&zone=0&summer=0329-1025", "Manchester, United Kingdom"},
		{"kathmandu", "place=27.7,85.32,1317&town=Kathmandu&in=Nepal&zone=23&summer=none", "Kathmandu, Nepal"},
		{"k\u00f6ln", "place=50.93,6.95,58&town=K%C3%B6ln&in=Germany&zone=4&summer=0329-1025", "K\u00f6ln, Germany"},
		{"xian", "&town=Xi%E2%80%99an&in=China&zone=32&summer=none", "Xi\u2019an, China"},
		{"alice springs", "v=2&place=-23.7,133.88,583&town=Alice%20Springs&in=Australia&zone=38&summer=none", "Alice Springs, Australia"},
		{"st louis", "zone=-24&summer=0308-1101", "St. Louis, United States"},
		{"apia", "v=2&place=apia", "Apia, Samoa (western)"},
		{"53.4 N 2.3 W", "place=53.4,-2.3&in=United%20Kingdom&zone=0&summer=0329-1025", "53.4, -2.3"},
		{"-40, -120", "place=-40,-120", "-40, -120"},
		{"mcmurdo", "place=mcmurdo", "McMurdo, Antarctica"},
	} {
		s := aStore(t)
		s.Type(scenario.Place, c.typed)
		link := scenario.Encode(&s.Scenario)
		if len(s.Refused) > 0 || !strings.Contains(link+"&", c.link+"&") || s.Text(scenario.Place) != c.text {
			t.Errorf("%q: %q, %s, refused %v, want %s", c.typed, s.Text(scenario.Place), link, s.Refused, c.link)
		}
		back, problems := scenario.Decode(link)
		if len(problems) > 0 || back != s.Scenario {
			t.Errorf("%s comes back as another house, %v", link, problems)
		}
	}
	s := aStore(t)
	s.Type(scenario.Place, "manchestre")
	if p := s.Refused[scenario.Place].Problem; p.Code != scenario.UnknownPlace || len(s.Near) == 0 || s.Near[0] != "Manchester, United Kingdom" || s.Scenario.Place != "lisbon" {
		t.Errorf("%+v, near %v", p, s.Near)
	}
	// A name does not stay with another place.
	s.Type(scenario.Place, "manchester")
	s.Type(scenario.Place, "oslo")
	if s.Scenario.Town != "" || s.Scenario.Country != "" || s.Scenario.Known.Has(scenario.Zone) {
		t.Errorf("%s", scenario.Encode(&s.Scenario))
	}
	s.Undo()
	if s.Scenario.Town != "Manchester" {
		t.Errorf("undone to %q", s.Scenario.Town)
	}
}

// What was typed before the list came is found once it is there.
func TestTakeTowns_FindsWhatWasRefused(t *testing.T) {
	s, with := Open(""), aStore(t)
	s.Clock = clockOf
	s.Type(scenario.Place, "Manchester")
	if len(s.Refused) != 1 {
		t.Fatal("Manchester was found without the list")
	}
	s.TakeTowns(with.Towns)
	if len(s.Refused) > 0 || s.Scenario.Town != "Manchester" {
		t.Errorf("refused %v, place %s", s.Refused, s.Scenario.Place)
	}
	// A point typed before gets its clock; one that came with a link keeps the link's.
	s = Open("")
	s.Clock = clockOf
	s.Type(scenario.Place, "27.7 N 85.3 E")
	s.TakeTowns(with.Towns)
	if s.Scenario.ZoneH != 5.75 || !s.Scenario.Known.Has(scenario.Zone) || s.Scenario.Place != "27.7,85.3" {
		t.Errorf("%s", scenario.Encode(&s.Scenario))
	}
	s = Open("v=1&place=27.7,85.3")
	s.Clock = clockOf
	s.TakeTowns(with.Towns)
	if s.Scenario.Known.Has(scenario.Zone) {
		t.Errorf("the clock of a link has become another: %s", scenario.Encode(&s.Scenario))
	}
}

// A price that somebody gave stays in the currency in which it was given, wherever the house
// goes; what is only assumed follows the country.
func TestTakePlace_Money(t *testing.T) {
	s := Open("v=2")
	s.Type(scenario.Price, "0.3")
	s.Type(scenario.Place, "tokyo")
	if now := &s.Scenario; now.Price != 0.3 || now.Currency != "EUR" || now.ModuleCost != 150 {
		t.Errorf("typed: a kWh %g %s, a module %g", now.Price, now.Currency, now.ModuleCost)
	}
	s = Open("v=2")
	s.Type(scenario.Place, "tokyo")
	if now := &s.Scenario; now.Price != 31 || now.Currency != "JPY" || now.ModuleCost != 25000 {
		t.Errorf("assumed: a kWh %g %s, a module %g", now.Price, now.Currency, now.ModuleCost)
	}
	again := Open(s.Link())
	if again.Scenario != s.Scenario {
		t.Error("its link opens another house")
	}
}
