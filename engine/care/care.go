// Package care finds what can hurt people in a scenario. A finding is a code
// with its numbers and source; it never says that something is safe, and local
// codes and licensed people decide.
package care

import "suncask/engine/scenario"

// Code names a finding.
type Code int8

const (
	// StoredBelow60: the backup's thermostat is below the storage temperature of
	// hygiene guidance. Args: set point, guidance, degC.
	StoredBelow60 Code = iota
	// StoredScalds: stored water can be hotter than may reach a tap. Args: hottest
	// thermostat, limit, degC.
	StoredScalds
	codeCount
)

// Codes returns all codes.
func Codes() []Code {
	list := make([]Code, codeCount)
	for i := range list {
		list[i] = Code(i)
	}
	return list
}

// Severity of a finding.
type Severity int8

const (
	Note Severity = iota
	Caution
	Stop
)

// Finding is one thing to mind.
type Finding struct {
	Code     Code
	Severity Severity
	Args     [2]float64
	Field    scenario.FieldID // where it is shown
	Source   string
}

const (
	storeC = 60.0 // store at 60 degC or more
	tapC   = 50.0 // above this at a tap a mixing valve is advised
)

// Findings returns what to mind in a valid scenario.
func Findings(s *scenario.Scenario) []Finding {
	var list []Finding
	if s.SetC < storeC {
		list = append(list, Finding{
			Code: StoredBelow60, Severity: Caution, Args: [2]float64{s.SetC, storeC}, Field: scenario.SetC,
			Source: "HSG274 Part 2 (2014): store at 60 degC or more (read on a secondary page)",
		})
	}
	if hottest := max(s.SetC, s.SunLimitC); hottest > tapC {
		list = append(list, Finding{
			Code: StoredScalds, Severity: Caution, Args: [2]float64{hottest, tapC}, Field: scenario.SunLimitC,
			Source: "published burn times: 60 degC 3 to 5 s, 55 degC 17 to 30 s, 49 degC 8 to 10 min (read on secondary pages)",
		})
	}
	return list
}
