//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/engine/plan"
	"suncask/ui/state"
)

// inWorker gives a share of a job to the same program in a worker. said takes its messages; broke
// is called later where there are no workers or this one fails. stop ends the job at once; it must be called when the job is over.
func (a *app) inWorker(j state.Job, share plan.Share, link string, said func(data js.Value), broke func()) (stop func()) {
	if !a.window.Get("Worker").Truthy() {
		later := js.FuncOf(func(js.Value, []js.Value) any { broke(); return nil })
		timer := a.window.Call("setTimeout", later, 0)
		return func() {
			a.window.Call("clearTimeout", timer)
			later.Release()
		}
	}
	record := ""
	if file := a.store.File(); file != nil {
		record = recordText(file)
	}
	worker := a.window.Get("Worker").New("worker.js")
	onSaid := a.guarded(func(e js.Value) { said(e.Get("data")) })
	onBroke := a.guarded(func(js.Value) { broke() })
	worker.Set("onmessage", onSaid)
	worker.Set("onerror", onBroke)
	worker.Call("postMessage", map[string]any{"kind": int(j), "part": share.Part, "of": share.Of, "link": link, "record": record, "loaded": a.window.Get("suncaskLoaded")})
	return func() {
		worker.Call("terminate")
		worker.Set("onmessage", nil) // what it said before may still be on its way
		worker.Set("onerror", nil)
		onSaid.Release()
		onBroke.Release()
	}
}

func numbers(list js.Value) []float64 {
	out := make([]float64, list.Length())
	for i := range out {
		out[i] = list.Index(i).Float()
	}
	return out
}

func list(values []float64) []any {
	out := make([]any, len(values))
	for i, v := range values {
		out[i] = v
	}
	return out
}
