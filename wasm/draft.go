//go:build js && wasm

package main

import (
	"syscall/js"

	"suncask/ui"
)

// listenDrafts keeps what is being typed until it is entered or left.
func (a *app) listenDrafts() {
	a.on(a.document, "input", func(e js.Value) {
		if box := e.Get("target"); box.Get("type").String() == "text" {
			a.page.Draft = ui.Draft{Box: box.Get("id").String(), Text: box.Get("value").String()}
		}
	})
	entered := a.guarded(func(js.Value) { a.page.Draft = ui.Draft{} })
	for _, event := range []string{"change", "focusout"} {
		a.document.Call("addEventListener", event, entered, true) // before the box's own
	}
}
