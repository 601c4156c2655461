package words

// Texts of the page's frame: the result, its places, cards, sheets.
const (
	VerdictAll  Key = frameKeys + iota
	VerdictCool     // args: days
	SayBackup
	SayNothing
	ExampleHouse
	ExampleMine
	YourHouse
	HouseIn // args: litres, modules
	PlaceDay
	PlaceHouse
	PlaceYear
	PlaceAdvice
	Places
	HouseTitle
	YearTitle
	AdviceTitle
	CareTitle
	CareCount // args: how many
	CareOne
	CareNone
	AssumedCount // args: how many
	AssumedRight
	InviteText
	InviteStart
	CardWeather // args: place, kWh/m2 a day
	CardHome    // args: people, minutes, litres a minute
	CardNoUses
	CardRoof     // args: modules, watts, tilt, facing
	CardRoofMore // args: modules on further planes
	CardNoRoof
	CardWiring // args: strings, coupling
	CardTank   // args: litres, degC, kWh
	CardPrices // args: price a kWh, money to buy
	CardLesson
	Compass // eight directions from north on
	CompassName
	Less // args: what
	More // args: what
	MenuName
	MenuLanguage
	MenuTheme
	ThemeAuto
	ThemeLight
	ThemeDark
	MenuPrint
	MenuSources
	MenuFigured
	HowName
	SinceRest   // args: place, cold water, where that is from
	SinceWas    // args: field, value, value before
	SinceHours  // args: hours, hours before
	SinceChange // args: field
	HousesInvite
	AskAgain
	CompareEnd
	SizesMost // args: modules, money, years
	SizesBest
	SizesYours
	PanelHouses
	HoursTitle
	FlowKey
	FlowWaits // args: kWh
	FlowLost  // args: kWh lost, kWh in
	FlowReach // args: kWh at the tap, kWh in
	LandBest  // args: hours, money, money of the present ones
	LandNone
	LengthEnough // args: hours, money
	LengthNone
	LengthNever
	IVFull       // args: W at the element, W of the strings
	ClimateTimes // args: times, bright month, dark month
	ClimateDark  // args: bright month, kWh/m2 a day, dark month
	HowShow
	SizesTitle
	MonthsCool   // args: month, cool uses
	MonthsBought // args: month, kWh
	MonthsNone
	MonthSays // args: month, kWh bought, money, kWh of sun, kWh of sun not used
	MonthCool // args: cool uses
	DaysGrid  // args: days
	DaysCool  // args: days with cool uses
	DaysWarm
	DayKeyBought // args: kWh at most
	DayKeyCool
	DaySays    // args: day, kWh bought, money, kWh of sun
	MoneyBack  // args: years, money, horizon
	MoneyNever // args: horizon, money
	TableRead
	TableClose
	AskBack
	FindEvery // args: money
	FindEveryLess
	FindCool // args: cool uses, money
	SeverityStop
	SeverityMind
	SeverityNote
	FindingSource
	HowDay
	HowPetals
	HowRing
	HowDrops
	HowMiddle
	HoursLess // args: hours, money, money
	HoursMore // as HoursLess
	HoursYours
	HoursBest
	HoursTry     // args: hours
	FindLess     // args: hours, money
	FindLessCool // args: hours, money, cool uses
	DayWorse
	FoundLessCool // args: as FindLessCool
	FindBest
	SunWaits  // args: kWh
	FirstPool // two lines, as the others
	FirstDrops
	FirstDrag
	FirstSun
	SliderSays // args: value, money, cool days
	CurveSays  // args: least and most money
	CurveBars  // args: cool uses accepted
	BandSun
	BandGrid
	BandEnough
	StripShowers
	StripTurn
	TextsComing
	TextsLost
	visitKeys // those of keys_visit.go follow
)
