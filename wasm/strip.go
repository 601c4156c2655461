//go:build js && wasm

package main

import (
	"encoding/binary"
	"math"
	"syscall/js"

	"suncask/ui/curve"
)

// strip hands the chart's options and data to the page's script.
type strip struct {
	api     js.Value // window.suncaskStrip, once its script has come
	dark    bool
	mounted bool
	numbers []float64
	bytes   []byte
	buffer  js.Value
}

// check forgets a chart whose box vugu has taken away.
func (s *strip) check(a *app) {
	if s.mounted && !a.document.Call("querySelector", "#strip svg").Truthy() {
		s.mounted = false
	}
}

// show draws the present state; it mounts the chart when it first can.
func (s *strip) show(a *app) {
	if !s.mounted {
		s.api = a.window.Get("suncaskStrip")
		if !s.api.Truthy() {
			return
		}
		s.mount(a)
	}
	s.data(a)
}

func (s *strip) mount(a *app) {
	palette := curve.Light
	s.dark = a.window.Call("matchMedia", "(prefers-color-scheme: dark)").Get("matches").Bool()
	if s.dark {
		palette = curve.Dark
	}
	s.api.Call("mount", a.document.Call("getElementById", "strip"), curve.StripOptions(palette))
	s.mounted = true
}

func (s *strip) data(a *app) {
	s.numbers = a.view.Strip(a.store).Append(s.numbers[:0])
	size := 8 * len(s.numbers)
	if len(s.bytes) < size {
		s.bytes = make([]byte, size*2)
		s.buffer = a.window.Get("Uint8Array").New(len(s.bytes))
	}
	for i, v := range s.numbers {
		binary.LittleEndian.PutUint64(s.bytes[8*i:], math.Float64bits(v))
	}
	js.CopyBytesToJS(s.buffer, s.bytes[:size])
	s.api.Call("data", s.buffer, len(s.numbers))
}
