//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/day"
	"suncask/ui/page"
)

// slideMs is how long the dial takes to the hours that were found, showMs how long a grip
// that shows itself is on its way, showAfterMs how long it waits for the sheet to go.
const slideMs, showMs, showAfterMs = 400, 2400, 500

// glide is a movement of the dial by itself, each frame a simulated year. Whoever touches the
// page ends it.
type glide struct {
	on    bool
	began float64 // ms
	ms    float64
	step  func(share float64) // 0 to 1 of the way
	end   func()              // on arrival or at a touch
	frame js.Func
}

func (a *app) startGlide(ms float64, step func(share float64), end func()) {
	if !a.glide.frame.Truthy() {
		a.glide.frame = a.guarded(func(now js.Value) {
			if !a.glide.on {
				return
			}
			share := (now.Float() - a.glide.began) / a.glide.ms
			if share >= 1 {
				a.endGlide()
				return
			}
			a.glide.step(max(0, share))
			a.painter.paint(a.view.Frame(a.store))
			a.showStrip()
			a.window.Call("requestAnimationFrame", a.glide.frame)
		})
	}
	a.glide.on, a.glide.ms, a.glide.step, a.glide.end = true, ms, step, end
	a.glide.began = a.window.Get("performance").Call("now").Float()
	a.window.Call("requestAnimationFrame", a.glide.frame)
}

// endGlide ends a movement that is on its way.
func (a *app) endGlide() {
	if a.glide.on {
		a.glide.on = false
		a.store.Cancel()
		a.glide.end()
	}
}

func (a *app) stillness() bool {
	return a.window.Call("matchMedia", "(prefers-reduced-motion: reduce)").Get("matches").Bool()
}

// slide turns the dial to better hours before the page takes them.
func (a *app) slide() {
	take := func() {
		day.Found(a.page)
		a.render()
	}
	if !a.store.FoundAway() || a.stillness() {
		take()
		return
	}
	a.startGlide(slideMs, a.store.Slide, take)
}

// ShowMe names what the dial shows; a grip goes there and back.
func (a *app) ShowMe() {
	a.after(showAfterMs, func() {
		if a.page.Over != page.NoSheet || a.store.Before != nil || a.glide.on {
			return
		}
		a.window.Call("suncaskLabel")
		if a.store.CanShow() && !a.stillness() {
			a.startGlide(showMs, a.store.ShowGrip, a.render)
		}
	})
}
