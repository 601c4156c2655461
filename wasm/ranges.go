//go:build js && wasm

package main

import (
	"math"
	"syscall/js"
)

// strayPx is how far a finger moves before it is told whether it slides or scrolls.
const strayPx = 8

// held is a slider under a finger that has not yet said whether it slides or scrolls the page.
// Browsers move the slider as soon as it is touched.
type held struct {
	slider js.Value // nil where none is held
	id     int      // of the finger
	was    string
	x, y   float64
}

// listenRanges lets a finger that begins on a slider scroll the page past it: what it moved is
// put back.
func (a *app) listenRanges() {
	capture := func(event string, handle func(e js.Value)) {
		a.document.Call("addEventListener", event, a.guarded(handle), true)
	}
	ours := func(e js.Value) bool { return a.held.slider.Truthy() && e.Get("pointerId").Int() == a.held.id }
	let := func(set bool) { // go, with the slider's value or without
		slider := a.held.slider
		if !slider.Truthy() {
			return
		}
		a.held.slider = js.Null()
		if !set {
			slider.Set("value", a.held.was)
			return
		}
		slider.Call("dispatchEvent", a.window.Get("Event").New("input", map[string]any{"bubbles": true}))
	}
	capture("pointerdown", func(e js.Value) {
		let(false) // another finger's
		if slider := closest(e, "input[type=range]"); slider.Truthy() && e.Get("pointerType").String() == "touch" {
			a.held = held{slider, e.Get("pointerId").Int(), slider.Get("value").String(), e.Get("clientX").Float(), e.Get("clientY").Float()}
		}
	})
	capture("input", func(e js.Value) {
		if a.held.slider.Truthy() && e.Get("target").Equal(a.held.slider) {
			e.Call("stopPropagation")
		}
	})
	capture("pointermove", func(e js.Value) {
		if ours(e) {
			across, down := math.Abs(e.Get("clientX").Float()-a.held.x), math.Abs(e.Get("clientY").Float()-a.held.y)
			if across > strayPx && across > down {
				let(true)
			}
		}
	})
	capture("pointerup", func(e js.Value) {
		if ours(e) {
			let(math.Abs(e.Get("clientY").Float()-a.held.y) <= strayPx)
		}
	})
	capture("pointercancel", func(e js.Value) {
		if ours(e) {
			let(false)
		}
	})
}
