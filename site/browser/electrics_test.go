package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// Findings stand beside the choice they concern: an element straight on the modules
// brings its own, the worst first in the list; the strings' curve is drawn.
func TestWiring_FindingsWhereDecided(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#v=2&modules=10")
			b.run(card("#panel-wiring"))
			b.until(`document.querySelector('#iv svg path') !== null`)
			b.run(chromedp.ScrollIntoView("#iv"))
			b.shot("iv-" + s.name)
			b.run(chromedp.Click(`//div[@id="field-couple"]/button[2]`, chromedp.BySearch))
			b.until(`location.hash.includes('couple=direct')`)
			var near string
			b.eval(`document.getElementById('field-couple').closest('.field').textContent`, &near)
			if !strings.Contains(near, "must not break it") {
				t.Errorf("beside the choice: %q", near)
			}
			b.eval(`document.getElementById('field-element').closest('.field').textContent`, &near)
			if !strings.Contains(near, "may take 2") {
				t.Errorf("beside the element: %q", near)
			}
			b.run(place("advice"))
			b.frame()
			if first := b.text(".mind .finding"); !strings.Contains(first, "may take") {
				t.Errorf("first in the list: %q", first)
			}
			var line [][][2]float64
			b.eval(`window.suncaskCharts.series('iv')`, &line)
			if len(line) != 5 || len(line[3]) != 2 || len(line[4]) != 3 {
				t.Errorf("the element's line and the working points: %v", line)
			}
			b.run(place("house"), chromedp.ScrollIntoView("#field-couple"))
			b.shot("wiring-" + s.name)
			b.run(chromedp.ScrollIntoView("#iv"))
			b.shot("iv-direct-" + s.name)
			b.run(chromedp.ScrollIntoView("#potential"))
			b.shot("potential-" + s.name)
			b.clean()
		})
	}
}

// The tank is drawn at an hour of the day shown; the hour is a slider.
func TestTank_ThroughTheDay(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&elements=two&upper=60&outfrom=228&outto=252")
			b.run(card("#panel-tank"), chromedp.ScrollIntoView("#tank-picture"))
			b.frame()
			evening := b.text("#tank-twin")
			b.shot("tank-" + s.name)
			b.run(chromedp.Evaluate(`(() => { const r = document.getElementById('tank-hour'); r.value = 480; r.dispatchEvent(new Event('input', {bubbles: true})); return 1 })()`, nil))
			b.until(`document.getElementById('tank-name').textContent.includes('08:00')`)
			if morning := b.text("#tank-twin"); morning == evening {
				t.Errorf("the tank is the same at 18:00 and 08:00: %s", morning)
			}
			var rects, elements int
			b.eval(`document.querySelectorAll('#tank-picture .warm').length`, &rects)
			b.eval(`document.querySelectorAll('#tank-picture .tank-element').length`, &elements)
			if rects < 2 || elements != 2 {
				t.Errorf("%d layers, %d elements", rects, elements)
			}
			b.shot("tank-morning-" + s.name)
			// A tap on the pool at six in the evening, and at six in the morning.
			b.run(card("#panel-roof"), place("day"))
			b.eval(`(() => { const r = document.getElementById('dial').getBoundingClientRect(), k = r.width / 360;
				document.elementFromPoint(r.left + 250 * k, r.top + 174 * k).dispatchEvent(new MouseEvent('click', {bubbles: true, clientX: r.left + 250 * k, clientY: r.top + 174 * k})); return 1 })()`, new(int))
			b.until(`document.getElementById('tank-name') && document.getElementById('tank-name').textContent.includes('06:00')`)
			b.open("#" + house + "&elements=tanks&suntank=150")
			b.run(card("#panel-tank"), chromedp.ScrollIntoView("#tank-picture"))
			b.frame()
			b.shot("tanks-" + s.name)
			var walls int
			if b.eval(`document.querySelectorAll('#tank-picture .tank-wall').length`, &walls); walls != 2 {
				t.Errorf("%d tanks are drawn", walls)
			}
			b.open("#" + house + "&elements=two&upper=60&outfrom=228&outto=252")
			b.run(card("#panel-backup"), chromedp.ScrollIntoView("#rules"))
			if text := b.text("#rules"); strings.Count(text, "A year with") != 2 {
				t.Errorf("the other rules: %q", text)
			}
			if text := b.text("#boost"); !strings.Contains(text, "presses a year") {
				t.Errorf("the boost: %q", text)
			}
			b.shot("rules-" + s.name)
			b.run(chromedp.Evaluate(`scrollTo(0, 0)`, nil))
			b.frame()
			b.shot("outage-" + s.name)
			b.clean()
		})
	}
}
