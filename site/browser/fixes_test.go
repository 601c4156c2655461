package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
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
			b.run(chromedp.Click("#panel-home"), chromedp.ScrollIntoView("#fixes-try"), chromedp.Click("#fixes-try"))
			b.until(`document.querySelectorAll('.fix').length > 2`)
			b.run(chromedp.ScrollIntoView("#fixes-note"))
			b.frame()
			b.shot("fixes-" + s.name)
			link := ""
			b.eval(`location.hash`, &link)
			b.run(chromedp.Click(".fix button"))
			b.until(`document.querySelectorAll('.fix').length === 0`)
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
