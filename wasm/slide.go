//go:build js && wasm

package main

import "syscall/js"

// slideMs is how long the dial takes to the hours that were found.
const slideMs = 400

// slide turns the dial to better hours, each frame a simulated year, before the page takes
// them. Whoever touches the page meanwhile has them at once.
func (a *app) slide() {
	if !a.store.FoundAway() || a.window.Call("matchMedia", "(prefers-reduced-motion: reduce)").Get("matches").Bool() {
		a.endSlide()
		return
	}
	clock := a.window.Get("performance")
	began := clock.Call("now").Float()
	a.sliding = true
	if !a.slideOn.Truthy() {
		a.slideOn = a.guarded(func(now js.Value) {
			share := (now.Float() - a.slideFrom) / slideMs
			if !a.sliding { // somebody took them
				return
			}
			if share >= 1 {
				a.endSlide()
				return
			}
			a.store.Slide(max(0, share))
			a.painter.paint(a.view.Frame(a.store))
			a.showStrip()
			a.window.Call("requestAnimationFrame", a.slideOn)
		})
	}
	a.slideFrom = began
	a.window.Call("requestAnimationFrame", a.slideOn)
}

// endSlide takes what was found.
func (a *app) endSlide() {
	if a.sliding {
		a.sliding = false
		a.store.Cancel()
	}
	a.page.Found()
	a.render()
}

// stopSlide ends a slide that is on its way.
func (a *app) stopSlide() {
	if a.sliding {
		a.endSlide()
	}
}
