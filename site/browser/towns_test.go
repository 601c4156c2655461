package browser

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"suncask/engine/climate"
	"suncask/engine/published"
	"suncask/engine/scenario"
)

// strangersTowns are towns as people type them, with where they are and their zone (positions
// from memory of maps and gazetteers, to 0.1 degree; offsets by Go's copy of the IANA data).
// The sign of the latitude tells which way modules there face.
var strangersTowns = []struct {
	typed    string
	lat, lon float64
	zone     string
}{
	{"manchester", 53.48, -2.24, "Europe/London"},
	{"Manchester, New Hampshire", 42.99, -71.46, "America/New_York"},
	{"M\u00fcnchen", 48.14, 11.58, "Europe/Berlin"},
	{"koln", 50.94, 6.96, "Europe/Berlin"},
	{"a coruna", 43.37, -8.40, "Europe/Madrid"},
	{"San Sebastian, Spain", 43.31, -1.97, "Europe/Madrid"},
	{"C\u00f3rdoba, Espa\u00f1a", 37.89, -4.78, "Europe/Madrid"},
	{"cordoba argentina", -31.41, -64.18, "America/Argentina/Cordoba"},
	{"S\u00e3o Jos\u00e9 dos Campos", -23.18, -45.89, "America/Sao_Paulo"},
	{"valparaiso chile", -33.04, -71.63, "America/Santiago"},
	{"coyhaique", -45.57, -72.07, "America/Coyhaique"},
	{"El Paso", 31.76, -106.49, "America/Denver"},
	{"ciudad juarez", 31.73, -106.48, "America/Ciudad_Juarez"},
	{"flagstaff", 35.20, -111.65, "America/Phoenix"},
	{"st johns newfoundland", 47.56, -52.71, "America/St_Johns"},
	{"Regina, Saskatchewan", 50.45, -104.62, "America/Regina"},
	{"Lule\u00e5", 65.58, 22.15, "Europe/Stockholm"},
	{"tornio", 65.85, 24.15, "Europe/Helsinki"},
	{"troms\u00f8", 69.65, 18.96, "Europe/Oslo"},
	{"lodz", 51.76, 19.46, "Europe/Warsaw"},
	{"Edirne", 41.67, 26.56, "Europe/Istanbul"},
	{"p\u00e9cs", 46.07, 18.23, "Europe/Budapest"},
	{"Kathmandu", 27.72, 85.32, "Asia/Kathmandu"},
	{"pune", 18.52, 73.86, "Asia/Kolkata"},
	{"yangon", 16.81, 96.16, "Asia/Yangon"},
	{"mashhad", 36.30, 59.61, "Asia/Tehran"},
	{"Alice Springs", -23.70, 133.88, "Australia/Darwin"},
	{"broken hill", -31.96, 141.45, "Australia/Broken_Hill"},
	{"Whang\u0101rei", -35.72, 174.32, "Pacific/Auckland"},
	{"stellenbosch", -33.93, 18.86, "Africa/Johannesburg"},
}

// Thirty towns typed as strangers do give the right point and the right clock, by Enter, by
// arrows or by a tap on what is offered.
func TestTowns_Strangers(t *testing.T) {
	for _, s := range []screen{phone, wide} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			b.run(card("#panel-weather"))
			for i, c := range strangersTowns {
				if s.name == wide.name && i%3 != 0 {
					continue // a third of them with the mouse
				}
				if i > 0 {
					b.typeTown(c.typed)
				} else {
					b.typeInto("field-place", c.typed) // before the list has come
				}
				switch {
				case i == 0:
				case i%3 == 0 && s.touch:
					b.tap("#places-0")
				case i%3 == 0:
					b.run(chromedp.Click("#places-0", chromedp.ByQuery))
				case i%3 == 1:
					b.run(chromedp.KeyEvent(kb.ArrowDown), chromedp.KeyEvent(kb.Enter))
				default:
					b.run(chromedp.KeyEvent(kb.Enter))
				}
				b.until(`document.getElementById('places').hidden`)
				b.until(fmt.Sprintf(`document.getElementById('field-place').value !== %s`, quote(c.typed)))
				b.frame()
				house, problems := scenario.Decode(strings.TrimPrefix(b.link(), "#"))
				at, found := house.At()
				offsets, err := published.Offsets(c.zone, climate.RefYear)
				if len(problems) > 0 || !found || err != nil {
					t.Errorf("%q: %s, %v, %v", c.typed, b.link(), problems, err)
					continue
				}
				want, _ := climate.ClockOver(&offsets)
				if math.Abs(at.LatDeg-c.lat) > 0.1 || math.Abs(at.LonDeg-c.lon) > 0.1 || at.Clock != want {
					t.Errorf("%q: %.2f, %.2f with %+v, want %.2f, %.2f with %+v (%s)", c.typed, at.LatDeg, at.LonDeg, at.Clock, c.lat, c.lon, want, b.link())
				}
			}
			b.clean()
		})
	}
}

// typeTown types into the place's box and waits until something is offered.
func (b *tab) typeTown(text string) {
	b.t.Helper()
	b.run(chromedp.Focus("#field-place", chromedp.ByQuery), chromedp.Evaluate(`document.getElementById('field-place').select()`, nil), chromedp.KeyEvent(text))
	b.until(`!document.getElementById('places').hidden`)
}

// The list of what is offered can be used by keys and read by screen readers; nearly right
// spellings are named; points take the nearest town's clock.
func TestTowns_List(t *testing.T) {
	for _, s := range []screen{phone, phoneDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			asked := false
			b.eval(`performance.getEntriesByType('resource').some(r => r.name.includes('towns.txt'))`, &asked)
			if asked {
				t.Error("the list is fetched before a place is asked for")
			}
			b.run(card("#panel-weather"), chromedp.Focus("#field-place", chromedp.ByQuery))
			b.until(`performance.getEntriesByType('resource').some(r => r.name.includes('towns.txt') && r.responseEnd > 0)`)
			b.typeTown("cordob")
			b.until(`document.querySelectorAll('#places li').length > 2`)
			for _, shown := range []string{"#field-place", "#places"} {
				if r := b.box(shown); r.Y < 0 || r.Y+r.H > 740 {
					t.Errorf("%s reaches from %.0f to %.0f, the screen is 740 high", shown, r.Y, r.Y+r.H)
				}
			}
			b.axe("places offered")
			b.fits("places offered", s.width)
			b.shot("towns-" + s.name)
			active := func() (id string) {
				b.eval(`document.getElementById('field-place').getAttribute('aria-activedescendant') || ''`, &id)
				return id
			}
			took := 0.0
			b.eval(`(() => { const box = document.getElementById('field-place'), from = performance.now()
				for (let i = 0; i < 20; i++) box.dispatchEvent(new Event('input', { bubbles: true }))
				return (performance.now() - from) / 20 })()`, &took)
			t.Logf("an answer takes %.1f ms", took)
			if took > 50 {
				t.Errorf("an answer takes %.1f ms", took)
			}
			b.run(chromedp.KeyEvent(kb.ArrowDown), chromedp.KeyEvent(kb.ArrowDown))
			if id := active(); id != "places-1" {
				t.Errorf("two arrows down mark %q", id)
			}
			b.run(chromedp.KeyEvent(kb.ArrowUp), chromedp.KeyEvent(kb.ArrowUp))
			if id := active(); id != "" {
				t.Errorf("back up marks %q", id)
			}
			b.run(chromedp.KeyEvent(kb.Escape))
			b.until(`document.getElementById('places').hidden && document.getElementById('field-place').getAttribute('aria-expanded') === 'false'`)
			if link := b.link(); strings.Contains(link, "place=") {
				t.Errorf("Escape took %s", link)
			}
			b.typeInto("field-place", "Manchestre")
			b.until(`document.getElementById('field-place-problem')?.textContent.includes('Manchester, United Kingdom')`)
			b.shot("towns-near-" + s.name)
			b.typeInto("field-place", "53.4 N 2.3 W")
			b.until(`location.hash.includes('place=53.4,-2.3&in=United%20Kingdom&zone=0&summer=0329-1025')`)
			b.typeInto("field-place", "-25.1 -130.1") // Pitcairn: overseas
			b.until(fmt.Sprintf(`document.getElementById('field-place-note').textContent.includes(%s)`, quote("nearest place of the table")))
			b.clean()
		})
	}
}

// Without a network the places of the table and points still work, and the page says so;
// once the list was there it works without one.
func TestTowns_Offline(t *testing.T) {
	b := start(t, phone)
	b.open("")
	b.until(`navigator.serviceWorker.controller !== null`)
	b.run(card("#panel-weather"))
	b.run(chromedp.Focus("#field-place", chromedp.ByQuery))
	b.until(`caches.keys().then(async names => { window.townsKept = (await Promise.all(names.map(async n => (await caches.open(n)).match('towns.txt')))).some(Boolean) }), window.townsKept === true`)
	b.server.CloseClientConnections()
	b.server.Listener.Close()
	b.open("#v=2&tank=150")
	b.run(card("#panel-weather"))
	b.typeTown("brighton")
	b.run(chromedp.KeyEvent(kb.Enter))
	b.until(`location.hash.includes('town=Brighton')`)
	b.clean()
}

func TestTowns_NeverFetched(t *testing.T) {
	b := start(t, phone)
	b.open("")
	b.until(`navigator.serviceWorker.controller !== null`)
	b.server.CloseClientConnections()
	b.server.Listener.Close()
	b.run(card("#panel-weather"))
	b.typeInto("field-place", "Manchester")
	b.until(`document.getElementById('field-place-note').textContent.includes('cannot be fetched without a network')`)
	b.typeInto("field-place", "Oslo, Norway")
	b.until(`location.hash.includes('place=oslo')`)
	b.typeInto("field-place", "53\u00b028'N 2\u00b014'W")
	b.until(`location.hash.includes('place=53.47,-2.23')`)
	if note := b.text("#field-place-note"); !strings.Contains(note, "nearest built-in place") {
		t.Errorf("the note says %q", note)
	}
}
