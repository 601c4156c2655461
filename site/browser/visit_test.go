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
				b.until(`document.getElementById('survey-roof') !== null`)
				for _, stop := range []string{"roof", "tank", "board", "bill"} {
					b.run(centred("#survey-"+stop), chromedp.Click("#survey-"+stop))
					b.until(`document.getElementById('survey-` + stop + `').getAttribute('aria-pressed') === 'true'`)
					b.visitPart(s, "survey-"+stop+"-"+language)
				}
				b.run(centred("#part-wiring"), chromedp.Click("#part-wiring"))
				b.until(`document.querySelectorAll('.wiring').length > 3 && document.getElementById('wirings-status').textContent === ''`)
				b.visitPart(s, "wiring-"+language)
				b.part("meters", "#lit-tc")
				b.run(centred("#lit-tc"), chromedp.SendKeys("#lit-tc", "42"+kb.Enter))
				b.until(`document.querySelector('#test-open .meter-expected').textContent !== ''`)
				b.run(centred("#read-v1"), chromedp.SendKeys("#read-v1", "171"+kb.Enter))
				b.until(`document.getElementById('read-v1-outcome').textContent !== ''`)
				const seen = `document.getElementById('function-2').getAttribute('aria-checked')`
				var was string // the house's readings are kept from one language to the next
				b.eval(seen, &was)
				b.run(centred("#function-2"), chromedp.Click("#function-2"))
				b.until(seen + ` !== ` + quote(was))
				b.visitPart(s, "meters-"+language)
				b.part("trouble", "#door-0")
				b.visitPart(s, "trouble-"+language)
				b.run(centred("#door-0"), chromedp.Click("#door-0"))
				b.until(`document.getElementById('answer-1') !== null`)
				for _, answer := range []string{"1", "1", "0"} {
					before := b.text("#trouble-question h3")
					b.run(centred("#answer-"+answer), chromedp.Click("#answer-"+answer))
					b.until(`document.querySelector('#trouble-question h3').textContent !== ` + quote(before))
				}
				b.visitPart(s, "trouble-asks-"+language)
				b.run(centred("#answer-2"), chromedp.Click("#answer-2"))
				b.until(`document.getElementById('trouble-end') !== null`)
				b.visitPart(s, "trouble-end-"+language)
				b.part("water", "#water-pairs")
				b.visitPart(s, "water-"+language)
				b.part("sheet", "#paper")
				b.visitPart(s, "sheet-"+language)
				b.part("return", "#read-d0")
				b.run(b.typeDate("#read-d0", "2025-11-01"), b.typeDate("#read-d1", "2026-02-01"), chromedp.SendKeys("#read-m0", "1000"+kb.Enter), chromedp.SendKeys("#read-m1", "1300"+kb.Enter))
				b.until(`document.querySelectorAll('#meter-says .wiring').length === 10 && document.getElementById('meter-job-status').textContent === ''`)
				b.visitPart(s, "return-"+language)
			}
			b.open("?lang=en#v=2&modules=6&view=visit")
			b.until(`document.getElementById('part-wiring') !== null`)
			b.run(centred("#part-wiring"), chromedp.Click("#part-wiring"))
			b.until(`document.querySelectorAll('.wiring').length > 3 && document.getElementById('wirings-status').textContent === ''`)
			var offers int
			b.eval(`document.querySelectorAll('.wiring .choice').length`, &offers)
			b.run(centred(".wiring .choice"), chromedp.Click(".wiring .choice"))
			b.until(`/couple=(staged|direct)|string=/.test(location.hash)`)
			var here, left int
			b.eval(`document.querySelectorAll('.wiring.here').length`, &here)
			b.eval(`document.querySelectorAll('.wiring .choice').length`, &left)
			if here != 1 || left != offers {
				t.Errorf("%d wirings are the house's, %d to take, before %d", here, left, offers)
			}
			b.run(chromedp.Click("#undo", chromedp.ByQuery))
			b.until(`!/couple=|string=/.test(location.hash)`)
			b.part("meters", "#lit-tc")
			b.run(centred("#lit-tc"), chromedp.SendKeys("#lit-tc", "42"+kb.Enter), centred("#read-v1"), chromedp.SendKeys("#read-v1", "-200"+kb.Enter))
			b.until(`document.getElementById('read-v1-outcome').textContent === 'reversed: do not connect'`)
			if link := b.link(); strings.Contains(link, "200") || strings.Contains(link, "42") {
				t.Errorf("readings are in the link: %s", link)
			}
			b.run(chromedp.Reload())
			b.ready()
			b.until(`document.getElementById('part-meters') !== null`)
			b.part("meters", "#read-v1")
			var got string
			if b.eval(`document.getElementById('read-v1').value`, &got); got != "-200" {
				t.Errorf("after a reload the reading is %q", got)
			}
			b.run(chromedp.Click("#share", chromedp.ByQuery))
			b.until(`document.getElementById('share-colleague') !== null`)
			b.run(chromedp.Click("#share-colleague"))
			b.until(`/read=.*v1:-200/.test(document.getElementById('link-text').value)`)
			b.run(chromedp.Click("#share-household"))
			b.until(`!/read=|view=/.test(document.getElementById('link-text').value)`)
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

// part opens a part of the visit and waits for what it shows.
func (b *tab) part(name, shows string) {
	b.t.Helper()
	b.run(centred("#part-"+name), chromedp.Click("#part-"+name))
	b.until(`document.querySelector(` + quote(shows) + `) !== null`)
}

// typeDate puts a date into a box as a browser's calendar does.
func (b *tab) typeDate(selector, date string) chromedp.Action {
	return chromedp.Evaluate(`{ const e = document.querySelector(`+quote(selector)+`); e.value = `+quote(date)+`; e.dispatchEvent(new Event('change', { bubbles: true })) }`, nil)
}
