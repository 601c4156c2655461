//go:build js && wasm

package main

import "syscall/js"

// warmRuns is how many years are simulated in idle time after the start.
// Browsers compile WebAssembly quickly first and well only once it has run for a
// while: the first twenty years take 4 ms each, those after the fortieth 2.4.
const warmRuns = 40

// warmUp simulates years, one a turn, until the code is hot or a gesture begins.
func (a *app) warmUp() {
	left := warmRuns
	var turn js.Func
	turn = a.guarded(func(js.Value) {
		if left--; left == 0 || a.store.Before != nil {
			turn.Release()
			return
		}
		a.store.Rehearse()
		a.window.Call("setTimeout", turn, 4)
	})
	a.window.Call("setTimeout", turn, 200)
}
