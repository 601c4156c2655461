//go:build js && wasm

package main

import (
	"strconv"
	"strings"
	"syscall/js"

	"suncask/engine/explain"
	"suncask/ui/day"
	"suncask/ui/dial"
	"suncask/ui/house"
	"suncask/ui/state"
)

// pointer is the drag in progress.
type pointer struct {
	active    bool
	id        int
	x, y      float64 // newest position, client pixels
	fine      bool
	left, top float64 // of the dial
	scale     float64 // figure units for a client pixel
	moved     bool    // since the last frame
	everMoved bool
}

// listen attaches everything that is not a vugu event. Listeners sit on the
// document, whose children vugu may exchange.
func (a *app) listen() {
	d := a.document
	a.frame = a.guarded(func(js.Value) { a.onFrame() })
	a.on(d, "pointerdown", a.onDown)
	a.on(d, "pointermove", a.onMove)
	a.on(d, "pointerup", a.onUp)
	a.on(d, "pointercancel", func(e js.Value) {
		if a.pointer.active && e.Get("pointerId").Int() == a.pointer.id || a.repeat.on {
			a.cancel()
		}
	})
	// touch-action on parts of an SVG does not keep Chromium from scrolling.
	d.Call("addEventListener", "touchstart", a.guarded(func(e js.Value) {
		if _, ok := handleOf(e); ok && e.Get("cancelable").Bool() {
			e.Call("preventDefault")
		}
	}), map[string]any{"passive": false})
	a.on(d, "keydown", a.onKey)
	a.on(d, "keyup", func(js.Value) { a.endKeys() })
	d.Call("addEventListener", "click", a.guarded(a.swallow), true)
	a.on(d, "click", a.onClick)
	a.on(a.window, "blur", func(js.Value) { // no keyup will come
		a.repeat.stop(a)
		a.endKeys()
	})
	a.on(a.window, "hashchange", func(js.Value) { a.onLink() })
	a.on(a.window, "newer-version", func(js.Value) {
		a.page.Newer = true
		a.render()
	})
	a.on(a.window, "beforeprint", func(js.Value) { a.beforePrint() })
	a.on(a.window, "afterprint", func(js.Value) { a.printed() })
	a.on(a.window, "charts-ready", func(js.Value) { a.showCharts() })
	a.on(a.window.Call("matchMedia", "(prefers-color-scheme: dark)"), "change", func(js.Value) {
		clear(a.charts.mounted)
		a.showCharts()
	})
}

// closest is the event's target or the nearest element about it that a selector
// matches; null if there is none, or if the target is no element.
func closest(e js.Value, selector string) js.Value {
	target := e.Get("target")
	if target.Get("closest").Type() != js.TypeFunction {
		return js.Null()
	}
	return target.Call("closest", selector)
}

// handle is what a gesture moves: a part of a window of backup hours, or uses.
type handle struct {
	window int
	part   dial.Part
	uses   state.Occasions
}

// handleOf returns what an event's target moves, ok if it is something.
func handleOf(e js.Value) (h handle, ok bool) {
	at := closest(e, "[data-part]")
	if !at.Truthy() {
		return h, false
	}
	return readHandle(at.Call("getAttribute", "data-part").String())
}

// readHandle reads a number, three times the window and the part, or a u and uses.
func readHandle(text string) (h handle, ok bool) {
	digits, uses := strings.CutPrefix(text, "u")
	n, err := strconv.Atoi(digits)
	if uses {
		return handle{part: dial.Body, uses: state.Occasions(n)}, err == nil
	}
	return handle{window: n / 3, part: dial.Part(n % 3)}, err == nil
}

// begin starts a gesture.
func (a *app) begin(h handle, minute float64) {
	if h.uses != 0 {
		a.store.BeginUses(h.uses, minute)
	} else {
		a.store.Begin(h.window, h.part, minute)
	}
	a.lookAhead()
}

// commit keeps what a gesture changed; a list of uses goes with its mark.
func (a *app) commit() {
	moved := a.store.Moving
	a.store.Commit()
	if moved != 0 {
		day.FollowUses(a.page, moved)
		a.follow = a.document.Get("activeElement").Call("matches", ".drop-mark").Bool()
	}
	a.render()
}

// swallow keeps the click that ends a drag from those who would take it for a tap.
func (a *app) swallow(e js.Value) {
	if a.dragged {
		a.dragged = false
		e.Call("stopPropagation")
	}
}

func (a *app) onDown(e js.Value) {
	a.endGlide()
	a.dragged = false
	if a.pointer.active { // a second finger takes the drag back
		a.cancel()
		return
	}
	if e.Get("button").Int() != 0 {
		return
	}
	if button := closest(e, "[data-step]"); button.Truthy() {
		a.repeat.start(a, button, e)
		return
	}
	h, ok := handleOf(e)
	if !ok {
		return
	}
	a.pointer = a.dialAt()
	a.pointer.active, a.pointer.id = true, e.Get("pointerId").Int()
	a.place(e)
	minute, _ := a.pointer.polar()
	a.store.SettleTap(minute)
	a.begin(h, minute)
	target := closest(e, "[data-part]")
	target.Call("setPointerCapture", a.pointer.id)
	if h.part != dial.Body || h.uses != 0 {
		target.Call("focus", map[string]any{"preventScroll": true})
	}
	e.Call("preventDefault")
	a.askFrame()
}

// place takes the newest position of the pointer.
func (a *app) place(e js.Value) {
	a.pointer.x, a.pointer.y = e.Get("clientX").Float(), e.Get("clientY").Float()
	a.pointer.fine = e.Get("shiftKey").Bool()
}

// dialAt is a pointer with the dial's place on the screen.
func (a *app) dialAt() pointer {
	box := a.document.Call("getElementById", "dial").Call("getBoundingClientRect")
	return pointer{left: box.Get("left").Float(), top: box.Get("top").Float(), scale: dial.Width / box.Get("width").Float()}
}

// polar is the pointer's direction from the dial's centre, minutes, and its
// distance in units of the figure.
func (p *pointer) polar() (minute, r float64) {
	return dial.MinuteAt((p.x-p.left)*p.scale, (p.y-p.top)*p.scale)
}

func (a *app) onMove(e js.Value) {
	if a.repeat.strays(e) {
		a.cancel()
		return
	}
	if !a.pointer.active || e.Get("pointerId").Int() != a.pointer.id {
		return
	}
	a.place(e)
	a.pointer.moved, a.pointer.everMoved = true, true
	a.askFrame()
}

func (a *app) askFrame() {
	if !a.frameAsked {
		a.frameAsked = true
		a.window.Call("requestAnimationFrame", a.frame)
	}
}

// onFrame is one frame of a gesture: turn the edge, run day and year, paint.
func (a *app) onFrame() {
	a.frameAsked = false
	if a.store.Before == nil {
		return
	}
	clock := a.window.Get("performance")
	from := clock.Call("now").Float()
	if a.pointer.active && a.pointer.moved {
		a.drag()
	}
	a.painter.paint(a.view.Frame(a.store))
	a.moveStrip()
	a.measure(clock, "dial-frame", from)
}

// measure leaves a frame's time in the browser's own timeline.
func (a *app) measure(clock js.Value, name string, from float64) {
	clock.Call("measure", name, map[string]any{"start": from, "end": clock.Call("now").Float()})
	if a.measured++; a.measured%1000 == 0 {
		clock.Call("clearMeasures")
	}
}

// drag turns the edge to where the pointer is.
func (a *app) drag() {
	a.pointer.moved = false
	step := state.Coarse
	if a.pointer.fine {
		step = state.Fine
	}
	minute, _ := a.pointer.polar()
	if a.store.Drag(minute, step) && a.store.AtBest() {
		if n := a.window.Get("navigator"); n.Get("vibrate").Truthy() && (!n.Get("userActivation").Truthy() || n.Get("userActivation").Get("hasBeenActive").Truthy()) {
			n.Call("vibrate", 8) // a notch to feel, where the device allows it
		}
	}
}

func (a *app) onUp(e js.Value) {
	a.repeat.stop(a)
	if !a.pointer.active || e.Get("pointerId").Int() != a.pointer.id {
		return
	}
	a.place(e)
	if a.pointer.everMoved {
		a.drag()
	}
	a.pointer.active = false
	a.dragged = a.pointer.everMoved
	a.commit()
}

// cancel restores what was before the gesture.
func (a *app) cancel() {
	a.keyed = false // nothing is to be kept
	a.repeat.stop(a)
	a.pointer.active = false
	a.store.Cancel()
	a.render()
}

// onKey moves the focused grip or open mark: arrows a quarter of an hour (with shift five
// minutes), page keys an hour, home and end the limits, escape takes back.
func (a *app) onKey(e js.Value) {
	a.endGlide()
	key := e.Get("key").String()
	if key == "Escape" && a.store.Before != nil {
		a.keyed = false
		a.cancel()
		return
	}
	if mark := closest(e, ".drop-mark"); mark.Truthy() && (key == "Enter" || key == " ") {
		e.Call("preventDefault")
		mark.Call("dispatchEvent", a.window.Get("MouseEvent").New("click", map[string]any{"bubbles": true}))
		return
	}
	if (e.Get("ctrlKey").Bool() || e.Get("metaKey").Bool()) && strings.EqualFold(key, "z") && !closest(e, "input").Truthy() {
		e.Call("preventDefault")
		if e.Get("shiftKey").Bool() {
			a.page.Redo()
		} else {
			a.page.Undo()
		}
		a.render()
		return
	}
	h, ok := handleOf(e)
	if !ok || h.part == dial.Body && h.uses == 0 || e.Get("ctrlKey").Bool() || e.Get("altKey").Bool() || e.Get("metaKey").Bool() {
		return
	}
	by := state.Coarse
	if e.Get("shiftKey").Bool() {
		by = state.Fine
	}
	switch key {
	case "ArrowRight", "ArrowUp":
	case "ArrowLeft", "ArrowDown":
		by = -by
	case "PageUp":
		by = state.Page
	case "PageDown":
		by = -state.Page
	case "Home", "End":
		if h.uses != 0 {
			return
		}
		e.Call("preventDefault")
		a.store.Cancel()
		w := a.store.Window(h.window).NoBackup(h.part)
		if key == "End" {
			w = a.store.Window(h.window).FullDay(h.part)
		}
		a.store.SetWindow(h.window, w)
		a.render()
		return
	default:
		return
	}
	e.Call("preventDefault")
	if !a.keyed {
		a.keyed = true
		a.store.Cancel()
		a.begin(h, 0)
	}
	a.store.Preview(by)
	a.askFrame()
}

func (a *app) endKeys() {
	if !a.keyed {
		return
	}
	a.keyed = false
	a.commit()
}

// onClick handles taps on staves, and buttons worked by keyboard or a reader.
func (a *app) onClick(e js.Value) {
	a.endGlide()
	if _, grip := handleOf(e); !grip && closest(e, "#dial").Truthy() {
		at := a.dialAt()
		at.x, at.y = e.Get("clientX").Float(), e.Get("clientY").Float()
		switch minute, r := at.polar(); {
		case dial.OnRim(r):
			a.store.Tap(minute)
			a.render()
		case dial.InHub(r):
			a.page.Explain(explain.DayCost)
			a.render()
		case dial.InPool(r) && !closest(e, ".drop-mark").Truthy():
			house.ShowTank(a.page, minute)
			a.render()
		}
		return
	}
	if a.tapPicture(e) {
		return
	}
	if button := closest(e, "[data-step]"); button.Truthy() && e.Get("detail").Int() == 0 {
		h, by := stepOf(button)
		a.store.Cancel()
		a.begin(h, 0)
		a.store.Preview(by)
		a.commit()
	}
}

// stepOf reads a stepper button: what it moves, how many minutes.
func stepOf(button js.Value) (h handle, minutes int) {
	part, by, _ := strings.Cut(button.Call("getAttribute", "data-step").String(), ",")
	h, _ = readHandle(part)
	minutes, _ = strconv.Atoi(by)
	return h, minutes
}

// onLink opens a link that was put into the address by hand.
func (a *app) onLink() {
	fragment := a.window.Get("location").Get("hash").String()
	if strings.TrimPrefix(fragment, "#") == a.written {
		return
	}
	a.Open(fragment)
	a.written = ""
	a.render()
}
