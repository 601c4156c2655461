//go:build js && wasm

package main

import (
	"fmt"
	"syscall/js"

	"suncask/ui/words"
)

// on listens to an event for as long as the page lives. A panic in the handler
// is told in words and stops the page; the link keeps the scenario.
func (a *app) on(target js.Value, event string, handle func(e js.Value)) {
	target.Call("addEventListener", event, a.guarded(handle))
}

func (a *app) guarded(handle func(e js.Value)) js.Func {
	return js.FuncOf(func(_ js.Value, args []js.Value) any {
		if a.stopped {
			return nil
		}
		defer a.fail()
		e := js.Undefined()
		if len(args) > 0 {
			e = args[0]
		}
		handle(e)
		return nil
	})
}

// fail, deferred, catches a panic and tells of it outside the mount point, which
// may be what broke.
func (a *app) fail() {
	r := recover()
	if r == nil {
		return
	}
	a.stopped = true
	doc := a.document
	doc.Get("documentElement").Get("dataset").Set("state", "failed")
	w := words.Shown()
	text := w.Text(words.Trouble) + " " + w.Text(words.TroubleKept)
	if box := doc.Call("getElementById", "trouble"); box.Truthy() {
		box.Call("querySelector", "p").Set("textContent", text)
		box.Call("querySelector", "pre").Set("textContent", fmt.Sprint(r))
		box.Set("hidden", false)
	}
	// The link of the last state that was whole.
	if a.store != nil && a.written != "" {
		a.window.Get("history").Call("replaceState", js.Null(), "", "#"+a.written)
	}
}
