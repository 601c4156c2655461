//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/ui"
	"suncask/ui/landscape"
	"suncask/ui/state"
)

// landMs is how long a worker simulates between two messages, and a turn of the page's
// own thread where there are no workers.
const landMs, landTurnMs = 120, 12

// Landscape simulates all hours of the house in a worker, or in turns of the page's own.
func (a *app) Landscape() {
	a.endLandscape()
	link := a.store.Link()
	a.stopLand = a.inWorker("landscape", link, func(data js.Value) { a.landscapeGrows(numbers(data)) }, func() {
		a.endLandscape()
		a.landscapeHere(link)
	})
}

// StopLandscape ends it; what is known stays.
func (a *app) StopLandscape() { a.endLandscape() }

func (a *app) endLandscape() {
	if a.stopLand != nil {
		a.stopLand()
		a.stopLand = nil
	}
}

// landscapeGrows takes windows with their outcomes, four numbers each; none at the end.
func (a *app) landscapeGrows(outcomes []float64) {
	m, ok := a.store.Landscape()
	if !ok || len(outcomes) == 0 { // another house by now, or all is known
		a.endLandscape()
		a.page.LandRunning = false
		a.render()
		return
	}
	for ; len(outcomes) >= 4; outcomes = outcomes[4:] {
		m.Add(plan.Window{Start: int(outcomes[0]), Steps: int(outcomes[1])}, outcomes[2], outcomes[3])
	}
	if status := a.document.Call("getElementById", "land-status"); status.Truthy() {
		status.Set("textContent", a.page.LandProgress())
	}
	if a.landMessages++; a.store.Before != nil || a.landMessages%3 != 0 {
		return
	}
	for i, d := range a.page.LandPaths() {
		if path := a.document.Call("getElementById", ui.LandID(i)); path.Truthy() {
			path.Call("setAttribute", "d", d)
		}
	}
}

// landscapeHere simulates on the page's own thread.
func (a *app) landscapeHere(link string) {
	l, err := state.OpenLandscape(link, a.store.File())
	if err != nil {
		a.landscapeGrows(nil)
		return
	}
	stopped := false
	var turn js.Func
	a.stopLand = func() {
		stopped = true
		turn.Release()
	}
	turn = a.guarded(func(js.Value) {
		if stopped {
			return
		}
		a.landscapeGrows(outcomes(l, landTurnMs))
		if !stopped {
			a.window.Call("setTimeout", turn, 0)
		}
	})
	a.window.Call("setTimeout", turn, 0)
}

// outcomes simulates windows for so many milliseconds; none once all are known.
func outcomes(l *plan.Landscape, ms float64) (list []float64) {
	clock := js.Global().Get("performance")
	for from := clock.Call("now").Float(); clock.Call("now").Float()-from < ms; {
		w, o, ok := l.Step()
		if !ok {
			break
		}
		list = append(list, float64(w.Start), float64(w.Steps), o.Cost, float64(o.CoolUses))
	}
	return list
}

// workLandscape is the job of Landscape in a worker.
func workLandscape(self js.Value, link string, record *climate.Record) {
	l, err := state.OpenLandscape(link, record)
	for err == nil {
		got := outcomes(l, landMs)
		self.Call("postMessage", list(got))
		if len(got) == 0 {
			return
		}
	}
	self.Call("postMessage", []any{})
}

// tapLandscape takes the hours at a tap on the picture; false if it was elsewhere.
func (a *app) tapLandscape(e js.Value) bool {
	at := closest(e, "#land")
	if !at.Truthy() {
		return false
	}
	box := at.Call("getBoundingClientRect")
	k := landscape.Width / box.Get("width").Float()
	a.page.LandTapped((e.Get("clientX").Float()-box.Get("left").Float())*k, (e.Get("clientY").Float()-box.Get("top").Float())*k)
	a.render()
	return true
}
