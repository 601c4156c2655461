package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// The horizon is drawn by mouse and by finger: a stroke raises what it passes, a tap
// one point, and both are in the link and an undo away.
func TestSkyline_Drawn(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			before := b.value("out-bought-year")
			b.run(card("#panel-roof"), centred("#skyline"))
			b.frame()
			r := b.box("#skyline")
			// Azimuth and elevation in the frame of 396 by 150 with its margins.
			at := func(azimuth, elevation float64) (x, y float64) {
				return r.X + (28+azimuth)*r.W/396, r.Y + (132-1.4*elevation)*r.H/150
			}
			f := finger{b, s.touch}
			x, y := at(120, 30)
			f.event("down", x, y)
			for azimuth := 125.0; azimuth <= 200; azimuth += 5 {
				x, y = at(azimuth, 30)
				f.event("move", x, y)
			}
			b.frame()
			b.shot("skyline-" + s.name)
			f.event("up", x, y)
			b.until(`location.hash.includes('horizon=110:0,120:30,200:30,210:0')`)
			if after := b.value("out-bought-year"); after <= before {
				t.Errorf("behind a ridge the house buys %g kWh, before %g", after, before)
			}
			b.frame()
			r = b.box("#skyline")
			x, y = at(200, 10)
			f.event("down", x, y)
			f.event("up", x, y)
			b.until(`location.hash.includes('190:30,200:10,210:0')`)
			b.run(chromedp.Evaluate(`document.getElementById('undo').click(); document.getElementById('undo').click()`, nil))
			b.until(`!location.hash.includes('horizon')`)
			b.clean()
		})
	}
}

// Hours that follow the sun are chosen in the panel, dragged on the dial and kept in
// the link; days without hours are listed.
func TestSunHours_OnTheDial(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1700-1800")
			b.run(card("#panel-backup"), chromedp.Click(`//div[@aria-labelledby="from-start"]/button[3]`, chromedp.BySearch))
			b.until(`location.hash.includes('backup=set-')`)
			if text := b.text("#sun-hours"); !strings.Contains(text, "On the day shown, in") || !strings.Contains(text, "days the end does not come after the start") {
				t.Errorf("the panel says %q", text)
			}
			b.run(chromedp.ScrollIntoView("#sun-hours"))
			b.shot("sun-hours-" + s.name)
			b.run(place("day"))
			b.frame()
			before := b.text("#say-hours")
			finger{b, s.touch}.drag("#grip-1-hit", 30, 8, func() {})
			if after := b.text("#say-hours"); after == before || !strings.Contains(after, "before sunset to") {
				t.Errorf("%q was dragged to %q", before, after)
			}
			b.shot("sun-dial-" + s.name)
			var link string
			b.eval(`location.hash`, &link)
			bought := b.value("out-bought-year")
			b.open(link)
			if again := b.value("out-bought-year"); again != bought {
				t.Errorf("the link %s gives %g kWh, the page had %g", link, again, bought)
			}
			b.clean()
		})
	}
}
