package visit

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// Code names a reading of a visit.
type Code string

// Codes of readings that stand by themselves; strings have theirs from StringCode.
const (
	Earth        Code = "ea" // ohm, of earthing and bonding
	Sheath       Code = "ri" // megohm, element to sheath
	ElementOhm   Code = "ro" // ohm, the element cold
	GridV        Code = "gv" // V at the element, the grid heating
	GridAmps     Code = "gi" // A
	SunV         Code = "ev" // V at the element, the sun heating
	SunAmps      Code = "ei" // A
	TapC         Code = "tt" // degC, at a tap
	TankTopC     Code = "tp" // degC, where the thermostat opened
	Light        Code = "li" // W/m2, before
	LightAfter   Code = "lb" // W/m2, after
	BackC        Code = "tc" // degC, back of a module
	AirC         Code = "ta" // degC
	MeterFrom    Code = "m0" // kWh, the backup's meter
	MeterTo      Code = "m1" // kWh
	DateFrom     Code = "d0" // yyyymmdd
	DateTo       Code = "d1" // yyyymmdd
	PlusToEarth  Code = "vp" // V, from + to earth
	MinusToEarth Code = "vm" // V, from - to earth
	StringsEndV  Code = "va" // V where the strings end, under load
)

// Kinds of readings of a string, the first letter of its code.
const (
	OpenOf  = 'v' // V, open
	ShortOf = 's' // A, shorted
	WorkOf  = 'o' // A, at work
)

// StringCode is a kind's reading of a string, counted from 1 to MostStrings.
func StringCode(kind rune, n int) Code { return Code(kind) + Code(strconv.Itoa(n)) }

// limits of a reading, both allowed.
type limits struct{ least, most float64 }

var codes = func() map[Code]limits {
	m := map[Code]limits{
		Earth: {0, 100}, Sheath: {0, 100_000}, ElementOhm: {0, 5000}, GridV: {0, 500}, GridAmps: {0, 200}, SunV: {-1500, 1500}, SunAmps: {-200, 200},
		TapC: {0, 110}, TankTopC: {0, 110}, Light: {0, 1400}, LightAfter: {0, 1400}, BackC: {-45, 110}, AirC: {-60, 60},
		MeterFrom: {0, 1e7}, MeterTo: {0, 1e7}, DateFrom: {20000101, 21001231}, DateTo: {20000101, 21001231}, PlusToEarth: {-1500, 1500}, MinusToEarth: {-1500, 1500}, StringsEndV: {-1500, 1500},
	}
	for n := 1; n <= MostStrings; n++ {
		m[StringCode(OpenOf, n)], m[StringCode(ShortOf, n)], m[StringCode(WorkOf, n)] = limits{-1500, 1500}, limits{0, 60}, limits{0, 60}
	}
	for n := 1; n <= Functions; n++ {
		m[FunctionCode(n)] = limits{0, 1}
	}
	return m
}()

// Functions is how many functions are tried out, see FunctionCode.
const Functions = 6

// FunctionCode is that of a function that was tried, counted from 1: a reading of 1 is seen as it
// should be, 0 otherwise.
func FunctionCode(n int) Code { return Code("f" + strconv.Itoa(n)) }

// Limits are the least and the most that a reading can be; ok is false for a code that is none.
func (c Code) Limits() (least, most float64, ok bool) {
	l, ok := codes[c]
	return l.least, l.most, ok
}

// MostReadings is how many readings a text holds.
const MostReadings = 40

// readingParts is the precision in which readings are written, parts of one.
const readingParts = 1000

// Readings are what was read at a house, by code. A reading of zero is a reading; what was not
// measured is not there.
type Readings map[Code]float64

// ReadingError says which part of a text is no reading, and what is allowed there; Least and Most
// are equal where no number would help.
type ReadingError struct {
	Part        string
	Least, Most float64
}

func (e *ReadingError) Error() string {
	if e.Least == e.Most {
		return fmt.Sprintf("visit: %q is no reading", e.Part)
	}
	return fmt.Sprintf("visit: %q: allowed are %g to %g", e.Part, e.Least, e.Most)
}

// ParseReadings reads code:value pairs between commas. All of it is read or nothing: an unknown
// code, one that stands twice, a number that is none or out of its range, and more than
// MostReadings are refused with a *ReadingError.
func ParseReadings(text string) (Readings, error) {
	r := Readings{}
	if text == "" {
		return r, nil
	}
	for _, part := range strings.Split(text, ",") {
		name, number, _ := strings.Cut(part, ":")
		code := Code(name)
		least, most, known := code.Limits()
		_, twice := r[code]
		if !known || twice || len(r) == MostReadings {
			return nil, &ReadingError{Part: shortened(part)}
		}
		v, err := strconv.ParseFloat(number, 64)
		if err != nil || !(v >= least && v <= most) || !plain(number) {
			return nil, &ReadingError{shortened(part), least, most}
		}
		r[code] = v
	}
	return r, nil
}

// plain tells whether a number is written with digits, a sign and a point alone.
func plain(number string) bool { return strings.Trim(number, "0123456789.-") == "" }

func shortened(part string) string { return part[:min(len(part), 40)] }

// String writes the readings as ParseReadings reads them, in the order of their codes, to a
// thousandth.
func (r Readings) String() string {
	list := make([]string, 0, len(r))
	for code, v := range r {
		list = append(list, string(code)+":"+strconv.FormatFloat(math.Round(v*readingParts)/readingParts, 'f', -1, 64))
	}
	slices.Sort(list)
	return strings.Join(list, ",")
}
