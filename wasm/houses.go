//go:build js && wasm

package main

import (
	"sort"
	"strings"
	"syscall/js"

	"suncask/ui/page"
	"suncask/ui/state"
)

// Names in the device's storage: houses by name, and the house last changed.
const (
	housePrefix = "suncask house "
	lastHouse   = "suncask last"
	lastRead    = "suncask read" // what was read there
)

// Kept lists the houses that this device keeps, by name.
func (a *app) Kept() (list []page.Kept) {
	a.storage(func(s js.Value) {
		for i := range s.Get("length").Int() {
			key := s.Call("key", i).String()
			if name, ok := strings.CutPrefix(key, housePrefix); ok {
				list = append(list, page.Kept{Name: name, Link: s.Call("getItem", key).String()})
			}
		}
	})
	sort.Slice(list, func(i, j int) bool { return list[i].Name < list[j].Name })
	return list
}

// Keep keeps a house; false where the device does not let us.
func (a *app) Keep(name, link string) (kept bool) {
	a.storage(func(s js.Value) {
		s.Call("setItem", housePrefix+name, link)
		kept = true
	})
	return kept
}

// Drop forgets a house.
func (a *app) Drop(name string) {
	a.storage(func(s js.Value) { s.Call("removeItem", housePrefix+name) })
}

// Open makes the house of a link the present one.
func (a *app) Open(link string) {
	a.store.Cancel()
	a.store.Load(link)
	a.findRecord(a.store)
	a.store.ShowWorst()
	if a.page != nil { // readings are of the house before
		a.page.Visit.Forget()
		a.page.TakeStore()
	}
}

// Beside opens the house of a link beside the present one.
func (a *app) Beside(link string) *state.Store {
	s := state.Open(link)
	a.findRecord(s)
	return s
}

// last is the link of the house that somebody last changed on this device; empty if there
// is none.
func (a *app) last() string { return a.kept(lastHouse) }

// openFirst opens the address's house, else the one last changed here. An address's house
// that is another leaves the last one an undo away.
func (a *app) openFirst() {
	fragment := strings.TrimPrefix(a.window.Get("location").Get("hash").String(), "#")
	last := a.last()
	switch {
	case last == "" || last == fragment:
		a.store = state.OpenInTurns(fragment, a.pause)
	case fragment == "":
		a.store = state.OpenInTurns(last, a.pause)
	default:
		a.store = state.OpenInTurns(last, a.pause)
		a.store.Load(fragment)
		a.shared = true
	}
}
