//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/state"
)

// publish offers the engine to scripts: window.suncask.simulate(fragment) returns
// JSON.
func (a *app) publish() {
	api := a.window.Get("Object").New()
	api.Set("simulate", js.FuncOf(func(_ js.Value, args []js.Value) any {
		fragment := ""
		if len(args) > 0 && args[0].Type() == js.TypeString {
			fragment = args[0].String()
		}
		answer := a.window.Get("Object").New()
		for _, v := range state.Answer(fragment) {
			answer.Set(v.Name, v.Value)
		}
		return a.window.Get("JSON").Call("stringify", answer)
	}))
	a.window.Set("suncask", api)
}
