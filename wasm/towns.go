//go:build js && wasm

package main

import (
	"strconv"
	"syscall/js"

	"suncask/engine/climate"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/towns"
	"suncask/ui/words"
)

// offers is the list under the place's box.
type offers struct {
	list   []state.PlaceOffer
	marked int // that arrows have reached, -1 none
}

// placeBox is the id of the box, placeList that of the list under it.
const (
	placeBox  = "field-place"
	placeList = "places"
)

// listenPlace offers places while one is typed: the list of towns is fetched once the box
// has the focus.
func (a *app) listenPlace() {
	d := a.document
	inBox := func(handle func(e js.Value)) func(e js.Value) {
		return func(e js.Value) {
			if e.Get("target").Get("id").String() == placeBox {
				handle(e)
			}
		}
	}
	a.on(d, "focusin", inBox(func(js.Value) { a.fetchTowns() }))
	a.on(d, "focusout", inBox(func(js.Value) { a.closeOffers() }))
	a.on(d, "input", inBox(func(js.Value) { a.offer() }))
	a.on(d, "keydown", inBox(a.onPlaceKey))
	list := d.Call("getElementById", placeList)
	a.on(list, "mousedown", func(e js.Value) { e.Call("preventDefault") }) // the box keeps the focus
	a.on(list, "click", func(e js.Value) {
		if option := closest(e, "[role=option]"); option.Truthy() {
			for i := range a.offers.list {
				if option.Get("id").String() == optionID(i) {
					a.takeOffer(i)
					return
				}
			}
		}
	})
}

func optionID(i int) string { return placeList + "-" + strconv.Itoa(i) }

// onPlaceKey moves through the list, takes from it and closes it.
func (a *app) onPlaceKey(e js.Value) {
	n := len(a.offers.list)
	if e.Get("isComposing").Bool() {
		return
	}
	switch e.Get("key").String() {
	case "ArrowDown":
		if n == 0 {
			a.offer()
			n = len(a.offers.list)
		}
		a.mark(min(a.offers.marked+1, n-1))
	case "ArrowUp":
		a.mark(max(a.offers.marked-1, -1))
	case "Enter":
		if n == 0 || a.offers.marked < 0 {
			a.closeOffers() // the box's change takes the best
			return
		}
		a.takeOffer(a.offers.marked)
	case "Escape":
		if n == 0 {
			return
		}
		a.closeOffers()
	default:
		return
	}
	e.Call("preventDefault")
}

// offer fills the list for what the box holds.
func (a *app) offer() {
	box := a.document.Call("getElementById", placeBox)
	if !box.Truthy() || !box.Call("matches", ":focus").Bool() {
		return
	}
	list := a.page.Offers(box.Get("value").String())
	a.closeOffers()
	if len(list) == 0 {
		return
	}
	a.offers = offers{list, -1}
	element := a.document.Call("getElementById", placeList)
	for i, o := range list {
		option := a.document.Call("createElement", "li")
		option.Set("id", optionID(i))
		option.Call("setAttribute", "role", "option")
		option.Call("setAttribute", "aria-selected", "false")
		option.Set("textContent", o.Name)
		beside := a.document.Call("createElement", "span")
		beside.Set("textContent", a.page.Beside(o))
		option.Call("append", " ", beside)
		element.Call("append", option)
	}
	at := box.Call("getBoundingClientRect")
	style := element.Get("style")
	px := func(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) + "px" }
	style.Set("left", px(at.Get("left").Float()+a.window.Get("scrollX").Float()))
	style.Set("top", px(at.Get("bottom").Float()+a.window.Get("scrollY").Float()+2))
	style.Set("width", px(at.Get("width").Float()))
	element.Call("setAttribute", "aria-label", a.page.T(words.PlaceOffers))
	element.Set("hidden", false)
	box.Call("setAttribute", "aria-expanded", "true")
	height := a.window.Get("innerHeight")
	if seen := a.window.Get("visualViewport"); seen.Truthy() {
		height = seen.Get("height") // above a keyboard on the screen
	}
	if element.Call("getBoundingClientRect").Get("bottom").Float() > height.Float() {
		box.Call("scrollIntoView")
	}
}

// mark moves the mark in the list; -1 none.
func (a *app) mark(i int) {
	box := a.document.Call("getElementById", placeBox)
	set := func(i int, value string) {
		if i >= 0 {
			a.document.Call("getElementById", optionID(i)).Call("setAttribute", "aria-selected", value)
		}
	}
	set(a.offers.marked, "false")
	set(i, "true")
	a.offers.marked = i
	if i < 0 {
		box.Call("removeAttribute", "aria-activedescendant")
	} else {
		box.Call("setAttribute", "aria-activedescendant", optionID(i))
	}
}

func (a *app) closeOffers() {
	a.offers = offers{marked: -1}
	element := a.document.Call("getElementById", placeList)
	element.Call("replaceChildren")
	element.Set("hidden", true)
	if box := a.document.Call("getElementById", placeBox); box.Truthy() {
		box.Call("setAttribute", "aria-expanded", "false")
		box.Call("removeAttribute", "aria-activedescendant")
	}
}

func (a *app) takeOffer(i int) {
	o := a.offers.list[i]
	a.closeOffers()
	a.page.Draft = page.Draft{} // no change of the box follows
	a.page.TakePlace(o)
	a.render()
}

// fetchTowns fetches the list of towns, unless it is there or on its way, and reads it in
// turns.
func (a *app) fetchTowns() {
	if a.page.Towns == page.TownsComing || a.page.Towns == page.TownsThere {
		return
	}
	a.page.Towns = page.TownsComing
	var come, lost js.Func
	release := func() { come.Release(); lost.Release() }
	come = a.guarded(func(text js.Value) { release(); a.readTowns(text.String()) })
	lost = a.guarded(func(js.Value) { release(); a.townsEnded(nil) })
	a.window.Call("suncaskTowns").Call("then", come, lost)
}

// readTowns reads the list, a few milliseconds a turn.
func (a *app) readTowns(text string) {
	r, err := towns.NewReader(text, a.page.T(words.LanguageCode))
	if err != nil {
		a.townsEnded(nil)
		return
	}
	var turn js.Func
	turn = a.guarded(func(js.Value) {
		for from := a.turns.now(); a.turns.now()-from < townsMs; {
			if !r.Step() {
				turn.Release()
				list, _ := r.List()
				a.townsEnded(list)
				return
			}
		}
		a.window.Call("setTimeout", turn, 0)
	})
	a.window.Call("setTimeout", turn, 0)
}

// townsMs is how long a turn of reading may take.
const townsMs = 6

// townsEnded takes the list, nil where it could not be had.
func (a *app) townsEnded(list *towns.List) {
	a.page.Towns = page.TownsAbsent
	if list != nil {
		a.page.Towns = page.TownsThere
		a.store.TakeTowns(list)
	}
	if a.page.Draft.Box == placeBox {
		a.offer()
	}
	a.render()
}

// zoneClock is a zone's clock by the browser's data.
func (a *app) zoneClock(zone string) (c climate.Clock, ok bool) {
	days := a.window.Call("suncaskZone", zone, climate.RefYear)
	if !days.Truthy() {
		return c, false
	}
	var hours [climate.Days]float64
	for day := range hours {
		hours[day] = days.Index(day).Float()
	}
	return climate.ClockOver(&hours)
}
