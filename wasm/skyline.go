//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/skyline"
)

// stroke is a line being drawn on the picture of the horizon.
type stroke struct {
	active     bool
	id         int
	x, y       float64
	left, top  float64 // of the picture
	scale      float64 // its units for a client pixel
	drawn, was skyline.Drawn
}

// listenSkyline lets a finger or pointer draw the horizon: a tap sets one point.
func (a *app) listenSkyline() {
	d := a.document
	a.on(d, "pointerdown", func(e js.Value) {
		at := closest(e, "#skyline")
		if a.stroke.active || e.Get("button").Int() != 0 || !at.Truthy() {
			return
		}
		box := at.Call("getBoundingClientRect")
		a.stroke = stroke{active: true, id: e.Get("pointerId").Int(), left: box.Get("left").Float(), top: box.Get("top").Float(),
			scale: skyline.Width / box.Get("width").Float(), was: skyline.Of(a.store.Scenario.Skyline)}
		a.stroke.drawn = a.stroke.was
		a.stroke.x, a.stroke.y = a.stroke.at(e)
		at.Call("setPointerCapture", a.stroke.id)
		a.draw(e)
	})
	a.on(d, "pointermove", a.draw)
	a.on(d, "pointerup", func(e js.Value) {
		if !a.stroke.of(e) {
			return
		}
		a.draw(e)
		a.stroke.active = false
		if a.stroke.drawn != a.stroke.was {
			a.store.DrawSkyline(a.stroke.drawn.Text())
		}
		a.render()
	})
	a.on(d, "pointercancel", func(e js.Value) {
		if a.stroke.of(e) { // the finger scrolls the page
			a.stroke.active = false
			a.stroke.drawn = a.stroke.was
			a.paintSkyline()
		}
	})
}

// of tells whether an event is of the pointer that draws.
func (s *stroke) of(e js.Value) bool { return s.active && e.Get("pointerId").Int() == s.id }

// at is an event's point on the picture.
func (s *stroke) at(e js.Value) (x, y float64) {
	return (e.Get("clientX").Float() - s.left) * s.scale, (e.Get("clientY").Float() - s.top) * s.scale
}

// draw takes the line on to where the pointer is.
func (a *app) draw(e js.Value) {
	s := &a.stroke
	if !s.of(e) {
		return
	}
	x, y := s.at(e)
	s.drawn.Raise(a.store.South(), s.x, s.y, x, y)
	s.x, s.y = x, y
	a.paintSkyline()
}

func (a *app) paintSkyline() {
	if land := a.document.Call("getElementById", "skyline-land"); land.Truthy() {
		land.Call("setAttribute", "d", a.stroke.drawn.Land(a.store.South()))
	}
}
