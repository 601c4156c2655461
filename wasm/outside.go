//go:build js && wasm && outside

package main

import (
	"syscall/js"

	"suncask/engine/climate"
	"suncask/ui/format"
	"suncask/ui/words"
)

// The start script has fetched the table of places and the words, and knows the units.
func init() {
	climate.UseTable(js.Global().Get("suncaskPlaces").String())
	shown, err := words.ReadLines(js.Global().Get("suncaskWords").String())
	if err != nil {
		panic(err)
	}
	words.Use(shown)
	locale := js.Global().Get("suncaskLocale")
	format.SetDecimal(locale.Get("decimal").String())
	format.SetCurrencyAfter(locale.Get("currencyAfter").Bool())
	format.SetCustomary(locale.Get("units").String() == "us")
}
