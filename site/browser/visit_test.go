package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// An installer's visit: the survey's stops, the list of wirings from which one is taken and taken
// back, the ratings, and readings that are judged; fitting, legible and without a fault of
// accessibility in every part and language.
func TestVisit_Walked(t *testing.T) {
	for _, s := range []screen{phone, tablet, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			languages := []string{"en"}
			if s.width == phone.width {
				languages = append(languages, "es", "fr", "pt")
			}
			for _, language := range languages {
				b.open("?lang=" + language + "#v=2&modules=6&view=visit")
				if s.width < 760 {
					b.until(`document.querySelector('.page').dataset.place === 'house'`)
				}
				for _, stop := range []string{"roof", "tank", "board", "bill"} {
					b.run(centred("#survey-"+stop), chromedp.Click("#survey-"+stop))
					b.until(`document.getElementById('survey-` + stop + `').getAttribute('aria-pressed') === 'true'`)
					b.visitPart(s, "survey-"+stop+"-"+language)
				}
				b.run(centred("#part-wiring"), chromedp.Click("#part-wiring"))
				b.until(`document.querySelectorAll('.wiring').length > 3 && document.getElementById('wirings-status').textContent === ''`)
				b.visitPart(s, "wiring-"+language)
				b.run(centred("#part-meters"), chromedp.Click("#part-meters"))
				b.until(`document.getElementById('test-back') !== null`)
				b.run(chromedp.SendKeys("#test-back", "42"+kb.Enter))
				b.until(`document.getElementById('read-open') !== null`)
				b.run(chromedp.SendKeys("#read-open", "171"+kb.Enter))
				b.until(`document.getElementById('read-open-outcome').textContent !== ''`)
				b.visitPart(s, "meters-"+language)
			}
			b.open("?lang=en#v=2&modules=6&view=visit")
			b.run(centred("#part-wiring"), chromedp.Click("#part-wiring"))
			b.until(`document.querySelectorAll('.wiring').length > 3 && document.getElementById('wirings-status').textContent === ''`)
			var offers int
			b.eval(`document.querySelectorAll('.wiring button').length`, &offers)
			b.run(centred(".wiring button"), chromedp.Click(".wiring button"))
			b.until(`/couple=(staged|direct)|string=/.test(location.hash)`)
			var here, left int
			b.eval(`document.querySelectorAll('.wiring.here').length`, &here)
			b.eval(`document.querySelectorAll('.wiring button').length`, &left)
			if here != 1 || left != offers {
				t.Errorf("%d wirings are the house's, %d to take, before %d", here, left, offers)
			}
			b.run(chromedp.Click("#undo", chromedp.ByQuery))
			b.until(`!/couple=|string=/.test(location.hash)`)
			b.run(centred("#part-meters"), chromedp.Click("#part-meters"))
			b.until(`document.getElementById('test-back') !== null`)
			b.run(chromedp.SendKeys("#test-back", "42"+kb.Enter), chromedp.SendKeys("#read-open", "-200"+kb.Enter))
			b.until(`document.getElementById('read-open-outcome').textContent === 'reversed: do not connect'`)
			if link := b.link(); strings.Contains(link, "200") || strings.Contains(link, "42") {
				t.Errorf("readings are in the link: %s", link)
			}
			b.clean()
		})
	}
}

// visitPart looks at what is open.
func (b *tab) visitPart(s screen, name string) {
	b.t.Helper()
	b.frame()
	b.fits(name, s.width)
	b.shot("visit-" + name + "-" + s.name)
	if strings.HasSuffix(name, "-en") {
		b.axe(name)
	}
	var small []string
	b.eval(`[...document.querySelectorAll('#visit button:not(.term), #visit input')].filter(e => { const r = e.getBoundingClientRect(); return r.width > 0 && r.height < 44 }).map(e => e.id + e.className)`, &small)
	if len(small) > 0 {
		b.t.Errorf("%s: %d targets are low: %v", name, len(small), small[:min(3, len(small))])
	}
}
