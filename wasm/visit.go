//go:build js && wasm

package main

import (
	"strings"
	"syscall/js"

	"suncask/engine/visit"
	"suncask/ui/state"
)

// askTexts fetches the texts of a visit or a lesson once somebody enters one.
func (a *app) askTexts() {
	w, p := a.view.Words, a.page
	a.askPart("visit", p.SeesVisit() && !w.HasVisit(), &p.VisitLost, w.ReadVisit)
	a.askPart("lesson", p.SeesLesson() && !w.HasLesson(), &p.LessonLost, w.ReadLesson)
}

// askPart fetches a part's texts and styles, once.
func (a *app) askPart(name string, wanted bool, lost *bool, read func(text string) error) {
	if !wanted || a.asked[name] {
		return
	}
	a.asked[name] = true
	var come, failed js.Func
	release := func() { come.Release(); failed.Release() }
	ended := func(ok bool) { *lost = !ok; a.render() }
	come = a.guarded(func(text js.Value) { release(); ended(read(text.String()) == nil) })
	failed = a.guarded(func(js.Value) { release(); ended(false) })
	a.window.Call("suncaskPart", name).Call("then", come, failed)
}

// makeRoom lets charts follow where a visit or a lesson has come or gone: columns are of other widths
// then.
func (a *app) makeRoom() {
	w, p := a.view.Words, a.page
	if seen := p.SeesVisit() && w.HasVisit() || p.SeesLesson() && w.HasLesson(); seen != a.workSeen {
		a.workSeen = seen
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
	if a.store.Entry == state.Lesson {
		return
	}
	text := a.page.Visit.Readings().String()
	if text == "" && a.readKept == "" {
		return
	}
	if text = a.store.Link() + " " + text; text != a.readKept {
		a.readKept = text
		a.storage(func(s js.Value) { s.Call("setItem", lastRead, text) })
	}
}
