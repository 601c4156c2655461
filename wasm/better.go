//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/house"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/visit"
)

// restMs is how long the page rests after an edit before the best hours are looked for unasked,
// curvesMs how long before the curves of the open card are drawn anew, and stepsMs how long
// before the years with both kinds of converter are compared.
const restMs, curvesMs, stepsMs = 2000, 250, 500

// rest waits until nothing has happened for a while, then does what it was begun for first.
type rest struct {
	turn  js.Func
	timer js.Value
}

func (r *rest) begin(a *app, ms int, do func()) {
	r.end(a)
	if !r.turn.Truthy() {
		r.turn = a.guarded(func(js.Value) { do() })
	}
	r.timer = a.window.Call("setTimeout", r.turn, ms)
}

func (r *rest) end(a *app) {
	if r.timer.Truthy() {
		a.window.Call("clearTimeout", r.timer)
		r.timer = js.Null()
	}
}

// askFixes lets a worker try changes once advice is looked at; after an edit, once the better
// hours are known.
func (a *app) askFixes() {
	_, searching := a.store.Running(state.HoursJob)
	if a.store.Entry != state.Home || a.page.Place != page.AdvicePlace || searching {
		return
	}
	link := a.store.Link()
	if link == a.fixesFor {
		return
	}
	a.fixesFor = link
	if _, known := a.store.Fixes(); !known {
		a.later(func() {
			if a.store.Link() == link && a.store.Before == nil {
				a.Start(state.FixesJob, a.store.BeginJob(state.FixesJob))
				a.render()
			}
		})
	}
}

// askCurves lets a worker simulate the curves behind the sliders of the open card.
func (a *app) askCurves() {
	if len(house.Ranged(a.page)) == 0 {
		a.curves.end(a)
		return
	}
	a.curves.begin(a, curvesMs, func() {
		if a.store.Before != nil {
			return
		}
		if link, some := a.store.BeginCurves(house.Ranged(a.page)); some {
			a.Start(state.CurvesJob, link)
		}
	})
}

// askSteps lets a worker compare both kinds of converter where a finding asks.
func (a *app) askSteps() { a.ask(&a.steps, stepsMs, state.StepsJob, a.page.StepsOpen) }

// askWirings lets one judge the ways to wire the modules once an installer looks at them.
func (a *app) askWirings() {
	a.ask(&a.wirings, curvesMs, state.WiringsJob, func() bool { return visit.WiringsWanted(a.page) })
}

// askMeter lets one look for what would explain a meter's reading.
func (a *app) askMeter() {
	a.ask(&a.meter, curvesMs, state.MeterJob, func() bool { return visit.MeterWanted(a.page) })
}

// ask starts a job once the page has rested for so long, if it is wanted then too and not on its way.
func (a *app) ask(r *rest, ms int, j state.Job, wanted func() bool) {
	if !wanted() {
		r.end(a)
		return
	}
	r.begin(a, ms, func() {
		if _, running := a.store.Running(j); !running && a.store.Before == nil && wanted() {
			a.Start(j, a.store.BeginJob(j))
		}
	})
}

// askBetter lets a worker look for the best hours of a house that somebody has edited, once
// the page rests: never in a lesson or a visit, and not before the first edit.
func (a *app) askBetter() {
	if a.store.Since == nil || a.store.Entry != state.Home {
		return
	}
	if _, known := a.store.Better(); known {
		return
	}
	link := a.store.Link()
	if link == a.betterFor {
		return
	}
	a.betterFor = link
	a.Stop(state.HoursJob)
	a.better.begin(a, restMs, func() {
		if a.store.Link() == a.betterFor && a.store.Before == nil {
			a.Start(state.HoursJob, a.store.BeginJob(state.HoursJob))
		}
	})
}
