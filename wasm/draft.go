//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/page"
)

// listenDrafts keeps what is being typed until it is entered or left. A render in between
// writes it into the box anew, and browsers then fire no change event: it is fired here.
func (a *app) listenDrafts() {
	d := a.document
	a.on(d, "focusin", func(e js.Value) {
		if box := e.Get("target"); isText(box) {
			box.Call("select")
		}
	})
	a.on(d, "input", func(e js.Value) {
		if box := e.Get("target"); isText(box) {
			a.page.Draft = page.Draft{Box: box.Get("id").String(), Text: box.Get("value").String()}
		}
	})
	d.Call("addEventListener", "change", a.guarded(func(js.Value) { a.page.Draft = page.Draft{} }), true) // before the box's own
	a.on(d, "focusout", func(e js.Value) {
		box := e.Get("target")
		if a.rendering { // a handler of vugu's would wait for the end of the render for ever
			a.later(func() { a.enter(box) })
			return
		}
		a.enter(box)
	})
	a.on(d, "keydown", func(e js.Value) {
		if e.Get("key").String() == "Enter" && !e.Get("isComposing").Bool() && a.page.Draft.Box != "" {
			box := e.Get("target")
			a.later(func() { a.enter(box) }) // unless the browser has by then
		}
	})
	a.listenTaps()
}

// later does something in a turn of its own.
func (a *app) later(do func()) { a.after(0, do) }

// after does something in so many milliseconds.
func (a *app) after(ms int, do func()) {
	var turn js.Func
	turn = a.guarded(func(js.Value) {
		turn.Release()
		do()
	})
	a.window.Call("setTimeout", turn, ms)
}

func isText(box js.Value) bool { return box.Get("type").String() == "text" }

// enter takes what was typed into a box, where the browser has not fired a change event for it.
func (a *app) enter(box js.Value) {
	if a.page.Draft.Box != "" && box.Get("id").String() == a.page.Draft.Box {
		box.Call("dispatchEvent", a.window.Get("Event").New("change", map[string]any{"bubbles": true}))
	}
}

// listenTaps lets a tap on a button enter what was typed before: else the box would be left
// when the finger comes down, a line of text might move the button away, and the tap would be
// lost.
func (a *app) listenTaps() {
	drafting := func(e js.Value) bool {
		return a.page.Draft.Box != "" && closest(e, "button").Truthy()
	}
	a.on(a.document, "mousedown", func(e js.Value) {
		if drafting(e) {
			e.Call("preventDefault") // the box keeps the focus
		}
	})
	a.document.Call("addEventListener", "click", a.guarded(func(e js.Value) {
		if drafting(e) {
			a.document.Get("activeElement").Call("blur")
			closest(e, "button").Call("focus", map[string]any{"preventScroll": true})
		}
	}), true)
}
