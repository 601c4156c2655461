package words

// Texts of an installer's visit.
const (
	VisitParts Key = visitKeys + iota
	VisitSurvey
	VisitWiring
	VisitTest
	VisitRoof
	VisitTank
	VisitBoard
	VisitBill
	VisitSurveyHelp
	WiringLine // args: kWh, kWh, V, A, fuse, cable
	WiringHere
	CableLeast // args: mm2
	CableNone
	WiringsTitle // args: wirings that nothing stops, wirings
	WiringsName
	WiringsHelp
	WiringsAssumed // args: how many
	WiringOne      // args: modules, coupling
	WiringMany     // args: modules, strings, coupling
	WiringOffered
	WiringInto
	WiringCold
	WiringHot
	WiringDesign
	WiringFuse
	WiringCable
	WiringFindings
	WiringCounts  // args: findings that stop, to mind
	WiringStopped // args: wiring, finding
	FuseNone
	FuseBetween // args: A, A
	FuseSizes   // args: rated currents
	FuseUnfit
	FuseLabel // args: A
	RatingsName
	RatingVolts
	RatingSwitch
	RatingString
	RatingFuse
	RatingGrid
	RatingGridMore
	RatingRelief
	RatingLeast
	RatingNote
	CablesName
	CablesLength // args: length with its unit
	CablesLoss   // args: %
	CablesNow    // args: %
	CablesNote
	TestName
	TestCaution // args: V
	TestLight
	TestByMeter
	TestByAmps
	TestWm2
	TestAmps
	TestCells
	TestByBack
	TestByAir
	TestByOpen
	TestBackC
	TestAirC
	TestOpenV
	TestCellsAre // args: degC, W/m2
	TestExpected
	TestElementV
	TestElementA
	CellsNone // args: V, V, V
	TestEmpty
	TestBand  // args: least, most
	TestWrong // args: least, most
	TestBox   // args: quantity
	OutcomeWithin
	OutcomeLower  // args: %
	OutcomeHigher // args: %
	OutcomeNone
	OutcomeReversed
	MissingModules  // args: modules, of how many
	MissingReversed // args: modules
	MissingThirds   // args: thirds
	MissingUntold
	InsulationAsks // args: megohm, V
	InsulationTogether
	VisitNoModules
	VisitCounts // args: stop, mind, notes
	VisitTrouble
	VisitWater
	VisitSheet
	VisitReturn
	VisitStep    // args: part, of how many
	VisitOn      // args: part
	VisitEarlier // args: part
	WhoLine      // args: letters
	WhoNote
	WorkName
	WorkSun
	WorkOpen
	WorkGrid
	WorkDusk
	TestByClear
	ClearNow
	ClearNote
	TestAtLeast  // args: value
	TestAtMost   // args: value
	StringOpen   // args: string
	StringShort  // args: string
	StringWork   // args: string
	StringsApart // args: strings
	EarthName
	EarthHow
	EarthBox
	OpenName
	OpenHow
	AmpsName
	AmpsHow
	AmpsByShort
	AmpsByWork
	FunctionsName
	FunctionSwitch
	FunctionStat
	FunctionCutOut
	FunctionStarts
	FunctionLoss
	FunctionChange
	InsulationName
	SheathName
	SheathHow
	SheathBox
	OhmsName
	OhmsHow
	OhmsBox
	GridName
	GridHow
	GridVBox
	GridABox
	SunName
	SunHow
	TempsName
	TempsHow
	TapBox
	TankBox
	AgainName
	AgainHow
	AgainBox
	TroubleCaution // args: V
	TroubleStops
	TroubleStart
	DoorNone
	DoorLittle
	DoorHot
	DoorTrips
	TroubleBack
	TroubleAgain
	TroubleCopy
	TroubleCopied
	LookOpen
	LookShort
	LookRunV
	LookRunA
	LookWindow
	LookBears
	LookOhms
	LookHalf
	LookLoop3
	LookLoop2
	LookSheath
	LookCable
	LookDrop
	LookContact
	LookAcross
	LookAcrossGrid
	LookSunHours // args: month
	LookBackup
	LookWaits
	LookLimit
	LookRise
	LookPushed
	LookGridA
	LookModule
	LookThird
	LookNothing
	N1Ask
	N1Where
	N1A
	N1AMeans
	N1B
	N1C
	N1CMeans
	N2Ask
	N2Where
	N2A
	N2AMeans
	N2B
	N2C
	N2D
	N3Ask
	N3Where
	N3A
	N3B
	N3BMeans
	N3C
	N3CMeans
	N3D
	N4Ask
	N4Where
	N4A
	N4B
	N4C
	N4CMeans
	N4D
	N4DMeans
	N4E
	N4EMeans
	N5Ask
	N5Where
	N5A
	N5B
	N5BMeans
	N6Ask
	N6Where
	N6A
	N6B
	N6BMeans
	N6C
	N6CMeans
	N7Ask
	N7Where
	N7A
	N7B
	N7BMeans
	N7C
	N8Ask
	N8Where
	N8A
	N8B
	N8BMeans
	N8C
	N8D
	N8DMeans
	N9Ask
	N9Where
	N9A
	N9B
	N9BMeans
	N9C
	N9CMeans
	N10Ask
	N10Where
	N10A
	N10B
	N10BMeans
	N10C
	N10D
	N10E
	N10EMeans
	N11Ask
	N11Where
	N11A
	N11AMeans
	N11B
	N12Ask
	N12Where
	N12A
	N12AMeans
	N12B
	N12BMeans
	N12C
	N13Ask
	N13Where
	N13A
	N13B
	N13BMeans
	N13C
	N13CMeans
	N14Ask
	N14Where
	N14A
	N14B
	N14BMeans
	N15Ask
	N15Where
	N15A
	N15AMeans
	N15B
	N15BMeans
	N15C
	N16Ask
	N16Where
	N16A
	N16AMeans
	N16B
	N16BMeans
	N16C
	N16CMeans
	N16D
	N16DMeans
	N16E
	N16EMeans
	N16F
	N16FMeans
	N17Ask
	N17Where
	N17A
	N17AMeans
	N17B
	N17BMeans
	N17C
	N18Ask
	N18Where
	N18A
	N18AMeans
	N18B
	N18BMeans
	N19Ask
	N19Where
	N19A
	N19B
	N19C
	N19CMeans
	N19D
	N19E
	N19F
	N19G
	FaultBox
	FaultBox2
	FaultAt // args: modules from the negative end, in series
	JointBox
	JointAt // args: ohm, W
	WaterName
	WaterPushed // args: degC, degC
	WaterVessel
	WaterVesselAsk
	WaterGrid       // args: degC
	WaterSunBright  // args: month
	WaterSunTypical // args: month
	WaterSunDull    // args: month
	WaterNever
	WaterShower
	WaterShare
	WaterRelief
	WaterDays // args: days
	WaterFill
	WaterReliefHow
	WaterValveHow
	WaterHeatUpOn // args: litres
	WaterHeatUpOff
	WaterAway
	WaterMinds
	SheetTitle
	SheetTitleGrid
	SheetMended
	SheetWhose
	SheetDay
	SheetWinter
	SheetSpring
	SheetSummer
	SheetBuys     // args: season, kWh
	SheetBuysNone // args: season
	SheetLegend   // args: hours
	SheetLegendSun
	SheetYear  // args: kWh, money, share
	SheetReady // args: litres typical, litres dull
	SheetSettings
	SheetNow
	SheetMore
	SheetLess
	SheetHours
	SheetStat
	SheetSun
	SheetHeatUp
	SheetShower
	SheetOn
	SheetOff
	SheetHourMore
	SheetHourLess
	EffectMore // args: money
	EffectLess // args: money
	EffectSame
	EffectCool // args: days
	EffectWarm // args: days
	SheetCool
	SheetCool1 // args: time
	SheetCool1Not
	SheetCool2 // args: hours
	SheetCool3
	SheetCool4
	SheetAway
	SheetAwayHow
	SheetMind
	SheetBurns  // args: degC, s
	SheetMixed  // args: degC
	SheetLive   // args: V
	SheetRelief // args: litres
	SheetReliefDry
	SheetDecide
	SheetInstalled
	SheetExpected // args: W/m2, degC
	SheetExpectedDark
	SheetMeasured
	SheetOutcome
	SheetInsulation
	SheetBuilt     // args: modules, W, series, strings
	SheetBuiltMore // args: m, mm2, ohm
	SheetBreaks    // args: V, A
	SheetFuse      // args: fuse
	SheetMeters
	SheetCode
	SheetElectrician
	SheetPlumber
	SheetSupplier
	SheetPrint
	SheetHelp
	ShareClient
	ShareColleague
	ReturnHelp
	ReturnFirst
	ReturnLast
	ReturnMeter0
	ReturnMeter1
	ReturnWrong
	ReturnWaits
	ReturnRead    // args: kWh, days
	ReturnExpects // args: kWh, least, most
	ReturnMinute  // args: share
	ReturnClock
	ReturnCauses
	ReturnWould
	ReturnNow
	ReturnLook
	ReturnAlone // args: least, most
	ReturnTake
	ReturnYear // args: kWh, kWh
	CauseShower
	CauseShowerLook
	CausePeople
	CausePeopleLook
	CauseClock
	CauseClockLook
	CauseAllDay
	CauseAllDayLook
	CauseStat
	CauseStatLook
	CauseLoss
	CauseLossLook
	CauseSun
	CauseSunLook
	CauseCold
	CauseColdLook
	CauseWeather
	CauseWeatherLook
	CauseMeter
	CauseMeterLook
	PlatesName
	PlatesHelp
	PlateTake
	PlateWatts
	PlateWattsAre // args: W, W
	PlatePulse
	PlatePulses
	PlateKWh
	PlateSeconds
	PlateSize
	PlateWide
	PlateHigh
	PlateThick
	PlateRise
	PlateEnergy
	PlateKelvin
	PlateNight
	PlateReheat
	PlateHours
	PlateMean
	PlateRoom
	PlateAbout // args: value
	PlateNone
	WiringsModules
	WiringsFewer
	WiringsSame
	WiringsMore
	NightShare // args: share
	TroubleOrder
	TroubleSteps
	N3E
	N3F
	N18C
	N18CMeans
	N9D
	N9DMeans
	N6D
	N6DMeans
	N19DMeans
	lessonKeys // those of keys_lesson.go follow
)
