// Package scenario holds every input of a calculation in the unit a person
// types it in, with its range, its default by link version, and the text form
// that travels in a link.
package scenario

// Sky is the kind of day that the day view shows.
type Sky int8

const (
	Bright  Sky = iota // a day only one in ten of the month is clearer than
	Typical            // half the month's days are clearer
	Dull               // nine in ten are clearer
)

// Uses names where the day's hot-water uses come from.
type Uses int8

const (
	Habits Uses = iota
	ProfileS
	ProfileM
	ProfileL
)

// When the household showers.
type When int8

const (
	Mornings When = iota
	Evenings
	Both
)

// Scenario is one house with its choices. It holds no pointers, so that a copy
// is a snapshot and == compares.
type Scenario struct {
	Place string // slug of a built-in place
	Month int8   // 0-11, of the day view
	Sky   Sky

	Uses          Uses
	People        int
	ShowerMinutes float64
	ShowerFlow    float64 // L/min
	When          When
	PipeLitres    float64 // run off before warm water reaches the tap

	TankLitres float64
	LossKWh    float64 // standing loss in 24 h at LossTestK
	SetC       float64 // thermostat of the backup
	SunLimitC  float64 // thermostat of the sun
	ElementW   float64
	RoomC      float64

	Modules    int
	ModuleW    float64
	TiltDeg    float64
	AzimuthDeg float64 // clockwise from north

	Price    float64 // a kWh
	LowPrice float64 // a kWh in the low-price hours
	LowFrom  int     // minutes after midnight; LowFrom == LowTo: none
	LowTo    int
	Currency string

	Backup Backup
	Known  FieldSet // fields that somebody confirmed; the others are assumed
}

// LossTestK is the difference of tank and room at which standing loss is stated
// (65 degC in a room of 20 degC; EN 12897 and EN 50440, from memory).
const LossTestK = 45.0

// Span is a part of the day that may wrap past midnight: minutes after local
// midnight, 0 to 1435 in steps of 5. Equal edges: nothing.
type Span struct{ Start, End int }

// Backup says when heating from the grid is allowed.
type Backup struct {
	Start, End int  // as a Span's
	AllDay     bool // the edges meet, and all the day lies between them
	Second     Span // more hours; where both overlap they count once
}

// DayMinutes is the length of the clock.
const DayMinutes = 24 * 60

// LatestVersion is the link version that Encode writes.
const LatestVersion = 1

// Defaults returns the default table of a link version. A table is frozen once
// links of its version exist: a new default is a new version. Version 1 is the
// example house: invented, and tuned to nothing. It panics on a version that
// does not exist.
func Defaults(version int) Scenario {
	if version != 1 {
		panic("scenario: no such link version")
	}
	return Scenario{
		Place: "lisbon", Month: 2, Sky: Typical,
		Uses: Habits, People: 3, ShowerMinutes: 6, ShowerFlow: 8, When: Both, PipeLitres: 1.5,
		TankLitres: 200, LossKWh: 2, SetC: 60, SunLimitC: 75, ElementW: 2000, RoomC: 20,
		Modules: 4, ModuleW: 400, TiltDeg: 35, AzimuthDeg: 180,
		Price: 0.24, LowPrice: 0.15, Currency: "EUR",
		Backup: Backup{Start: 15 * 60, End: 18 * 60},
	}
}
