package scenario

import (
	"math"

	"suncask/engine/climate"
)

// FieldID names one input.
type FieldID int8

// The inputs, in the order in which links write them.
const (
	Place FieldID = iota
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
	Showers
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
	InString
	CableM
	CableSize
	CoupledBy
	Stages
	ConverterLowV
	ConverterHighV
	ConverterW
	ElementV
	Price
	LowPrice
	LowFrom
	LowTo
	Currency
	BackupHours
	SecondHours
	RuleBy
	KeepLitres
	RescueLitres
	HeatUp
	OutFrom
	OutTo
	AwayFrom
	AwayDays
	ElementsBy
	UpperPct
	LowerPct
	ReachPct
	SunTankL
	SunTankLoss
	Stands
	LossBy
	EveningC
	MorningC
	NightH
	RoomBy
	JacketOn
	PipeLoss
	Switching
	DiffK
	SoilPct
	MismatchPct
	AgeYears
	Insulation
	ValveC
	fieldCount

	NoField FieldID = -1 // of problems that concern the link as a whole
)

// FieldSet is a set of fields.
type FieldSet [2]uint64

// Has tells whether a field is in the set.
func (s FieldSet) Has(f FieldID) bool { return s[f/64]&(1<<(f%64)) != 0 }

// With returns the set with fields added.
func (s FieldSet) With(list ...FieldID) FieldSet {
	for _, f := range list {
		s[f/64] |= 1 << (f % 64)
	}
	return s
}

// Without returns the set with fields taken out.
func (s FieldSet) Without(list ...FieldID) FieldSet {
	for _, f := range list {
		s[f/64] &^= 1 << (f % 64)
	}
	return s
}

// AllFields returns the set of all fields.
func AllFields() (s FieldSet) {
	for f := range fieldCount {
		s = s.With(f)
	}
	return s
}

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
	Metre
	KWhPerSquareMetre // a day
)

// Kind of a field's value.
type Kind int8

const (
	Number Kind = iota
	Choice      // Get and Set count Choices from 0
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
	Min, Max, Step float64
	Choices        []string // as links write them
	Get            func(*Scenario) float64
	Set            func(*Scenario, float64)
}

// Fields returns the table, in the order of the IDs.
func Fields() []Field { return fields[:] }

// FieldOf returns one entry.
func FieldOf(id FieldID) *Field { return &fields[id] }

// steps returns a value as a number of steps.
func (f *Field) steps(v float64) int { return int(math.Round(v / f.Step)) }

// at returns the value of n steps: the float nearest to its decimal form.
func (f *Field) at(n int64) float64 {
	if f.Step < 1 {
		return float64(n) / math.Round(1/f.Step)
	}
	return float64(n) * f.Step
}

// Snap returns the field's exact value next to v, which must be one that Check
// accepts.
func (f *Field) Snap(v float64) float64 { return f.at(int64(f.steps(v))) }

type pick[T int | int8 | float64 | Sky | Uses | When | Coupling | Rule | LossFrom | Elements | climate.Generator] func(*Scenario) *T

func (p pick[T]) field(id FieldID, key string, f Field) Field {
	f.ID, f.Key = id, key
	f.Get = func(s *Scenario) float64 { return float64(*p(s)) }
	f.Set = func(s *Scenario, v float64) { *p(s) = T(v) }
	return f
}

func number(u Unit, lo, hi, step float64) Field {
	return Field{Kind: Number, Unit: u, Min: lo, Max: hi, Step: step}
}

func choice(names ...string) Field {
	return Field{Kind: Choice, Max: float64(len(names) - 1), Step: 1, Choices: names}
}

var fields = [fieldCount]Field{
	{ID: Place, Key: "place", Kind: Text},
	pick[float64](func(s *Scenario) *float64 { return &s.ZoneH }).field(Zone, "zone", number(Hour, -12, 14, 0.25)),
	{ID: SummerTime, Key: "summer", Kind: Text},
	{ID: WeatherFile, Key: "weather", Kind: Text},
	pick[float64](func(s *Scenario) *float64 { return &s.ShiftMin }).field(ShiftMin, "shift", number(Minute, -120, 120, 1)),
	{ID: MonthGHI, Key: "light", Kind: Months, Unit: KWhPerSquareMetre, Min: 0, Max: 13, Step: 0.01},
	{ID: MonthTempC, Key: "air", Kind: Months, Unit: Celsius, Min: -60, Max: 50, Step: 0.1},
	{ID: MonthColdC, Key: "cold", Kind: Months, Unit: Celsius, Min: 0.5, Max: 40, Step: 0.1},
	pick[climate.Generator](func(s *Scenario) *climate.Generator { return &s.Draws }).field(DrawsBy, "draws", choice("ar", "markov")),
	pick[int8](func(s *Scenario) *int8 { return &s.Month }).field(Month, "month",
		choice("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")),
	pick[Sky](func(s *Scenario) *Sky { return &s.Sky }).field(SkyKind, "sky", choice("bright", "typical", "dull")),
	pick[Uses](func(s *Scenario) *Uses { return &s.Uses }).field(UsesFrom, "uses", choice("habits", "s", "m", "l")),
	pick[int](func(s *Scenario) *int { return &s.People }).field(People, "people", number(PerPerson, 1, 12, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ShowerMinutes }).field(ShowerMinutes, "shower", number(Minute, 1, 30, 0.5)),
	pick[float64](func(s *Scenario) *float64 { return &s.ShowerFlow }).field(ShowerFlow, "flow", number(LitrePerMinute, 2, 25, 0.5)),
	pick[When](func(s *Scenario) *When { return &s.When }).field(Showers, "wash", choice("morning", "evening", "both")),
	pick[float64](func(s *Scenario) *float64 { return &s.PipeLitres }).field(PipeLitres, "pipe", number(Litre, 0, 10, 0.1)),
	pick[float64](func(s *Scenario) *float64 { return &s.TankLitres }).field(TankLitres, "tank", number(Litre, 30, 1000, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.LossKWh }).field(LossKWh, "loss", number(KWhPerDay, 0.2, 10, 0.01)),
	pick[float64](func(s *Scenario) *float64 { return &s.SetC }).field(SetC, "set", number(Celsius, 35, 85, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.SunLimitC }).field(SunLimitC, "suncap", number(Celsius, 35, 85, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ElementW }).field(ElementW, "element", number(Watt, 200, 9000, 10)),
	pick[float64](func(s *Scenario) *float64 { return &s.RoomC }).field(RoomC, "room", number(Celsius, -10, 45, 1)),
	pick[int](func(s *Scenario) *int { return &s.Modules }).field(Modules, "modules", number(Piece, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ModuleW }).field(ModuleW, "watts", number(Watt, 20, 800, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.TiltDeg }).field(TiltDeg, "tilt", number(Degree, 0, 90, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.AzimuthDeg }).field(AzimuthDeg, "face", number(Degree, 0, 359, 1)),
	pick[int](func(s *Scenario) *int { return &s.More[0].Modules }).field(Modules2, "modules2", number(Piece, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[0].TiltDeg }).field(Tilt2, "tilt2", number(Degree, 0, 90, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[0].AzimuthDeg }).field(Face2, "face2", number(Degree, 0, 359, 1)),
	pick[int](func(s *Scenario) *int { return &s.More[1].Modules }).field(Modules3, "modules3", number(Piece, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[1].TiltDeg }).field(Tilt3, "tilt3", number(Degree, 0, 90, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[1].AzimuthDeg }).field(Face3, "face3", number(Degree, 0, 359, 1)),
	pick[int](func(s *Scenario) *int { return &s.More[2].Modules }).field(Modules4, "modules4", number(Piece, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[2].TiltDeg }).field(Tilt4, "tilt4", number(Degree, 0, 90, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.More[2].AzimuthDeg }).field(Face4, "face4", number(Degree, 0, 359, 1)),
	{ID: Horizon, Key: "horizon", Kind: Text},
	pick[float64](func(s *Scenario) *float64 { return &s.OpenV }).field(OpenV, "voc", number(Volt, 5, 200, 0.1)),
	pick[float64](func(s *Scenario) *float64 { return &s.MostV }).field(MostV, "vmp", number(Volt, 4, 180, 0.1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ShortA }).field(ShortA, "isc", number(Ampere, 0.1, 40, 0.01)),
	pick[float64](func(s *Scenario) *float64 { return &s.VoltPct }).field(VoltPct, "voctc", number(PercentPerKelvin, -0.6, -0.1, 0.01)),
	pick[int](func(s *Scenario) *int { return &s.InString }).field(InString, "string", number(Piece, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.CableM }).field(CableM, "cable", number(Metre, 0, 200, 1)),
	pick[int8](func(s *Scenario) *int8 { return &s.CableSize }).field(CableSize, "mm2", choice("1.5", "2.5", "4", "6", "10", "16", "25", "35", "50")),
	pick[Coupling](func(s *Scenario) *Coupling { return &s.Coupling }).field(CoupledBy, "couple", choice("converter", "direct", "staged")),
	{ID: Stages, Key: "stages", Kind: Text},
	pick[float64](func(s *Scenario) *float64 { return &s.ConverterLowV }).field(ConverterLowV, "convlow", number(Volt, 5, 1000, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ConverterHighV }).field(ConverterHighV, "convhigh", number(Volt, 10, 1500, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ConverterW }).field(ConverterW, "convw", number(Watt, 100, 20000, 10)),
	pick[float64](func(s *Scenario) *float64 { return &s.ElementV }).field(ElementV, "volts", number(Volt, 12, 480, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.Price }).field(Price, "price", number(MoneyPerKWh, 0, 100000, 0.001)),
	pick[float64](func(s *Scenario) *float64 { return &s.LowPrice }).field(LowPrice, "low", number(MoneyPerKWh, 0, 100000, 0.001)),
	pick[int](func(s *Scenario) *int { return &s.LowFrom }).field(LowFrom, "lowfrom", number(ClockMinute, 0, 1435, 5)),
	pick[int](func(s *Scenario) *int { return &s.LowTo }).field(LowTo, "lowto", number(ClockMinute, 0, 1435, 5)),
	{ID: Currency, Key: "money", Kind: Text},
	{ID: BackupHours, Key: "backup", Kind: Hours, Min: 0, Max: 1435, Step: 5},
	{ID: SecondHours, Key: "backup2", Kind: Hours, Min: 0, Max: 1435, Step: 5},
	pick[Rule](func(s *Scenario) *Rule { return &s.Rule }).field(RuleBy, "rule", choice("window", "satisfied", "sun")),
	pick[float64](func(s *Scenario) *float64 { return &s.KeepL }).field(KeepLitres, "keep", number(Litre, 0, 1000, 5)),
	pick[float64](func(s *Scenario) *float64 { return &s.RescueL }).field(RescueLitres, "rescue", number(Litre, 0, 500, 5)),
	pick[int8](func(s *Scenario) *int8 { return &s.HeatUp }).field(HeatUp, "heatup", choice("none", "weekly")),
	pick[int](func(s *Scenario) *int { return &s.OutFrom }).field(OutFrom, "outfrom", number(ClockMinute, 0, 1435, 5)),
	pick[int](func(s *Scenario) *int { return &s.OutTo }).field(OutTo, "outto", number(ClockMinute, 0, 1435, 5)),
	pick[int8](func(s *Scenario) *int8 { return &s.AwayFrom }).field(AwayFrom, "away", choice("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")),
	pick[int](func(s *Scenario) *int { return &s.AwayDays }).field(AwayDays, "awaydays", number(Day, 0, 60, 1)),
	pick[Elements](func(s *Scenario) *Elements { return &s.Elements }).field(ElementsBy, "elements", choice("one", "two", "both", "tanks")),
	pick[float64](func(s *Scenario) *float64 { return &s.UpperPct }).field(UpperPct, "upper", number(Percent, 10, 90, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.LowerPct }).field(LowerPct, "lower", number(Percent, 0, 50, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.ReachPct }).field(ReachPct, "reach", number(Percent, 0, 45, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.SunTankL }).field(SunTankL, "suntank", number(Litre, 30, 1000, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.SunTankKWh }).field(SunTankLoss, "sunloss", number(KWhPerDay, 0.2, 10, 0.01)),
	pick[int8](func(s *Scenario) *int8 { return &s.Stands }).field(Stands, "stands", choice("upright", "lying")),
	pick[LossFrom](func(s *Scenario) *LossFrom { return &s.LossBy }).field(LossBy, "lossby", choice("figure", "aplus", "a", "b", "c", "d", "e", "f", "meps", "overnight")),
	pick[float64](func(s *Scenario) *float64 { return &s.EveningC }).field(EveningC, "evening", number(Celsius, 25, 90, 0.5)),
	pick[float64](func(s *Scenario) *float64 { return &s.MorningC }).field(MorningC, "morning", number(Celsius, 20, 90, 0.5)),
	pick[float64](func(s *Scenario) *float64 { return &s.NightH }).field(NightH, "night", number(Hour, 1, 48, 0.5)),
	pick[int8](func(s *Scenario) *int8 { return &s.RoomBy }).field(RoomBy, "roomby", choice("fixed", "outside")),
	pick[int8](func(s *Scenario) *int8 { return &s.Jacket }).field(JacketOn, "jacket", choice("none", "jacket")),
	pick[float64](func(s *Scenario) *float64 { return &s.PipeLossW }).field(PipeLoss, "pipeloss", number(WattPerKelvin, 0, 5, 0.05)),
	pick[int8](func(s *Scenario) *int8 { return &s.Switching }).field(Switching, "switching", choice("hold", "cycle")),
	pick[float64](func(s *Scenario) *float64 { return &s.DiffK }).field(DiffK, "diff", number(Kelvin, 1, 20, 0.5)),
	pick[float64](func(s *Scenario) *float64 { return &s.SoilPct }).field(SoilPct, "soil", number(Percent, 0, 50, 0.5)),
	pick[float64](func(s *Scenario) *float64 { return &s.MismatchPct }).field(MismatchPct, "mismatch", number(Percent, 0, 20, 0.5)),
	pick[int](func(s *Scenario) *int { return &s.AgeYears }).field(AgeYears, "age", number(Year, 0, 40, 1)),
	pick[float64](func(s *Scenario) *float64 { return &s.InsulationM }).field(Insulation, "insulation", number(Megohm, 0, 1000, 0.01)),
	pick[float64](func(s *Scenario) *float64 { return &s.ValveC }).field(ValveC, "valve", number(Celsius, 0, 70, 1)),
}
