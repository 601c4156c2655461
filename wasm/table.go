//go:build js && wasm && tableoutside

package main

import (
	"syscall/js"

	"suncask/engine/climate"
)

// The start script has fetched the table of places.
func init() { climate.UseTable(js.Global().Get("suncaskPlaces").String()) }
