package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// The page can be entered as one's home, for a visit and for a lesson: each opens its own
// group, and the link keeps which it is.
func TestEntries_InTheLink(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&view=visit")
			for _, want := range []string{"Open-circuit voltage", "Lowest temperature", "In the order"} {
				if got := b.text("#visit"); !strings.Contains(got, want) {
					t.Errorf("a visit begins without %q: %q", want, got)
				}
			}
			b.run(chromedp.ScrollIntoView("#visit"))
			b.axe("visit")
			b.fits("visit", s.width)
			b.shot("visit-" + s.name)
			b.entry(s, "lesson")
			b.until(`document.getElementById('lesson') !== null && !document.getElementById('visit') && location.hash.endsWith('&view=lesson')`)
			b.run(card("#panel-lesson"), chromedp.Click("#lesson-play"))
			b.until(`Number(document.getElementById('tank-hour').value) > 30`)
			b.run(card("#panel-lesson"), chromedp.Click("#lesson-explain"))
			b.until(`document.getElementById('explain-cost') !== null`)
			b.run(chromedp.Click("#over-close", chromedp.ByQuery))
			b.until(`document.getElementById('over') === null`)
			b.run(chromedp.Click("#share"))
			b.until(`document.querySelector('#link-here input').value.includes('view=lesson')`)
			b.run(chromedp.Click("#link-here .pill:last-child", chromedp.ByQuery))
			b.entry(s, "home")
			b.until(`!document.getElementById('panel-lesson') && !location.hash.includes('view=')`)
			if b.value("out-cost-year") <= 0 {
				t.Error("no figures")
			}
			b.clean()
		})
	}
}

// More contrast and forced colours are for those who ask their device for them.
func TestContrast(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			scheme := "light"
			if s.dark {
				scheme = "dark"
			}
			colour := func() (text string) {
				b.eval(`getComputedStyle(document.querySelector('.sentence')).color + getComputedStyle(document.body).backgroundColor`, &text)
				return text
			}
			b.open("#" + house + "&backup=none")
			usual := colour()
			for _, feature := range []emulation.MediaFeature{{Name: "prefers-contrast", Value: "more"}, {Name: "forced-colors", Value: "active"}} {
				b.run(emulation.SetEmulatedMedia().WithFeatures([]*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}, &feature}))
				b.frame()
				if colour() == usual {
					t.Errorf("%s: the colours stay", feature.Name)
				}
				b.axe(feature.Name)
				b.shot("contrast-" + feature.Name + "-" + s.name)
			}
			b.clean()
		})
	}
}
