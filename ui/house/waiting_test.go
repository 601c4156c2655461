package house

import (
	"strings"
	"testing"

	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// Who finds the tank warmer waits less, who used more waits longer; a warm tank needs no wait, a
// tank too small for a shower gets none, and what was found stays within what the house allows.
func TestWaiting(t *testing.T) {
	of := func(link string, found page.Wait) (*Waiting, string) {
		c := &Waiting{Page: page.New(state.Open(link), view.New())}
		c.Page.Wait = found
		return c, c.wait()
	}
	now, never := words.English().Text(words.WaitNow), words.English().Text(words.WaitNever)
	cold, _ := of("v=2", page.Wait{TempC: 0})
	if least, most := cold.bounds(); cold.at() != least || most != 60 {
		t.Errorf("ice is taken as %d, of %d to %d", cold.at(), least, most)
	}
	for _, c := range []struct {
		name, link string
		found      page.Wait
		want       string // "" for a wait
	}{
		{"cold", "v=2", page.Wait{}, ""},
		{"tepid", "v=2", page.Wait{TempC: 30}, ""},
		{"hot", "v=2", page.Wait{TempC: 60}, now},
		{"little used", "v=2", page.Wait{ByUse: true, UsedL: 20}, now},
		{"much used", "v=2", page.Wait{ByUse: true, UsedL: 400}, ""},
		{"a small tank", "v=2&tank=30&shower=15&flow=15", page.Wait{}, never},
	} {
		if _, got := of(c.link, c.found); c.want != "" && got != c.want || c.want == "" && (got == now || got == never || !strings.Contains(got, "kWh")) {
			t.Errorf("%s: %s", c.name, got)
		}
	}
}
