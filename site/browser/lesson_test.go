package browser

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"suncask/engine/lesson"
	"suncask/ui/format"
)

// clock is a time of the day, which is no figure.
var clock = regexp.MustCompile(`\d\d:\d\d`)

// told finds a figure on the page, however it may be written: as a number of its own, and none that
// stands on the scale.
func told(html string, v float64, scale lesson.Scale) (text, where string) {
	html = clock.ReplaceAllString(html, "")
	forms := []string{format.Exact(v)}
	for decimals := range 4 {
		forms = append(forms, format.Number(v, decimals), strings.ReplaceAll(format.Number(v, decimals), ",", ""))
	}
	for _, form := range forms {
		tick := false
		for i := range 5 {
			tick = tick || form == format.Number(scale.Least+float64(i)*(scale.Most-scale.Least)/4, 0)
		}
		if tick {
			continue
		}
		if found := regexp.MustCompile(`(?:^|[^\d.,])` + regexp.QuoteMeta(form) + `(?:$|[^\d])`).FindStringIndex(html); found != nil {
			return form, html[max(0, found[0]-80):min(len(html), found[0]+60)]
		}
	}
	return "", ""
}

// seen is all that the page says: its text, attributes and what stands in boxes, without hours, the
// empty strip and the geometry of pictures.
const seen = `(() => {
	const all = document.querySelector('main').cloneNode(true)
	all.querySelectorAll('script, #guess, #guess-box, .hour, #strip').forEach(e => e.remove())
	all.querySelectorAll('svg *, svg').forEach(e => [...e.attributes].forEach(a => { if (!/^(id|class|aria-.*|role|title|data-.*)$/.test(a.name)) e.removeAttribute(a.name) }))
	return document.title + all.outerHTML + [...document.querySelectorAll('input')].filter(e => e.id !== 'guess' && e.id !== 'guess-box').map(e => e.value).join(' ')
})()`

// Every question is walked to its end, by keys alone and by touch alone: nothing on the page tells the
// outcome before a guess is given, the right sentence opens the reason, and nothing is kept.
func TestLesson_Walked(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		for _, byKeys := range []bool{true, false} {
			t.Run(fmt.Sprintf("%s-keys-%v", s.name, byKeys), func(t *testing.T) {
				b := start(t, s)
				b.open("#view=lesson")
				b.until(`document.getElementById('exp-power') !== null`)
				b.axe("lesson")
				b.fits("lesson", s.width)
				b.shot("lesson-list-" + s.name)
				hand := finger{b, s.touch}
				press := func(id string) {
					b.until(`document.getElementById(` + quote(id) + `) !== null && !document.getElementById(` + quote(id) + `).disabled`)
					if byKeys {
						b.run(chromedp.Evaluate(`document.getElementById(`+quote(id)+`).focus()`, nil), chromedp.KeyEvent(kb.Enter))
						return
					}
					b.run(centred("#" + id))
					hand.tap("#" + id)
				}
				for i, e := range lesson.Experiments() {
					if i == 0 {
						press("exp-" + e.Name)
						press("lesson-begin")
					} else {
						b.until(`location.hash.endsWith('&exp=` + e.Name + `')`)
						press("lesson-begin")
					}
					for round := range e.Rounds {
						o, err := e.Simulate(round, nil)
						if err != nil {
							t.Fatal(err)
						}
						curve := len(e.Tracks) > 0
						b.until(`(document.getElementById('plot') ?? document.querySelector('#guess.empty')) !== null && document.getElementById('guess-set').disabled`)
						if i != 0 { // the other house of the first has the same 6 kWh
							html := ""
							b.eval(seen, &html)
							values := append([]float64{o.Value}, o.Curve...)
							if curve {
								values = values[1:]
							}
							for n, v := range values {
								if text, where := told(html, v, e.Scale); text != "" && (!curve || !e.Tracks[n].Given) {
									t.Errorf("%s, round %d: %s is told: %s", e.Name, round, text, where)
								}
							}
							pool := ""
							if b.eval(`document.getElementById('pool').getAttribute('d')`, &pool); len(pool) > 0 && strings.Count(pool, "L") > 4 {
								t.Errorf("%s, round %d: the dial shows the water: %s", e.Name, round, pool)
							}
						}
						switch {
						case curve && byKeys:
							for n := range e.Tracks {
								b.run(chromedp.Evaluate(fmt.Sprintf(`document.getElementById('track-%d').focus()`, n), nil), chromedp.KeyEvent(kb.Home), chromedp.KeyEvent(kb.PageUp), chromedp.KeyEvent(kb.ArrowUp))
							}
						case curve:
							b.run(centred("#plot"))
							r := b.box(".plot-tracks")
							hand.event("down", r.X+5, r.Y+r.H/2)
							for n := range 24 {
								hand.event("move", r.X+5+float64(n)/23*(r.W-10), r.Y+r.H/4+float64(n)/46*r.H)
								b.frame()
							}
							hand.event("up", r.X+r.W-5, r.Y+r.H/2)
							b.frame()
						case byKeys:
							b.run(chromedp.Focus("#guess", chromedp.ByQuery), chromedp.KeyEvent(kb.ArrowRight), chromedp.KeyEvent(kb.ArrowRight))
						default:
							b.run(centred("#guess"))
							hand.tap("#guess")
						}
						b.until(`!document.getElementById('guess-set').disabled`)
						if curve && round == 0 {
							b.shot("lesson-draw-" + e.Name + "-" + s.name)
						}
						if i == 2 && round == 0 {
							b.shot("lesson-guess-" + s.name)
						}
						press("guess-set")
						b.until(`document.getElementById('lesson-gap') !== null`)
						if curve && round == 0 {
							b.axe("lesson curve")
							b.shot("lesson-drawn-" + e.Name + "-" + s.name)
						}
						decimals := 0
						if e.Scale.Step < 1 {
							decimals = 1
						}
						if got, want := b.text("#lesson-gap"), format.Number(o.Value, decimals); !curve && !strings.Contains(got, want) {
							t.Errorf("%s, round %d: %q without %s", e.Name, round, got, want)
						}
						if round == 0 {
							right := (3 - (i%2 + 1)) % 3 // whichever order the three are in
							press(fmt.Sprint("pick-", (right+1)%3))
							b.until(`document.getElementById('pick-says') !== null && document.getElementById('lesson-reason').disabled`)
							press(fmt.Sprint("pick-", right))
						}
						if i == 2 && round == 0 {
							b.axe("lesson seen")
							b.fits("lesson seen", s.width)
							b.shot("lesson-see-" + s.name)
						}
						press("lesson-reason")
						for {
							more := false
							if b.eval(`document.getElementById('lesson-line-on') !== null`, &more); !more {
								break
							}
							press("lesson-line-on")
						}
						if text := b.text("#lesson-why"); strings.Contains(text, "%[") || strings.Contains(text, "NaN") {
							t.Errorf("%s, round %d: %q", e.Name, round, text)
						}
						if i == 2 && round == 0 {
							b.axe("lesson why")
							b.shot("lesson-why-" + s.name)
						}
						press("lesson-next")
					}
				}
				b.until(`document.getElementById('exp-power') !== null && !location.hash.includes('exp=')`)
				var kept []string
				b.eval(`Object.keys(localStorage)`, &kept)
				if len(kept) > 0 {
					t.Errorf("the device keeps %v", kept)
				}
				b.clean()
			})
		}
	}
}

// A question's link opens it with its house, before any guess; a name that is none is refused in words;
// another way in brings the house back that was there before.
func TestLesson_Link(t *testing.T) {
	b := start(t, wide)
	b.open("#view=lesson&exp=tap")
	b.until(`document.getElementById('lesson-begin') !== null`)
	if link := b.link(); !strings.Contains(link, "pipe=0") || !strings.HasSuffix(link, "&view=lesson&exp=tap") {
		t.Errorf("the address is %s", link)
	}
	b.open("#view=lesson&exp=tides")
	b.until(`document.getElementById('link-problems') !== null`)
	if got := b.text("#link-problems"); !strings.Contains(got, "exp") {
		t.Errorf("refused as %q", got)
	}
	b.open("#" + house)
	before := b.link()
	b.entry(wide, "lesson")
	b.until(`document.getElementById('exp-leak') !== null`)
	b.run(chromedp.Click("#exp-leak", chromedp.ByQuery))
	b.until(`location.hash.includes('exp=leak')`)
	b.entry(wide, "home")
	b.until(`!location.hash.includes('view=')`)
	if after := b.link(); after != before {
		t.Errorf("the house after a lesson is %s, before it %s", after, before)
	}
	b.clean()
}

// On a projector no letter is smaller than a thirtieth of the picture, and a question fits it.
func TestLesson_Big(t *testing.T) {
	for _, s := range []screen{{name: "stage", width: 1280, height: 720}, {name: "hall", width: 1920, height: 1080}} {
		b := start(t, s)
		least := math.Max(24, float64(s.height)/30)
		for _, exp := range []string{"power", "layers", "roof"} {
			b.open("#view=lesson&big=1&exp=" + exp)
			b.until(`document.getElementById('lesson-begin') !== null`)
			look := func(step string) {
				var smallest float64
				b.eval(`Math.min(...[...document.querySelectorAll('.page *')].filter(e => e.checkVisibility({ visibilityProperty: true }) && !e.closest('.unseen') && [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim() !== '')).map(e => parseFloat(getComputedStyle(e).fontSize)))`, &smallest)
				if smallest < least-0.1 {
					t.Errorf("%s, %s, %s: letters of %.1f px, want %.0f", s.name, exp, step, smallest, least)
				}
				var over float64
				if b.eval(`document.documentElement.scrollHeight - innerHeight`, &over); over > 0 {
					t.Errorf("%s, %s, %s: %.0f px below the picture", s.name, exp, step, over)
				}
				b.shot("lesson-big-" + s.name + "-" + exp + "-" + step)
			}
			look("look")
			b.run(chromedp.Click("#lesson-begin", chromedp.ByQuery))
			b.until(`document.getElementById('guess-set') !== null`)
			b.run(chromedp.Evaluate(`for (const e of document.querySelectorAll('#guess')) { e.value = e.max; e.dispatchEvent(new Event('input', { bubbles: true })) }`, nil))
			for n := range 6 {
				b.run(chromedp.Evaluate(fmt.Sprintf(`document.getElementById('track-%d')?.focus()`, n), nil), chromedp.KeyEvent(kb.Home))
			}
			look("guess")
			b.run(chromedp.Click("#guess-set", chromedp.ByQuery))
			b.until(`document.getElementById('lesson-gap') !== null`)
			look("see")
		}
		b.clean()
	}
}
