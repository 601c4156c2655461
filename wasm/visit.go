//go:build js && wasm

package main

import (
	"strings"
	"syscall/js"

	"suncask/engine/visit"
)

// askVisit fetches the texts of a visit once somebody enters one.
func (a *app) askVisit() {
	w := a.view.Words
	if a.visitAsked || w.HasVisit() || !a.page.SeesVisit() {
		return
	}
	a.visitAsked = true
	var come, lost js.Func
	release := func() { come.Release(); lost.Release() }
	ended := func(ok bool) { a.page.VisitLost = !ok; a.render() }
	come = a.guarded(func(text js.Value) { release(); ended(w.ReadVisit(text.String()) == nil) })
	lost = a.guarded(func(js.Value) { release(); ended(false) })
	a.window.Call("suncaskVisit").Call("then", come, lost)
}

// makeRoom lets charts follow where a visit has come or gone: columns are of other widths then.
func (a *app) makeRoom() {
	if seen := a.page.SeesVisit() && a.view.Words.HasVisit(); seen != a.visitSeen {
		a.visitSeen = seen
		a.after(0, func() { a.window.Call("dispatchEvent", a.window.Get("Event").New("resize")) })
	}
}

// readLast brings back what was read at the house that is shown.
func (a *app) readLast() {
	link, text, _ := strings.Cut(a.kept(lastRead), " ")
	if r, err := visit.ParseReadings(text); err == nil && link == a.store.Link() && len(a.store.Readings) == 0 {
		a.page.Visit.TakeReadings(r)
	}
	a.page.TakeStore()
}

// keepRead keeps what is read with its house, on this device alone.
func (a *app) keepRead() {
	text := a.page.Visit.Readings().String()
	if text == "" && a.readKept == "" {
		return
	}
	if text = a.store.Link() + " " + text; text != a.readKept {
		a.readKept = text
		a.storage(func(s js.Value) { s.Call("setItem", lastRead, text) })
	}
}
