package house

import (
	"strings"
	"testing"

	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Titles of pictures say what each house's picture shows, in every language.
func TestTitles(t *testing.T) {
	type titles struct{ iv, climate string }
	for link, want := range map[string]titles{
		"":                                     {"In full sun", "3.8 times the light of December"},
		"v=2&modules=0&backup=none0000":        {"Current over voltage", "times"},
		"v=2&place=mariehamn&backup=1200-1500": {"In full sun", "light of December"},
		"v=2&place=resolute":                   {"In full sun", "next to none"},
	} {
		for i, c := range words.All() {
			s := state.Open(link)
			if len(s.LinkProblems) > 0 {
				t.Fatalf("%s: %v", link, s.LinkProblems)
			}
			p := page.New(s, &view.View{Words: c})
			got := titles{(&Electrics{p}).title(), (&Weather{p}).title()}
			for _, text := range []string{got.iv, got.climate} {
				if text == "" || strings.Contains(text, "%!") {
					t.Errorf("%s, %s: %q", link, words.Languages[i].Name, text)
				}
			}
			if i == 0 && (!strings.Contains(got.iv, want.iv) || !strings.Contains(got.climate, want.climate)) {
				t.Errorf("%s: %+v, want %+v", link, got, want)
			}
		}
	}
}
