package state

import (
	"suncask/engine/care"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Fixes are the changes that make the present house better; ok is false while they are not
// known.
func (s *Store) Fixes() (list []plan.Fix, ok bool) {
	t, ok := s.known(FixesJob)
	return t.fixes, ok && !t.running
}

// FixesFor tries changes that keep a use of a day warm.
func (s *Store) FixesFor(at plan.CoolUse) []plan.Fix {
	return plan.FixesFor(s.Prepared, s.File(), at, &s.ws)
}

// Apply makes the house of a fix the present one.
func (s *Store) Apply(f *plan.Fix) {
	s.Cancel()
	s.change(f.Field, f.To, "")
}

// Numbers of a fix, then of each caution that it brings.
const fixNumbers, bringNumbers = 8, 6

// fixPart writes a fix.
func fixPart(f *plan.Fix) Part {
	n := []float64{float64(f.Change), float64(f.Field), f.Saves, f.Invest, f.Worth, float64(f.Year.CoolUses), f.Year.Cost, float64(f.Presses)}
	for _, b := range f.Brings {
		n = append(n, float64(b.Code), float64(b.Severity), float64(b.Field), b.Args[0], b.Args[1], b.Args[2])
	}
	return Part{Steps: 1, Link: scenario.Encode(&f.To), Numbers: n}
}

// readFix is the reverse of fixPart.
func readFix(p Part) (f plan.Fix, ok bool) {
	n := p.Numbers
	if len(n) < fixNumbers || (len(n)-fixNumbers)%bringNumbers != 0 {
		return f, false
	}
	f = plan.Fix{Change: plan.Change(n[0]), Field: scenario.FieldID(n[1]), Saves: n[2], Invest: n[3], Worth: n[4],
		Year: simulate.Flows{CoolUses: int32(n[5]), Cost: n[6]}, Presses: int(n[7])}
	f.To, _ = scenario.Decode(p.Link)
	for n = n[fixNumbers:]; len(n) > 0; n = n[bringNumbers:] {
		f.Brings = append(f.Brings, care.Finding{Code: care.Code(n[0]), Severity: care.Severity(n[1]), Field: scenario.FieldID(n[2]), Args: [3]float64{n[3], n[4], n[5]}})
	}
	return f, true
}
