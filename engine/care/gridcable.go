package care

import "suncask/engine/scenario"

// gridCables are cross-sections, mm2, and the current that two loaded copper conductors with
// insulation of 70 degC carry in conduit on or in a wall at 30 degC (IEC 60364-5-52 table B.52.2,
// method B1, from memory).
var gridCables = [...]struct{ mm2, amps float64 }{
	{1.5, 17.5}, {2.5, 24}, {4, 32}, {6, 41}, {10, 57}, {16, 76}, {25, 101},
}

// GridCableAmps is the current that the conductors of the grid's circuit carry; ok is false where
// they are not known.
func GridCableAmps(s *scenario.Scenario) (amps float64, ok bool) {
	if s.GridCable == 0 {
		return 0, false
	}
	return gridCables[s.GridCable-1].amps, true
}

// gridCable finds conductors too thin for the element, or for the breaker that should guard them.
func (l *findings) gridCable(s *scenario.Scenario) {
	carries, ok := GridCableAmps(s)
	if !ok {
		return
	}
	const source = "IEC 60364-5-52 table B.52.2, in conduit (from memory)"
	switch amps := GridA(s); {
	case amps > carries:
		l.find(GridCableCurrent, Stop, scenario.GridCable, source, amps, carries)
	case s.BreakerA != scenario.Unknown && s.BreakerA > carries:
		l.find(GridCableGuard, Caution, scenario.GridCable, source, s.BreakerA, carries)
	}
}
