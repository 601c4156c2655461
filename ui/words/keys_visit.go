package words

// Texts of an installer's visit.
const (
	VisitParts Key = visitKeys + iota
	VisitSurvey
	VisitWiring
	VisitTest
	WiringsTitle // args: wirings that nothing stops, wirings
	WiringsName
	WiringsHelp
	WiringsAssumed // args: values
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
	TestQuantity
	TestExpected
	TestRead
	TestOutcome
	TestShortA
	TestElementV
	TestElementA
	TestElementW
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
	VisitNoModules
	VisitCounts // args: stop, mind, notes
	keyCount
)
