package words

// Key names a text of the page.
type Key int

const (
	Title Key = iota
	Share
	Undo
	Close
	SentenceBackup // args: hours
	SentenceThanBare
	SentenceThanBefore
	SentenceCost // args: money
	CaptionCost
	CaptionSun
	CaptionCool
	CaptionBought
	ColdWaterNote // args: yearly mean, where it is from, kWh more if 3 K colder, kWh more if 3 K warmer
	WaterOfAir
	WaterOfNorthAmerica
	WaterOfSpain
	WaterOfUnitedKingdom
	WaterOfGermany
	WaterTyped
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
	Range // args: min, max, unit
	Change
	PanelHome
	PanelRoof
	PanelTank
	PanelPrices
	PanelLesson
	Entries
	EntryHome
	EntryVisit
	EntryLesson
	LessonHelp
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
	NewerVersion
	NewerTake
	LinkOnlyHere
	LinkCode
	LinkSend
	PictureCode
	PictureDial
	PictureDay
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
	UsesHelp
	StandardHours
	UsesFrom
	MovedLater   // args: duration
	MovedEarlier // args: duration
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
	GainCool  // args: cool uses
	FixBrings // args: finding
	FixesHelp
	LandButton
	LandProgress // args: done, all
	JobStop
	SearchProgress // args: years
	SaveTable
	SavePicture
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
	TankReady    // args: showers
	ReadBefore
	ReadAfter
	CashSays    // args: years, money, money
	LengthSays  // args: hours, money, cool uses
	ClimateSays // args: month, kWh/m2 a day, degC, degC
	WaitName
	WaitByTemp
	WaitByUse
	WaitTemp  // args: degC
	WaitUsed  // args: L
	WaitReady // args: duration, kWh
	WaitNow
	WaitNever
	HeatGrid // args: degC, degC, duration
	HeatGridNever
	HeatSun      // args: month, duration, clock time
	HeatSunNever // args: month
	MeterFits    // args: minutes, kWh, month
	MeterNot     // args: kWh, kWh, month
	MeterTake
	LandAll   // shows windows of every length
	LandShort // only short ones
	LandHelp
	LandName
	LandTwin         // args: hours, money, of the cheapest; money of none, of all day
	LandTwinNone     // args: money of none, of all day
	AlwaysAssumed    // args: degC of cables, K tolerance
	LightLostNote    // args: %, parts
	StandingLossNote // args: loss, kWh a day, unit of the loss
	PanelWeather
	UseDevicePlace
	DevicePlaceRefused
	PlaceOffers
	PlaceNearly // args: names
	PlaceIn     // args: region, country
	PlaceBy     // args: the other name
	TownsComing
	TownsAbsent
	ClockIs     // args: hours ahead of UTC, sentence about summer time
	ClockSummer // args: first day, first day after
	ClockNoShift
	ClockGuessed // args: nearest place
	TownsFrom
	ClockOfSun
	PlaceNextTo   // args: town
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
	YearsTitle
	YearsDearer // args: money
	YearsCooler // args: days
	YearsAlike
	YearsDays  // args: number
	YearsShown // args: money or days
	YearsSays  // args: money or days of the lowest and highest tenth and of the worst; days
	YearsName
	YearsThis
	YearsGood
	YearsMiddle
	YearsBad
	YearsBought
	YearsCost // args: currency
	YearsCool
	Redo
	SharedHouse
	SharedBack
	HouseName
	HouseKeep
	HouseOpen
	HouseCompare
	HouseDrop
	HouseKept // args: name
	HouseNotKept
	HouseNameWrong // args: characters, most
	HousesHelp
	CompareName // args: name
	CompareThis
	CompareMore
	AskCount // args: this, all
	AskYes
	AskSkip
	AskEnd
	LanguageCode
	MetricUnits
	CustomaryUnits
	AtLine   // args: line
	AtColumn // args: column
	OneDay
	ManyDays
	DayOnDial
	TankPlay
	ExplainName
	ExplainBought
	ExplainSun
	ExplainCost
	ExplainFraction
	ExplainCool
	ExplainSaved
	ExplainLost
	ExplainTap
	ExplainDayBought
	ExplainDayCost
	TermSun
	TermGrid
	TermBare
	TermCost
	TermBase
	TermPrice
	TermBands
	TermBlocks
	TermFed
	TermFedPrice
	TermFedLess
	TermInvestment
	TermSaving
	TermRise
	TermAgeing
	TermDiscount
	TermUpkeep
	TermReplacement
	TermReplaceYear
	TermHorizon
	ExplainMonths
	ExplainDays
	ExplainText // args: figure, span, value, formula
	ExplainValue
	ExplainUp
	ExplainSource // args: place's name, place
	ExplainRun
	frameKeys // those of keys_frame.go follow
)
