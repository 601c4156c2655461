//go:build js && wasm

package main

import (
	"encoding/base64"
	"syscall/js"

	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/ui/house"
	"suncask/ui/page"
	"suncask/ui/state"
)

// pieceBytes is how much of a weather file is read at a time: some 30 ms of work, so
// that the progress shows.
const pieceBytes = 128 << 10

// listenFiles takes a weather file that is chosen, or dropped anywhere on the page.
func (a *app) listenFiles() {
	a.on(a.document, "change", func(e js.Value) {
		if input := e.Get("target"); input.Get("id").String() == "weather-file" && input.Get("files").Get("length").Int() > 0 {
			a.readFile(input.Get("files").Index(0))
		}
	})
	a.on(a.document, "dragover", func(e js.Value) {
		if hasFiles(e) {
			e.Call("preventDefault")
		}
	})
	a.on(a.document, "drop", func(e js.Value) {
		if !hasFiles(e) {
			return
		}
		e.Call("preventDefault")
		if files := e.Get("dataTransfer").Get("files"); files.Get("length").Int() > 0 {
			a.page.Show(page.WeatherPanel)
			a.readFile(files.Index(0))
		}
	})
}

func hasFiles(e js.Value) bool {
	data := e.Get("dataTransfer")
	return data.Truthy() && data.Get("types").Call("includes", "Files").Bool()
}

// readFile reads a file in pieces, each in a turn of its own.
func (a *app) readFile(file js.Value) {
	a.reading++
	turn, size := a.reading, file.Get("size").Int()
	near, _ := a.store.Scenario.At()
	r := hourly.NewReader(near.Place)
	at := 0
	var next, piece, lost js.Func
	release := func() { next.Release(); piece.Release(); lost.Release() }
	end := func(res *hourly.Result, err error) {
		release()
		house.FileEnded(a.page, res, err)
		if err == nil {
			a.keepRecord(res.Record)
		}
		a.render()
	}
	next = a.guarded(func(js.Value) {
		switch {
		case turn != a.reading: // another file was chosen meanwhile
			release()
		case at >= size:
			end(r.Close())
		default:
			file.Call("slice", at, at+pieceBytes).Call("arrayBuffer").Call("then", piece, lost)
		}
	})
	piece = a.guarded(func(buffer js.Value) {
		bytes := make([]byte, buffer.Get("byteLength").Int())
		js.CopyBytesToGo(bytes, a.window.Get("Uint8Array").New(buffer))
		if _, err := r.Write(bytes); err != nil {
			end(nil, err)
			return
		}
		at += pieceBytes
		a.page.FileReading = min(100, 100*at/max(1, size))
		if status := a.document.Call("getElementById", "weather-status"); status.Truthy() {
			status.Set("textContent", house.FileReading(a.page))
		}
		a.window.Call("setTimeout", next, 0)
	})
	lost = a.guarded(func(e js.Value) { end(nil, js.Error{Value: e}) })
	a.page.FileReading = 0
	a.window.Call("setTimeout", next, 0)
}

// recordName is where a record is kept on the device.
func recordName(key string) string { return "suncask-weather-" + key }

// recordText is a record as text, for the device's storage and for a worker.
func recordText(r *climate.Record) string { return base64.StdEncoding.EncodeToString(r.Encode()) }

// recordOf reads what recordText wrote; nil for anything else.
func recordOf(text string) *climate.Record {
	raw, err := base64.StdEncoding.DecodeString(text)
	if err != nil {
		return nil
	}
	r, err := climate.DecodeRecord(raw)
	if err != nil {
		return nil
	}
	return r
}

// keepRecord keeps a record on this device, if it lets us.
func (a *app) keepRecord(r *climate.Record) {
	a.storage(func(s js.Value) {
		s.Call("setItem", recordName(r.Key()), recordText(r))
	})
}

// findRecord opens the record that a store's scenario names, if this device kept it.
func (a *app) findRecord(store *state.Store) {
	key := store.Scenario.Weather
	if key == "" {
		return
	}
	if r := recordOf(a.kept(recordName(key))); r != nil {
		store.Keep(r)
	}
}

// kept is what the device keeps under a key, nothing where it keeps nothing.
func (a *app) kept(key string) (value string) {
	a.storage(func(s js.Value) {
		if v := s.Call("getItem", key); v.Type() == js.TypeString {
			value = v.String()
		}
	})
	return value
}

// storage uses the device's storage; where it is blocked or full, nothing happens.
func (a *app) storage(use func(s js.Value)) {
	defer func() {
		if r := recover(); r != nil {
			if _, ok := r.(js.Error); !ok {
				panic(r)
			}
		}
	}()
	// A getter that throws would end the program: the page's script asks for it.
	if s := a.window.Call("suncaskStorage"); s.Truthy() {
		use(s)
	}
}

// DevicePlace asks the device where it is.
func (a *app) DevicePlace() {
	a.fetchTowns() // for the clock
	place := a.window.Get("navigator").Get("geolocation")
	if !place.Truthy() {
		a.page.At(0, 0, false)
		return
	}
	var found, refused js.Func
	release := func() { found.Release(); refused.Release() }
	found = a.guarded(func(at js.Value) {
		release()
		c := at.Get("coords")
		a.page.At(c.Get("latitude").Float(), c.Get("longitude").Float(), true)
		a.render()
	})
	refused = a.guarded(func(js.Value) {
		release()
		a.page.At(0, 0, false)
		a.render()
	})
	place.Call("getCurrentPosition", found, refused)
}
