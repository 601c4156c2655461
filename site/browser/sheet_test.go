package browser

import (
	"bytes"
	"context"
	"image/png"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"suncask/ui/words"
)

// Sizes of paper, inches (ISO 216; ANSI/ASME Y14.1).
var papers = map[string][2]float64{"A4": {8.27, 11.69}, "Letter": {8.5, 11}}

// pagesOf matches a page of a PDF, not the list of them.
var pagesOf = regexp.MustCompile(`/Type\s*/Page\b`)

// The household's sheet is one page of A4 and of Letter paper, alone, in every language and both
// systems of units, of an empty house and of one with findings and readings; its code, read from a
// rendering of 150 dots an inch, opens the house by its own way in; no text is cut.
func TestSheet_OnePage(t *testing.T) {
	b := start(t, tablet)
	full := "v=2&modules=6&watts=400&voc=36.9&vmp=30.8&isc=13.85&maxfuse=15&string=2&change=other&stat=ac&breaks=stat&price=0.31&valve=50&expand=valve&relief=6&supply=5.5&backup=1500-1800&lowfrom=1320&lowto=360"
	for _, l := range words.Languages {
		for _, units := range []string{"metric", "us"} {
			for name, house := range map[string]string{"empty": "v=2&modules=0", "example": "v=2&modules=4", "full": full} {
				b.open("?lang=" + l.Code + "&units=" + units + "#" + house + "&view=visit")
				b.until(`document.getElementById('part-meters') !== null`)
				if name == "full" {
					b.part("meters", "#lit-tc")
					b.run(centred("#lit-tc"), chromedp.SendKeys("#lit-tc", "42"+kb.Enter))
					for _, code := range []string{"v1", "v2", "v3", "s1", "ri", "ro"} {
						b.run(centred("#read-"+code), chromedp.SendKeys("#read-"+code, "10"+kb.Enter))
					}
				}
				b.part("sheet", "#paper")
				what := l.Code + ", " + units + ", " + name
				b.paper(what, strings.ReplaceAll(what, ", ", "-"))
			}
		}
	}
	b.clean()
}

// paper prints the sheet and looks at what came of it.
func (b *tab) paper(what, file string) {
	b.t.Helper()
	for name, inches := range papers {
		var pdf []byte
		b.run(chromedp.ActionFunc(func(ctx context.Context) (err error) {
			pdf, _, err = page.PrintToPDF().WithPreferCSSPageSize(false).WithPaperWidth(inches[0]).WithPaperHeight(inches[1]).
				WithMarginTop(12 / 25.4).WithMarginBottom(12 / 25.4).WithMarginLeft(12 / 25.4).WithMarginRight(12 / 25.4).Do(ctx)
			return err
		}))
		if n := len(pagesOf.FindAll(pdf, -1)); n != 1 {
			b.t.Errorf("%s: %d pages of %s", what, n, name)
		}
	}
	// As printed, 186 mm wide, in 150 dots an inch: a CSS pixel is a 96th of an inch.
	const wide, high = 703, 945
	media := func(kind string) chromedp.Action {
		return chromedp.ActionFunc(func(ctx context.Context) error { return emulation.SetEmulatedMedia().WithMedia(kind).Do(ctx) })
	}
	b.run(media("print"), chromedp.EmulateViewport(wide, high, chromedp.EmulateScale(150.0/96)))
	var seen struct {
		High  float64
		Link  string
		Cut   []string
		Other []string
		Small float64
	}
	b.eval(`(() => {
		const paper = document.getElementById('paper'), box = paper.getBoundingClientRect()
		const cut = [...paper.querySelectorAll('*')].filter(e => { const r = e.getBoundingClientRect(); return r.width && (r.right > box.right + 1 || r.left < box.left - 6) || e.scrollWidth > e.clientWidth + 2 && e.clientWidth && getComputedStyle(e).display !== 'inline' }).map(e => e.tagName + ' ' + e.textContent.slice(0, 40))
		const other = [...document.body.querySelectorAll('header.top, nav, .notices, .figures-bar, .house, .side.right')].filter(e => e.getBoundingClientRect().height > 0).map(e => e.className)
		const small = Math.min(...[...paper.querySelectorAll('*')].filter(e => !e.closest('svg') && e.textContent.trim()).map(e => parseFloat(getComputedStyle(e).fontSize)))
		return { High: box.bottom + scrollY, Link: paper.querySelector('.paper-link').textContent, Cut: cut, Other: other, Small: small }
	})()`, &seen)
	b.t.Logf("%s: %.0f px of %d", what, seen.High, high)
	if seen.High > high || len(seen.Cut) > 0 || len(seen.Other) > 0 {
		b.t.Errorf("%s: %.0f px of %d high; cut: %v; beside it: %v", what, seen.High, high, seen.Cut, seen.Other)
	}
	if seen.Small < 7.5/72*96 {
		b.t.Errorf("%s: letters of %.1f pt", what, seen.Small/96*72)
	}
	if strings.Contains(seen.Link, "view=") || strings.Contains(seen.Link, "read=") || !strings.Contains(seen.Link, "#v=2") {
		b.t.Errorf("%s: the code is of %s", what, seen.Link)
	}
	var picture []byte
	b.run(chromedp.ActionFunc(func(ctx context.Context) (err error) {
		picture, err = page.CaptureScreenshot().Do(ctx)
		return err
	}))
	if dir := os.Getenv("SUNCASK_SHOTS"); dir != "" {
		os.WriteFile(filepath.Join(dir, "sheet-"+file+".png"), picture, 0o644)
	}
	img, err := png.Decode(bytes.NewReader(picture))
	if err != nil {
		b.t.Fatal(err)
	}
	bitmap, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		b.t.Fatal(err)
	}
	code, err := qrcode.NewQRCodeReader().Decode(bitmap, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_TRY_HARDER: true})
	if err != nil || code.GetText() != seen.Link {
		b.t.Errorf("%s: the code says %v, %v, not %s", what, code, err, seen.Link)
	}
	b.run(media(""), chromedp.EmulateViewport(tablet.width, tablet.height))
}
