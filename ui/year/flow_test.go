package year

import (
	"strings"
	"testing"

	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// The flow's title says what each house loses or uses most, in every language.
func TestFlowTitle(t *testing.T) {
	for link, want := range map[string]string{
		"":                                     "hours keep 531",
		"v=2&rule=sun&loss=900":                "The tank loses",
		"v=2&rule=sun&loss=40":                 "reach the tap",
		"v=2&modules=0&backup=none0000":        "Where the year",
		"v=2&place=mariehamn&backup=1200-1500": "kWh",
		"v=2&place=resolute":                   "kWh",
	} {
		for i, c := range words.All() {
			text := (&Yearly{page.New(state.Open(link), &view.View{Words: c})}).flowTitle()
			if text == "" || strings.Contains(text, "%!") || i == 0 && !strings.Contains(text, want) {
				t.Errorf("%s, %s: %q", link, words.Languages[i].Name, text)
			}
		}
	}
}
