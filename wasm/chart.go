//go:build js && wasm

package main

import (
	"encoding/binary"
	"math"
	"syscall/js"

	"suncask/ui/curve"
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

// check forgets the charts whose box vugu has taken away.
func (c *charts) check(a *app) {
	for name := range c.mounted {
		if !a.document.Call("querySelector", "#"+name+" svg").Truthy() {
			delete(c.mounted, name)
		}
	}
}

// mount puts an empty chart into the element of its name; false where the page has none or
// the script has not come.
func (c *charts) mount(a *app, name string) bool {
	if c.mounted[name] {
		return true
	}
	c.api = a.window.Get("suncaskCharts")
	if !c.api.Truthy() || !a.document.Call("getElementById", name).Truthy() {
		return false
	}
	dark := a.window.Call("matchMedia", "(prefers-color-scheme: dark)").Get("matches").Bool()
	c.api.Call("mount", name, dark)
	c.mounted[name] = true
	return true
}

// show draws a chart, if it can be mounted.
func (c *charts) show(a *app, name string, data *curve.Data) {
	if !c.mount(a, name) {
		return
	}
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
	c.api.Call("data", name, c.buffer, len(c.numbers))
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

// showStrip draws the day's chart, which every frame of a gesture moves.
func (a *app) showStrip() { a.charts.show(a, "strip", a.view.Strip(a.store)) }

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
		}
	}
}
