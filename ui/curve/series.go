package curve

// Series of the strip: two grids over one day.
const (
	Water       = iota // hot water ready
	WaterDull          // the same on a dull day
	WaterBefore        // as it was when the gesture began
	Money              // spent so far
	MoneyBefore
	WindowWater // the backup hours behind each grid
	WindowMoney
	StripSeries
)

// Vertical axes of the strip.
const (
	WaterAxis = iota
	MoneyAxis
	StripAxes
)

// Series of the climate's chart: twelve months of light above, temperatures below.
const (
	Light = iota // kWh/m2 a day
	Air          // degC
	Cold         // water, degC
	ClimateSeries
)

// Series of the strings' chart: current over voltage.
const (
	Curve1000 = iota
	Curve500
	Curve200
	ElementLine // of the resistance
	WorkPoints  // where the strings work in each light
	IVSeries
)

// IVAxes is how many vertical axes it has.
const IVAxes = 1

// Vertical axes of the climate's chart.
const (
	LightAxis = iota
	TempAxis
	ClimateAxes
)

// Series of the year's chart: months of kWh, one on the other.
const (
	FromGrid = iota
	FromSun
	YearSeries
)

// Series of the chart of payments: years of money.
const (
	Cash      = iota // cumulative
	CashToday        // the same at today's value
	CashZero
	CashSeries
)

// Series of the chart over the window's length, hours.
const (
	LengthCost = iota // a year
	LengthCool        // uses a year
	CostHere
	CoolHere
	LengthSeries
)

// LengthAxes is how many vertical axes it has.
const LengthAxes = 2

// Nodes of the energy flow.
const (
	NodeSun    = iota // what the modules could give
	NodeGrid          // bought
	NodeTank          // into the water
	NodeWiring        // lost on the way to the element
	NodeDisplaced
	NodeFull
	NodeTap
	NodePipes
	NodeRoom
	FlowNodes
)

// FlowLinks are from which node to which energy flows.
var FlowLinks = [...][2]int{
	{NodeSun, NodeTank}, {NodeSun, NodeWiring}, {NodeSun, NodeDisplaced}, {NodeSun, NodeFull}, {NodeGrid, NodeTank},
	{NodeTank, NodeTap}, {NodeTank, NodePipes}, {NodeTank, NodeRoom},
}
