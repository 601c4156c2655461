package browser

import (
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// The landscape of all hours fills in a worker while the page stays alive, can be stopped,
// and a tap takes the hours there, one undo away.
func TestLandscape_DrawnAndTapped(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			b.run(place("advice"), chromedp.Click("#land-button", chromedp.ByQuery))
			b.until(`document.getElementById('land-3').getAttribute('d').length > 50 && document.getElementById('land').clientHeight > 0`)
			// Stopped within a tenth of a second, and what is known stays.
			b.run(place("advice"), chromedp.Click("#land-button", chromedp.ByQuery))
			var known, later string
			b.eval(`document.getElementById('land-3').getAttribute('d')`, &known)
			b.run(chromedp.Sleep(400 * time.Millisecond))
			b.eval(`document.getElementById('land-3').getAttribute('d')`, &later)
			if known != later || b.text("#land-button") != "Draw all hours" {
				t.Errorf("goes on after Stop: %d and %d bytes, %q", len(known), len(later), b.text("#land-button"))
			}
			if s.dark { // the phone has simulated all of them
				b.run(chromedp.ScrollIntoView("#land-twin"))
				b.shot("landscape-" + s.name)
				return
			}
			b.run(place("advice"), chromedp.Click("#land-button", chromedp.ByQuery))
			b.eval(`(() => { window.statuses = new Set(); window.began = performance.now();
				window.watch = setInterval(() => window.statuses.add(document.getElementById('land-status').textContent), 20); return 1 })()`, new(int))
			for i := 0; b.text("#land-button") != "Draw all hours"; i++ {
				if i == 180 {
					t.Fatal("not done in three minutes")
				}
				b.run(chromedp.Sleep(time.Second))
			}
			var perSecond, seconds float64
			b.eval(`(performance.now() - window.began) / 1000`, &seconds)
			b.eval(`(clearInterval(window.watch), window.statuses.size)`, &perSecond)
			perSecond /= seconds
			t.Logf("all windows in %.1f s, %.1f times progress a second", seconds, perSecond)
			if perSecond < 5 {
				t.Errorf("progress is shown %.1f times a second", perSecond)
			}
			if twin := b.text("#land-twin"); len(twin) < 40 {
				t.Errorf("the twin: %q", twin)
			}
			b.run(chromedp.ScrollIntoView("#land-twin"))
			b.frame()
			b.shot("landscape-" + s.name)
			// All lengths, and back to those up to half a day.
			b.run(chromedp.Click("#land-lengths", chromedp.ByQuery))
			b.until(`document.getElementById('land').viewBox.baseVal.height === 323`)
			b.shot("landscape-all-" + s.name)
			b.run(chromedp.Click("#land-lengths", chromedp.ByQuery))
			b.until(`document.getElementById('land').viewBox.baseVal.height === 277`)
			// Start 12:00, 4 h.
			b.eval(`(() => { const r = document.getElementById('land').getBoundingClientRect(), k = r.width / 330;
				const x = r.left + (30 + 48 * 3 + 1.5) * k, y = r.top + (8 + (48 - 16) * 5 + 2.5) * k;
				document.elementFromPoint(x, y).dispatchEvent(new MouseEvent('click', {bubbles: true, clientX: x, clientY: y})); return 1 })()`, new(int))
			b.until(`location.hash.includes('backup=1200-1600')`)
			b.sameAsNative(house)
			b.run(chromedp.Click("#undo", chromedp.ByQuery))
			b.until(`location.hash.includes('backup=1500-1800')`)
			b.clean()
		})
	}
}
