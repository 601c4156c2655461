//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/house"
)

// tickMs is between two quarters of an hour of a day that is played.
const tickMs = 150

// Play lets the day pass on the page.
func (a *app) Play() {
	if !a.tick.Truthy() {
		a.tick = a.guarded(func(js.Value) {
			if house.Tick(a.page) {
				a.window.Call("setTimeout", a.tick, tickMs)
			}
			a.render()
		})
	}
	a.window.Call("setTimeout", a.tick, tickMs)
}
