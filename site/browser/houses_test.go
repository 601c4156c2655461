package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A house is kept under a name, compared with the one shown, opened again and deleted; the
// one last changed comes back without a link, and a link's house leaves it an undo away.
func TestHouses_KeptAndCompared(t *testing.T) {
	b := start(t, phone)
	b.open("#" + house + "&backup=1500-1800")
	b.run(place("house"), chromedp.Click("#houses", chromedp.ByQuery))
	b.run(chromedp.Click("#house-keep"))
	b.until(`document.getElementById('house-note').textContent.includes('1 to 40')`)
	b.run(chromedp.SetValue("#house-name", "Flat of three"), chromedp.Focus("#house-name"), chromedp.KeyEvent(kb.Enter))
	b.eval(`(document.getElementById('house-name').dispatchEvent(new Event('change', {bubbles: true})), 1)`, new(int))
	b.frame()
	b.run(chromedp.Click("#house-keep"))
	b.until(`document.querySelectorAll('.house-compare').length === 1`)
	before := b.value("out-cost-year")
	b.run(chromedp.Click("#over-close", chromedp.ByQuery), card("#panel-roof"))
	b.typeInto("field-modules", "2")
	b.until(`location.hash.includes('modules=2')`)
	// Two taps: the house's name, and the other.
	b.run(chromedp.Click("#house", chromedp.ByQuery), chromedp.Click(".house-compare", chromedp.ByQuery))
	b.until(`document.getElementById('compare') !== null`)
	if text := b.text("#compare"); !strings.Contains(text, "Flat of three") || !strings.Contains(text, "Modules") {
		t.Errorf("the comparison says %q", text)
	}
	b.frame()
	b.shot("compare-phone")
	b.axe("comparing")
	b.fits("comparing", 360)
	b.run(chromedp.Click("#over-close", chromedp.ByQuery))
	// Undo and redo.
	b.run(chromedp.Click("#undo", chromedp.ByQuery))
	b.until(`document.getElementById('redo').className === 'ib' && !location.hash.includes('modules=2')`)
	b.run(chromedp.KeyEvent("z", chromedp.KeyModifiers(2|8))) // with Control and Shift
	b.until(`location.hash.includes('modules=2')`)
	changed := b.value("out-cost-year")
	// Without a link the house last changed comes back.
	b.open("")
	b.until(`location.hash.includes('modules=2')`)
	if got := b.value("out-cost-year"); got != changed {
		t.Errorf("without a link: cost %v, last %v", got, changed)
	}
	// A link's house wins, and the last one is an undo away.
	b.open("#v=2&place=oslo")
	b.until(`document.getElementById('shared') !== null`)
	b.shot("shared-phone")
	b.axe("a shared house")
	b.open("")
	b.until(`location.hash.includes('modules=2')`)
	b.open("#v=2&place=oslo")
	b.run(chromedp.Click("#shared button"))
	b.until(`location.hash.includes('modules=2')`)
	b.run(chromedp.Click("#house", chromedp.ByQuery), chromedp.Click(".house-open", chromedp.ByQuery))
	b.until(`!location.hash.includes('modules=2')`)
	if got := b.value("out-cost-year"); got != before {
		t.Errorf("opened again: cost %v, kept %v", got, before)
	}
	b.run(chromedp.Click("#house", chromedp.ByQuery), chromedp.Click(".house-drop", chromedp.ByQuery))
	b.until(`document.querySelectorAll('.house-drop').length === 0`)
	b.clean()
}
