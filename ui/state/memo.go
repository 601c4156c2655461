package state

import "suncask/engine/scenario"

// memo keeps what was computed for one scenario until another asks.
type memo[T any] struct {
	of    scenario.Scenario
	known bool
	value T
}

func (m *memo[T]) get(now *scenario.Scenario, compute func() T) T {
	if !m.known || m.of != *now {
		m.of, m.known, m.value = *now, true, compute()
	}
	return m.value
}

func (m *memo[T]) forget() { m.known = false }
