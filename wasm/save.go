//go:build js && wasm

package main

import (
	"strings"
	"syscall/js"
)

// Save hands a file to the user, as a download.
func (a *app) Save(name, text string) {
	kind := "text/csv"
	if strings.HasSuffix(name, ".svg") {
		kind = "image/svg+xml"
	}
	blob := a.window.Get("Blob").New([]any{text}, map[string]any{"type": kind + ";charset=utf-8"})
	address := a.window.Get("URL").Call("createObjectURL", blob)
	link := a.document.Call("createElement", "a")
	link.Set("href", address)
	link.Set("download", name)
	link.Call("click")
	var later js.Func // the download has begun by then
	later = js.FuncOf(func(js.Value, []js.Value) any {
		a.window.Get("URL").Call("revokeObjectURL", address)
		later.Release()
		return nil
	})
	a.window.Call("setTimeout", later, 10_000)
}

// Picture hands the picture of an element to the user.
func (a *app) Picture(id string) {
	if text := a.window.Call("suncaskPicture", id); text.Truthy() {
		a.Save("suncask-"+id+".svg", text.String())
	}
}
