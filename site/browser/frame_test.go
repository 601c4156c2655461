package browser

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"

	"suncask/ui/words"
)

// everyPlace are the places, and cards every card of the house.
var (
	everyPlace = []string{"day", "house", "year", "advice"}
	cards      = []string{"weather", "home", "roof", "wiring", "tank", "backup", "prices"}
)

// layout lists what a stranger would stumble over: what is wider than the screen, letters under
// 12 px, texts of pictures upon each other, targets under 44 px on a phone (24 px in a row of
// others: WCAG 2.2, 2.5.8), figures out of sight, charts that leave their box empty, values cut off.
const layout = `(() => {
	const out = []
	if (document.documentElement.dataset.state !== 'ready') out.push('stopped: ' + document.getElementById('trouble').textContent.slice(0, 900))
	const shown = e => e.checkVisibility() && !e.closest('.unseen')
	if (document.documentElement.scrollWidth > innerWidth) out.push('wider than the screen: ' + document.documentElement.scrollWidth)
	const bar = document.querySelector('.figures').getBoundingClientRect()
	if (bar.top < -1 || bar.bottom > innerHeight || bar.right > (document.querySelector('.centre').getBoundingClientRect().right || innerWidth) + 1) out.push('figures at ' + [bar.top, bar.right, bar.bottom].map(Math.round))
	for (const dd of document.querySelectorAll('.figures dd button')) {
		const r = dd.getBoundingClientRect()
		const next = dd.closest('div').nextElementSibling?.querySelector('dd button').getBoundingClientRect()
		if (next && r.right > next.left + 1) out.push('figures upon each other: ' + dd.textContent)
	}
	for (const e of document.querySelectorAll('body *')) {
		if (!shown(e) || ![...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim())) continue
		const svg = e.ownerSVGElement
		const scale = svg && svg.viewBox.baseVal.width ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1
		const size = parseFloat(getComputedStyle(e).fontSize) * scale
		if (size < 11.9) out.push('letters of ' + size.toFixed(1) + ' px: ' + e.textContent.slice(0, 20))
	}
	for (const svg of document.querySelectorAll('.chart-box svg, #calendar, #land, #dots, #sizes-bars')) {
		if (!shown(svg)) continue
		const boxes = [...svg.querySelectorAll('text')].filter(t => t.textContent.trim()).map(t => [t.textContent, t.getBoundingClientRect()])
		boxes.forEach(([a, r], i) => boxes.slice(i + 1).forEach(([b, s]) => {
			if (Math.min(r.right, s.right) - Math.max(r.left, s.left) > 1.5 && Math.min(r.bottom, s.bottom) - Math.max(r.top, s.top) > .45 * Math.min(r.height, s.height)) out.push('upon each other: ' + a + ' and ' + b)
		}))
	}
	for (const name of ['year', 'cash', 'climate', 'iv']) {
		const host = document.getElementById(name)
		if (!host || !shown(host) || !host.querySelector('svg')) continue
		const marks = [...host.querySelectorAll('svg path')].map(p => p.getBoundingClientRect()).filter(r => r.width > 2 && r.height > 2)
		const wide = Math.max(...marks.map(r => r.right)) - Math.min(...marks.map(r => r.left))
		if (wide < .8 * (host.clientWidth - 60)) out.push(name + ' fills ' + Math.round(wide) + ' of ' + host.clientWidth + ' px')
	}
	if (innerWidth < 760) for (const e of document.querySelectorAll('button, a, input:not([type=range])')) {
		const r = e.getBoundingClientRect()
		if (shown(e) && !e.closest('p, table, .label, dl') && (r.height < 24 || r.width < 24)) out.push('small target: ' + (e.id || e.textContent.slice(0, 20)) + ' ' + Math.round(r.width) + ' x ' + Math.round(r.height))
	}
	for (const e of document.querySelectorAll('input:not([type=range]):not([type=file])')) if (shown(e) && e.scrollWidth > e.clientWidth) out.push('cut off: ' + e.id + ' ' + e.value)
	return [...new Set(out)].slice(0, 12)
})()`

// languages are those that a screen is laid out in: all where room is short.
func (s screen) languages() (list []string) {
	for _, l := range words.Languages {
		if s.name != "phone-390" && s.width < 1000 || l.Code == "en" || l.Code == "es" {
			list = append(list, l.Code)
		}
	}
	return list
}

func (b *tab) laidOut(what string) {
	b.t.Helper()
	var faults []string
	b.eval(layout, &faults)
	for _, f := range faults {
		b.t.Errorf("%s: %s", what, f)
	}
}

// In every place, with every card open, at every size and in the longest language the page is
// laid out.
func TestFrame_LaidOut(t *testing.T) {
	for _, s := range []screen{{"narrow", 320, 640, true, false}, phone, {"phone-390", 390, 844, true, true}, tablet, wide, {"wide-1920", 1920, 1080, false, true}} {
		for _, lang := range s.languages() {
			t.Run(s.name+"-"+lang, func(t *testing.T) {
				b, more := start(t, s), false
				b.open("?lang=" + lang + "#v=2&place=oslo&modules=3&tank=150&backup=1445-1815")
				for _, p := range everyPlace {
					b.run(place(p))
					b.frame()
					b.laidOut(p)
				}
				for _, id := range cards {
					b.run(card("#panel-" + id))
					b.frame()
					b.laidOut("card " + id)
					if b.eval(`(() => { const more = document.getElementById('more'); more?.click(); return more !== null })()`, &more); more {
						b.frame()
						b.laidOut("all of card " + id)
					}
				}
				for _, id := range []string{"menu", "how", "houses"} { // sheets
					if id == "how" {
						b.run(place("day"))
					} else if id == "houses" {
						b.run(place("house"))
					}
					b.run(chromedp.Click("#"+id, chromedp.ByQuery))
					b.until(`document.getElementById('over') !== null`)
					b.frame()
					b.laidOut("sheet " + id)
					b.run(chromedp.Click("#over-close", chromedp.ByQuery))
					b.until(`document.getElementById('over') === null`)
				}
				b.shot("frame-" + s.name + "-" + lang)
				b.clean()
			})
		}
	}
}

// Whatever is edited, the figures are in sight and say what changed, and one tap takes it back.
func TestFrame_EffectInSight(t *testing.T) {
	for _, s := range []screen{phone, tablet, wide} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#v=2&tank=200")
			b.run(card("#panel-tank"))
			b.frame()
			before := b.value("out-cost-year")
			b.eval(`(() => { const r = document.getElementById('field-tank-slider'); r.value = 120; r.dispatchEvent(new Event('input', {bubbles: true})); return 1 })()`, new(int))
			b.until(`location.hash.includes('tank=120')`)
			b.frame()
			b.laidOut("after an edit")
			if b.value("out-cost-year") == before || b.text("#change-cost") == "" {
				t.Errorf("the cost says %q", b.text("#change-cost"))
			}
			if text := b.text("#since"); text != "Tank 120\u202fL, was 200\u202fL Undo" && text != "Tank 120\u202fL, was 200\u202fLUndo" {
				t.Errorf("the line says %q", text)
			}
			b.until(`document.querySelector('.curve-line').getAttribute('d').length > 60`) // the curve behind the slider
			b.until(`/^Curve: EUR.\d+ to EUR.\d+ a year/.test(document.getElementById('field-tank-scale').textContent)`)
			b.run(chromedp.Click("#since-undo", chromedp.ByQuery))
			b.until(`location.hash.includes('tank=200')`)
			if got := b.value("out-cost-year"); got != before {
				t.Errorf("undone: %g, before %g", got, before)
			}
			b.clean()
		})
	}
}

// Back closes what was opened and returns to the place before; the house stays as it was
// edited meanwhile.
func TestFrame_Back(t *testing.T) {
	b := start(t, phone)
	b.open("#v=2")
	at := func(place string, sheet bool) {
		t.Helper()
		b.until(fmt.Sprintf(`document.querySelector('.page').dataset.place === %s && (document.getElementById('over') !== null) === %v`, quote(place), sheet))
	}
	b.run(chromedp.Click("#place-house", chromedp.ByQuery))
	at("house", false)
	b.run(chromedp.Click("#panel-tank", chromedp.ByQuery))
	b.until(`document.getElementById('field-tank') !== null`)
	b.typeInto("field-tank", "150")
	b.until(`location.hash.includes('tank=150')`)
	b.run(chromedp.Click("#place-year", chromedp.ByQuery))
	at("year", false)
	b.run(chromedp.Click("#menu", chromedp.ByQuery))
	at("year", true)
	b.eval(`(history.back(), 1)`, new(int))
	at("year", false)
	b.eval(`(history.back(), 1)`, new(int))
	at("house", false)
	b.eval(`(history.back(), 1)`, new(int))
	at("day", false)
	b.until(`location.hash.includes('tank=150')`)
	if b.value("out-cost-year") == 0 {
		t.Error("no figures")
	}

	// What was closed is not come back to, however it was closed; what it led to is.
	for _, close := range []string{
		`document.getElementById('over-close').click()`,
		`document.dispatchEvent(new KeyboardEvent('keydown', {key: 'Escape', bubbles: true}))`,
	} {
		b.run(chromedp.Click("#place-year", chromedp.ByQuery))
		at("year", false)
		b.run(chromedp.Click("#menu", chromedp.ByQuery))
		at("year", true)
		b.run(chromedp.Click("#menu-how", chromedp.ByQuery))
		b.until(`document.querySelector('.how') !== null`)
		b.eval(`(`+close+`, 1)`, new(int))
		at("year", false)
		b.until(`history.state.sheet === 0`)
		b.eval(`(history.back(), 1)`, new(int))
		at("day", false)
	}
	b.run(chromedp.Click("#menu", chromedp.ByQuery))
	at("day", true)
	b.eval(`(document.getElementById('over-close').click(), document.getElementById('place-house').click(), 1)`, new(int))
	at("house", false)
	b.until(`history.state.place === 1 && history.state.sheet === 0`)
	b.eval(`(history.back(), 1)`, new(int))
	at("day", false)
	b.clean()
}

// Printed are all places with their charts and a list of all inputs; then the page is as before.
func TestFrame_Printed(t *testing.T) {
	for _, s := range []screen{phone, wide} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#v=2&place=oslo&modules=2&tank=100")
			b.eval(`(window.print = () => { window.asked = true }, 1)`, new(int))
			shown := `({Inputs: document.querySelectorAll('.inputs div').length, Charts: ['year', 'cash', 'flow', 'strip', 'calendar'].filter(id => document.querySelector('#' + id + ' path')).length, Care: document.querySelectorAll('#care .finding').length})`
			for _, by := range []string{"menu", "browser"} {
				var n struct{ Inputs, Charts, Care int }
				if by == "menu" {
					b.menu("#print")
					b.until(`window.asked === true`)
					b.eval(shown, &n)
				} else { // what is not there when the event is over is not printed
					b.eval(`(window.dispatchEvent(new Event('beforeprint')), `+shown+`)`, &n)
				}
				if n.Inputs < 40 || n.Charts < 5 || n.Care < 3 {
					t.Errorf("printed by the %s: %+v", by, n)
				}
				b.eval(`(window.dispatchEvent(new Event('afterprint')), 1)`, new(int))
				b.until(`document.querySelector('.inputs') === null`)
			}
			b.clean()
		})
	}
}

// How to read shows itself: labels name the dial, a grip goes there and back, and a touch ends it.
func TestFrame_ShowMe(t *testing.T) {
	for _, s := range []screen{phone, wide} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#v=2&tank=150")
			before := b.text("#say-hours")
			cost := b.value("out-cost-year")
			for _, touched := range []bool{false, true} {
				b.run(chromedp.Click("#how", chromedp.ByQuery))
				b.until(`document.getElementById('show-me') !== null`)
				b.run(chromedp.Click("#show-me", chromedp.ByQuery))
				b.until(`document.getElementById('say-hours').textContent !== ` + quote(before) + ` && document.documentElement.dataset.first === ''`)
				b.shot("show-me-" + s.name)
				if touched {
					b.eval(`(document.querySelector('.top').dispatchEvent(new PointerEvent('pointerdown', {bubbles: true})), 1)`, new(int))
					b.until(`document.documentElement.dataset.first === undefined`)
				}
				b.until(`document.getElementById('say-hours').textContent === ` + quote(before))
				b.frame()
			}
			if got := b.value("out-cost-year"); got != cost || b.link() != "#v=2&tank=150" {
				t.Errorf("afterwards: %g at %s, before %g", got, b.link(), cost)
			}
			b.clean()
		})
	}
}
