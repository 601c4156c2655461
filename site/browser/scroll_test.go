package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// A finger that scrolls the page from on top of a slider or of a held button leaves the house as it
// is; one that slides, and one that taps, move it.
func TestScroll_LeavesTheHouse(t *testing.T) {
	b := start(t, phone)
	const link = "#v=2&tank=150"
	b.open(link)
	f := finger{b, true}
	stroke := func(selector string, share, across, up float64) {
		t.Helper()
		b.rests() // what was scrolled before
		r := b.box(selector)
		x, y := r.X+r.W*share, r.Y+r.H/2
		f.event("down", x, y)
		for i := 1.0; i <= 10; i++ {
			f.event("move", x+across*i/10, y-up*i/10)
		}
		f.event("up", x+across, y-up)
		b.frame()
		b.frame()
	}
	// A button of the backup's start, held while the finger goes up; the page may be too short to scroll.
	stroke("[data-step='0,start,-15'], .steppers button", 0.5, 0, 150)
	if got := b.link(); got != link {
		t.Errorf("scrolled on a button: %s", got)
	}
	b.run(place("house"), card("#panel-tank"))
	b.run(centred("#field-tank-slider"))
	b.frame()
	from := 0.0
	b.eval(`scrollY`, &from)
	stroke("#field-tank-slider", 0.8, 3, 200)
	to := 0.0
	b.eval(`scrollY`, &to)
	if got := b.link(); got != link || to < from+50 {
		t.Errorf("scrolled on a slider from %g to %g: %s", from, to, got)
	}
	b.rests()
	b.run(centred("#field-tank-slider"))
	stroke("#field-tank-slider", 0.3, 60, 3)
	b.until(`!location.hash.includes('tank=150')`)
	if got := b.link(); !strings.Contains(got, "tank=") {
		t.Errorf("slid: %s", got)
	}
	b.rests()
	before := b.link()
	r := b.box("#field-tank-slider")
	f.event("down", r.X+r.W*0.9, r.Y+r.H/2)
	f.event("up", r.X+r.W*0.9, r.Y+r.H/2)
	b.until("location.hash !== " + quote(before))
	b.run(chromedp.Click("#undo", chromedp.ByQuery))
	b.clean()
}

// rests waits until the page has stopped to scroll.
func (b *tab) rests() {
	b.t.Helper()
	b.run(chromedp.Evaluate(`new Promise(done => { let at = NaN, since = 0; const look = () => { if (scrollY !== at) { at = scrollY; since = 0 } else if (++since > 20) return done(1); requestAnimationFrame(look) }; look() })`, nil, awaitPromise))
}
