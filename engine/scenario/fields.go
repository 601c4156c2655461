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
	SupplyV
	BreakerA
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
	case Litre, LitrePerMinute, Celsius, Kelvin, Metre, WattPerKelvin:
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

var fields = [fieldCount]Field{
	{ID: Place, Key: "place", Kind: Text},
	{ID: Town, Key: "town", Kind: Text},
	{ID: Country, Key: "in", Kind: Text},
	{ID: Zone, Key: "zone", Unit: Hour, Min: -12, Max: 14, Step: 0.25, at: func(s *Scenario) any { return &s.ZoneH }},
	{ID: SummerTime, Key: "summer", Kind: Text},
	{ID: WeatherFile, Key: "weather", Kind: Text},
	{ID: ShiftMin, Key: "shift", Unit: Minute, Min: -120, Max: 120, Step: 1, at: func(s *Scenario) any { return &s.ShiftMin }},
	{ID: MonthGHI, Key: "light", Kind: Months, Unit: KWhPerSquareMetre, Min: 0, Max: 13, Step: 0.01},
	{ID: MonthTempC, Key: "air", Kind: Months, Unit: Celsius, Min: -60, Max: 50, Step: 0.1},
	{ID: MonthColdC, Key: "cold", Kind: Months, Unit: Celsius, Min: 0.5, Max: 40, Step: 0.1},
	{ID: DrawsBy, Key: "draws", Kind: Choice, Max: 1, Step: 1, Choices: []string{"ar", "markov"}, at: func(s *Scenario) any { return &s.Draws }},
	{ID: Month, Key: "month", Kind: Choice, Max: 11, Step: 1, Choices: []string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"}, at: func(s *Scenario) any { return &s.Month }},
	{ID: SkyKind, Key: "sky", Kind: Choice, Max: 2, Step: 1, Choices: []string{"bright", "typical", "dull"}, at: func(s *Scenario) any { return &s.Sky }},
	{ID: UsesFrom, Key: "uses", Kind: Choice, Max: 4, Step: 1, Choices: []string{"habits", "s", "m", "l", "none"}, at: func(s *Scenario) any { return &s.Uses }},
	{ID: People, Key: "people", Unit: PerPerson, Min: 1, Max: 12, Step: 1, at: func(s *Scenario) any { return &s.People }},
	{ID: ShowerMinutes, Key: "shower", Unit: Minute, Min: 1, Max: 30, Step: 0.5, at: func(s *Scenario) any { return &s.ShowerMinutes }},
	{ID: ShowerFlow, Key: "flow", Unit: LitrePerMinute, Min: 2, Max: 25, Step: 0.5, at: func(s *Scenario) any { return &s.ShowerFlow }},
	{ID: ShowerC, Key: "showertemp", Unit: Celsius, Min: 30, Max: 50, Step: 0.5, at: func(s *Scenario) any { return &s.ShowerC }},
	{ID: Showers, Key: "wash", Kind: Choice, Max: 2, Step: 1, Choices: []string{"morning", "evening", "both"}, at: func(s *Scenario) any { return &s.When }},
	{ID: MorningShowers, Key: "showeram", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.MorningShowers)},
	{ID: EveningShowers, Key: "showerpm", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.EveningShowers)},
	{ID: MorningHands, Key: "handsam", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.MorningHands)},
	{ID: MiddayDishes, Key: "dishesnoon", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.MiddayDishes)},
	{ID: EveningDishes, Key: "dishespm", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.EveningDishes)},
	{ID: NightHands, Key: "handspm", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: useAt(draw.NightHands)},
	{ID: PipeLitres, Key: "pipe", Unit: Litre, Min: 0, Max: 10, Step: 0.1, at: func(s *Scenario) any { return &s.PipeLitres }},
	{ID: TankLitres, Key: "tank", Unit: Litre, Min: 30, Max: 1000, Step: 1, at: func(s *Scenario) any { return &s.TankLitres }},
	{ID: LossKWh, Key: "loss", Unit: KWhPerDay, Min: 0.2, Max: 10, Step: 0.01, at: func(s *Scenario) any { return &s.LossKWh }},
	{ID: SetC, Key: "set", Unit: Celsius, Min: 35, Max: 85, Step: 1, at: func(s *Scenario) any { return &s.SetC }},
	{ID: SunLimitC, Key: "suncap", Unit: Celsius, Min: 35, Max: 85, Step: 1, at: func(s *Scenario) any { return &s.SunLimitC }},
	{ID: ElementW, Key: "element", Unit: Watt, Min: 200, Max: 9000, Step: 10, at: func(s *Scenario) any { return &s.ElementW }},
	{ID: RoomC, Key: "room", Unit: Celsius, Min: -10, Max: 45, Step: 1, at: func(s *Scenario) any { return &s.RoomC }},
	{ID: Modules, Key: "modules", Unit: Piece, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.Modules }},
	{ID: ModuleW, Key: "watts", Unit: Watt, Min: 20, Max: 800, Step: 1, at: func(s *Scenario) any { return &s.ModuleW }},
	{ID: TiltDeg, Key: "tilt", Unit: Degree, Min: 0, Max: 90, Step: 1, at: func(s *Scenario) any { return &s.TiltDeg }},
	{ID: AzimuthDeg, Key: "face", Unit: Degree, Min: 0, Max: 359, Step: 1, at: func(s *Scenario) any { return &s.AzimuthDeg }},
	{ID: Modules2, Key: "modules2", Unit: Piece, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.More[0].Modules }},
	{ID: Tilt2, Key: "tilt2", Unit: Degree, Min: 0, Max: 90, Step: 1, at: func(s *Scenario) any { return &s.More[0].TiltDeg }},
	{ID: Face2, Key: "face2", Unit: Degree, Min: 0, Max: 359, Step: 1, at: func(s *Scenario) any { return &s.More[0].AzimuthDeg }},
	{ID: Modules3, Key: "modules3", Unit: Piece, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.More[1].Modules }},
	{ID: Tilt3, Key: "tilt3", Unit: Degree, Min: 0, Max: 90, Step: 1, at: func(s *Scenario) any { return &s.More[1].TiltDeg }},
	{ID: Face3, Key: "face3", Unit: Degree, Min: 0, Max: 359, Step: 1, at: func(s *Scenario) any { return &s.More[1].AzimuthDeg }},
	{ID: Modules4, Key: "modules4", Unit: Piece, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.More[2].Modules }},
	{ID: Tilt4, Key: "tilt4", Unit: Degree, Min: 0, Max: 90, Step: 1, at: func(s *Scenario) any { return &s.More[2].TiltDeg }},
	{ID: Face4, Key: "face4", Unit: Degree, Min: 0, Max: 359, Step: 1, at: func(s *Scenario) any { return &s.More[2].AzimuthDeg }},
	{ID: Horizon, Key: "horizon", Kind: Text},
	{ID: OpenV, Key: "voc", Unit: Volt, Min: 5, Max: 200, Step: 0.1, at: func(s *Scenario) any { return &s.OpenV }},
	{ID: MostV, Key: "vmp", Unit: Volt, Min: 4, Max: 180, Step: 0.1, at: func(s *Scenario) any { return &s.MostV }},
	{ID: ShortA, Key: "isc", Unit: Ampere, Min: 0.1, Max: 40, Step: 0.01, at: func(s *Scenario) any { return &s.ShortA }},
	{ID: VoltPct, Key: "voctc", Unit: PercentPerKelvin, Min: -0.6, Max: -0.1, Step: 0.01, at: func(s *Scenario) any { return &s.VoltPct }},
	{ID: ColdestC, Key: "coldest", Unit: Celsius, Min: -60, Max: 25, Step: 1, at: func(s *Scenario) any { return &s.ColdestC }},
	{ID: MaxSystemV, Key: "maxsys", Unit: Volt, Min: 50, Max: 1500, Step: 10, Optional: true, at: func(s *Scenario) any { return &s.MaxSystemV }},
	{ID: MaxFuseA, Key: "maxfuse", Unit: Ampere, Min: 1, Max: 60, Step: 0.5, Optional: true, at: func(s *Scenario) any { return &s.MaxFuseA }},
	{ID: InString, Key: "string", Unit: Piece, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.InString }},
	{ID: CableM, Key: "cable", Unit: Metre, Min: 0, Max: 200, Step: 1, at: func(s *Scenario) any { return &s.CableM }},
	{ID: CableSize, Key: "mm2", Kind: Choice, Max: 8, Step: 1, Choices: []string{"1.5", "2.5", "4", "6", "10", "16", "25", "35", "50"}, at: func(s *Scenario) any { return &s.CableSize }},
	{ID: CoupledBy, Key: "couple", Kind: Choice, Max: 2, Step: 1, Choices: []string{"converter", "direct", "staged"}, at: func(s *Scenario) any { return &s.Coupling }},
	{ID: Stages, Key: "stages", Kind: Text},
	{ID: ConverterLowV, Key: "convlow", Unit: Volt, Min: 5, Max: 1000, Step: 1, at: func(s *Scenario) any { return &s.ConverterLowV }},
	{ID: ConverterHighV, Key: "convhigh", Unit: Volt, Min: 10, Max: 1500, Step: 1, at: func(s *Scenario) any { return &s.ConverterHighV }},
	{ID: ConverterW, Key: "convw", Unit: Watt, Min: 100, Max: 20000, Step: 10, at: func(s *Scenario) any { return &s.ConverterW }},
	{ID: ConverterMaxV, Key: "convmax", Unit: Volt, Min: 10, Max: 1500, Step: 1, at: func(s *Scenario) any { return &s.ConverterMaxV }},
	{ID: ConverterMaxA, Key: "conva", Unit: Ampere, Min: 1, Max: 200, Step: 0.1, Optional: true, at: func(s *Scenario) any { return &s.ConverterMaxA }},
	{ID: ConverterShortA, Key: "convsc", Unit: Ampere, Min: 1, Max: 200, Step: 0.1, Optional: true, at: func(s *Scenario) any { return &s.ConverterShortA }},
	{ID: ConverterOut, Key: "convout", Kind: Choice, Max: 2, Step: 1, Choices: []string{"unknown", "ac", "dc"}, at: func(s *Scenario) any { return &s.ConverterOut }},
	{ID: ConverterSteps, Key: "convsteps", Kind: Choice, Max: 2, Step: 1, Choices: []string{"unknown", "both", "down"}, at: func(s *Scenario) any { return &s.ConverterSteps }},
	{ID: ConverterPct, Key: "conveff", Unit: Percent, Min: 80, Max: 99, Step: 0.5, at: func(s *Scenario) any { return &s.ConverterPct }},
	{ID: ConverterStartW, Key: "convstart", Unit: Watt, Min: 0, Max: 500, Step: 5, at: func(s *Scenario) any { return &s.ConverterStartW }},
	{ID: ElementV, Key: "volts", Unit: Volt, Min: 12, Max: 480, Step: 1, at: func(s *Scenario) any { return &s.ElementV }},
	{ID: SupplyV, Key: "mains", Unit: Volt, Min: 90, Max: 260, Step: 1, at: func(s *Scenario) any { return &s.SupplyV }},
	{ID: BreakerA, Key: "breaker", Unit: Ampere, Min: 2, Max: 125, Step: 1, Optional: true, at: func(s *Scenario) any { return &s.BreakerA }},
	{ID: ChangeBy, Key: "change", Kind: Choice, Max: 3, Step: 1, Choices: []string{"unknown", "interlocked", "two-elements", "other"}, at: func(s *Scenario) any { return &s.ChangeBy }},
	{ID: DesignPct, Key: "ifactor", Unit: Percent, Min: 100, Max: 160, Step: 1, at: func(s *Scenario) any { return &s.DesignPct }},
	{ID: TouchV, Key: "touchv", Unit: Volt, Min: 30, Max: 120, Step: 1, at: func(s *Scenario) any { return &s.TouchV }},
	{ID: DropPct, Key: "drop", Unit: Percent, Min: 0.5, Max: 10, Step: 0.5, at: func(s *Scenario) any { return &s.DropPct }},
	{ID: Price, Key: "price", Unit: MoneyPerKWh, Min: 0, Max: 100000, Step: 0.001, at: func(s *Scenario) any { return &s.Price }},
	{ID: LowPrice, Key: "low", Unit: MoneyPerKWh, Min: 0, Max: 100000, Step: 0.001, at: func(s *Scenario) any { return &s.LowPrice }},
	{ID: LowFrom, Key: "lowfrom", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: func(s *Scenario) any { return &s.LowFrom }},
	{ID: LowTo, Key: "lowto", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: func(s *Scenario) any { return &s.LowTo }},
	{ID: BandPrices, Key: "bands", Kind: Text},
	{ID: BlockPrices, Key: "blocks", Kind: Text},
	{ID: OtherKWh, Key: "other", Unit: KWhAMonth, Min: 0, Max: 5000, Step: 1, at: func(s *Scenario) any { return &s.OtherKWh }},
	{ID: Standing, Key: "standing", Unit: MoneyAMonth, Min: 0, Max: 10000, Step: 0.01, at: func(s *Scenario) any { return &s.Standing }},
	{ID: ExportPrice, Key: "export", Unit: MoneyPerKWh, Min: 0, Max: 1000, Step: 0.0001, at: func(s *Scenario) any { return &s.ExportPrice }},
	{ID: ExportKWh, Key: "exportfirst", Unit: KWhAMonth, Min: 0, Max: 5000, Step: 1, at: func(s *Scenario) any { return &s.ExportKWh }},
	{ID: ExportRest, Key: "exportrest", Unit: MoneyPerKWh, Min: 0, Max: 1000, Step: 0.0001, at: func(s *Scenario) any { return &s.ExportRest }},
	{ID: GridCO2, Key: "co2", Unit: GramsPerKWh, Min: 0, Max: 1500, Step: 1, at: func(s *Scenario) any { return &s.GridCO2 }},
	{ID: Currency, Key: "money", Kind: Text},
	{ID: ModuleCost, Key: "modcost", Unit: Money, Min: 0, Max: 1e7, Step: 1, at: func(s *Scenario) any { return &s.ModuleCost }},
	{ID: FixedCost, Key: "fixcost", Unit: Money, Min: 0, Max: 1e8, Step: 1, at: func(s *Scenario) any { return &s.FixedCost }},
	{ID: TankCost, Key: "newtank", Unit: Money, Min: 0, Max: 1e9, Step: 1, at: func(s *Scenario) any { return &s.TankCost }},
	{ID: ReplaceCost, Key: "recost", Unit: Money, Min: 0, Max: 1e8, Step: 1, at: func(s *Scenario) any { return &s.ReplaceCost }},
	{ID: ReplaceYear, Key: "reyear", Unit: Year, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.ReplaceYear }},
	{ID: UpkeepCost, Key: "upkeep", Unit: MoneyAYear, Min: 0, Max: 1e7, Step: 1, at: func(s *Scenario) any { return &s.UpkeepCost }},
	{ID: PriceRise, Key: "rise", Unit: PercentAYear, Min: -20, Max: 50, Step: 0.1, at: func(s *Scenario) any { return &s.PriceRisePct }},
	{ID: Discount, Key: "discount", Unit: PercentAYear, Min: 0, Max: 50, Step: 0.1, at: func(s *Scenario) any { return &s.DiscountPct }},
	{ID: HorizonYears, Key: "years", Unit: Year, Min: 1, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.HorizonYears }},
	{ID: BackupHours, Key: "backup", Kind: Hours, Min: 0, Max: 1435, Step: 5},
	{ID: SecondHours, Key: "backup2", Kind: Hours, Min: 0, Max: 1435, Step: 5},
	{ID: AcceptUses, Key: "cool", Unit: UsesAYear, Min: 0, Max: 1000, Step: 1, at: func(s *Scenario) any { return &s.AcceptUses }},
	{ID: RuleBy, Key: "rule", Kind: Choice, Max: 2, Step: 1, Choices: []string{"window", "satisfied", "sun"}, at: func(s *Scenario) any { return &s.Rule }},
	{ID: KeepLitres, Key: "keep", Unit: Litre, Min: 0, Max: 1000, Step: 5, at: func(s *Scenario) any { return &s.KeepL }},
	{ID: RescueLitres, Key: "rescue", Unit: Litre, Min: 0, Max: 500, Step: 5, at: func(s *Scenario) any { return &s.RescueL }},
	{ID: HeatUp, Key: "heatup", Kind: Choice, Max: 1, Step: 1, Choices: []string{"none", "weekly"}, at: func(s *Scenario) any { return &s.HeatUp }},
	{ID: OutFrom, Key: "outfrom", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: func(s *Scenario) any { return &s.OutFrom }},
	{ID: OutTo, Key: "outto", Unit: ClockMinute, Min: 0, Max: 1435, Step: 5, at: func(s *Scenario) any { return &s.OutTo }},
	{ID: AwayFrom, Key: "away", Kind: Choice, Max: 11, Step: 1, Choices: []string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"}, at: func(s *Scenario) any { return &s.AwayFrom }},
	{ID: AwayDays, Key: "awaydays", Unit: Day, Min: 0, Max: 60, Step: 1, at: func(s *Scenario) any { return &s.AwayDays }},
	{ID: MeterKWh, Key: "meter", Unit: KWhAMonth, Min: 0, Max: 5000, Step: 1, at: func(s *Scenario) any { return &s.MeterKWh }},
	{ID: ElementsBy, Key: "elements", Kind: Choice, Max: 3, Step: 1, Choices: []string{"one", "two", "both", "tanks"}, at: func(s *Scenario) any { return &s.Elements }},
	{ID: UpperPct, Key: "upper", Unit: Percent, Min: 10, Max: 95, Step: 1, at: func(s *Scenario) any { return &s.UpperPct }},
	{ID: LowerPct, Key: "lower", Unit: Percent, Min: 0, Max: 95, Step: 1, at: func(s *Scenario) any { return &s.LowerPct }},
	{ID: ReachPct, Key: "reach", Unit: Percent, Min: 0, Max: 45, Step: 1, at: func(s *Scenario) any { return &s.ReachPct }},
	{ID: SunTankL, Key: "suntank", Unit: Litre, Min: 30, Max: 1000, Step: 1, at: func(s *Scenario) any { return &s.SunTankL }},
	{ID: SunTankLoss, Key: "sunloss", Unit: KWhPerDay, Min: 0.2, Max: 10, Step: 0.01, at: func(s *Scenario) any { return &s.SunTankKWh }},
	{ID: Stands, Key: "stands", Kind: Choice, Max: 1, Step: 1, Choices: []string{"upright", "lying"}, at: func(s *Scenario) any { return &s.Stands }},
	{ID: WallOf, Key: "wall", Kind: Choice, Max: 2, Step: 1, Choices: []string{"steel", "stainless", "copper"}, at: func(s *Scenario) any { return &s.Wall }},
	{ID: MixedLitres, Key: "v40", Unit: Litre, Min: 10, Max: 1800, Step: 1, Optional: true, at: func(s *Scenario) any { return &s.MixedL }},
	{ID: LossBy, Key: "lossby", Kind: Choice, Max: 9, Step: 1, Choices: []string{"figure", "aplus", "a", "b", "c", "d", "e", "f", "meps", "overnight"}, at: func(s *Scenario) any { return &s.LossBy }},
	{ID: EveningC, Key: "evening", Unit: Celsius, Min: 25, Max: 90, Step: 0.5, at: func(s *Scenario) any { return &s.EveningC }},
	{ID: MorningC, Key: "morning", Unit: Celsius, Min: 20, Max: 90, Step: 0.5, at: func(s *Scenario) any { return &s.MorningC }},
	{ID: NightH, Key: "night", Unit: Hour, Min: 1, Max: 200, Step: 0.5, at: func(s *Scenario) any { return &s.NightH }},
	{ID: RoomBy, Key: "roomby", Kind: Choice, Max: 1, Step: 1, Choices: []string{"fixed", "outside"}, at: func(s *Scenario) any { return &s.RoomBy }},
	{ID: JacketOn, Key: "jacket", Kind: Choice, Max: 1, Step: 1, Choices: []string{"none", "jacket"}, at: func(s *Scenario) any { return &s.Jacket }},
	{ID: PipeLoss, Key: "pipeloss", Unit: WattPerKelvin, Min: 0, Max: 5, Step: 0.05, at: func(s *Scenario) any { return &s.PipeLossW }},
	{ID: Switching, Key: "switching", Kind: Choice, Max: 1, Step: 1, Choices: []string{"hold", "cycle"}, at: func(s *Scenario) any { return &s.Switching }},
	{ID: DiffK, Key: "diff", Unit: Kelvin, Min: 1, Max: 20, Step: 0.5, at: func(s *Scenario) any { return &s.DiffK }},
	{ID: StatBy, Key: "stat", Kind: Choice, Max: 3, Step: 1, Choices: []string{"unknown", "ac", "dc", "electronic"}, at: func(s *Scenario) any { return &s.StatBy }},
	{ID: BreaksBy, Key: "breaks", Kind: Choice, Max: 3, Step: 1, Choices: []string{"unknown", "stat", "contactor", "converter"}, at: func(s *Scenario) any { return &s.BreaksBy }},
	{ID: CutOutC, Key: "cutout", Unit: Celsius, Min: 50, Max: 99, Step: 1, Optional: true, at: func(s *Scenario) any { return &s.CutOutC }},
	{ID: CutBoth, Key: "cutboth", Kind: Choice, Max: 2, Step: 1, Choices: []string{"unknown", "yes", "no"}, at: func(s *Scenario) any { return &s.CutBoth }},
	{ID: SoilPct, Key: "soil", Unit: Percent, Min: 0, Max: 50, Step: 0.5, at: func(s *Scenario) any { return &s.SoilPct }},
	{ID: ShadePct, Key: "shade", Unit: Percent, Min: 0, Max: 80, Step: 0.5, at: func(s *Scenario) any { return &s.ShadePct }},
	{ID: MismatchPct, Key: "mismatch", Unit: Percent, Min: 0, Max: 20, Step: 0.5, at: func(s *Scenario) any { return &s.MismatchPct }},
	{ID: ConnectPct, Key: "connect", Unit: Percent, Min: 0, Max: 20, Step: 0.5, at: func(s *Scenario) any { return &s.ConnectPct }},
	{ID: FirstLightPct, Key: "firstlight", Unit: Percent, Min: 0, Max: 10, Step: 0.5, at: func(s *Scenario) any { return &s.FirstLightPct }},
	{ID: PlatePct, Key: "underplate", Unit: Percent, Min: 0, Max: 10, Step: 0.5, at: func(s *Scenario) any { return &s.PlatePct }},
	{ID: DownPct, Key: "down", Unit: Percent, Min: 0, Max: 50, Step: 0.5, at: func(s *Scenario) any { return &s.DownPct }},
	{ID: AgeYears, Key: "age", Unit: Year, Min: 0, Max: 40, Step: 1, at: func(s *Scenario) any { return &s.AgeYears }},
	{ID: MountBy, Key: "mount", Kind: Choice, Max: 2, Step: 1, Choices: []string{"rack", "close", "in"}, at: func(s *Scenario) any { return &s.Mount }},
	{ID: Insulation, Key: "insulation", Unit: Megohm, Min: 0, Max: 1000, Step: 0.01, Optional: true, at: func(s *Scenario) any { return &s.InsulationM }},
	{ID: ValveC, Key: "valve", Unit: Celsius, Min: 0, Max: 70, Step: 1, at: func(s *Scenario) any { return &s.ValveC }},
}
