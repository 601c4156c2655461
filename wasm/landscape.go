//go:build js && wasm

package main

import (
	"math"
	"syscall/js"

	"suncask/ui"
	"suncask/ui/advice"
	"suncask/ui/calendar"
	"suncask/ui/landscape"
	"suncask/ui/page"
	"suncask/ui/year"
)

// landMs is how far apart the landscape is drawn while it grows.
const landMs = 700

// paintLandscape draws what is known of the landscape, if it was not drawn just now.
func (a *app) paintLandscape() {
	now := a.window.Get("performance").Call("now").Float()
	if now-a.landDrawn < landMs {
		return
	}
	a.landDrawn = now
	for i, d := range advice.Shapes(a.page) {
		if path := a.document.Call("getElementById", advice.ShapeID(i)); path.Truthy() {
			path.Call("setAttribute", "d", d)
		}
	}
}

// tapPicture takes the hours, shows the day or reads the item at a tap on the landscape, the
// calendar or a chart; false if it was elsewhere.
func (a *app) tapPicture(e js.Value) bool {
	for _, p := range []struct {
		id     string
		wide   float64
		tapped func(c *page.Page, x, y float64)
	}{{"#land", landscape.Width, advice.LandTapped}, {"#calendar", calendar.Width, year.CalendarTapped}} {
		at := closest(e, p.id)
		if !at.Truthy() {
			continue
		}
		box := at.Call("getBoundingClientRect")
		k := p.wide / box.Get("width").Float()
		p.tapped(a.page, (e.Get("clientX").Float()-box.Get("left").Float())*k, (e.Get("clientY").Float()-box.Get("top").Float())*k)
		a.render()
		return true
	}
	for _, name := range ui.ReadCharts() {
		if !a.charts.mounted[name] || !closest(e, "#"+name).Truthy() {
			continue
		}
		if x := a.charts.api.Call("across", name, e.Get("clientX")).Float(); !math.IsNaN(x) {
			ui.ReadNear(a.page, name, x)
			a.render()
		}
		return true
	}
	return false
}
