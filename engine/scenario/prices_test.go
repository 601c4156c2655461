package scenario

import (
	"testing"

	"suncask/engine/climate"
	"suncask/engine/tariff"
)

func TestReadBands(t *testing.T) {
	for _, c := range []struct {
		text string
		want string // its one text; refused where it begins with !
	}{
		{"", ""}, {"2200-0600:0.12", "2200-0600:0.12"}, {"wd0700-1000:0.40; we0000-0000:.2", "wd0700-1000:0.4,we0000-0000:0.2"},
		{"11-2/wd1700-2000:0.5", "11-2/wd1700-2000:0.5"}, {"1-12/0000-0600:0", "0000-0600:0"},
		{"2200-0600", "!"}, {"2200:0.1", "!"}, {"2460-0600:0.1", "!"}, {"2200-0601:0.1", "!"}, {"0-2/2200-0600:0.1", "!"}, {"2200-0600:-1", "!"},
		{"2200-0600:NaN", "!"}, {"2200-0600:1e9", "!"}, {"xx2200-0600:0.1", "!"}, {"2200-0600:0.12345", "!"},
		{"0000-0100:1 0100-0200:1 0200-0300:1 0300-0400:1 0400-0500:1 0500-0600:1 0600-0700:1 0700-0800:1 0800-0900:1 0900-1000:1 1000-1100:1 1100-1200:1 1200-1300:1", "!"},
	} {
		list, ok := ReadBands(c.text)
		if ok == (c.want == "!") || ok && WriteBands(list) != c.want {
			t.Errorf("%q: %q (read: %v), want %q", c.text, WriteBands(list), ok, c.want)
		}
	}
}

func TestReadBlocks(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"", ""}, {"100:0.15, 300:0.22", "100:0.15,300:0.22"},
		{"300:0.22,100:0.15", "!"}, {"100:0.15,100:0.2", "!"}, {"0:0.1", "!"}, {"100", "!"}, {"a:1", "!"},
		{"1:1 2:2 3:3 4:4 5:5 6:6 7:7", "!"},
	} {
		list, ok := ReadBlocks(c.text)
		if ok == (c.want == "!") || ok && WriteBlocks(list) != c.want {
			t.Errorf("%q: %q (read: %v), want %q", c.text, WriteBlocks(list), ok, c.want)
		}
	}
}

// A house's carbon figure is that of its country's grid until somebody gives another.
func TestSettle_GridCarbon(t *testing.T) {
	for _, c := range []struct {
		place string
		want  float64
	}{{"lisbon", 166}, {"cape-town", 708}, {"mcmurdo", 0}, {"38.7,-9.1", 0}} {
		s := Defaults(LatestVersion)
		s.Place = c.place
		s.Settle()
		if s.GridCO2 != c.want {
			t.Errorf("%s: %g g/kWh, want %g", c.place, s.GridCO2, c.want)
		}
	}
	inTable := 0
	seen := map[string]bool{}
	for _, p := range climate.Places() {
		if _, ok := tariff.Carbon(p.Country); ok && !seen[p.Country] {
			inTable++
		}
		seen[p.Country] = true
	}
	if inTable != 37 {
		t.Errorf("%d countries of the place table have a carbon figure, want all 37 that there are", inTable)
	}
}
