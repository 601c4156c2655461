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
	WiringsAssumed // args: how many, names
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
	TestShortA
	TestElementV
	TestElementA
	TestElementW
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
	VisitNoModules
	VisitCounts // args: stop, mind, notes
	keyCount
)
