package ui

import (
	"strings"
	"testing"

	"suncask/engine/plan"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Titles of pictures say what each house's picture shows, in every language.
func TestTitles_Branches(t *testing.T) {
	type titles struct{ flow, iv, climate string }
	want := map[string]titles{
		"":                                     {"hours keep 531", "In full sun", "3.8 times the light of December"},
		"v=2&rule=sun&loss=900":                {"The tank loses", "In full sun", "times the light"},
		"v=2&rule=sun&loss=40":                 {"reach the tap", "In full sun", "times"},
		"v=2&modules=0&backup=none0000":        {"Where the year", "Current over voltage", "times"},
		"v=2&place=mariehamn&backup=1200-1500": {"kWh", "In full sun", "light of December"},
		"v=2&place=resolute":                   {"kWh", "In full sun", "next to none"},
	}
	for link, w := range want {
		for i, c := range words.All() {
			s := state.Open(link)
			if len(s.LinkProblems) > 0 {
				t.Fatalf("%s: %v", link, s.LinkProblems)
			}
			p := NewPage(s, &view.View{Words: c})
			got := titles{(&Yearly{p}).flowTitle(), (&Electrics{p}).title(), (&Weather{Page: p}).title()}
			for _, text := range []string{got.flow, got.iv, got.climate} {
				if text == "" || strings.Contains(text, "%!") {
					t.Errorf("%s, %s: %q", link, words.Languages[i].Name, text)
				}
			}
			if i == 0 && (!strings.Contains(got.flow, w.flow) || !strings.Contains(got.iv, w.iv) || !strings.Contains(got.climate, w.climate)) {
				t.Errorf("%s: %+v, want %+v", link, got, w)
			}
		}
	}
}

// The lengths' title names the shortest that keeps the promise, if one does.
func TestTitles_Lengths(t *testing.T) {
	for link, want := range map[string]string{
		"v=2": "h of backup are enough", "v=2&modules=12&tank=400&people=1&backup=1500-1600&accept=100": "No backup is needed", "v=2&people=8&tank=50&backup=0300-0400": "No length",
	} {
		s := state.Open(link)
		s.BeginJob(state.LengthsJob)
		for part := range state.Work(state.LengthsJob, plan.Whole, s.Link(), nil) {
			s.TakePart(state.LengthsJob, part)
		}
		c := &Lengths{NewPage(s, view.New())}
		if got := c.title(); !strings.Contains(got, want) {
			t.Errorf("%s: %q of %v", link, got, s.Lengths())
		}
	}
}
