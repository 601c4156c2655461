//go:build js && wasm

package main

import (
	"math"
	"syscall/js"
)

// repeater steps an edge while a stepper button is held: once at once, then
// after a pause again and again. All of it is one gesture.
type repeater struct {
	on    bool
	by    int
	x, y  float64 // of the finger when it came down
	id    int     // of the pointer; a mouse never strays
	timer js.Value
	tick  js.Func
}

// noPointer is no pointer's id.
const noPointer = -1 << 30

const pauseMs, everyMs = 450, 110

func (r *repeater) start(a *app, button, e js.Value) {
	r.stop(a)
	r.x, r.y, r.id = e.Get("clientX").Float(), e.Get("clientY").Float(), noPointer
	if e.Get("pointerType").String() == "touch" {
		r.id = e.Get("pointerId").Int()
	}
	h, by := stepOf(button)
	r.by = by
	r.on = true
	a.keyed = true
	a.store.Cancel()
	a.begin(h, 0)
	if !r.tick.Truthy() {
		r.tick = a.guarded(func(js.Value) {
			if a.repeat.on {
				a.repeat.step(a, everyMs)
			}
		})
	}
	r.step(a, pauseMs)
}

// step moves the edge once and asks for the next step in ms.
func (r *repeater) step(a *app, ms int) {
	a.store.Preview(r.by)
	a.askFrame()
	r.timer = a.window.Call("setTimeout", r.tick, ms)
}

// strays tells whether the finger left the button to scroll the page.
func (r *repeater) strays(e js.Value) bool {
	return r.on && e.Get("pointerId").Int() == r.id && math.Hypot(e.Get("clientX").Float()-r.x, e.Get("clientY").Float()-r.y) > 2*strayPx
}

func (r *repeater) stop(a *app) {
	if !r.on {
		return
	}
	r.on = false
	a.window.Call("clearTimeout", r.timer)
	a.endKeys()
}
