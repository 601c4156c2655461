package browser

import (
	"context"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// weatherYear repeats the invented day of testdata for a year; with early, its light
// is that of the hour after: an hour ahead of its own clock.
func weatherYear(t *testing.T, early bool) string {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/weather/day.epw")
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSpace(string(raw)), "\n")
	head, day := lines[:8], lines[8:]
	if early {
		rows := make([]string, len(day))
		for i := range day {
			f, next := strings.Split(day[i], ","), strings.Split(day[(i+1)%24], ",")
			f[13], f[15] = next[13], next[15]
			rows[i] = strings.Join(f, ",")
		}
		day = rows
	}
	var b strings.Builder
	b.WriteString(strings.Join(head, "\n") + "\n")
	for m, n := range [...]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		for d := range n {
			for _, row := range day {
				b.WriteString(strings.Replace(row, "2001,1,1,", fmt.Sprintf("2001,%d,%d,", m+1, d+1), 1) + "\n")
			}
		}
	}
	return b.String()
}

func (b *tab) chooseFile(name, text string) {
	b.t.Helper()
	path := filepath.Join(b.t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		b.t.Fatal(err)
	}
	b.run(chromedp.SetUploadFiles("#weather-file", []string{path}))
}

func TestWeather_FileFromChoiceToLink(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("")
			b.run(card("#panel-weather"))
			before := b.value("out-bought-year")

			b.chooseFile("letter.epw", "Dear reader,\nthis is a letter.\n")
			b.until(`document.querySelector('#weather-problem') !== null`)
			if text := b.text("#weather-problem"); !strings.HasPrefix(text, "Line 1: ") || b.value("out-bought-year") != before {
				t.Errorf("a letter gives %q", text)
			}
			b.chooseFile("wrong.epw", strings.Replace(weatherYear(t, false), "2001,3,4,5,60", "2001,3,4,55,60", 1))
			b.until(`document.querySelector('#weather-problem')?.textContent.includes('column 4')`)
			if text := b.text("#weather-problem"); !strings.Contains(text, "Line 1501, column 4 (hour): 55 is outside what is allowed, 1 to 24") {
				t.Errorf("a wrong hour gives %q", text)
			}
			b.run(chromedp.ScrollIntoView("#drop-zone"))
			b.shot("weather-refused-" + s.name)

			b.chooseFile("early.epw", weatherYear(t, true))
			b.until(`location.hash.includes('weather=')`)
			b.run(chromedp.ScrollIntoView("#drop-zone"))
			b.shot("weather-read-" + s.name)
			if text := b.text("#weather-status"); !strings.Contains(text, "EPW") || !strings.Contains(text, "ahead of the sun") {
				t.Errorf("status %q", text)
			}
			early := b.value("out-bought-year")
			if early == before {
				t.Error("another year of weather buys as much as before")
			}
			b.run(chromedp.Click("#weather-shift"))
			b.until(`location.hash.includes('shift=')`)
			if b.value("out-bought-year") == early {
				t.Error("moving the light changed nothing")
			}
			var hash string
			b.eval(`location.hash`, &hash)
			shifted := b.value("out-bought-year")

			// The same device has kept the file; another one says that it has not.
			b.open(hash)
			if got := b.value("out-bought-year"); math.Abs(got-shifted) > 1e-9 {
				t.Errorf("the link buys %g, before it was %g", got, shifted)
			}
			b.eval(`localStorage.clear()`, new(any))
			b.open(hash)
			if text := b.text("#weather-absent"); !strings.Contains(text, "not on this device") {
				t.Errorf("without the file: %q", text)
			}
			b.shot("weather-absent-" + s.name)
			b.clean()
		})
	}
}

func TestWeather_DroppedFile(t *testing.T) {
	b := start(t, wide)
	b.open("")
	b.eval(fmt.Sprintf(`(() => {
		const data = new DataTransfer()
		data.items.add(new File([%s], 'year.epw'))
		document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }))
	})()`, quote(weatherYear(t, false))), new(any))
	b.until(`location.hash.includes('weather=')`)
	b.until(`document.querySelector('#weather-status')?.textContent.includes('EPW')`)
	b.clean()
}

func TestWeather_MonthsAndPlaces(t *testing.T) {
	b := start(t, phone)
	b.open("")
	b.run(card("#panel-weather"))
	b.typeInto("field-place", "38.7 N 9.1 W")
	b.until(`location.hash.includes('place=38.7,-9.1')`)
	b.run(chromedp.Click("#menu", chromedp.ByQuery))
	b.until(`document.getElementById('accuracy') !== null`)
	if text := b.text("#accuracy"); !strings.Contains(text, "nearest place of the table Lisbon") {
		t.Errorf("accuracy %q", text)
	}
	b.run(chromedp.Click("#over-close", chromedp.ByQuery))
	b.until(`document.getElementById('over') === null`)
	before := b.value("out-bought-year")
	b.typeInto("light-12", "0.8")
	b.until(`location.hash.includes('light=')`)
	if b.value("out-bought-year") <= before {
		t.Error("a dark December buys no more")
	}
	b.run(chromedp.ScrollIntoView("#months"))
	b.shot("months-phone")
	var bars [][][2]float64
	if b.eval(`window.suncaskCharts.series('climate')`, &bars); len(bars) != 3 || len(bars[0]) != 12 || bars[0][11][1] != 0.8 {
		t.Errorf("the chart of the months: %v", bars)
	}
	b.run(chromedp.ScrollIntoView("#climate"))
	b.shot("climate-phone")
	b.typeInto("light-12", "12")
	b.until(`document.querySelector('#months-problem') !== null`)
	if text := b.text("#months-problem"); !strings.Contains(text, "December: 12 is brighter than a cloudless sky. Allowed: 0 to ") {
		t.Errorf("a December of 12 kWh/m2 a day gives %q", text)
	} else if strings.Contains(text, "0 to 0") {
		t.Errorf("nothing would be allowed: %q", text)
	}
	var kept string
	if b.eval(`document.getElementById('light-12').value`, &kept); kept != "12" {
		t.Errorf("what was typed became %q", kept)
	}
	b.shot("months-refused-phone")
	b.run(card("#panel-roof"), chromedp.Click("#plane-add"))
	b.until(`location.hash.includes('modules2=2')`)
	b.run(chromedp.Click("#more"))
	b.typeInto("field-horizon", "90:15 120:22")
	b.until(`location.hash.includes('horizon=90:15,120:22')`)
	b.shot("roof-phone")
	b.clean()
}

// Many years run in a worker: the page stays alive, figures come, and a change of the
// house takes them away.
func TestYears_InAWorker(t *testing.T) {
	for _, blocked := range []bool{false, true} {
		b := start(t, phone)
		b.open("")
		if blocked {
			b.eval(`delete window.Worker; 0`, new(any))
		}
		b.run(place("year"), chromedp.ScrollIntoView("#years-button"), chromedp.Click("#years-button"))
		b.until(`document.querySelector('#years-status').textContent.includes('of 60 years')`)
		b.until(`document.querySelectorAll('#dots circle').length === 60`)
		b.run(chromedp.Click("#fold-years-table", chromedp.ByQuery))
		b.until(`document.querySelectorAll('#years-table tr').length === 4`)
		var row []string
		b.eval(`[...document.querySelectorAll('#years-table tr')[1].querySelectorAll('td')].map(e => e.textContent)`, &row)
		v := make([]float64, len(row))
		for i, text := range row {
			fmt.Sscan(text, &v[i])
		}
		if len(v) != 4 || !(v[1] < v[2] && v[2] < v[3]) || math.Abs(v[0]-b.value("out-bought-year")) > 1 {
			t.Errorf("bought in this, a good, a middle and a bad year: %v", row)
		}
		if !blocked {
			b.run(chromedp.ScrollIntoView("#years-title"))
			b.frame()
			b.shot("years-phone")
			b.laidOut("good and bad years")
			unseen := 0
			if b.eval(`[...document.querySelectorAll('#dots text')].filter(e => !e.checkVisibility()).length`, &unseen); unseen > 0 {
				t.Errorf("%d words of the picture are hidden", unseen)
			}
		}
		b.run(card("#panel-tank"))
		b.typeInto("field-tank", "150")
		b.until(`location.hash.includes('tank=150')`)
		b.run(place("year"))
		b.until(`document.querySelector('#dots') === null`)
		b.clean()
	}
}

// The device's place, granted and refused.
func TestPlace_OfTheDevice(t *testing.T) {
	for _, granted := range []bool{false, true} {
		b := start(t, phone)
		setting := browser.PermissionSettingDenied
		if granted {
			setting = browser.PermissionSettingGranted
		}
		b.run(chromedp.ActionFunc(func(ctx context.Context) error {
			c := chromedp.FromContext(ctx)
			return browser.SetPermission(&browser.PermissionDescriptor{Name: "geolocation"}, setting).Do(cdp.WithExecutor(ctx, c.Browser))
		}), emulation.SetGeolocationOverride().WithLatitude(41.904).WithLongitude(12.496).WithAccuracy(10))
		b.open("")
		b.run(card("#panel-weather"), chromedp.Click("#device-place"))
		if granted {
			b.until(`location.hash.includes('place=41.9,12.5')`)
		} else {
			b.until(`document.querySelector('#device-place-problem') !== null`)
		}
		b.clean()
	}
}
