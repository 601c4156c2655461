//go:build js && wasm

package main

import (
	"math"
	"syscall/js"

	"suncask/engine/visit"
	"suncask/ui/state"
)

// publish offers the engine to scripts: window.suncask.simulate(fragment) returns JSON, and so does
// suncask.visit(fragment, json) for an installer's work, see state.VisitAsk.
func (a *app) publish() {
	api := a.window.Get("Object").New()
	api.Set("simulate", js.FuncOf(func(_ js.Value, args []js.Value) any { return a.json(state.Answer(text(args, 0))) }))
	api.Set("visit", js.FuncOf(func(_ js.Value, args []js.Value) any {
		return a.json(state.AnswerVisit(text(args, 0), a.visitAsk(text(args, 1))))
	}))
	a.window.Set("suncask", api)
}

// text is an argument that is one, else empty.
func text(args []js.Value, i int) string {
	if i < len(args) && args[i].Type() == js.TypeString {
		return args[i].String()
	}
	return ""
}

func (a *app) json(values []state.Named) any {
	answer := a.window.Get("Object").New()
	for _, v := range values {
		answer.Set(v.Name, v.Value)
	}
	return a.window.Get("JSON").Call("stringify", answer)
}

// visitAsk reads what suncask.visit is asked about; what is no number is not given.
func (a *app) visitAsk(text string) state.VisitAsk {
	asked := a.window.Call("suncaskRead", text)
	number := func(key string) float64 {
		if v := asked.Get(key); v.Type() == js.TypeNumber {
			return v.Float()
		}
		return math.NaN()
	}
	ask := state.VisitAsk{Wm2: number("wm2"), CellC: number("cell_c"), BackC: number("back_c"), AirC: number("air_c"), ShortA: number("short_a")}
	if r := asked.Get("readings"); r.Type() == js.TypeString {
		ask.Readings, _ = visit.ParseReadings(r.String())
	}
	return ask
}
