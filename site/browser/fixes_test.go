package browser

import (
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// Where too many uses run cool the changes tried leave fewer; one is taken by its button
// and one undo away.
func TestFixes_Taken(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&modules=2&backup=1500-1530")
			before := b.value("out-cold-days")
			if before == 0 {
				t.Fatal("no day with a cool use")
			}
			b.run(place("advice"), chromedp.Click("#fixes-try", chromedp.ByQuery))
			b.until(`document.querySelectorAll('.gain').length > 2`)
			b.run(chromedp.ScrollIntoView("#fixes-note"))
			b.frame()
			b.shot("fixes-" + s.name)
			link := ""
			b.eval(`location.hash`, &link)
			b.run(chromedp.Click(".gain button"))
			b.until(`document.querySelectorAll('.gain').length === 0`)
			if after := b.value("out-cold-days"); after >= before {
				t.Errorf("%v days with a cool use, before %v", after, before)
			}
			b.clean()
			b.run(chromedp.Click("#undo", chromedp.ByQuery))
			b.frame()
			if now := b.value("out-cold-days"); now != before {
				t.Errorf("undone: %v days, before %v", now, before)
			}
		})
	}
}

// A tap on a barred mark lists its uses and, on asking, what keeps the last of them warm;
// the change taken makes the mark whole.
func TestFixes_OneUse(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&modules=2&month=nov&sky=dull&backup=1500-1700")
			mark := -1
			b.eval(`[...document.querySelectorAll('.drop-mark')].findIndex(d => d.querySelector('.cool'))`, &mark)
			if mark < 0 {
				t.Fatal("no barred mark")
			}
			b.run(chromedp.Evaluate(`document.querySelectorAll(".drop-mark")[`+strconv.Itoa(mark)+`].focus()`, nil))
			b.run(chromedp.KeyEvent(kb.Enter))
			b.until(`document.getElementById('use-try') !== null`)
			b.run(centred("#use-try"), chromedp.Click("#use-try"))
			b.until(`document.querySelectorAll('#uses .gain').length > 2`)
			b.frame()
			b.shot("fixes-use-" + s.name)
			b.clean()
			b.run(chromedp.Click("#uses .gain button"))
			b.until(`document.querySelectorAll('#uses .gain').length === 0`)
			left := ""
			b.eval(`document.getElementById('uses').textContent`, &left)
			if b.value("out-cold-days") < 0 || strings.Contains(left, "What keeps") {
				t.Errorf("after the change: %s", left)
			}
			b.clean()
		})
	}
}
