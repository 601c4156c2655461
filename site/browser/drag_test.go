package browser

import (
	"context"
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"

	"suncask/engine/scenario"
	"suncask/ui/curve"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// finger moves a mouse or a finger on the page.
type finger struct {
	b     *tab
	touch bool
}

func (f finger) event(kind string, x, y float64) {
	f.b.t.Helper()
	f.b.run(chromedp.ActionFunc(func(ctx context.Context) error {
		if f.touch {
			at := []*input.TouchPoint{{X: x, Y: y, ID: 1}}
			types := map[string]input.TouchType{"down": input.TouchStart, "move": input.TouchMove, "up": input.TouchEnd, "cancel": input.TouchCancel}
			if kind == "up" || kind == "cancel" {
				at = []*input.TouchPoint{}
			}
			return input.DispatchTouchEvent(types[kind], at).Do(ctx)
		}
		types := map[string]input.MouseType{"down": input.MousePressed, "move": input.MouseMoved, "up": input.MouseReleased}
		e := input.DispatchMouseEvent(types[kind], x, y).WithButton(input.Left).WithClickCount(1)
		if kind == "move" {
			e = e.WithButtons(1)
		}
		return e.Do(ctx)
	}))
}

// tap taps the middle of an element.
func (f finger) tap(selector string) {
	f.b.t.Helper()
	r := f.b.box(selector)
	f.event("down", r.X+r.W/2, r.Y+r.H/2)
	f.event("up", r.X+r.W/2, r.Y+r.H/2)
	f.b.frame()
}

// drag turns a part of the dial by degrees in steps, and calls during before the end.
func (f finger) drag(selector string, degrees float64, steps int, during func()) {
	f.b.t.Helper()
	x, y, path := f.b.around(selector, degrees, steps)
	f.event("down", x, y)
	for _, p := range path {
		f.event("move", p[0], p[1])
		f.b.frame()
	}
	during()
	f.event("up", path[steps-1][0], path[steps-1][1])
	f.b.frame()
}

// frame waits until what was sent has been painted.
func (b *tab) frame() {
	b.t.Helper()
	b.run(chromedp.Evaluate(`new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(() => done(1)))))`, nil, awaitPromise))
}

type box struct{ X, Y, W, H float64 }

func (b *tab) box(selector string) (r box) {
	b.t.Helper()
	b.eval(fmt.Sprintf(`(() => { const r = document.querySelector(%s).getBoundingClientRect(); return {X: r.left, Y: r.top, W: r.width, H: r.height} })()`, quote(selector)), &r)
	return r
}

// snapshot is what the page shows, read from the document.
type snapshot struct {
	Attrs  map[string]string
	Series [][][2]float64
}

// read takes from the page every attribute that a native frame has, and the
// strip's points.
func (b *tab) read(ids [][2]string) (s snapshot) {
	b.t.Helper()
	var list []string
	for _, id := range ids {
		list = append(list, fmt.Sprintf("[%s,%s]", quote(id[0]), quote(id[1])))
	}
	b.eval(`(() => {
		const out = {Attrs: {}, Series: window.suncaskCharts.points('strip')}
		for (const [id, name] of [`+strings.Join(list, ",")+`]) {
			const e = document.getElementById(id)
			if (!e) { out.Attrs[id + ' ' + name] = '(no element)'; continue }
			out.Attrs[id + ' ' + name] = name === '' ? e.textContent : name === 'value' ? e.value : e.getAttribute(name) || ''
		}
		return out
	})()`, &s)
	return s
}

// gestureOnly are attributes that show a gesture and not the scenario.
func gestureOnly(id, name string) bool {
	return strings.HasPrefix(id, "change-") || strings.HasPrefix(id, "hub") || strings.HasSuffix(id, "-before") ||
		id == "say-less" || id == "say-than" || strings.HasPrefix(id, "ahead") || name == "class" && strings.HasPrefix(id, "grip-") || id == "grip-ghost"
}

// sameAsNative compares the page with the engine run natively for the same link:
// texts and shapes to the letter, numbers to 1e-9, the strip as it is drawn.
func (b *tab) sameAsNative(base string) {
	b.t.Helper()
	var edges [2]float64
	var hours string
	b.eval(`[Number(document.getElementById('grip-0').getAttribute('aria-valuenow')), Number(document.getElementById('grip-1').getAttribute('aria-valuenow'))]`, &edges)
	b.eval(`document.getElementById('say-hours').textContent`, &hours)
	link := fmt.Sprintf("%s&backup=%02d%02d-%02d%02d", base, int(edges[0])/60, int(edges[0])%60, int(edges[1])/60, int(edges[1])%60)
	if edges[0] == edges[1] {
		word := "none"
		if hours == "all day" {
			word = "all"
		}
		link = fmt.Sprintf("%s&backup=%s%02d%02d", base, word, int(edges[0])/60, int(edges[0])%60)
	}
	var day struct { // where cool uses are many, the page shows a day that has some
		Month string
		Sky   int
	}
	b.eval(`({Month: document.getElementById('month').textContent, Sky: [...document.querySelectorAll('.sky')].findIndex(e => e.getAttribute('aria-pressed') === 'true')})`, &day)
	if at := slices.Index(words.English().Months[:], day.Month); at >= 0 && day.Sky >= 0 && !strings.Contains(link, "&month=") && !strings.Contains(link, "&sky=") {
		link += "&month=" + scenario.FieldOf(scenario.Month).Choices[at] + "&sky=" + scenario.FieldOf(scenario.SkyKind).Choices[day.Sky]
	}
	native, v := state.Open(link), view.New()
	if len(native.LinkProblems) > 0 {
		b.t.Fatalf("%s: %v", link, native.LinkProblems)
	}
	frame := v.Frame(native)
	var ids [][2]string
	for _, a := range frame {
		ids = append(ids, [2]string{a.ID, a.Name})
	}
	shown := b.read(ids)
	for _, a := range frame {
		if gestureOnly(a.ID, a.Name) {
			continue
		}
		got := shown.Attrs[a.ID+" "+a.Name]
		if a.Name == "data-value" {
			var x, y float64
			fmt.Sscan(got, &x)
			fmt.Sscan(a.Value, &y)
			if math.Abs(x-y) > 1e-9*math.Max(1e-9, math.Abs(y)) {
				b.t.Errorf("%s: %s shows %s, natively %s", link, a.ID, got, a.Value)
			}
			continue
		}
		if got != a.Value {
			b.t.Errorf("%s: %s %s shows %.80q, natively %.80q", link, a.ID, a.Name, got, a.Value)
		}
	}
	var drawn bool
	b.eval(`document.querySelector('#strip svg path') !== null`, &drawn)
	if !drawn {
		b.t.Errorf("%s: the strip is not drawn", link)
	}
	strip := v.Strip(native)
	axis := [curve.StripSeries]int{curve.Money: curve.MoneyAxis, curve.MoneyBefore: curve.MoneyAxis, curve.WindowMoney: curve.MoneyAxis}
	for i, want := range strip.Series {
		if i == curve.WaterBefore || i == curve.MoneyBefore {
			continue
		}
		got := shown.Series[i]
		if len(got) != len(want) {
			b.t.Errorf("%s: series %d has %d points, natively %d", link, i, len(got), len(want))
			continue
		}
		for j, p := range want {
			// A thirtieth of a pixel: what is drawn has single precision.
			// The band of the hours reaches to the axis' end, which a gesture may have moved up.
			most := strip.Axes[axis[i]].Max
			band := (i == curve.WindowWater || i == curve.WindowMoney) && p.Y > 0 && got[j][1] > p.Y
			if math.Abs(got[j][0]-p.X) > 24e-4 || math.Abs(got[j][1]-p.Y) > 1e-4*most && !band {
				b.t.Errorf("%s: series %d point %d is %v, natively %v", link, i, j, got[j], p)
				break
			}
		}
	}
}

// turn is a path of the finger about the dial's centre.
func (b *tab) around(grip string, degrees float64, steps int) (x0, y0 float64, path [][2]float64) {
	g, d := b.box(grip), b.box("#dial")
	x0, y0 = g.X+g.W/2, g.Y+g.H/2
	cx, cy := d.X+d.W/2, d.Y+d.H*174/348
	r, from := math.Hypot(x0-cx, y0-cy), math.Atan2(y0-cy, x0-cx)
	for i := 1; i <= steps; i++ {
		a := from + degrees*math.Pi/180*float64(i)/float64(steps)
		path = append(path, [2]float64{cx + r*math.Cos(a), cy + r*math.Sin(a)})
	}
	return x0, y0, path
}

const house = "v=2&place=seville&people=4&tank=250&modules=5"

// Sixty positions with real pointer events; after every frame the page agrees
// with the native engine.
func TestDrag_AgreesWithNative(t *testing.T) {
	for _, s := range []screen{phone, phoneDark, wide, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			f := finger{b, s.touch}
			// The end grip forward over midnight and on, to all day.
			x, y, path := b.around("#grip-1-hit", 330, 60)
			f.event("down", x, y)
			for i, p := range path {
				f.event("move", p[0], p[1])
				b.frame()
				b.sameAsNative(house)
				if i == 10 && b.text("#say-hours") == "15:00–18:00" {
					t.Fatal("the drag moves nothing")
				}
				if i == 20 {
					b.until(`document.getElementById('ahead-best').getAttribute('d') !== ''`)
					b.shot("drag-" + s.name)
				}
			}
			last := path[len(path)-1]
			f.event("up", last[0], last[1])
			b.frame()
			b.sameAsNative(house)
			b.shot("dragged-" + s.name)
			var hash string
			b.eval(`location.hash`, &hash)
			if got, problems := scenario.Decode(hash); len(problems) > 0 || !got.Backup.AllDay {
				t.Errorf("the link after the drag is %s", hash)
			}
			// Reload: the same scenario.
			var before, after string
			b.eval(`document.getElementById('out-cost-year').dataset.value + document.getElementById('say-hours').textContent`, &before)
			b.open(hash)
			b.eval(`document.getElementById('out-cost-year').dataset.value + document.getElementById('say-hours').textContent`, &after)
			if before != after {
				t.Errorf("reloaded: %s, before %s", after, before)
			}
			b.clean()
		})
	}
}

// everyOption is a house with all that a year can have at once.
const everyOption = "#v=2&modules2=2&horizon=90:15,120:22&couple=direct&rule=sun&rescue=12&heatup=weekly&outfrom=228&outto=252&awaydays=14" +
	"&elements=two&switching=cycle&roomby=outside&jacket=jacket&valve=50&backup=noon0130to1800&backup2=0400-0530"

// The time of a frame from the newest pointer event to the last attribute,
// unthrottled and with the processor four times slower, and while a worker simulates all
// hours. It is printed, not judged.
const workerBusy = "phone, worker at work"

func TestDrag_FrameTimes(t *testing.T) {
	for _, c := range []struct {
		name, link string
		screen     screen
		slow       float64
	}{
		{"phone", "", phone, 1}, {"phone", "", phone, 4}, {"wide", "", wide, 1}, {"wide", "", wide, 4},
		{"phone, every option", everyOption, phone, 1}, {"phone, every option", everyOption, phone, 4},
		{workerBusy, "", phone, 1}, {workerBusy, "", phone, 4},
	} {
		s, slow := c.screen, c.slow
		t.Run(fmt.Sprintf("%s, %gx", c.name, slow), func(t *testing.T) {
			b := start(t, s)
			b.open(c.link)
			f := finger{b, s.touch}
			if c.name == workerBusy {
				b.run(place("advice"), chromedp.Click("#land-button", chromedp.ByQuery))
				b.until(`document.getElementById('land-3').getAttribute('d').length > 50`)
				b.run(place("day"))
				b.frame()
			}
			x, y, path := b.around("#grip-1-hit", 200, 100)
			// The page warms its code up in idle time: as after reading the screen.
			time.Sleep(2 * time.Second)
			f.event("down", x, y)
			b.run(emulation.SetCPUThrottlingRate(slow))
			b.run(chromedp.Evaluate(`performance.clearMeasures('dial-frame')`, nil))
			before := b.mainThread()
			for _, p := range path {
				f.event("move", p[0], p[1])
				b.frame()
			}
			after := b.mainThread()
			var times []float64
			b.eval(`performance.getEntriesByName('dial-frame').map(e => e.duration)`, &times)
			sort.Float64s(times)
			n := len(times)
			if n == 0 {
				t.Fatal("no frame was measured")
			}
			t.Logf("%d frames of script: median %.1f ms, p95 %.1f ms, longest %.1f ms", n, times[n/2], times[n*95/100], times[n-1])
			for _, name := range []string{"TaskDuration", "ScriptDuration", "RecalcStyleDuration", "LayoutDuration"} {
				t.Logf("%s: %.1f ms a frame", name, 1000*(after[name]-before[name])/float64(n))
			}
			f.event("up", x, y)
			b.clean()
		})
	}
}

// mainThread is what the page's thread has spent since the page was opened, s.
func (b *tab) mainThread() map[string]float64 {
	b.t.Helper()
	spent := map[string]float64{}
	b.run(performance.Enable(), chromedp.ActionFunc(func(ctx context.Context) error {
		list, err := performance.GetMetrics().Do(ctx)
		for _, m := range list {
			spent[m.Name] = m.Value
		}
		return err
	}))
	return spent
}

// Escape, a cancelled touch and a second finger take the drag back.
func TestDrag_TakesBack(t *testing.T) {
	b := start(t, phone)
	b.open("#" + house + "&backup=1500-1800")
	f := finger{b, true}
	x, y, path := b.around("#grip-0-hit", -60, 5)
	for name, end := range map[string]func(){
		"escape": func() {
			b.run(chromedp.KeyEvent("\x1b"))
			f.event("up", x, y)
		},
		"cancelled touch": func() { f.event("cancel", x, y) },
		"second finger": func() {
			b.run(chromedp.ActionFunc(func(ctx context.Context) error {
				at := []*input.TouchPoint{{X: path[4][0], Y: path[4][1], ID: 1}, {X: 40, Y: 300, ID: 2}}
				return input.DispatchTouchEvent(input.TouchStart, at).Do(ctx)
			}))
			f.event("up", x, y)
		},
	} {
		f.event("down", x, y)
		for _, p := range path {
			f.event("move", p[0], p[1])
			b.frame()
		}
		if got := b.text("#say-hours"); got == "15:00–18:00" {
			t.Errorf("%s: the drag moved nothing", name)
		}
		end()
		b.frame()
		if got := b.text("#say-hours"); got != "15:00–18:00" {
			t.Errorf("%s: hours are %s", name, got)
		}
	}
	b.clean()
}

// A second window is added in its panel, has its own grips and names, and moves
// without the first.
func TestSecondWindow(t *testing.T) {
	for _, s := range []screen{phone, wideDark} {
		t.Run(s.name, func(t *testing.T) {
			b := start(t, s)
			b.open("#" + house + "&backup=1500-1800")
			b.run(card("#panel-backup"), chromedp.Click("#second-add", chromedp.ByQuery), place("day"))
			b.frame()
			if got := b.text("#say-hours"); got != "15:00–18:00 and 03:00–04:00" {
				t.Fatalf("after adding: %s", got)
			}
			var names []string
			b.eval(`[...document.querySelectorAll('[role=slider]')].map(e => e.getAttribute('aria-label'))`, &names)
			if strings.Join(names, "; ") != "backup starts; backup ends; backup starts 2; backup ends 2" {
				t.Errorf("sliders: %v", names)
			}
			b.run(chromedp.Evaluate(`scrollTo(0, 0)`, nil))
			b.frame()
			finger{b, s.touch}.drag("#grip-3-hit", 30, 8, func() { b.shot("second-" + s.name) })
			if got := b.text("#say-hours"); got != "15:00–18:00 and 03:00–06:00" {
				t.Errorf("after dragging its end: %s", got)
			}
			var hash string
			b.eval(`location.hash`, &hash)
			if !strings.Contains(hash, "backup=1500-1800&backup2=0300-0600") {
				t.Errorf("the link is %s", hash)
			}
			b.sameAsNative(house + "&backup2=0300-0600")
			b.run(place("house"), chromedp.Click("#second-remove", chromedp.ByQuery))
			b.frame()
			b.sameAsNative(house)
			if got := b.text("#say-hours"); got != "15:00–18:00" {
				t.Errorf("after removing: %s", got)
			}
			b.clean()
		})
	}
}
