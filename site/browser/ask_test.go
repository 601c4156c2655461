package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// Six questions make the example somebody's house: each can be answered, confirmed or
// skipped, with the figures moving and the dial in sight.
func TestAsk_SixQuestions(t *testing.T) {
	for _, s := range []screen{phone, phoneDark, wide} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			before := b.value("out-cost-year")
			b.run(chromedp.Click("#house"))
			b.until(`document.getElementById('ask') !== null`)
			b.shot("ask-" + s.name)
			b.axe("first question")
			b.fits("first question", s.width)
			// What is being typed stays while the list of towns arrives and the page is rendered.
			b.run(chromedp.Focus("#field-place", chromedp.ByQuery), chromedp.Evaluate(`document.getElementById("field-place").select()`, nil), chromedp.KeyEvent("Oslo, Nor"))
			b.until(`!document.getElementById('places').hidden`)
			typed := ""
			if b.eval(`document.getElementById('field-place').value`, &typed); typed != "Oslo, Nor" {
				t.Errorf("of what was typed is left %q", typed)
			}
			b.run(chromedp.KeyEvent("way"), chromedp.KeyEvent(kb.Enter))
			b.until(`location.hash.includes('place=oslo')`)
			b.frame()
			if b.value("out-cost-year") == before {
				t.Error("another place, the same cost")
			}
			b.run(chromedp.Click("#ask-yes"))
			b.until(`document.getElementById('field-people') !== null`)
			b.run(chromedp.Click("#ask-skip"))
			b.until(`document.getElementById('field-wash') !== null`)
			b.run(chromedp.Click("#field-wash button:nth-child(2)"), chromedp.Click("#ask-yes"))
			b.until(`document.getElementById('field-tank') !== null`)
			b.typeInto("field-tank", "5000") // refused in words, and the question stays
			b.until(`document.getElementById('field-tank-problem') !== null`)
			b.run(chromedp.Click("#ask-yes"))
			b.frame()
			b.typeInto("field-tank", "150")
			b.until(`location.hash.includes('tank=150')`)
			b.run(chromedp.Click("#ask-yes"))
			b.until(`document.getElementById('field-modules') !== null`)
			b.run(chromedp.Click("#ask-yes"))
			b.until(`document.getElementById('field-price') !== null`)
			if unit := b.text("#ask .unit-name"); !strings.HasPrefix(unit, "NOK") {
				t.Errorf("a kWh in Oslo is asked for in %q", unit)
			}
			b.shot("ask-price-" + s.name)
			b.run(chromedp.Click("#ask-yes"))
			b.until(`document.getElementById('ask') === null`)
			hash := ""
			b.eval(`location.hash`, &hash)
			for _, want := range []string{"place=oslo", "wash=evening", "tank=150", "modules=4", "price=1300"} {
				if !strings.Contains(hash, want) {
					t.Errorf("the link %s has no %s", hash, want)
				}
			}
			if strings.Contains(hash, "people=") {
				t.Error("what was skipped is in the link")
			}
			b.clean()
		})
	}
}
