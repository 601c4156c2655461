package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// The prices' group says what the system saves and is worth, by hours and by sun.
func TestWorth_BesidePrices(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house)
			b.run(place("year"), chromedp.ScrollIntoView("#worth"))
			b.frame()
			b.shot("worth-" + s.name)
			before := b.text("#worth")
			for _, want := range []string{"Paid back after", "years", "%"} {
				if !strings.Contains(before, want) {
					t.Errorf("no %q in %q", want, before)
				}
			}
			b.run(card("#panel-prices"), chromedp.SetValue("#field-fixcost", "9000"))
			b.eval(`(document.getElementById('field-fixcost').dispatchEvent(new Event('change', {bubbles: true})), 1)`, new(int))
			b.until(`location.hash.includes('fixcost=9000')`)
			b.run(place("year"))
			b.frame()
			if after := b.text("#worth"); after == before {
				t.Error("a dearer system is worth the same")
			}
			b.clean()
		})
	}
}
