// Package care finds what can hurt people in a prepared house. A finding is a code
// with its numbers and source; it never says that something is safe, and local
// codes and licensed people decide.
package care

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Code names a finding.
type Code int8

const (
	// StoredBelow60: the backup's thermostat is below the storage temperature of
	// hygiene guidance. Args: set point, guidance, degC; minutes in which one in ten
	// bacteria is left at the set point.
	StoredBelow60 Code = iota
	// StoredScalds: stored water can be hotter than may reach a tap. Args: hottest
	// thermostat, local limit, degC; seconds to a deep burn.
	StoredScalds
	// ValveTooHot: a mixing valve that lets through what scalds. Args: its setting, limit,
	// degC.
	ValveTooHot
	// ValveStarves: a mixing valve too low for a thermostatic shower behind it. Args: its
	// setting, least it wants, degC.
	ValveStarves
	// BelowElement: water that no heating reaches, the weekly heat-up neither. Args:
	// litres, litres of the tank.
	BelowElement
	// ReadingsImpossible: the night's readings cannot be. Args: evening, morning, room,
	// degC.
	ReadingsImpossible
	// FailedClosed: where the sun would bring the water, below boiling, if its thermostat
	// stuck. Args: that temperature; of the cut-out, known or usual, degC.
	FailedClosed
	// Expands: water that a heat-up pushes out, nobody knows where to. Args: litres, hottest
	// thermostat, coldest water, degC.
	Expands
	// AboveLowVoltage: the strings can pass the voltage from which touching them counts as a
	// danger. Args: volts at the coldest, bound, that temperature, degC.
	AboveLowVoltage
	// ConverterOverVoltage: above the converter's highest. Args: volts at the coldest,
	// its highest.
	ConverterOverVoltage
	// ConverterUnderVoltage: hot strings fall below its tracking. Args: volts, its lowest.
	ConverterUnderVoltage
	// ElementOverVoltage: the strings' voltage is above the element's. Args: volts at
	// the coldest, rated.
	ElementOverVoltage
	// ElementOverload: more power than the plate allows. Args: watts in full sun at the
	// coldest, watts allowed.
	ElementOverload
	// ThermostatDC: direct current that a thermostat for alternating current must not
	// break. Args: volts, amperes in full sun.
	ThermostatDC
	// StringFuses: strings side by side can feed one of them. Args: least and most rated
	// current of a fuse in each, A; strings.
	StringFuses
	// UnevenStrings: the modules of a plane do not go up into equal strings. Args:
	// modules, modules in a string.
	UnevenStrings
	// CableDrop: the cable takes much. Args: % of the voltage in full sun, usual bound.
	CableDrop
	// IsolatorRating: what a switch in the strings' cable must break. Args: volts at the
	// coldest, amperes.
	IsolatorRating
	// InsulationLow: less than the test of the strings asks. Args: measured, asked, megohm;
	// test voltage.
	InsulationLow
	// StoredScaldsAtOnce is StoredScalds where a second is enough. Args: hottest thermostat,
	// limit, degC.
	StoredScaldsAtOnce
	// StuckBoils is FailedClosed to boiling and, in a closed tank, beyond. Args: of the
	// cut-out, known or usual, degC.
	StuckBoils
	// GridStuck: the same by the grid. Args: hours from its set point to boiling; of the
	// cut-out, degC.
	GridStuck
	// CutOutUnknown: no independent cut-out is known, or whether it breaks the sun too.
	CutOutUnknown
	// CutOutNotSun: the cut-out leaves the sun's circuit closed.
	CutOutNotSun
	// CutOutNear: a thermostat so near the cut-out that this trips in use. Args: set point,
	// cut-out, degC.
	CutOutNear
	// CableCurrent: the cable carries less than its current. Args: the current, what it
	// carries, A.
	CableCurrent
	// StageOverload: more power than a stage's plate allows. Args: watts in full sun at the
	// coldest, allowed, on its plate.
	StageOverload
	// GridOverload: the grid's voltage is too high for the element. Args: watts, on the
	// plate; % of it.
	GridOverload
	// GridBreaker: the element takes more than the breaker's rating. Args: amperes of an
	// element at its plate's upper end, rating.
	GridBreaker
	// GridBreakerNear: only where a code asks for 1.25 times it. Args: that, rating.
	GridBreakerNear
	// TwoSupplies: grid and strings reach one tank.
	TwoSupplies
	// ModuleSystemVoltage: above what the modules bear. Args: volts at the coldest, limit.
	ModuleSystemVoltage
	// ModuleSystemUnknown: a voltage that not all modules bear. Args: volts at the coldest.
	ModuleSystemUnknown
	// NoFuseFits: no size lies between what a string asks and what its modules bear. Args:
	// least, most, A; strings.
	NoFuseFits
	// ModuleFuseUnknown: strings side by side, and what their modules bear is not known.
	// Args: current that the others can feed one of them, A; strings.
	ModuleFuseUnknown
	// ConverterShort: more short-circuit current than the converter bears. Args: A, limit.
	ConverterShort
	// ConverterCurrent: more current than it takes. Args: A, limit.
	ConverterCurrent
	// StepDown: whether the converter can raise the voltage decides what is bought. Args: kWh
	// a year if it can, as it is reckoned, and if it cannot.
	StepDown
	// StepDownOpen: the same while those years are not simulated.
	StepDownOpen
	// FacesPole: a plane turned from the sun's side. Args: which plane, its facing, the sun's
	// side, degrees clockwise from north.
	FacesPole
	// LabelImpossible: mixed water that a tank like this cannot give in the label's test. Args:
	// the label's, least, most, L.
	LabelImpossible
	// BelowUpper: water that the weekly heat-up does not reach, though the sun may. Args: litres,
	// litres of the tank.
	BelowUpper
	// ElementsCrossed: an upper element below the lower one. Args: their heights, %.
	ElementsCrossed
	// ElementTooLong: an element that reaches out of the tank. Args: how high, to where it is
	// reckoned, %.
	ElementTooLong
	// PriceOdd: a price of a kWh that is OddFactor times the country's usual one, or so much
	// less. Args: the price, the usual one.
	PriceOdd
	// PriceUnknown: no usual price of the country is known, and none was given. Args: the price
	// that is reckoned with.
	PriceUnknown
	// StoredOverTap is StoredScalds where no table says how soon. Args: hottest thermostat,
	// local limit, degC.
	StoredOverTap
	// ExpandsVessel is Expands where a vessel takes the water. Args: as Expands.
	ExpandsVessel
	// ExpandsValve: where a valve lets it out. Args: as Expands.
	ExpandsValve
	// ExpandsVent: where it rises in an open vent. Args: as Expands.
	ExpandsVent
	// ExpandsBack: where it goes back into the cold supply. Args: as Expands.
	ExpandsBack
	// ReliefUnknown: the relief valve's rating is not known, or where the water goes.
	ReliefUnknown
	// VesselSmall: an expansion vessel smaller than it needs to be. Args: its litres, least,
	// what it has to take.
	VesselSmall
	// VesselNeeds: what one of unknown volume needs. Args: litres; cold pressure, relief
	// valve's, bar.
	VesselNeeds
	// VesselOpen: whether one is large enough cannot be told.
	VesselOpen
	// SupplyNearRelief: cold pressure so near the relief valve's that this may drip. Args: both,
	// bar.
	SupplyNearRelief
	// SupplyHigh: cold pressure for which many local rules want a reducer. Args: that, bound,
	// bar.
	SupplyHigh
	// SupplyLow: cold pressure that gives small flows. Args: that, bound, bar.
	SupplyLow
	// CloudEdge: light at the edges of clouds brings more than a plate says. Args: watts then,
	// on the plate of the element or stage; W/m2.
	CloudEdge
	// Soiled: dirt takes much of the light. Args: % of it, bound.
	Soiled
	// GridCableCurrent: conductors of the grid's circuit that carry less than the element takes.
	// Args: its current, theirs, A.
	GridCableCurrent
	// GridCableGuard: a breaker that lets through more than they carry. Args: its rating, theirs, A.
	GridCableGuard
	// PowerApart: a label's change of power with temperature that is not the model's. Args: both,
	// % a kelvin.
	PowerApart
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
	Note    Severity = iota
	Caution          // to be dealt with
	Stop             // not to be built like this
)

// Finding is one thing to mind.
type Finding struct {
	Code     Code
	Severity Severity
	Args     [3]float64
	Field    scenario.FieldID // where it is shown
	Source   string
}

// Findings returns what to mind in a prepared house.
func Findings(p *simulate.Prepared) []Finding {
	var l findings
	l.water(p)
	l.electrics(p)
	l.roof(p)
	l.prices(p)
	return l
}

// Electric returns what to mind of grid, strings, coupling and switches alone.
func Electric(p *simulate.Prepared) []Finding {
	var l findings
	l.electrics(p)
	return l
}

// Count is how many findings have a severity.
func Count(list []Finding, severity Severity) (n int) {
	for _, f := range list {
		if f.Severity == severity {
			n++
		}
	}
	return n
}

// OfYears returns what only other years than the house's own show: bothKWh are bought in a year
// if the converter raises and lowers the voltage, downKWh if it only lowers it, see
// simulate.Prepared.OnlyDown; NaN while they are not simulated.
func OfYears(p *simulate.Prepared, bothKWh, downKWh float64) []Finding {
	var l findings
	l.stepDown(p, bothKWh, downKWh)
	return l
}

type findings []Finding

func (l *findings) find(code Code, severity Severity, field scenario.FieldID, source string, args ...float64) {
	f := Finding{Code: code, Severity: severity, Field: field, Source: source}
	copy(f.Args[:], args)
	*l = append(*l, f)
}
