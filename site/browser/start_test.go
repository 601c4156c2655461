package browser

import (
	"context"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// The page starts without workers, and where the worker that loads the program breaks or says
// nothing but that it failed.
func TestStart_WithoutAWorker(t *testing.T) {
	for name, script := range map[string]string{
		"none":    `delete window.Worker`,
		"forbids": `window.Worker = class { constructor () { throw new Error('forbidden') } }`,
		"breaks":  `window.Worker = class { constructor () { setTimeout(() => this.onerror(new Event('error')), 30) } postMessage () {} terminate () {} }`,
		"fails":   `window.Worker = class { postMessage () { setTimeout(() => this.onmessage({data: {failed: 'no'}}), 30) } terminate () {} }`,
	} {
		t.Run(name, func(t *testing.T) {
			b := start(t, phone)
			b.run(chromedp.ActionFunc(func(ctx context.Context) error {
				_, err := page.AddScriptToEvaluateOnNewDocument(script).Do(ctx)
				return err
			}))
			b.open("#" + house + "&backup=1500-1800")
			b.sameAsNative(house)
			b.clean()
		})
	}
}

// The example's strip is there before the charts' script, which comes by itself or with the first
// drag; another house, and another language, do not show the example's.
func TestStart_Strip(t *testing.T) {
	b := start(t, phone)
	for link, sketched := range map[string]bool{"": true, "#v=2&tank=120": false, "?lang=es": false} {
		b.run(chromedp.Navigate("about:blank"), chromedp.Navigate(b.address+link))
		b.until(`document.documentElement.dataset.state === 'ready'`)
		var there bool
		b.eval(`document.querySelectorAll('#strip > .sketch path').length > 4`, &there)
		if there != sketched {
			t.Errorf("%q: the sketch is there: %v", link, there)
		}
		b.until(`document.querySelector('#strip .chart-box svg') !== null && document.querySelector('.sketch') === null`)
	}
	b.clean()
}
