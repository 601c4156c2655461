//go:build js && wasm

package main

import (
	"encoding/binary"
	"math"
	"syscall/js"

	"suncask/engine/scenario"
	"suncask/ui"
	"suncask/ui/curve"
	"suncask/ui/format"
	"suncask/ui/view"
)

// charts hands numbers to the page's script, which draws them.
type charts struct {
	api     js.Value // window.suncaskCharts, once its script has come
	mounted map[string]bool
	numbers []float64
	bytes   []byte
	buffer  js.Value
}

// check forgets the charts whose box vugu has taken away, or given to another chart.
func (c *charts) check(a *app) {
	for name := range c.mounted {
		if !a.document.Call("querySelector", "#"+name+" > [data-chart="+name+"] svg").Truthy() {
			delete(c.mounted, name)
		}
	}
}

// mount puts an empty chart into the element of its name; false where the page has none, or one
// without a size, or the script has not come.
func (c *charts) mount(a *app, name string) bool {
	if c.mounted[name] {
		return true
	}
	host := a.document.Call("getElementById", name)
	if !host.Truthy() || host.Get("clientWidth").Int() == 0 {
		return false
	}
	if c.api = a.window.Get("suncaskCharts"); !c.api.Truthy() {
		if name != "strip" || !a.sketched(host) {
			a.window.Call("suncaskDraw")
		}
		return false
	}
	c.api.Call("mount", name, a.dark())
	c.mounted[name] = true
	return true
}

// sketched tells whether the strip is still the example's, which the page brought along; vugu's
// first render takes it out.
func (a *app) sketched(host js.Value) bool {
	s := a.store.Scenario
	_, real := a.store.RealDay()
	same := !real && a.store.Before == nil && a.window.Get("suncaskLocale").Get("decimal").String() == "." && s == scenario.Defaults(scenario.LatestVersion) && !a.view.InShowers && !format.Customary()
	switch {
	case !a.sketch.Truthy():
		return false
	case same:
		host.Call("append", a.sketch)
	default:
		a.sketch.Call("remove")
		a.sketch = js.Null()
	}
	return same
}

// show draws a chart, if it can be mounted.
func (c *charts) show(a *app, name string, data *curve.Data) {
	if c.mount(a, name) {
		c.hand(a, "data", name, data)
	}
}

// hand gives a chart's numbers to a function of the script.
func (c *charts) hand(a *app, function, name string, data *curve.Data) {
	c.numbers = data.Append(c.numbers[:0])
	size := 8 * len(c.numbers)
	if len(c.bytes) < size {
		c.bytes = make([]byte, size*2)
		c.buffer = a.window.Get("Uint8Array").New(len(c.bytes))
	}
	for i, v := range c.numbers {
		binary.LittleEndian.PutUint64(c.bytes[8*i:], math.Float64bits(v))
	}
	js.CopyBytesToJS(c.buffer, c.bytes[:size])
	c.api.Call(function, name, c.buffer, len(c.numbers))
}

// name names the nodes of an energy flow.
func (c *charts) name(id string, names []string) {
	if c.mounted[id] {
		list := make([]any, len(names))
		for i, n := range names {
			list[i] = n
		}
		c.api.Call("names", id, list)
	}
}

// showStrip draws the day's chart.
func (a *app) showStrip() { a.charts.show(a, "strip", a.view.Strip(a.store)) }

// moveStrip moves its curves in a frame of a gesture.
func (a *app) moveStrip() {
	if a.charts.mount(a, "strip") {
		a.charts.hand(a, "move", "strip", a.view.Strip(a.store))
	}
}

// showCharts draws all charts that the page has.
func (a *app) showCharts() {
	a.showStrip()
	for _, id := range view.Charts() {
		if a.document.Call("getElementById", id).Truthy() {
			a.charts.show(a, id, a.view.Chart(a.store, id))
			if id == "flow" {
				names := a.view.FlowNames(a.store)
				a.charts.name(id, names[:])
			}
			if x, ok := ui.ReadAt(a.page, id); ok && a.charts.mounted[id] {
				a.charts.api.Call("mark", id, x)
			}
		}
	}
}
