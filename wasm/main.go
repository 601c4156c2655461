//go:build js && wasm

// Command wasm is the page's program in the browser: it joins the state to the
// document, listens to pointers and keys, and paints the frames of a gesture.
package main

import (
	"runtime/debug"
	"syscall/js"

	"github.com/vugu/vugu"
	"github.com/vugu/vugu/domrender"

	"suncask/engine/climate"
	"suncask/ui"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
	"suncask/ui/words"
)

// gcPercent lets the heap grow to about 40 MB before it is swept: a frame of a
// drag leaves 50 kB behind, so some hundred frames pass without a sweep.
const gcPercent = 300

func main() {
	debug.SetGCPercent(gcPercent)
	if !js.Global().Get("document").Truthy() {
		work(js.Global())
		return
	}
	a := &app{window: js.Global(), document: js.Global().Get("document"), charts: charts{mounted: map[string]bool{}}, asked: map[string]bool{}, turns: newTurns(js.Global())}
	defer a.fail() // a panic before or in a render
	a.sketch = a.document.Call("querySelector", "#strip > .sketch")
	a.pause()
	a.openFirst()
	a.store.Clock = a.zoneClock
	a.view = view.New()
	a.page = page.New(a.store, a.view)
	a.page.Host = a
	a.page.Wide = a.columns()
	a.page.Shared = a.shared
	a.readLast()
	a.painter = newPainter(a.document)
	a.findRecord(a.store)
	a.store.ShowWorst()
	a.publish()
	a.pause()
	a.view.Frame(a.store) // what is slow at first, each in a turn of its own
	a.pause()
	a.page.Compute()
	a.pause()
	a.toReveal = a.guarded(func(js.Value) {
		if open := a.document.Call("querySelector", ".drop-mark.open"); a.follow && open.Truthy() {
			open.Call("focus", map[string]any{"preventScroll": true})
		}
		a.follow = false
		if e := a.document.Call("getElementById", a.reveal); e.Truthy() {
			e.Call("scrollIntoView")
			e.Call("focus")
		}
		a.reveal = ""
	})
	renderer, err := domrender.New("#page")
	if err != nil {
		panic("wasm: " + err.Error())
	}
	a.env = renderer.EventEnv()
	build, err := vugu.NewBuildEnv(a.env)
	if err != nil {
		panic("wasm: " + err.Error())
	}
	root := &ui.Root{Page: a.page}
	for ok := true; ok; ok = renderer.EventWait() {
		if a.pointer.active || a.keyed || a.glide.on {
			continue // a gesture ends with a render of its own
		}
		built := build.RunBuild(root)
		a.pause()
		a.rendering = true
		if err := renderer.Render(built); err != nil {
			panic("wasm: " + err.Error())
		}
		a.rendering = false
		a.pause()
		a.rendered()
		if !a.started {
			a.start()
		}
	}
}

// app is the page at work.
type app struct {
	window, document js.Value
	store            *state.Store
	view             *view.View
	page             *page.Page
	env              vugu.EventEnv
	painter          *painter
	charts           charts
	sketch           js.Value // of the example's strip, until the charts' script has come
	pointer          pointer
	stroke           stroke
	keyed            bool // a held key or button is a gesture
	frameAsked       bool
	measured         int
	started          bool // the first render is done
	rendering        bool // vugu changes the document
	turns            *turns
	offers           offers
	findOn           js.Func
	glide            glide
	held             held
	stops            [state.JobCount]func() // end jobs that are on their way, nil of others
	landDrawn        float64                // when a landscape that grows was drawn, ms
	reading          int                    // counts weather files, so that a newer one ends an older
	reveal           string                 // id of an element to bring into sight
	top              bool                   // the page is to be shown from its beginning
	history          history
	better           rest   // then the best hours are looked for unasked
	betterFor        string // the house of which, now or last
	curves           rest   // then the curves of the open card are asked for
	steps            rest   // then both kinds of converter are compared
	ahead            rest   // then the places of the held grip are looked at
	meter            rest   // then what explains a meter's reading is looked for
	wirings          rest   // then the ways to wire the modules are judged
	fixesFor         string // the house for which changes were tried last
	toReveal         js.Func
	readKept         string          // what was read, as kept
	workSeen         bool            // a visit or a lesson is on the screen
	asked            map[string]bool // parts whose texts are on their way, or came or did not
	follow           bool            // the focus goes with the open mark
	dragged          bool            // the next click ends a drag
	tick             js.Func
	written          string // the link last written to the address
	announced        string // the sentence last told to screen readers
	shared           bool   // the address holds another house than the one last changed here
	stopped          bool
	frame            js.Func
	repeat           repeater
}

// rendered follows a vugu render: the painter's memory is that frame now, and
// the charts show the same state.
func (a *app) rendered() {
	a.painter.remember(a.view.Frame(a.store))
	a.charts.check(a)
	if a.started {
		a.showCharts()
	}
	a.writeLink()
	a.announce()
	if a.top && a.reveal == "" {
		a.window.Call("scrollTo", 0, 0)
	}
	a.top = false
	a.makeRoom()
	a.keepRead()
	a.askTexts()
	a.askBetter()
	a.askCurves()
	a.askSteps()
	a.askFixes()
	a.askWirings()
	a.askMeter()
	if a.reveal != "" || a.follow {
		// Not within vugu's own event: focus there would deadlock.
		a.window.Call("setTimeout", a.toReveal, 0)
	}
}

// announce tells screen readers the result, once it is settled.
func (a *app) announce() {
	text := a.view.Sentence(a.store)
	if a.announced != "" && text != a.announced {
		a.document.Call("getElementById", "announce").Set("textContent", text)
	}
	a.announced = text
}

// render asks vugu for a render from outside its own events.
func (a *app) render() {
	a.env.Lock()
	a.env.UnlockRender()
}

// Reveal scrolls to an element and focuses it, after the render that may make it.
func (a *app) Reveal(id string) { a.reveal = id }

// Update exchanges this version for the newer one that waits; the link keeps the house.
func (a *app) Update() { a.window.Call("suncaskUpdate") }

// Choose shows the page in another language or other units; the address keeps the house.
func (a *app) Choose(key, value string) { a.window.Call("suncaskChoose", key, value) }

// Share returns the link and hands it to the clipboard, which may refuse it.
func (a *app) Share(copied func()) (link string) {
	link = a.Base() + "#" + a.store.Address()
	a.Copy(link, copied)
	return link
}

// Base is the page's address without its fragment.
func (a *app) Base() string {
	location := a.window.Get("location")
	return location.Get("origin").String() + location.Get("pathname").String()
}

// Copy hands a text to the clipboard, which may refuse it.
func (a *app) Copy(text string, copied func()) {
	clipboard := a.window.Get("navigator").Get("clipboard")
	if !clipboard.Truthy() {
		return
	}
	var done, refused js.Func
	release := func() { done.Release(); refused.Release() }
	done = a.guarded(func(js.Value) { release(); copied(); a.render() })
	refused = a.guarded(func(js.Value) { release() })
	clipboard.Call("writeText", text).Call("then", done, refused)
}

// Now is the device's day of the year, 29 February its eve, and minute.
func (a *app) Now() (day, minute int) {
	now := a.window.Get("Date").New()
	day = min(now.Call("getDate").Int(), climate.DaysIn[now.Call("getMonth").Int()]) - 1 + climate.FirstDay(now.Call("getMonth").Int())
	return day, now.Call("getHours").Int()*60 + now.Call("getMinutes").Int()
}

// Date is today, as the page's language writes it.
func (a *app) Date() string {
	return a.window.Get("Date").New().Call("toLocaleDateString", a.page.T(words.LanguageCode), map[string]any{"dateStyle": "long"}).String()
}

// CanSend tells whether the device has a sheet to send links with.
func (a *app) CanSend() bool { return a.window.Get("navigator").Get("share").Truthy() }

// Send opens that sheet.
func (a *app) Send(link string) {
	var done js.Func // whatever comes of it
	done = js.FuncOf(func(js.Value, []js.Value) any { done.Release(); return nil })
	a.window.Get("navigator").Call("share", map[string]any{"title": "Suncask", "url": link}).Call("then", done, done)
}

// writeLink puts the scenario into the address, at rest only.
func (a *app) writeLink() {
	link := a.store.Address()
	if link == a.written {
		return
	}
	if a.written != "" || len(a.store.LinkProblems) == 0 {
		a.window.Get("history").Call("replaceState", a.here(), "", "#"+link)
	}
	if a.written != "" {
		a.page.Shared = false // it is changed, and kept from now on
	}
	if a.written != "" && a.store.Entry != state.Lesson { // nothing of a pupil is kept
		a.storage(func(s js.Value) { s.Call("setItem", lastHouse, link) })
	}
	a.written = link
}
