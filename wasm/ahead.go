//go:build js && wasm

package main

import "suncask/ui/state"

// aheadMs is how long a gesture goes on before a worker looks ahead: a tap does not need it.
const aheadMs = 120

// lookAhead has a worker simulate the held grip's other places; the frame after the last shows
// them.
func (a *app) lookAhead() {
	a.Stop(state.AheadJob)
	a.ahead.begin(a, aheadMs, func() {
		if link, held := a.store.BeginAhead(); held {
			a.Start(state.AheadJob, link)
		}
	})
}
