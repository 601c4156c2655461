//go:build js && wasm

package main

import "syscall/js"

// aheadMs is how long one idle slice may look ahead.
const aheadMs = 5

// lookAhead simulates the held grip's other places in slices between frames, and
// asks for a frame when all are known.
func (a *app) lookAhead() {
	if a.looking {
		return
	}
	a.looking = true
	if !a.look.Truthy() {
		a.look = a.guarded(func(js.Value) { a.lookOn() })
	}
	a.window.Call("setTimeout", a.look, 0)
}

func (a *app) lookOn() {
	a.looking = false
	clock := a.window.Get("performance")
	for from := clock.Call("now").Float(); clock.Call("now").Float()-from < aheadMs; {
		if !a.store.LookAhead() {
			if a.store.Before != nil {
				a.askFrame()
			}
			return
		}
	}
	a.lookAhead()
}
