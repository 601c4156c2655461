package state

import (
	"slices"

	"suncask/engine/scenario"
	"suncask/engine/visit"
)

// wiringNumbers are those of a wiring, before its findings.
const wiringNumbers = 11

// wiringPart writes a wiring: what its row shows.
func wiringPart(w *visit.Wiring) Part {
	n := []float64{w.OfferedJ, w.IntoJ, w.HotV, w.MostA, w.ShortA, w.CableMM2, w.Volts, w.DesignA, w.FuseLeastA, w.FuseMostA, float64(w.Strings)}
	return Part{Steps: 1, Link: scenario.Encode(&w.To), Numbers: appendFindings(n, w.Findings)}
}

// readWiring is the reverse of wiringPart.
func readWiring(p Part) (w visit.Wiring, ok bool) {
	n := p.Numbers
	if len(n) < wiringNumbers {
		return w, false
	}
	w.To, _ = scenario.Decode(p.Link)
	w.OfferedJ, w.IntoJ, w.HotV, w.MostA, w.ShortA, w.CableMM2 = n[0], n[1], n[2], n[3], n[4], n[5]
	w.Volts, w.DesignA, w.FuseLeastA, w.FuseMostA = n[6], n[7], n[8], n[9]
	w.Fused, w.Strings = w.FuseMostA > 0, int(n[10])
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

// TakeWiring wires the present house like that, as one change.
func (s *Store) TakeWiring(w *visit.Wiring) {
	s.Cancel()
	next := w.To
	next.Month, next.Sky = s.Scenario.Month, s.Scenario.Sky
	s.change(scenario.InString, next, "")
}

// Wired tells whether the present house is wired like that.
func (s *Store) Wired(w *visit.Wiring) bool { return sameWiring(&w.To, &s.Scenario) }

func sameWiring(a, b *scenario.Scenario) bool {
	string := func(s *scenario.Scenario) int {
		if s.InString == 0 {
			return s.Modules
		}
		return s.InString
	}
	return a.Coupling == b.Coupling && a.Modules == b.Modules && string(a) == string(b)
}
