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

// Vertical axes of the climate's chart.
const (
	LightAxis = iota
	TempAxis
	ClimateAxes
)
