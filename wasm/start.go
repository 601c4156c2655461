//go:build js && wasm

package main

import (
	"syscall/js"

	"github.com/vugu/vugu"

	"suncask/ui"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/view"
)

// turns are the browser's turns that the start takes.
type turns struct {
	clock js.Value
	began float64 // ms
	next  chan struct{}
	ask   js.Value // a port that is answered in a turn of its own, sooner than any timer
}

// startMs is how long the start works at a stretch.
const startMs = 3

func newTurns(window js.Value) *turns {
	channel := window.Get("MessageChannel").New()
	t := &turns{clock: window.Get("performance"), next: make(chan struct{}, 1), ask: channel.Get("port2")}
	channel.Get("port1").Set("onmessage", js.FuncOf(func(js.Value, []js.Value) any {
		t.next <- struct{}{}
		return nil
	}))
	return t
}

func (t *turns) now() float64 { return t.clock.Call("now").Float() }

// pause ends the browser's turn within the start, unless it has just begun: the browser can
// paint and answer.
func (a *app) pause() {
	if t := a.turns; !a.started && t.now()-t.began > startMs {
		t.ask.Call("postMessage", js.Null())
		<-t.next
		t.began = t.now()
	}
}

// start follows the first render: from here on the page answers.
func (a *app) start() {
	a.pause()
	a.listen()
	a.listenFiles()
	a.listenDrafts()
	a.listenPlaces()
	a.listenRanges()
	a.listenPlace()
	a.listenSkyline()
	a.charts.mount(a, "strip")
	a.pause()
	a.showCharts()
	a.pause()
	a.started = true
	a.document.Get("documentElement").Get("dataset").Set("state", "ready")
}

// warmRuns is how many years the start's worker simulates. Browsers compile
// WebAssembly quickly first and well only once it has run for a while: the first twenty years
// take 4 ms each, those after the fortieth 2.4.
const warmRuns = 40

// rehearse does in a worker what the page is about to do for a link's house: the page then finds
// that code compiled. It goes on until the years are hot.
func rehearse(self js.Value, link string) {
	p := page.New(state.Open(link), view.New())
	env, err := vugu.NewBuildEnv()
	if err != nil {
		panic("wasm: " + err.Error())
	}
	env.RunBuild(&ui.Root{Page: p})
	self.Call("suncaskReady")
	for range warmRuns {
		p.Store.Rehearse()
	}
	self.Call("postMessage", map[string]any{"end": true})
}
