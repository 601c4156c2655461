package page

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"suncask/engine/scenario"
	"suncask/engine/visit"
	"suncask/ui/format"
)

// VisitPart is a part of an installer's visit.
type VisitPart int8

// Parts of a visit, in walking order.
const (
	NoPart VisitPart = iota
	Survey
	Wiring
	Meters
	Trouble
	Water
	SheetPart
	Return
)

// Visit is what is open in a visit, and what was read from meters. Readings are in no link unless
// somebody asks for it.
type Visit struct {
	Part    VisitPart
	Section int  // of the survey
	LightBy int8 // what the light is known by
	Cells   int  // what the cells' temperature is known by
	Work    visit.Work
	AtWork  bool // currents are read at work, not shorted
	Typed   map[visit.Code]string
	Door    visit.Door
	Path    []VisitStep // through the questions, none before a door
	Copied  bool        // the path was
	Plates  map[string]string

	PlatesOpen  bool
	AssumedOpen bool
	MindsOf     string // the wiring whose findings are opened
}

// What the light is known by.
const (
	LightByMeter int8 = iota
	LightByAmps       // a string's own short circuit
	LightByClear      // what a sky without cloud would give
)

// VisitStep is a question and the answer to it, -1 while there is none.
type VisitStep struct {
	At     visit.Node
	Answer int
}

// TakeStore types in what a link brought along.
func (c *Page) TakeStore() {
	c.Visit.TakeReadings(c.Store.Readings)
	if _, light := c.Store.Readings[visit.Light]; !light && c.Visit.Typed[visit.StringCode(visit.ShortOf, 1)] != "" {
		c.Visit.LightBy = LightByAmps
	}
}

// Paper tells whether the household's sheet is on the screen: it is printed alone.
func (c *Page) Paper() bool { return c.SeesVisit() && c.Visit.Part == SheetPart }

// Forget empties what was read and worked out at another house.
func (v *Visit) Forget() {
	clear(v.Typed)
	clear(v.Plates)
	v.Path, v.Copied = nil, false
}

// OpenPart shows a part of the visit alone: its fields stand in the house's cards too.
func (c *Page) OpenPart(p VisitPart) {
	c.Visit.Part, c.Panel, c.Question = p, "", -1
}

// degrees are the readings that are shown in the page's unit.
var degrees = []visit.Code{visit.TapC, visit.TankTopC, visit.BackC, visit.AirC}

// Reading is what was typed for a code; ok is false where it is no number within the code's limits.
func (v *Visit) Reading(code visit.Code) (value float64, ok bool) {
	text := strings.TrimSpace(v.Typed[code])
	if text == "" {
		return 0, false
	}
	if code == visit.DateFrom || code == visit.DateTo {
		text = strings.ReplaceAll(text, "-", "")
	}
	value, ok = format.Parse(text)
	if ok && slices.Contains(degrees, code) {
		value = format.Metric(scenario.Celsius, value)
	}
	least, most, _ := code.Limits()
	return value, ok && value >= least && value <= most
}

// Readings are all that were typed and can be.
func (v *Visit) Readings() visit.Readings {
	r := visit.Readings{}
	for code := range v.Typed {
		if value, ok := v.Reading(code); ok && len(r) < visit.MostReadings {
			r[code] = value
		}
	}
	return r
}

// TakeReadings types readings in.
func (v *Visit) TakeReadings(r visit.Readings) {
	for code, value := range r {
		text := format.Input(math.Round(1000*value) / 1000)
		switch {
		case code == visit.DateFrom || code == visit.DateTo:
			if text = strconv.Itoa(int(value)); len(text) == 8 {
				text = text[:4] + "-" + text[4:6] + "-" + text[6:]
			}
		case slices.Contains(degrees, code):
			text = format.Input(math.Round(10*format.Shown(scenario.Celsius, value)) / 10)
		}
		v.Typed[code] = text
	}
}

// LimitsOf are the least and the most that a reading's box takes, in the unit that is shown.
func LimitsOf(code visit.Code) (least, most float64) {
	least, most, _ = code.Limits()
	if slices.Contains(degrees, code) {
		least, most = math.Ceil(format.Shown(scenario.Celsius, least)), math.Floor(format.Shown(scenario.Celsius, most))
	}
	return least, most
}
