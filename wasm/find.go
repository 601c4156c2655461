//go:build js && wasm

package main

import (
	"strconv"
	"syscall/js"
)

// findMs is how long one slice of the search for better hours may take.
const findMs = 12

// Find looks for better hours in slices, so that the page stays alive, and shows
// how many years were tried.
func (a *app) Find() {
	a.store.StartFind()
	if !a.findOn.Truthy() {
		a.findOn = a.guarded(func(js.Value) { a.findSlice() })
	}
	a.window.Call("setTimeout", a.findOn, 0)
}

func (a *app) findSlice() {
	clock := a.window.Get("performance")
	for from := clock.Call("now").Float(); clock.Call("now").Float()-from < findMs; {
		if !a.store.FindStep() {
			a.slide()
			return
		}
	}
	if note := a.document.Call("getElementById", "found"); note.Truthy() {
		note.Set("textContent", a.page.FindNote+" "+strconv.Itoa(a.store.FindRuns()))
	}
	a.window.Call("setTimeout", a.findOn, 0)
}
