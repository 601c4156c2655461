package scenario

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/draw"
)

// FieldID names one input.
type FieldID int16

// The inputs, in the order in which links write them.
const (
	Place FieldID = iota
	Town
	Country
	Zone
	SummerTime
	WeatherFile
	ShiftMin
	MonthGHI
	MonthTempC
	MonthColdC
	DrawsBy
	Month
	SkyKind
	UsesFrom
	People
	ShowerMinutes
	ShowerFlow
	ShowerC
	Showers
	MorningShowers // the next in the order of draw.Occasion
	EveningShowers
	MorningHands
	MiddayDishes
	EveningDishes
	NightHands
	PipeLitres
	TankLitres
	LossKWh
	SetC
	SunLimitC
	ElementW
	RoomC
	Modules
	ModuleW
	TiltDeg
	AzimuthDeg
	Modules2
	Tilt2
	Face2
	Modules3
	Tilt3
	Face3
	Modules4
	Tilt4
	Face4
	Horizon
	OpenV
	MostV
	ShortA
	VoltPct
	AmpsPct
	PowerPct
	RearPct
	ColdestC
	MaxSystemV
	MaxFuseA
	InString
	CableM
	CableSize
	CoupledBy
	Stages
	ConverterLowV
	ConverterHighV
	ConverterW
	ConverterMaxV
	ConverterMaxA
	ConverterShortA
	ConverterOut
	ConverterSteps
	ConverterPct
	ConverterStartW
	ElementV
	ElementLoops
	SupplyV
	BreakerA
	GridCable
	ChangeBy
	DesignPct
	TouchV
	DropPct
	Price
	LowPrice
	LowFrom
	LowTo
	BandPrices
	BlockPrices
	OtherKWh
	Standing
	ExportPrice
	ExportKWh
	ExportRest
	GridCO2
	Currency
	ModuleCost
	FixedCost
	TankCost
	ReplaceCost
	ReplaceYear
	UpkeepCost
	PriceRise
	Discount
	HorizonYears
	BackupHours
	SecondHours
	AcceptUses
	RuleBy
	KeepLitres
	RescueLitres
	HeatUp
	OutFrom
	OutTo
	AwayFrom
	AwayDays
	MeterKWh
	ElementsBy
	UpperPct
	LowerPct
	ReachPct
	SunTankL
	SunTankLoss
	Stands
	WallOf
	MixedLitres
	LossBy
	EveningC
	MorningC
	NightH
	RoomBy
	JacketOn
	PipeLoss
	Switching
	DiffK
	StatBy
	BreaksBy
	CutOutC
	CutBoth
	ReliefBar
	SupplyBar
	ExpandBy
	VesselL
	SoilPct
	ShadePct
	MismatchPct
	ConnectPct
	FirstLightPct
	PlatePct
	DownPct
	AgeYears
	MountBy
	Insulation
	ValveC
	TapC
	fieldCount

	NoField FieldID = -1 // of problems that concern the link as a whole
)

// Unit of a numeric field.
type Unit int8

const (
	NoUnit Unit = iota
	PerPerson
	Minute
	LitrePerMinute
	Litre
	KWhPerDay
	Celsius
	Watt
	Piece
	Degree
	MoneyPerKWh
	ClockMinute
	Hour
	Volt
	Ampere
	PercentPerKelvin
	Percent
	Day
	Year
	Kelvin
	WattPerKelvin
	Megohm
	UsesAYear
	Money
	MoneyAYear
	PercentAYear
	KWhAMonth
	MoneyAMonth
	GramsPerKWh
	Metre
	KWhPerSquareMetre // a day
	Bar               // over that of the air
)

// Kind of a field's value.
type Kind int8

const (
	Number Kind = iota
	Choice      // counted from 0
	Text
	Hours
	Months // twelve numbers, see Scenario.MonthsOf
)

// Field is the table entry of one input. Number fields lie between Min and Max
// in steps of Step; links carry them as that many steps.
type Field struct {
	ID             FieldID
	Key            string // in links
	Kind           Kind
	Unit           Unit
	Min, Max, Step float64             // of a choice: 0, the last, 1
	Choices        []string            // as links write them
	Optional       bool                // a number that may be Unknown: an empty box
	at             func(*Scenario) any // of numbers and choices: a pointer to the value
}

// Unknown stands for an optional number that nobody gave; links write it as none.
const Unknown = -1.0

const noneText = "none"

// Empty tells whether a value stands for none.
func (f *Field) Empty(v float64) bool { return f.Optional && v == Unknown }

// Fields returns the table, in the order of the IDs.
func Fields() []Field { return fields[:] }

// FieldOf returns one entry.
func FieldOf(id FieldID) *Field { return &fields[id] }

// parts is how finely a step is divided in fields that people also give in other units
// than their own: 120 degF is 48.9 degC.
const parts = 10

// Fine tells whether a field takes tenths of its steps.
func (f *Field) Fine() bool {
	if f.Kind != Number {
		return false
	}
	switch f.Unit {
	case Litre, LitrePerMinute, Celsius, Kelvin, Metre, WattPerKelvin, Bar:
		return true
	}
	return false
}

// steps returns a value as a number of steps.
func (f *Field) steps(v float64) int { return int(math.Round(v / f.Step)) }

// ofParts returns the value of n tenths of a step: the float nearest to its decimal
// form.
func (f *Field) ofParts(n int64) float64 {
	if f.Step < 1 {
		return float64(n) / (parts * math.Round(1/f.Step))
	}
	return float64(n) * f.Step / parts
}

// ofSteps returns the value of n steps.
func (f *Field) ofSteps(n int64) float64 { return f.ofParts(parts * n) }

// Snap returns the field's exact value next to v, which must be one that Check
// accepts.
func (f *Field) Snap(v float64) float64 {
	if f.Empty(v) {
		return v
	}
	if f.Fine() {
		return f.ofParts(int64(math.Round(v / f.Step * parts)))
	}
	return f.ofSteps(int64(f.steps(v)))
}

// Get returns a number, or a choice counted from 0.
func (f *Field) Get(s *Scenario) float64 {
	switch p := f.at(s).(type) {
	case *float64:
		return *p
	case *int:
		return float64(*p)
	case *int8:
		return float64(*p)
	case *Sky:
		return float64(*p)
	case *Uses:
		return float64(*p)
	case *When:
		return float64(*p)
	case *Coupling:
		return float64(*p)
	case *Rule:
		return float64(*p)
	case *LossFrom:
		return float64(*p)
	case *Elements:
		return float64(*p)
	case *climate.Generator:
		return float64(*p)
	}
	panic("scenario: " + f.Key + " is no number")
}

// Set sets a number or a choice, which must be one that Check accepts.
func (f *Field) Set(s *Scenario, v float64) {
	switch p := f.at(s).(type) {
	case *float64:
		*p = v
	case *int:
		*p = int(v)
	case *int8:
		*p = int8(v)
	case *Sky:
		*p = Sky(v)
	case *Uses:
		*p = Uses(v)
	case *When:
		*p = When(v)
	case *Coupling:
		*p = Coupling(v)
	case *Rule:
		*p = Rule(v)
	case *LossFrom:
		*p = LossFrom(v)
	case *Elements:
		*p = Elements(v)
	case *climate.Generator:
		*p = climate.Generator(v)
	default:
		panic("scenario: " + f.Key + " is no number")
	}
}

// useAt is where a scenario keeps the time of an occasion.
func useAt(o draw.Occasion) func(*Scenario) any {
	return func(s *Scenario) any { return &s.UseAt[o] }
}

// TimeOf is the field of an occasion's time.
func TimeOf(o draw.Occasion) FieldID { return MorningShowers + FieldID(o) }
