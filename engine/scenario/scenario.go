// Package scenario holds every input of a calculation in the unit a person
// types it in, with its range, its default by link version, and the text form
// that travels in a link.
package scenario

import (
	"cmp"

	"suncask/engine/climate"
	"suncask/engine/draw"
)

// Sky is the kind of day that the day view shows.
type Sky int8

const (
	Bright  Sky = iota // a day only one in ten of the month is clearer than
	Typical            // half the month's days are clearer
	Dull               // nine in ten are clearer
)

// Uses names where the day's hot-water uses come from.
type Uses int8

const (
	Habits Uses = iota
	ProfileS
	ProfileM
	ProfileL
	NoUses
)

// When the household showers.
type When int8

const (
	Mornings When = iota
	Evenings
	Both
)

// Rule says who has the element in the backup hours.
type Rule int8

const (
	WholeWindow      Rule = iota // the grid, whether it heats or not: a clock works the changeover
	SunWhenSatisfied             // the grid while its thermostat calls, else the sun
	SunFirst                     // the sun while it is strong, or water enough is ready
)

// Elements says which elements heat the water.
type Elements int8

const (
	OneElement  Elements = iota // for sun and grid in turn
	TwoInTurn                   // a lower for the sun, an upper for the grid, one at a time
	TwoTogether                 // the same, at once
	TwoTanks                    // one for the sun in a tank of its own, which feeds the other
)

// Apart tells whether sun and grid heat each with an element of their own, at any time.
func (e Elements) Apart() bool { return e == TwoTogether || e == TwoTanks }

// Upper tells whether the grid has an upper element in the tank that the sun heats.
func (e Elements) Upper() bool { return e == TwoInTurn || e == TwoTogether }

// Where the lower element is assumed: near the bottom of an upright tank, at a third of
// the height of a lying one, below which 29 % of its water is (circular segment).
const (
	UprightLowerPct = 8.0
	LyingLowerPct   = 29.0
)

// LossFrom says where the standing loss comes from.
type LossFrom int8

// Beside these, 1 to 7 are the energy classes A+ to F.
const (
	LossFigure    LossFrom = 0 // LossKWh
	LossMEPS      LossFrom = 8 // the limit of AS/NZS 4692.2
	LossOvernight LossFrom = 9 // two readings
)

// JacketShare is what a jacket leaves of the standing loss (common practice, no source).
const JacketShare = 0.75

// AgePctAYear is the power that modules lose in a year (Jordan & Kurtz 2013, median of
// 2,000 rates; read in its abstract).
const AgePctAYear = 0.5

// HeatUpC is how warm the weekly heat-up makes the water, degC, and it may take from
// HeatUpFrom for HeatUpMinutes: an assumption.
const (
	HeatUpC       = 65.0
	HeatUpFrom    = 12 * 60
	HeatUpMinutes = 4 * 60
)

// Coupling is how the strings feed the element.
type Coupling int8

const (
	Converter Coupling = iota // a tracking converter
	Direct                    // straight on it
	Staged                    // on whichever of several resistances takes most
)

// MorePlanes is how many planes a roof may have beside its first.
const MorePlanes = 3

// Plane is a further plane of the roof; without modules it is not there.
type Plane struct {
	Modules             int
	TiltDeg, AzimuthDeg float64
}

// Planes are all planes of the roof, those without modules too.
func (s *Scenario) Planes() [1 + MorePlanes]Plane {
	list := [1 + MorePlanes]Plane{{Modules: s.Modules, TiltDeg: s.TiltDeg, AzimuthDeg: s.AzimuthDeg}}
	copy(list[1:], s.More[:])
	return list
}

// AllModules is how many there are on all planes.
func (s *Scenario) AllModules() (n int) {
	for _, plane := range s.Planes() {
		n += plane.Modules
	}
	return n
}

// WithoutModules is the scenario with none on any plane.
func (s Scenario) WithoutModules() Scenario {
	s.Modules = 0
	for i := range s.More {
		s.More[i].Modules = 0
	}
	return s
}

// Scenario is one house with its choices. It holds no pointers, so that a copy
// is a snapshot and == compares.
type Scenario struct {
	Place    string            // slug of a built-in place, or a point as climate.PointName writes it
	Town     string            // name of a point; none
	Country  string            // that a point is in, in English as the table of places has it; none: not known
	ZoneH    float64           // standard clock less UTC
	Summer   string            // summer time as MMDD-MMDD, first day and first day after; none
	Weather  string            // key of a weather file (climate.Record.Key); empty: the built-in climate
	ShiftMin float64           // by which the file's light is moved later
	Skyline  string            // horizon as azimuth:elevation,... in whole degrees; empty: free
	GHI      climate.Monthly   // irradiation that somebody overtyped, kWh/m2 a day
	TempC    climate.Monthly   // air
	ColdC    climate.Monthly   // cold water
	Draws    climate.Generator // how synthetic days are drawn
	Month    int8              // 0-11, of the day view
	Sky      Sky

	Uses          Uses
	People        int
	ShowerMinutes float64
	ShowerFlow    float64 // L/min
	ShowerC       float64 // of showers, and of the litres that are ready
	When          When
	UseAt         [draw.Occasions]int // minutes after midnight at which the household's uses begin
	PipeLitres    float64             // run off before warm water reaches the tap

	TankLitres float64
	LossKWh    float64 // standing loss in 24 h at LossTestK
	SetC       float64 // thermostat of the backup
	SunLimitC  float64 // thermostat of the sun
	ElementW   float64
	RoomC      float64

	Modules    int
	ModuleW    float64
	TiltDeg    float64
	AzimuthDeg float64           // clockwise from north
	More       [MorePlanes]Plane // other planes of the roof

	OpenV      float64 // of a module's datasheet: open circuit
	MostV      float64 // at maximum power
	ShortA     float64 // short circuit
	VoltPct    float64 // change of the open circuit's voltage, % a kelvin
	AmpsPct    float64 // change of the short circuit's current, % a kelvin
	PowerPct   float64 // change of the most power, % a kelvin, which the model is held against; Unknown
	RearPct    float64 // what the rear of two-sided modules adds at most, % of the current; for ratings, not for yields
	ColdestC   float64 // lowest air on record, see ColdestUnderK
	MaxSystemV float64 // that the modules bear as a string; Unknown
	MaxFuseA   float64 // that they bear as a series fuse; Unknown
	InString   int     // modules in series; 0: all of a plane
	CableM     float64 // from the roof to the element, one way

	CableSize       int8 // index of pv.CableSizes
	Coupling        Coupling
	Stages          string  // rated watts of the staged resistances, see ReadStages
	ConverterLowV   float64 // where its tracking begins and ends
	ConverterHighV  float64
	ConverterW      float64
	ConverterMaxV   float64 // highest that it bears
	ConverterMaxA   float64 // highest that it takes; Unknown
	ConverterShortA float64 // highest short circuit's that it bears; Unknown
	ConverterOut    int8    // OutUnknown and so on
	ConverterSteps  int8    // StepsUnknown and so on
	ConverterPct    float64 // European weighted efficiency
	ConverterStartW float64 // of the strings, at which it starts
	ElementV        float64 // rated
	ElementLoops    int     // side by side inside it
	SupplyV         float64 // of the grid at the element
	BreakerA        float64 // of the grid's circuit; Unknown
	GridCable       int8    // its conductors: 0 not known, else a size of [care.GridCableAmps]
	ChangeBy        int8    // how grid and sun change over, ChangeUnknown and so on
	DesignPct       float64 // of the short circuit's current, for which the strings' circuit is chosen
	TouchV          float64 // voltage up to which touching is taken as less of a danger
	DropPct         float64 // of the voltage, that the cable may take

	Price    float64 // a kWh
	LowPrice float64 // a kWh in the low-price hours
	LowFrom  int     // minutes after midnight; LowFrom == LowTo: none
	LowTo    int
	Bands    string  // other prices of some hours, see ReadBands
	Blocks   string  // prices that rise with a month's use, see ReadBlocks
	OtherKWh float64 // what the house uses in a month beside its hot water
	Standing float64 // charge a month
	// ExportPrice is paid for a kWh of the modules that the water does not take.
	ExportPrice float64
	// ExportKWh is how many of them a month, 0: all; beyond them ExportRest is paid.
	ExportKWh, ExportRest float64
	GridCO2               float64 // g a kWh of the grid; 0: not known
	Currency              string

	ModuleCost   float64 // each, with its mounting
	FixedCost    float64 // of the rest, labour too
	TankCost     float64 // of another tank
	ReplaceCost  float64 // of the converter
	ReplaceYear  int     // 0: never
	UpkeepCost   float64 // a year
	PriceRisePct float64 // a year, of grid electricity
	DiscountPct  float64 // a year
	HorizonYears int

	Backup     Backup
	AcceptUses int // cool uses a year that are accepted when hours are chosen
	Rule       Rule
	KeepL      float64 // usable litres down to which the sun keeps the element, with SunFirst
	RescueL    float64 // usable litres below which the grid heats outside the hours; 0: never
	HeatUp     int8    // 1: once a week to HeatUpC
	OutFrom    int     // hours without grid each day, minutes after midnight; equal: none
	OutTo      int
	AwayFrom   int8 // month on whose first day AwayDays begin
	AwayDays   int
	MeterKWh   float64 // bought in Month by a meter; 0: none
	Elements   Elements
	UpperPct   float64 // water below the upper element, % of the tank
	LowerPct   float64 // water below the lower, or only, element
	ReachPct   float64 // how far it reaches up, % of the tank; 0: it is horizontal
	SunTankL   float64 // the sun's own tank, with TwoTanks
	SunTankKWh float64 // its standing loss in 24 h at LossTestK
	Stands     int8    // 0: upright, 1: lying
	Wall       int8    // counts tank.Wall
	MixedL     float64 // mixed water at 40 degC on the label (V40), L; Unknown: MixedShare tells
	LossBy     LossFrom
	EveningC   float64 // readings of a night without draws and heating
	MorningC   float64
	NightH     float64

	RoomBy      int8    // 0: RoomC, 1: the outside air, day by day
	Jacket      int8    // 1: a jacket over the tank, see JacketShare
	PipeLossW   float64 // of pipes and what circulates in them, W/K, beside the tank's own loss
	Switching   int8    // 0: thermostats hold their set point, 1: they switch with DiffK
	DiffK       float64
	StatBy      int8    // what the thermostat can break, StatUnknown and so on
	BreaksBy    int8    // what breaks the sun's circuit, BreaksUnknown and so on
	CutOutC     float64 // of the independent cut-out; Unknown: UsualCutOutC
	CutBoth     int8    // whether it breaks both supplies, 0: unknown, 1: yes, 2: no
	ReliefBar   float64 // at which the tank's relief valve opens; Unknown
	SupplyBar   float64 // of the cold water at rest; Unknown
	ExpandBy    int8    // where heated water goes, ExpandUnknown and so on
	VesselL     float64 // of the expansion vessel; Unknown
	SoilPct     float64 // of the light, by dirt
	ShadePct    float64 // of the light, by what the horizon does not show
	MismatchPct float64
	ConnectPct  float64 // in connections
	// FirstLightPct is lost in the first hours of light, PlatePct is what modules are under
	// their plate, DownPct the time in which something is broken.
	FirstLightPct, PlatePct, DownPct float64
	Mount                            int8    // counts pv.Mounting
	AgeYears                         int     // of the modules, see AgePctAYear
	ValveC                           float64 // a thermostatic mixing valve lets no more through; 0: none
	TapC                             float64 // hottest that the local code lets reach a tap
	InsulationM                      float64 // measured between the strings and earth, megohm; Unknown: not measured

	Known FieldSet // fields that somebody confirmed; the others are assumed
}

// LossTestK is the difference of tank and room at which standing loss is stated
// (65 degC in a room of 20 degC; EN 12897 and EN 50440, from memory).
const LossTestK = 45.0

// At returns the scenario's place with its own clock and the monthly values that
// somebody overtyped; ok is false for an unknown place.
func (s *Scenario) At() (f climate.Found, ok bool) {
	f, ok = s.located()
	if !ok {
		return f, false
	}
	shift := f.Clock.ShiftH
	f.Clock, _ = readDates(s.Summer)
	f.Clock.OffsetH = s.ZoneH
	if f.Clock.From != f.Clock.To {
		f.Clock.ShiftH = 1
		if shift > 0 {
			f.Clock.ShiftH = shift
		}
	}
	if f.Between {
		f.Name = cmp.Or(s.Town, f.Name)
	}
	f.GHI, f.TempC, f.Cold = s.GHI.Over(f.GHI), s.TempC.Over(f.TempC), s.ColdC
	return f, true
}
