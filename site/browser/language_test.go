package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// The page in Spanish: its words, its decimal comma, what it refuses; the same numbers, and
// the button for the other language keeps the house.
func TestLanguage_Spanish(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("?lang=es#" + house + "&backup=1500-1800")
			if text := b.text(".result"); !strings.Contains(text, "Agua") || !strings.Contains(text, "al año") {
				t.Errorf("the sentence is %q", text)
			}
			lang := ""
			if b.eval(`document.documentElement.lang`, &lang); lang != "es" {
				t.Errorf("the document's language is %s", lang)
			}
			b.shot("spanish-" + s.name)
			finger{b, s.touch}.drag("#grip-1-hit", 30, 4, func() {})
			cost := b.value("out-cost-year")
			for _, panel := range []string{"panel-home", "panel-wiring", "panel-tank", "panel-backup", "panel-prices", "panel-weather"} {
				b.run(card("#" + panel))
				b.frame()
				b.axe(panel)
				b.fits(panel, s.width)
			}
			b.run(card("#panel-wiring"), chromedp.Click("#more", chromedp.ByQuery))
			b.frame()
			volts := ""
			if b.eval(`document.getElementById('field-voc').value`, &volts); volts != "37,2" {
				t.Errorf("the datasheet's volts are shown as %q", volts)
			}
			b.typeInto("field-voc", "mucho")
			b.until(`document.getElementById('field-voc-problem') !== null`)
			if text := b.text("#field-voc-problem"); !strings.Contains(text, "no es un número") {
				t.Errorf("refused with %q", text)
			}
			b.shot("spanish-panel-" + s.name)
			hash := ""
			b.eval(`location.hash`, &hash)
			for _, p := range []string{"year", "advice"} {
				b.run(place(p))
				b.frame()
				b.axe(p)
				b.fits(p, s.width)
			}
			b.menu("#lang-en")
			b.until(`location.search === '?lang=en'`)
			b.ready()
			if text := b.text("#verdict"); !strings.Contains(text, "ot water on every day") && !strings.Contains(text, "Cool water") || b.value("out-cost-year") != cost {
				t.Errorf("in English: %q, cost %v, before %v", text, b.value("out-cost-year"), cost)
			}
			again := ""
			if b.eval(`location.hash`, &again); again != hash {
				t.Errorf("the house became %s", again)
			}
			b.clean()
		})
	}
}
