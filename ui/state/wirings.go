package state

import (
	"slices"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
)

// wiringNumbers are those of a wiring, before its findings.
const wiringNumbers = 9

// wiringPart writes a wiring: what its row shows.
func wiringPart(w *visit.Wiring) Part {
	n := []float64{w.OfferedJ, w.IntoJ, w.HotV, w.CableMM2, w.Volts, w.DesignA, w.FuseLeastA, w.FuseMostA, float64(w.Strings)}
	return Part{Steps: 1, Link: scenario.Encode(&w.To), Numbers: appendFindings(n, w.Findings)}
}

// readWiring is the reverse of wiringPart.
func readWiring(p Part) (w visit.Wiring, ok bool) {
	n := p.Numbers
	if len(n) < wiringNumbers {
		return w, false
	}
	w.To, _ = scenario.Decode(p.Link)
	w.OfferedJ, w.IntoJ, w.HotV, w.CableMM2 = n[0], n[1], n[2], n[3]
	w.Volts, w.DesignA, w.FuseLeastA, w.FuseMostA, w.Strings = n[4], n[5], n[6], n[7], int(n[8])
	w.Fused = w.FuseMostA > 0
	w.Findings, ok = readFindings(n[wiringNumbers:])
	return w, ok
}

// Wirings are the ways to wire the present house as far as known, in their order.
func (s *Store) Wirings() []visit.Wiring {
	t, ok := s.known(WiringsJob)
	if !ok {
		return nil
	}
	return slices.Clone(t.wirings) // parts that come sort it
}

// WireModules lets the list be of so many modules more than the house has, or fewer.
func (s *Store) WireModules(by int) {
	if by != s.wireBy {
		s.wireBy, s.tasks[WiringsJob] = by, task{}
	}
}

// WiredBy is that number.
func (s *Store) WiredBy() int { return s.wireBy }

// wiringsLink is the house whose wirings are looked at.
func (s *Store) wiringsLink() string {
	to := s.Scenario
	if n := to.Modules + s.wireBy; n >= 1 && scenario.FieldOf(scenario.Modules).Check(float64(n)) == nil {
		to.Modules, to.InString = n, 0
		to.Known = to.Known.With(scenario.Modules)
	}
	return scenario.Encode(&to)
}

// TakeWiring wires the present house like that, as one change.
func (s *Store) TakeWiring(w *visit.Wiring) {
	s.wireBy = 0
	s.takeHouse(scenario.InString, w.To)
}

// Wired tells whether the present house is wired like that.
func (s *Store) Wired(w *visit.Wiring) bool {
	inString, _, even := simulate.InStrings(s.Scenario.Modules, s.Scenario.InString)
	return even && w.To.Coupling == s.Scenario.Coupling && w.To.Modules == s.Scenario.Modules && w.To.InString == inString
}
