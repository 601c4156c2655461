//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui"
	"suncask/ui/state"
)

// curvesMs is how long it rests before the curves of the open card are drawn anew.
const curvesMs = 250

// askFixes lets a worker try changes once advice is looked at; after an edit, once the better
// hours are known.
func (a *app) askFixes() {
	link := a.store.Link()
	_, searching := a.store.Running(state.HoursJob)
	if a.store.Entry != state.Home || a.page.Place != ui.AdvicePlace || searching || link == a.fixesFor {
		return
	}
	a.fixesFor = link
	if _, known := a.store.Fixes(); !known {
		a.later(func() {
			if a.store.Link() == link && a.store.Before == nil {
				a.page.TryFixes()
				a.render()
			}
		})
	}
}

// askCurves lets a worker simulate the curves behind the sliders of the open card.
func (a *app) askCurves() {
	if a.curvesTimer.Truthy() {
		a.window.Call("clearTimeout", a.curvesTimer)
		a.curvesTimer = js.Null()
	}
	if len(a.page.Ranged()) == 0 {
		return
	}
	if !a.curves.Truthy() {
		a.curves = a.guarded(func(js.Value) {
			if a.store.Before != nil {
				return
			}
			if link, some := a.store.BeginCurves(a.page.Ranged()); some {
				a.Start(state.CurvesJob, link)
			}
		})
	}
	a.curvesTimer = a.window.Call("setTimeout", a.curves, curvesMs)
}

// restMs is how long the page rests after an edit before the best hours are looked for unasked.
const restMs = 2000

// askBetter lets a worker look for the best hours of a house that somebody has edited, once
// the page rests: never in a lesson or a visit, and not before the first edit.
func (a *app) askBetter() {
	link := a.store.Link()
	if _, known := a.store.Better(); known {
		return
	}
	if a.store.Since == nil || a.store.Entry != state.Home || link == a.betterFor {
		return
	}
	a.betterFor = link
	a.Stop(state.HoursJob)
	if !a.better.Truthy() {
		a.better = a.guarded(func(js.Value) {
			if a.store.Link() == a.betterFor && a.store.Before == nil {
				a.Start(state.HoursJob, a.store.BeginJob(state.HoursJob))
			}
		})
	}
	if a.betterTimer.Truthy() {
		a.window.Call("clearTimeout", a.betterTimer)
	}
	a.betterTimer = a.window.Call("setTimeout", a.better, restMs)
}
