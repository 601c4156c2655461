package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// A figure of the headline opens into its formula, a year into months, a month into days, a
// day into its uses.
func TestExplain_Opens(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			b.run(chromedp.Click("#out-cost-year", chromedp.ByQuery))
			b.until(`document.querySelectorAll('#explain tr').length === 13`)
			b.frame()
			b.shot("explain-" + s.name)
			b.axe("explained")
			b.fits("explained", s.width)
			b.run(chromedp.Click("#explain tr:nth-child(2) button", chromedp.ByQuery))
			b.until(`document.getElementById('explain-up') !== null`)
			if text := b.text("#explain-text"); !strings.Contains(text, "January") || !strings.Contains(text, "p E_b") {
				t.Errorf("January's cost is explained by %q", text)
			}
			b.run(chromedp.Click("#explain-bought"), chromedp.Click("#explain tr:nth-child(3) button", chromedp.ByQuery))
			b.until(`document.querySelectorAll('#explain tr').length === 29`)
			b.run(chromedp.Click("#explain tr:nth-child(11) button", chromedp.ByQuery))
			b.until(`document.getElementById('day-uses') !== null`)
			if text := b.text("#day-uses h2"); text != "10 February" {
				t.Errorf("the day is %q", text)
			}
			b.run(chromedp.Click("#out-solar-fraction", chromedp.ByQuery))
			b.until(`document.querySelector('#explain-fraction[aria-pressed=true]') !== null`)
			if text := b.text("#explain-text"); !strings.Contains(text, "E_s / (E_s + E_g)") {
				t.Errorf("the share of the sun is explained by %q", text)
			}
			b.run(place("day"), chromedp.ScrollIntoView("#dial"))
			b.frame()
			finger{b, s.touch}.tap("#dial")
			b.until(`document.querySelector('#explain-day-cost[aria-pressed=true]') !== null`)
			if text := b.text("#explain-text"); !strings.Contains(text, "March, typical") || !strings.Contains(text, "p E_b") {
				t.Errorf("the day's cost is explained by %q", text)
			}
			for id, explained := range map[string]string{"say-days": "cool", "say-cost": "cost", "say-less": "saved"} {
				b.run(place("day"), chromedp.Click("#"+id, chromedp.ByQuery))
				b.until(`document.querySelector('#explain-` + explained + `[aria-pressed=true]') !== null`)
			}
			b.run(place("day"), chromedp.Click("#say-hours", chromedp.ByQuery))
			b.until(`document.querySelector('#panel-backup[aria-expanded=true]') !== null`)
			b.run(place("year"), chromedp.Click("#worth tr:nth-child(5) button", chromedp.ByQuery))
			b.until(`document.querySelector('#explain-value[aria-pressed=true]') !== null`)
			if text := b.text("#explain-text"); !strings.Contains(text, "(1+d)^y") {
				t.Errorf("what it is worth is explained by %q", text)
			}
			b.axe("worth explained")
			b.fits("worth explained", s.width)
			b.shot("explain-worth-" + s.name)
			b.clean()
		})
	}
}
