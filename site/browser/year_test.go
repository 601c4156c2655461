package browser

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// saved replaces downloads by a record of them: name and text.
const saved = `(() => {
	window.saved = []
	let blob = null
	const make = URL.createObjectURL
	URL.createObjectURL = b => { blob = b; return make.call(URL, b) }
	HTMLAnchorElement.prototype.click = function () { const name = this.download; blob.text().then(text => window.saved.push({name, text})) }
	return 1 })()`

// The year by month, by day and as a flow; its tables and pictures can be saved, a day with
// a cool use lists its uses and what helps.
func TestYear_Shown(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#v=2&place=seville&people=4&tank=250&modules=2&backup=1500-1600")
			b.run(place("year"))
			b.until(`document.querySelector('#year svg') !== null && document.querySelector('#flow svg') !== null`)
			for _, at := range []string{"#year", "#calendar", "#flow"} {
				b.run(chromedp.ScrollIntoView(at))
				b.frame()
				b.shot("year-" + at[1:] + "-" + s.name)
			}
			var bought, sum float64
			b.eval(`+document.getElementById('out-bought-year').dataset.value`, &bought)
			b.eval(`suncaskCharts.series('year')[0].reduce((sum, p) => sum + p[1], 0)`, &sum)
			if bought == 0 || sum < 0.999999*bought || sum > 1.000001*bought {
				t.Errorf("the months' bars add up to %g kWh, the year bought %g", sum, bought)
			}
			b.axe("shown")
			// A day with a cool use.
			b.run(chromedp.Click("#cool-after"))
			b.until(`document.getElementById('day-uses') !== null`)
			if text := b.text("#day-uses"); !strings.Contains(text, "ran cool") {
				t.Errorf("the day says %q", text)
			}
			b.run(centred("#use-try"), chromedp.Click("#use-try"))
			b.until(`document.querySelectorAll('#day-uses .gain').length > 2`)
			b.frame()
			b.shot("year-day-" + s.name)
			b.axe("shown")
			// That day on the dial.
			date := b.text("#day-uses h2")
			b.run(chromedp.Click("#day-on-dial"))
			b.until(`document.getElementById('month').textContent === ` + quote(date))
			b.frame()
			b.shot("year-dial-" + s.name)
			finger{b, s.touch}.drag("#grip-1-hit", 15, 3, func() {})
			b.run(chromedp.Click("#sky-typical", chromedp.ByQuery))
			b.until(`document.getElementById('month').textContent === 'January'`) // most cool water
			// The flow of the day.
			b.run(place("year"))
			b.until(`document.querySelector('#flow svg text') !== null`)
			before := ""
			b.eval(`document.querySelector('#flow svg').textContent`, &before)
			b.run(chromedp.Click("#flow-other"))
			b.until(`document.querySelector('#flow svg').textContent !== ` + quote(before))
			// What is saved.
			b.eval(saved, new(int))
			b.run(chromedp.Click("#save-hours"))
			b.until(`saved.length === 1`)
			var lines int
			b.eval(`saved[0].text.split('\r\n').length`, &lines)
			if lines != 1+8760+1 {
				t.Errorf("the hours' file has %d lines", lines)
			}
			b.run(chromedp.Click("#save-year"), chromedp.Click("#save-calendar"))
			b.until(`saved.length === 3`)
			for i, want := range []string{"suncask-year.svg", "suncask-calendar.svg"} {
				name := ""
				b.eval(fmt.Sprintf(`saved[%d].name`, i+1), &name)
				text := ""
				b.eval(fmt.Sprintf(`saved[%d].text`, i+1), &text)
				if err := xml.Unmarshal([]byte(text), new(struct{ XMLName xml.Name })); name != want || err != nil || !strings.HasPrefix(text, "<svg") {
					t.Errorf("picture %q, %v", name, err)
				}
				b.keep(name, text)
			}
			b.clean()
		})
	}
}

// A tap on the calendar shows the day at that place.
func TestYear_CalendarTapped(t *testing.T) {
	b := start(t, phone)
	b.open("#" + house)
	b.run(place("year"), chromedp.ScrollIntoView("#calendar"))
	// 20 March: row 2, column 19.
	b.eval(`(() => { const r = document.getElementById('calendar').getBoundingClientRect(), k = r.width / 323;
		const x = r.left + (40 + 19 * 9 + 4) * k, y = r.top + (16 + 2 * 16 + 7) * k;
		document.elementFromPoint(x, y).dispatchEvent(new MouseEvent('click', {bubbles: true, clientX: x, clientY: y})); return 1 })()`, new(int))
	b.until(`document.getElementById('day-uses') !== null`)
	if text := b.text("#day-uses h2"); text != "20 March" {
		t.Errorf("the day is %q", text)
	}
	b.clean()
}

// Sizes appear while a worker tries them; one is taken, the list stays and marks it.
func TestSizes_Tried(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			b.run(place("advice"), chromedp.Click("#elements-button", chromedp.ByQuery))
			b.until(`document.querySelectorAll('.gain').length > 2 && document.getElementById('fold-elements') !== null`)
			b.run(place("advice"), chromedp.Click("#elements-button", chromedp.ByQuery)) // stop
			b.run(centred("#sizes-button"), chromedp.Click("#sizes-button", chromedp.ByQuery))
			b.until(`document.querySelectorAll('#sizes tr').length > 3`)
			b.run(centred("#sizes-button"), chromedp.Click("#sizes-button", chromedp.ByQuery))
			b.until(`document.getElementById('sizes-status').textContent === ''`)
			rows := 0
			b.eval(`document.querySelectorAll('#sizes tr').length`, &rows)
			b.run(chromedp.ScrollIntoView("#sizes"))
			b.shot("sizes-" + s.name)
			b.laidOut("sizes")
			b.axe("shown")
			modules, _, _ := strings.Cut(strings.SplitAfter(b.text("#sizes tr:nth-child(3) th"), "Modules: ")[1], ";")
			b.run(chromedp.Click("#sizes tr:nth-child(3) button"))
			b.until(`location.hash.includes('modules=` + modules + `&')`)
			again, marked := 0, 0
			b.eval(`document.querySelectorAll('#sizes tr').length`, &again)
			b.eval(`document.querySelectorAll('#sizes tr.here').length`, &marked)
			if again != rows || marked != 1 {
				t.Errorf("%d rows, before %d; %d marked as the house", again, rows, marked)
			}
			if cost := b.text("#sizes tr:nth-child(3) td"); strconv.Itoa(int(math.Round(b.value("out-cost-year")))) != cost {
				t.Errorf("the row says %s, the page %v", cost, b.value("out-cost-year"))
			}
			b.clean()
		})
	}
}

// The ways to set the hours, and cost over length.
func TestWays_Tried(t *testing.T) {
	b := start(t, phone)
	b.open("#v=2&place=seville&people=4&tank=250&modules=2&backup=1500-1700")
	b.run(place("advice"), chromedp.Click("#length-button", chromedp.ByQuery))
	b.until(`document.querySelector('#lengths svg') !== null && document.getElementById('length-status').textContent === ''`)
	b.run(chromedp.ScrollIntoView("#lengths"))
	b.frame()
	b.shot("lengths-phone")
	b.run(centred("#ways-button"), chromedp.Click("#ways-button", chromedp.ByQuery))
	for i := 0; b.text("#ways-button") != "Try other ways"; i++ {
		if i == 90 {
			t.Fatal("not done in a minute and a half")
		}
		b.run(chromedp.Sleep(time.Second))
	}
	var bars int
	b.eval(`document.querySelectorAll('.gain .gain-bar path[d^="M50 1"]').length`, &bars)
	b.run(centred("#fold-ways"), chromedp.Click("#fold-ways", chromedp.ByQuery))
	b.until(`document.getElementById('ways') !== null`)
	rows, listed := "", 0
	b.eval(`document.getElementById('ways').innerText`, &rows)
	b.eval(`document.querySelectorAll('#ways tr:not(:first-child)').length`, &listed)
	if bars < listed || listed < 4 {
		t.Errorf("%d bars, %d rows", bars, listed)
	}
	for _, want := range []string{"One window", "With the sun", "Month by month", "Best over ten years"} {
		if !strings.Contains(rows, want) {
			t.Errorf("no %q in %q", want, rows)
		}
	}
	b.run(chromedp.ScrollIntoView(".gain"))
	b.frame()
	b.shot("ways-phone")
	b.axe("shown")
	b.clean()
}

// A meter's reading says which showers fit, and they are taken; one that cannot be is said
// to be so.
func TestMeter_Fitted(t *testing.T) {
	b := start(t, phone)
	b.open("#" + house + "&month=dec&meter=60")
	b.run(card("#panel-home"), chromedp.ScrollIntoView("#meter"))
	b.shot("meter-phone")
	b.until(`document.getElementById('meter-take') !== null`)
	b.run(chromedp.Click("#meter-take"))
	b.until(`location.hash.includes('shower=')`)
	b.run(chromedp.SetValue("#field-meter", "4000"), chromedp.Focus("#field-meter"), chromedp.KeyEvent(kb.Enter))
	b.until(`document.getElementById('meter').textContent.includes('No shower')`)
	if text := b.text("#meter"); !strings.Contains(text, "December") {
		t.Error(strconv.Quote(text))
	}
	b.clean()
}

// A tap on a chart reads the item under the finger and marks it; the buttons read its neighbours.
func TestReading_Tapped(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house)
			b.run(place("year"))
			for _, c := range []struct{ chart, month string }{{"year", "June"}, {"year", "November"}} {
				b.until(`document.querySelector('#` + c.chart + ` .read-mark') !== null`)
				at := map[string]float64{"June": 6, "November": 11}[c.month]
				b.run(centred("#" + c.chart))
				x, y := 0.0, 0.0
				b.eval(`(() => { const box = document.querySelector('#`+c.chart+` .chart-box').getBoundingClientRect()
					let x = box.left
					while (suncaskCharts.across('`+c.chart+`', x) < `+strconv.FormatFloat(at, 'f', -1, 64)+`) x++
					return x })()`, &x)
				b.eval(`(() => { const box = document.querySelector('#`+c.chart+` .chart-box').getBoundingClientRect(); return (box.top + box.bottom) / 2 })()`, &y)
				b.run(chromedp.MouseClickXY(x, y))
				b.until(`document.getElementById('read-year-says').textContent.startsWith('` + c.month + `')`)
				off := 0.0
				b.eval(`document.querySelector('#`+c.chart+` .read-mark').getBoundingClientRect().left + 1 - `+strconv.FormatFloat(x, 'f', 2, 64), &off)
				if math.Abs(off) > 2 {
					t.Errorf("%s is marked %g px beside the tap", c.month, off)
				}
			}
			b.run(chromedp.Click("#read-year-after", chromedp.ByQuery))
			b.until(`document.getElementById('read-year-says').textContent.startsWith('December')`)
			b.shot("read-year-" + s.name)
			b.run(centred("#read-cash-before"), chromedp.Click("#read-cash-before", chromedp.ByQuery))
			b.frame()
			b.shot("read-cash-" + s.name)
			b.clean()
		})
	}
}

// A month's light stands above its name: bars do not widen their axis beyond the one below.
func TestClimate_BarsAboveTheirMonths(t *testing.T) {
	b := start(t, wideDark)
	b.open("?lang=en#" + house + "&month=mar")
	b.run(card("#panel-weather"))
	b.until(`document.querySelector('#climate .read-mark') !== null`)
	off := 0.0
	b.eval(`(() => { const name = [...document.querySelectorAll('#climate svg text')].find(e => e.textContent === 'Mar').getBoundingClientRect()
		return document.querySelector('#climate .read-mark').getBoundingClientRect().left + 1 - (name.left + name.right) / 2 })()`, &off)
	if math.Abs(off) > 2 {
		t.Errorf("March's light stands %g px beside its name", off)
	}
	b.clean()
}
