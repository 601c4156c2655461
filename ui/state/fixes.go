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
const fixNumbers, findingNumbers = 8, 6

// fixPart writes a fix.
func fixPart(f *plan.Fix) Part {
	n := []float64{float64(f.Change), float64(f.Field), f.Saves, f.Invest, f.Worth, float64(f.Year.CoolUses), f.Year.Cost, float64(f.Presses)}
	return Part{Steps: 1, Link: scenario.Encode(&f.To), Numbers: appendFindings(n, f.Brings)}
}

// appendFindings writes findings behind other numbers, but for their sources.
func appendFindings(n []float64, list []care.Finding) []float64 {
	for _, f := range list {
		n = append(n, float64(f.Code), float64(f.Severity), float64(f.Field), f.Args[0], f.Args[1], f.Args[2])
	}
	return n
}

// readFindings is the reverse of appendFindings; ok is false where numbers are missing.
func readFindings(n []float64) (list []care.Finding, ok bool) {
	for ; len(n) >= findingNumbers; n = n[findingNumbers:] {
		list = append(list, care.Finding{Code: care.Code(n[0]), Severity: care.Severity(n[1]), Field: scenario.FieldID(n[2]), Args: [3]float64{n[3], n[4], n[5]}})
	}
	return list, len(n) == 0
}

// readFix is the reverse of fixPart.
func readFix(p Part) (f plan.Fix, ok bool) {
	n := p.Numbers
	if len(n) < fixNumbers {
		return f, false
	}
	f = plan.Fix{Change: plan.Change(n[0]), Field: scenario.FieldID(n[1]), Saves: n[2], Invest: n[3], Worth: n[4],
		Year: simulate.Flows{CoolUses: int32(n[5]), Cost: n[6]}, Presses: int(n[7])}
	f.To, _ = scenario.Decode(p.Link)
	f.Brings, ok = readFindings(n[fixNumbers:])
	return f, ok
}
