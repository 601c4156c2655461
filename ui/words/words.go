// Package words holds every sentence of the page, one file per language. The
// engine speaks in codes with arguments; here they become text.
package words

import (
	"fmt"
	"math"
	"strings"

	"suncask/engine/care"
	"suncask/engine/climate/hourly"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/format"
)

// Catalogue is one language; the lists are indexed by what they name.
type Catalogue struct {
	Fields   []FieldText
	Units    []string
	Problems []string // see Problem for the arguments
	Findings []string
	Changes  []string // of plan.Change
	Months   []string // twelve
	Page     []string
	Files    []string // see FileError for the arguments
	Notes    []string // one argument: a number
}

// FieldText names a field, its choices and what it means.
type FieldText struct {
	Name    string
	Help    string
	Choices []string
}

// Key names a text of the page.
type Key int

const (
	Title Key = iota
	ExampleHouse
	YourHouse
	Share
	Undo
	Close
	SayDays
	SayHours
	SayCost
	SentenceShowers // args: days with warm water
	SentenceAll
	SentenceBackup // args: hours
	SentenceNever
	SentenceThanBare
	SentenceThanBefore
	SentenceCost // args: money
	SentenceLess // args: money
	SentenceMore
	CaptionCost
	CaptionSun
	CaptionCool
	CaptionBought
	ChangeNone
	ChangeMore // args: amount
	ChangeLess
	BoughtToday
	BackupStarts
	BackupEnds
	BackupMoves
	NoBackup
	AllDay
	TapAgain
	StripWater
	StripMoney
	StripTwin // args: least litres, its time, most litres, its time, money
	PoolLegend
	AsIfEveryDay
	VariesDaily
	Cautions
	Assumed
	AssumedHelp
	Range // args: min, max, unit
	Change
	PanelHome
	PanelRoof
	PanelTank
	PanelPrices
	PanelWiring
	PotentialName
	PotentialKWh
	PotentialAll
	PotentialCoupling
	PotentialCable
	PotentialConverter
	PotentialOver
	PotentialDisplaced
	PotentialFull
	PotentialWater
	IVName
	IVCurves
	IVVolts
	IVTwin    // args: volts, amperes, % at three lights, ohms, ohms
	TankName  // args: clock time
	BoostHelp // args: kWh, presses, money, uses
	MoreChoices
	FewerChoices
	YieldsText // args: ohms, kWh, kWh, kWh
	TankHour
	HygieneNever  // args: degC, minutes
	HygieneHeated // args: degC, minutes, days, longest
	DoseNone
	DoseSome      // args: powers of ten
	TankTwinAhead // args: degC, degC
	HygieneGrow   // args: hours, litres, degC, degC
	TankTwin      // args: top, bottom, mean, litres
	RuleApart
	RuleChanges // args: rule, money, cool days
	CoolDays    // args: days
	OutagePart  // args: clock times
	LinkRefused
	LinkCopied
	LinkHere
	Trouble
	TroubleKept
	PreviousMonth
	NextMonth
	Earlier
	Later
	DialName
	GripHelp
	Accuracy
	Findings
	BareHelp
	StripHelp
	UsesOfDay
	UseCoolAtOnce
	UseRow   // args: time, litres, degC
	UseCool  // args: minutes
	UseCount // args: how many, which
	KWh
	And
	PanelBackup
	AddSecond
	SkylineName
	SkylineHelp
	North
	East
	South
	West
	StartCounted
	EndCounted
	ByClock
	BySolarNoon
	BySunset
	SunHoursNow
	SunHoursEmpty
	SunHoursPolar
	Date
	AfterMark
	BeforeMark
	SentenceSun
	RemoveSecond
	SecondHelp
	AheadHelp
	FindHours
	Finding
	FoundLess // args: hours, money
	FoundNone
	FoundKeeps  // args: hours, cool uses, before, money
	FoundFewest // args: hours, accepted, cool uses
	FoundFlat   // args: times
	FindHelp
	WorthFigure
	CashYears
	WorthName
	WorthAllDay
	WorthHours
	WorthSaving
	WorthNPV
	WorthRate
	WorthPayback
	WorthDiscounted
	WorthKWh
	WorthNever
	WorthNoRate
	WorthManyRates
	WorthYears  // args: number
	WorthCarbon // args: kg, kg
	WorthBill   // args: money, money
	WorthSplit  // args: money of system, by hours, by sun; cool days three times; money
	FixesName
	FixesButton
	FixesNone
	FixApply
	FixesUse // args: clock time
	FixesUseHelp
	FixLess   // args: change, money, cool uses
	FixMore   // as FixLess
	FixBrings // args: finding
	FixesHelp
	LandButton
	LandProgress // args: done, all
	JobStop
	SearchProgress // args: years
	SaveTable
	SavePicture
	PanelSizes
	SizesButton
	SizesName
	SizesHelp
	ElementsButton
	ElementsName
	ElementsHelp
	WaysButton
	WaysName
	WaysHelp
	WayClock
	WaySun
	WayTwo
	WayMonths
	WayYears
	OfferTry
	OfferCost // args: currency
	OfferCool
	OfferSun
	OfferWorth   // args: currency
	OfferBest    // args: offer
	OfferSize    // args: modules, litres, coupling, strings, hours
	OfferNone    // args: litres, hours
	OfferElement // args: watts, hours
	OfferMind
	OneString
	ManyStrings // args: strings, modules in each
	Month
	KeySun
	KeyGrid
	KeyLost
	KeyUnused
	HeatName
	MonthsCost // args: currency
	MonthsNeed
	MonthsCan
	YearHelp
	CalendarName
	CalendarNone
	CalendarSome // args: days, dates
	CoolBefore
	CoolAfter
	FlowYear
	FlowDay
	FlowShowYear
	FlowShowDay
	FlowSun
	FlowGrid
	FlowTank
	FlowWiring
	FlowDisplaced
	FlowFull
	FlowTap
	FlowPipes
	FlowRoom
	SaveHours
	DayOfMonth
	HourFrom
	HourOffer
	HourLitres
	HourMean
	PanelYear
	LengthHours
	LengthsButton
	LengthsName
	LengthsProgress // args: done, all
	KeyLengthCost   // args: currency
	KeyLengthCool
	CashName
	KeyCash // args: currency
	KeyCashToday
	CashYear
	CashPaid     // args: currency
	CashSum      // args: currency
	CashSumToday // args: currency
	LatestStart  // args: clock times: start, end, use
	LatestNone   // args: clock time
	TankReady    // args: showers, duration
	MeterFits    // args: minutes, kWh, month
	MeterNot     // args: kWh, kWh, month
	MeterTake
	LandHelp
	LandName
	LandTwin      // args: hours, money, of the cheapest; money of none, of all day
	LandTwinNone  // args: money of none, of all day
	AlwaysAssumed // args: % converter, W start, % soiling, mismatch, cable, degC of showers, K tolerance, % mixed
	PanelWeather
	UseDevicePlace
	DevicePlaceRefused
	AccuracyPoint // args: place, nearest, km, % error, K error
	AccuracyFar
	AccuracyFile // args: place
	FileAbsent   // args: key
	FileChoose
	FileHelp
	FileReading // args: percent
	FileRead    // args: layout, rows
	FileClock   // args: minutes, early or late
	FileEarly
	FileLate
	FileShift // args: minutes, earlier or later
	FileBack
	FileKept
	MonthsName
	MonthsHelp
	ClimateLight
	ClimateAir
	ClimateCold
	ClimateTwin
	MonthCell // args: field, month
	PlaneAdd
	PlaneRemove // args: number
	YearsButton
	YearsHelp     // args: years, % spread
	YearsProgress // args: done, all
	YearsName
	YearsThis
	YearsGood
	YearsMiddle
	YearsBad
	YearsBought
	YearsCost // args: currency
	YearsCool
	keyCount
)

// Text returns one text of the page, with its arguments filled in.
func (c *Catalogue) Text(k Key, args ...any) string {
	if len(args) == 0 {
		return c.Page[k]
	}
	return fmt.Sprintf(c.Page[k], args...)
}

// Problem says what was refused, what was given and what is allowed.
func (c *Catalogue) Problem(p scenario.Problem) string {
	name, unit := "", ""
	if p.Field != scenario.NoField {
		name = c.Fields[p.Field].Name
		f := scenario.FieldOf(p.Field)
		if u := c.Units[f.Unit]; u != "" {
			unit = format.Space + u
		}
		if p.Code == scenario.UnknownChoice {
			unit = list(f.Choices)
		}
	}
	month := ""
	if (p.Code == scenario.WeatherRefused || p.Code == scenario.MonthTooBright) && p.Min >= 0 && p.Min < 12 {
		month = c.Months[int(p.Min)]
	}
	most := p.Max
	if p.Code == scenario.MonthTooBright {
		most = math.Floor(100*most) / 100 // it was computed, not chosen
	}
	return fmt.Sprintf(c.Problems[p.Code], name, p.Got, format.Input(p.Min), format.Input(most), unit, month)
}

func list(names []string) string {
	s := ""
	for i, n := range names {
		if i > 0 {
			s += ", "
		}
		s += n
	}
	return s
}

// Finding says what a finding means, with its numbers.
func (c *Catalogue) Finding(f care.Finding) string {
	var args [len(f.Args)]any
	for i, v := range f.Args {
		decimals := 0
		switch a := math.Abs(v); {
		case a == math.Round(a):
		case a < 1:
			decimals = 2
		case a < 10:
			decimals = 1
		}
		args[i] = format.Number(v, decimals)
		if math.IsInf(v, 0) {
			args[i] = "\u221e"
		}
	}
	return fmt.Sprintf(c.Findings[f.Code]+"%.0[1]s%.0[2]s%.0[3]s", args[:]...)
}

// FileError says why a weather file was refused, and where.
func (c *Catalogue) FileError(e *hourly.Error) string {
	where := ""
	if e.Line > 0 {
		where = fmt.Sprintf("Line %d", e.Line)
		if e.Column > 0 {
			where += fmt.Sprintf(", column %d", e.Column)
		}
		if e.Name != "" {
			where += " (" + e.Name + ")"
		}
		where += ": "
	}
	return where + fmt.Sprintf(c.Files[e.Code], e.Got, e.Want)
}

// FileNote says what was done to a weather file.
func (c *Catalogue) FileNote(n hourly.Note) string { return fmt.Sprintf(c.Notes[n.Code], n.N) }

// Change names a change. Arguments: backup hours, litres of rescue, rule, flow, degC of
// the sun's limit and of the thermostat, modules, litres of the tank, second hours,
// minutes of a shower, when, times.
func (c *Catalogue) Change(change plan.Change, args ...any) string {
	text := c.Changes[change]
	if !strings.Contains(text, "%") {
		return text
	}
	return fmt.Sprintf(text, args...)
}
