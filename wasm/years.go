//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/engine/climate"
	"suncask/ui/state"
)

// Years simulates many drawn years of the house in a worker, or, where there are no
// workers, in turns of the page's own. A newer call ends an older one.
func (a *app) Years() {
	a.endYears()
	link := a.store.Link()
	a.stopYears = a.inWorker("years", link, func(data js.Value) {
		if done := data.Get("done"); done.Type() == js.TypeNumber {
			a.yearsProgress(done.Int())
			return
		}
		var spread state.Spread
		if data.Get("cost").Truthy() {
			spread = state.Spread{BoughtKWh: numbers(data.Get("bought")), Cost: numbers(data.Get("cost")), CoolDays: numbers(data.Get("cool"))}
		}
		a.endYears()
		a.page.YearsEnded(link, spread)
		a.render()
	}, func() {
		a.endYears()
		a.yearsHere(link)
	})
}

// endYears stops a run that is on its way.
func (a *app) endYears() {
	if a.stopYears != nil {
		a.stopYears()
		a.stopYears = nil
	}
}

func (a *app) yearsProgress(done int) {
	if e := a.document.Call("getElementById", "years-status"); e.Truthy() {
		e.Set("textContent", a.page.YearsProgress(done))
	}
}

// yearsHere runs the years on the page's own thread, one a turn.
func (a *app) yearsHere(link string) {
	years, err := state.OpenYears(link, a.store.File())
	if err != nil {
		a.page.YearsEnded(link, state.Spread{})
		a.render()
		return
	}
	var turn js.Func
	stopped := false
	a.stopYears = func() { stopped = true }
	turn = a.guarded(func(js.Value) {
		switch {
		case stopped:
			turn.Release()
		case years.Step():
			a.yearsProgress(len(years.Cost))
			a.window.Call("setTimeout", turn, 0)
		default:
			turn.Release()
			a.stopYears = nil
			a.page.YearsEnded(link, state.Spread{BoughtKWh: years.BoughtKWh, Cost: years.Cost, CoolDays: years.CoolDays})
			a.render()
		}
	})
	a.window.Call("setTimeout", turn, 0)
}

// workYears is the job of Years in a worker.
func workYears(self js.Value, link string, record *climate.Record) {
	years, err := state.OpenYears(link, record)
	if err != nil {
		self.Call("postMessage", map[string]any{})
		return
	}
	for years.Step() {
		self.Call("postMessage", map[string]any{"done": len(years.Cost)})
	}
	self.Call("postMessage", map[string]any{"bought": list(years.BoughtKWh), "cost": list(years.Cost), "cool": list(years.CoolDays)})
}
