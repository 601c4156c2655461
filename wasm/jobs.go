//go:build js && wasm

package main

import (
	"iter"
	"syscall/js"

	"suncask/engine/climate"
	"suncask/engine/plan"
	"suncask/ui/parts"
	"suncask/ui/state"
)

// messageMs is how long a worker works between two messages, turnMs a turn of the page's
// own thread where there are no workers.
const messageMs, turnMs = 100, 12

// Start does a job for the house of a link: in workers, or, where there are none, in turns
// of the page's own. The page's store takes its parts. A newer start ends an older.
func (a *app) Start(j state.Job, link string) {
	a.Stop(j)
	of := 1
	if cores := a.window.Get("navigator").Get("hardwareConcurrency"); cores.Truthy() && a.window.Get("Worker").Truthy() {
		of = min(cores.Int(), j.Shares())
	}
	working := of
	var stops []func()
	a.stops[j] = func() {
		for _, stop := range stops {
			stop()
		}
	}
	said := func(data js.Value) {
		if data.Get("end").Truthy() {
			if working--; working == 0 {
				a.store.FinishJob(j)
				a.ended(j)
			}
			return
		}
		a.took(j, state.Part{Steps: data.Get("steps").Int(), Link: data.Get("link").String(), Numbers: numbers(data.Get("numbers"))})
	}
	for part := range of {
		stops = append(stops, a.inWorker(j, plan.Share{Part: part, Of: of}, link, said, func() {
			if j != state.CurvesJob { // what a worker found before it broke comes again
				a.store.BeginJob(j)
			}
			a.inTurns(j, link)
		}))
	}
}

// Stop ends a job; what is known stays.
func (a *app) Stop(j state.Job) {
	if stop := a.stops[j]; stop != nil {
		a.stops[j] = nil
		stop()
	}
}

func (a *app) ended(j state.Job) {
	a.Stop(j)
	a.store.EndJob(j)
	if j != state.AheadJob { // its gesture has the page
		a.render()
	}
}

// took hands a part to the store and shows what grew.
func (a *app) took(j state.Job, p state.Part) {
	if !a.store.TakePart(j, p) { // another house by now
		a.ended(j)
		return
	}
	if status := a.document.Call("getElementById", parts.JobID(j)+"-status"); status.Truthy() {
		status.Set("textContent", parts.JobStatus(a.page, j))
	}
	switch {
	case j == state.AheadJob:
		if a.store.Ahead.Done == state.AheadPlaces {
			a.askFrame()
		}
	case a.store.Before != nil: // a gesture has the page
	case p.Link != "":
		a.render()
	case j == state.CurvesJob && a.page.Draft.Box == "":
		a.render()
	case j == state.LandscapeJob:
		if steps, _ := a.store.Running(j); steps == p.Steps { // the first part: the picture appears
			a.render()
		} else {
			a.paintLandscape()
		}
	}
}

// inTurns does a job on the page's own thread.
func (a *app) inTurns(j state.Job, link string) {
	a.Stop(j)
	next, stop := iter.Pull(state.Work(j, plan.Whole, link, a.store.File()))
	stopped := false
	var turn js.Func
	var timer js.Value
	a.stops[j] = func() {
		stopped = true
		stop()
		a.window.Call("clearTimeout", timer)
		turn.Release()
	}
	turn = a.guarded(func(js.Value) {
		if stopped {
			return
		}
		more := batch(next, turnMs, func(p state.Part) {
			if !stopped {
				a.took(j, p)
			}
		})
		switch {
		case stopped:
		case more:
			timer = a.window.Call("setTimeout", turn, 0)
		default:
			a.store.FinishJob(j)
			a.ended(j)
		}
	})
	timer = a.window.Call("setTimeout", turn, 0)
}

// batch works for so many milliseconds and hands out what was found: what has a link on
// its own. It returns false when the job is over.
func batch(next func() (state.Part, bool), ms float64, say func(state.Part)) bool {
	clock := js.Global().Get("performance")
	var all state.Part
	for from := clock.Call("now").Float(); clock.Call("now").Float()-from < ms; {
		p, ok := next()
		if !ok {
			say(all)
			return false
		}
		if p.Link != "" {
			say(p)
			continue
		}
		all.Steps += p.Steps
		all.Numbers = append(all.Numbers, p.Numbers...)
	}
	say(all)
	return true
}

// work is the program in a worker: it does the job that it was given and ends.
func work(self js.Value) {
	job := self.Get("job")
	if job.Get("load").Truthy() {
		rehearse(self, job.Get("link").String())
		return
	}
	var record *climate.Record
	if text := job.Get("record").String(); text != "" {
		record = recordOf(text)
	}
	next, stop := iter.Pull(state.Work(state.Job(job.Get("kind").Int()), plan.Share{Part: job.Get("part").Int(), Of: job.Get("of").Int()}, job.Get("link").String(), record))
	defer stop()
	for batch(next, messageMs, func(p state.Part) {
		self.Call("postMessage", map[string]any{"steps": p.Steps, "link": p.Link, "numbers": list(p.Numbers)})
	}) {
	}
	self.Call("postMessage", map[string]any{"end": true})
}
