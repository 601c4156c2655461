package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A mark of the uses moves by drag only after it was tapped; it can be moved by buttons, by
// keys and by a typed time; and undo takes each back.
func TestUses_Move(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&showeram=78")
			first := b.link()
			f := finger{b, s.touch}
			f.drag("#drop-0-hit", 30, 6, func() {})
			if b.link() != first {
				t.Errorf("a mark that was not tapped has moved: %s", b.link())
			}
			b.run(chromedp.ScrollIntoView("#dial"))
			f.tap("#drop-0-hit")
			b.until(`document.querySelectorAll('#uses .stepper').length === 2`)
			b.axe("uses open")
			b.fits("uses open", s.width)
			f.drag("#drop-0-hit", 30, 12, func() {
				if got := b.text("#hub"); !strings.Contains(got, "08:30") || !strings.Contains(got, "2\u202fh later") {
					t.Errorf("while it moves the middle says %q", got)
				}
				b.shot("uses-held-" + s.name)
			})
			b.until(`location.hash.includes('showeram=102&handsam=116')`)
			if got := b.text("#uses"); !strings.Contains(got, "08:30: 48 L") {
				t.Errorf("the list does not follow: %q", got)
			}
			b.shot("uses-open-" + s.name)
			b.clean()
			b.run(chromedp.Evaluate(`document.querySelector('.drop-mark.open').focus()`, nil), chromedp.KeyEvent(kb.ArrowRight))
			b.until(`location.hash.includes('showeram=105&handsam=119')`)
			b.until(`document.activeElement.matches('.drop-mark.open')`)
			b.run(centred("#use-time-2"))
			f.tap(`[data-step="u4,15"]`)
			b.until(`location.hash.includes('showeram=105&handsam=120')`)
			b.typeInto("use-time-2", "12:3")
			b.until(`document.getElementById('uses-problem') !== null`)
			b.typeInto("use-time-2", "10:15")
			b.until(`location.hash.includes('showeram=105&handsam=123') && !document.getElementById('uses-problem')`)
			for range 4 {
				b.run(chromedp.Click("#undo"))
				b.frame()
			}
			if b.link() != first {
				t.Errorf("after undo: %s, want %s", b.link(), first)
			}
			b.clean()
		})
	}
}
