package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// tabTo presses Tab, from wherever the focus is, until what is wanted has it and shows it.
func (b *tab) tabTo(selector string) {
	b.t.Helper()
	for presses := 1; presses <= 120; presses++ {
		b.run(chromedp.KeyEvent(kb.Tab))
		var at string
		b.eval(fmt.Sprintf(`(() => {
			const e = document.activeElement, style = getComputedStyle(e)
			const body = e.querySelector && e.querySelector('.bookend, path.drop')
			return !e.matches(%s) ? '' : style.outlineStyle !== 'none' || body && parseFloat(getComputedStyle(body).strokeWidth) > 2.2 ? 'seen' : 'unseen'
		})()`, quote(selector)), &at)
		switch at {
		case "seen":
			b.t.Logf("%s: %d times Tab", selector, presses)
			return
		case "unseen":
			b.t.Errorf("%s has the focus and does not show it", selector)
			return
		}
	}
	b.t.Fatalf("Tab does not reach %s", selector)
}

func (b *tab) press(keys ...string) {
	b.t.Helper()
	for _, key := range keys {
		b.run(chromedp.KeyEvent(key))
	}
	b.frame()
}

// The main job by the keyboard alone: the house made one's own, hours set and found, a use
// moved, a figure opened, the link taken, all of it undone.
func TestWalk_Keyboard(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			b.tabTo("#house")
			b.press(kb.Enter)
			b.tabTo("#field-place")
			b.press(kb.End + strings.Repeat(kb.Backspace, 30) + "Oslo" + kb.Enter)
			b.until(`/place=(oslo|59\.9)/.test(location.hash)`) // the town where the list of towns has come, else the climate of its name
			b.tabTo("#ask-yes")
			b.press(kb.Enter)
			b.until(`document.getElementById('field-people') !== null`)
			b.press(kb.Enter) // the focus has stayed
			b.until(`document.getElementById('field-wash') !== null`)
			b.tabTo("#ask-end")
			b.press(kb.Enter)
			b.until(`document.getElementById('ask') === null && document.activeElement.id === 'house'`)
			b.tabTo(".figures button")
			b.press(kb.Enter)
			b.until(`document.querySelector('#explain-cost[aria-pressed=true]') !== null && document.activeElement.id === 'over'`)
			b.press(kb.Escape)
			b.until(`document.getElementById('over') === null && document.activeElement.id === 'figure-cost'`)
			b.run(place("day"))
			b.tabTo(".drop-mark")
			b.press(kb.Enter)
			b.until(`document.getElementById('uses') !== null`)
			b.press(kb.ArrowRight)
			b.until(`/shower|hands/.test(location.hash)`)
			b.tabTo("#grip-0")
			from := b.text("#say-hours")
			b.press(kb.ArrowLeft, kb.PageUp, kb.ArrowRight, kb.ArrowRight)
			if got := b.text("#say-hours"); got == from {
				t.Errorf("the keys leave the hours at %s", got)
			}
			b.tabTo("#find")
			b.press(kb.Enter)
			b.until(`document.getElementById('found').textContent.length > 30`)
			b.tabTo("#share")
			b.press(kb.Enter)
			b.until(`/place=(oslo|59\.9)/.test(document.querySelector('#link-text').value)`)
			b.tabTo("#undo")
			for range 12 {
				b.press(kb.Enter)
			}
			if hash := b.link(); hash != "#v=2" {
				t.Errorf("after all is undone the link is %s", hash)
			}
			b.clean()
		})
	}
}

// tap taps the middle of what is wanted, which a finger can hit, as a touch screen would.
func (b *tab) tap(selector string) {
	b.t.Helper()
	b.run(chromedp.ScrollIntoView(selector, chromedp.ByQuery))
	b.frame()
	r := b.box(selector)
	if min(r.W, r.H) < 24 { // WCAG 2.2, 2.5.8
		b.t.Errorf("%s is %.0f by %.0f pixels, a finger wants 24", selector, r.W, r.H)
	}
	finger{b, true}.tap(selector)
}

// The main job with taps alone, nothing dragged and nothing typed but a number.
func TestWalk_Taps(t *testing.T) {
	b := start(t, phone)
	b.open("")
	b.tap("#house")
	b.tap("#ask-skip")
	b.until(`document.getElementById('field-people') !== null`)
	b.tap("#field-people")
	b.typeInto("field-people", "5")
	b.until(`location.hash.includes('people=5')`)
	b.tap("#ask-yes")
	b.tap("#field-wash button:nth-child(2)")
	b.until(`location.hash.includes('wash=evening')`)
	b.tap("#ask-end")
	b.until(`document.getElementById('ask') === null`)
	before := b.text("#say-hours")
	b.tap(`[data-step="0,-15"]`)
	b.tap(`[data-step="1,15"]`)
	if got := b.text("#say-hours"); got == before {
		t.Errorf("the steppers leave the hours at %s", got)
	}
	b.tap("#find")
	b.until(`document.getElementById('found').textContent.length > 30`)
	b.tap("#month-on")
	b.tap("#sky-dull")
	b.until(`location.hash.includes('month=feb&sky=dull')`)
	b.tap("#drop-1-hit")
	b.until(`document.querySelector('#uses .stepper') !== null`)
	b.tap(`#uses [data-step$=",15"]`)
	b.tap("#uses > .pill")
	b.until(`document.getElementById('uses') === null`)
	b.tap(".figures div")
	b.until(`document.querySelector('#explain-cost[aria-pressed=true]') !== null`)
	b.tap("#over-close")
	b.until(`document.getElementById('over') === null`)
	b.tap("#place-advice")
	b.tap("#fixes-try")
	b.until(`document.querySelectorAll('.fixes .gain').length > 1`)
	b.tap(".fixes .gain button")
	b.tap("#share")
	b.until(`document.querySelector('#link-text').value.includes('people=5')`)
	b.shot("walk-taps")
	b.clean()
}
