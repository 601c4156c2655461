//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui/page"
)

// widths are the media queries of two and three columns; the stylesheet has the same.
var widths = [...]string{"(min-width: 760px)", "(min-width: 1200px)"}

// listenPlaces follows the screen's width and the browser's Back.
func (a *app) listenPlaces() {
	for _, query := range widths {
		a.on(a.window.Call("matchMedia", query), "change", func(js.Value) {
			a.page.Wide = a.columns()
			a.render()
		})
	}
	a.on(a.window, "popstate", func(e js.Value) {
		place, sheet, ours := entryOf(e.Get("state"))
		was := a.history
		a.history = resting
		switch {
		case was == leavingOn:
			a.enterHere()
		case was == leaving:
			a.putAddress() // an earlier entry has the house of then
		case ours: // and not an address that was typed
			a.page.Return(place, sheet)
			a.putAddress()
			a.render()
		}
	})
	a.window.Get("history").Call("replaceState", a.here(), "") // the first entry
	close := func() {
		if a.page.Over != page.NoSheet {
			a.page.CloseSheet()
			a.render()
		}
	}
	a.on(a.document, "keydown", func(e js.Value) {
		if e.Get("key").String() == "Escape" && !e.Get("defaultPrevented").Bool() {
			close()
		}
	})
	a.on(a.document, "click", func(e js.Value) {
		if closest(e, ".scrim").Truthy() && !closest(e, ".over").Truthy() {
			close()
		}
	})
	if kept := a.kept(themeKey); kept != "" {
		a.page.Theme = kept
	}
}

// columns counts the screen's columns from 0.
func (a *app) columns() (n int8) {
	for _, query := range widths {
		if a.window.Call("matchMedia", query).Get("matches").Bool() {
			n++
		}
	}
	return n
}

// history is whether the page leaves an entry of the browser's history, which comes to pass
// some time after it is asked for.
type history int8

const (
	resting history = iota
	leaving
	leavingOn // and enters another one then
)

// Went brings the browser's history to the place and sheet shown: an entry of its own, in the
// stead of that of a sheet. A closed sheet's entry is left for the one that it was opened from.
func (a *app) Went(top bool) {
	a.top = a.top || top
	place, sheet, ours := entryOf(a.window.Get("history").Get("state"))
	switch {
	case a.history != resting:
		a.history = leavingOn
	case !ours || sheet == page.NoSheet:
		a.enterHere()
	case a.page.Over == page.NoSheet && a.page.Place == place:
		a.history = leaving
		a.window.Get("history").Call("back")
	default:
		a.putAddress()
	}
}

// entryOf reads what here wrote; ours is false for anything else.
func entryOf(state js.Value) (place page.Place, sheet page.Sheet, ours bool) {
	if !state.Truthy() || state.Get("place").Type() != js.TypeNumber {
		return 0, 0, false
	}
	return page.Place(state.Get("place").Int()), page.Sheet(state.Get("sheet").Int()), true
}

// enterHere makes what is shown an entry.
func (a *app) enterHere() {
	a.window.Get("history").Call("pushState", a.here(), "", "#"+a.written)
}

// here is what Back returns to: see entryOf.
func (a *app) here() map[string]any {
	return map[string]any{"place": int(a.page.Place), "sheet": int(a.page.Over)}
}

// putAddress writes the house into the present entry.
func (a *app) putAddress() {
	a.window.Get("history").Call("replaceState", a.here(), "", "#"+a.written)
}

// themeKey is under what the device keeps the page's light.
const themeKey = "suncask theme"

// Light shows the page light, dark, or as the device has it.
func (a *app) Light(theme string) {
	a.document.Get("documentElement").Get("dataset").Set("theme", theme)
	a.storage(func(s js.Value) { s.Call("setItem", themeKey, theme) })
	clear(a.charts.mounted)
}

// dark tells which light the page is in.
func (a *app) dark() bool {
	switch a.page.Theme {
	case "light", "dark":
		return a.page.Theme == "dark"
	}
	return a.window.Call("matchMedia", "(prefers-color-scheme: dark)").Get("matches").Bool()
}

// Print prints the page, once it is rendered.
func (a *app) Print() {
	if !a.window.Get("print").Truthy() {
		return
	}
	if a.page.Paper() { // as it is
		a.after(0, func() { a.window.Call("print") })
		return
	}
	a.window.Call("suncaskDraw")
	a.page.Printing = true // the tap's own render shows it
	a.after(printMs, func() { a.window.Call("print") })
}

// beforePrint shows all of it where the browser's own command prints; charts that are to come
// are missing then.
func (a *app) beforePrint() {
	if !a.page.Printing && !a.page.Paper() && a.started && !a.rendering && a.store.Before == nil {
		a.page.Printing = true
		a.render() // before this event is over: see handleEvent of syscall/js
	}
}

// printed shows the page as it was before it was printed.
func (a *app) printed() {
	if a.page.Printing {
		a.page.Printing = false
		a.render()
	}
}

// printMs is how long charts have to be drawn in before they are printed.
const printMs = 700
