package scenario

import "math"

// What a converter puts out.
const (
	OutUnknown int8 = iota
	OutAC
	OutDC
)

// What a converter does to the strings' voltage.
const (
	StepsUnknown int8 = iota // reckoned as StepsBoth
	StepsBoth
	StepsDown // it only lowers it
)

// How grid and sun change over at the element.
const (
	ChangeUnknown int8 = iota
	ChangeInterlocked
	ChangeTwoElements // each has its own
	ChangeOther
)

// What the tank's thermostat is made to break.
const (
	StatUnknown int8 = iota
	StatAC
	StatDC
	StatElectronic
)

// What breaks the sun's circuit when the water is hot.
const (
	BreaksUnknown int8 = iota
	BreaksStat
	BreaksContactor // or a switch, rated for direct current
	BreaksConverter // it stops by itself
)

// Whether the independent cut-out breaks both supplies.
const (
	CutUnknown int8 = iota
	CutYes
	CutNo // only the grid
)

// Where the water goes that a heat-up pushes out.
const (
	ExpandUnknown int8 = iota
	ExpandVessel
	ExpandValve // the relief valve, or an expansion valve
	ExpandVent  // an open vent to a cistern
	ExpandBack  // back into the cold supply
)

// UsualCutOutC is a usual independent cut-out, degC, taken where none is known (common
// practice, no source).
const UsualCutOutC = 88.0

// CutOuts are where the independent cut-out ends heating by sun and by grid, degC;
// infinite where it does not act.
func (s *Scenario) CutOuts() (sunC, gridC float64) {
	at := s.CutOutC
	if at == Unknown {
		at = UsualCutOutC
	}
	if s.CutBoth == CutNo {
		return math.Inf(1), at
	}
	return at, at
}
