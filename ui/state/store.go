// Package state holds what the page knows: the scenario, what was simulated from
// it, the gesture in progress and what was refused. It is plain Go; nothing else
// changes these values.
package state

import (
	"errors"
	"math"

	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/engine/draw"
	"suncask/engine/plan"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/towns"
)

// undoDepth is how many changes can be taken back.
const undoDepth = 50

// Results are everything simulated for one set of backup hours.
type Results struct {
	Year simulate.Year
	Day  simulate.Day
	Dull simulate.Day // the same month's dull day
}

// Before is what the page showed when a gesture began.
type Before struct {
	Windows []dial.Window
	Backup  scenario.Backup
	UseAt   [draw.Occasions]int
	Total   simulate.Flows
	Day     simulate.Flows
	Trace   []simulate.Point
}

// Refused is a field's text that could not be used.
type Refused struct {
	Typed   string
	Problem scenario.Problem
}

// Store is the page's state.
type Store struct {
	Scenario scenario.Scenario
	Prepared *simulate.Prepared
	Results  Results
	Bare     simulate.Flows // the year with backup all day and no modules

	Entry    Entry          // by which the page is used
	Readings visit.Readings // that came with the link
	Exp      string         // the experiment of a lesson that is open, by name; none: all are listed
	Big      bool           // its letters are those of a projector

	Read *hourly.Result // what reading the weather file came to, nil for one that was kept

	LinkProblems []scenario.Problem
	Refused      map[scenario.FieldID]Refused

	Towns *towns.List                                  // nil before they are fetched
	Clock func(zone string) (c climate.Clock, ok bool) // of a zone of the IANA data base, in climate.RefYear; nil: not known
	Near  []string                                     // names that are spelled nearly as a refused place was

	early string // the place that was typed before the towns were there

	Since  *Since    // the last edit, nil at rest
	Before *Before   // nil outside a gesture
	Moving Occasions // uses that the gesture moves; none: backup hours
	Held   dial.Part // what it moves of them, and of which window
	On     int
	Ghost  int // minute that a second tap would set, -1 none

	Ahead Ahead // the held grip's other places

	find     *plan.Best // the search for better hours, nil if none runs
	findFrom scenario.Scenario

	tasks  [JobCount]task
	curves map[scenario.FieldID]curve

	rules     memo[[3]simulate.Flows]
	hygiene   memo[simulate.Hygiene]
	boost     memo[simulate.Boost]
	savings   memo[plan.Savings]
	water     memo[[2]float64]
	household memo[*Household]
	meterRead MeterRead
	wireBy    int // modules more than the house has, of the list of wirings

	calibration memo[calibrated]
	replay      memo[*simulate.Day]
	replayDay   int // of the year, in replay

	real         int // the day of the year that is shown instead of the month's, counted from 1; 0: none
	refusedMonth int // of the monthly value in Refused

	cold   [12]float64 // monthly means of the cold water
	undo   []scenario.Scenario
	redo   []scenario.Scenario // taken back
	turn   dial.Turn
	slide  dial.Slide
	drops  []Occasions // of the marks when uses were taken
	before Before
	ws     simulate.Workspace
	bare   *simulate.Prepared
	pause  func()                     // between the parts of the start
	files  map[string]*climate.Record // the weather files that were opened, by their keys
	year   simulate.Year              // work space of Bare
}

// Open starts a store from a link's fragment. What cannot be read is kept in
// LinkProblems.
func Open(fragment string) *Store { return OpenInTurns(fragment, func() {}) }

// OpenInTurns is Open that calls pause between its parts, so that a browser can do something
// else there.
func OpenInTurns(fragment string, pause func()) *Store {
	s := &Store{pause: pause, Refused: map[scenario.FieldID]Refused{}, files: map[string]*climate.Record{}, curves: map[scenario.FieldID]curve{}, Ghost: -1}
	s.ws.Turn = pause
	s.Load(fragment)
	s.pause, s.ws.Turn = func() {}, nil
	return s
}

// Load replaces the scenario by a link's; the present one is an undo away.
func (s *Store) Load(fragment string) {
	s.real = 0
	s.Entry, fragment = cutEntry(fragment)
	s.Readings, fragment = cutReadings(fragment)
	s.Big, fragment = s.cutBig(fragment)
	s.Exp, fragment = s.cutExperiment(fragment)
	next, problems := scenario.Decode(fragment)
	p, err := simulate.PrepareInTurns(&next, s.files[next.Weather], s.Prepared, s.pause)
	s.pause()
	for range 2 + 12 { // a datasheet, a place, and months
		if err == nil {
			break
		}
		problem := prepareProblem(&next, err)
		problems = append(problems, problem)
		d := scenario.Defaults(scenario.LatestVersion)
		switch problem.Code {
		case scenario.MonthTooBright: // only that month is the table's again
			month := int(problem.Min)
			next.GHI.Known[month], next.GHI.Value[month] = false, 0
			if next.GHI.Known == [12]bool{} {
				next.Known = next.Known.Without(scenario.MonthGHI)
			}
		case scenario.ImpossibleSheet:
			next.OpenV, next.MostV, next.VoltPct = d.OpenV, d.MostV, d.VoltPct
			next.ModuleW = d.ModuleW
			next.Known = next.Known.Without(scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.ModuleW)
		default:
			next.Place, next.Town, next.Country, next.GHI = d.Place, "", "", d.GHI
		}
		next.Settle()
		p, err = simulate.Prepare(&next, s.files[next.Weather], nil)
	}
	if err != nil {
		panic("state: the default house cannot be prepared: " + err.Error())
	}
	if s.Prepared != nil && next != s.Scenario {
		s.remember()
	}
	s.LinkProblems, s.Since = problems, nil
	clear(s.Refused)
	s.use(next, p)
}

// sheetFields are the fields of a datasheet's values.
var sheetFields = map[pv.Value]scenario.FieldID{pv.OpenCircuit: scenario.OpenV, pv.ShortCircuit: scenario.ShortA, pv.MaximumVoltage: scenario.MostV,
	pv.MaximumCurrent: scenario.ModuleW, pv.VoltageChange: scenario.VoltPct, pv.CellCount: scenario.OpenV, pv.CurrentChange: scenario.ShortA}

// prepareProblem turns a refused record, month or datasheet into words' terms.
func prepareProblem(next *scenario.Scenario, err error) scenario.Problem {
	var sheet *pv.DatasheetError
	if errors.As(err, &sheet) {
		scale := 1.0
		switch sheet.Value {
		case pv.MaximumCurrent: // the page asks for watts
			scale = next.MostV
		case pv.VoltageChange:
			scale = 100 / next.OpenV
		case pv.CellCount:
			return scenario.Problem{Field: scenario.OpenV, Code: scenario.ImpossibleSheet, Got: format.Input(next.OpenV), Min: 5, Max: 200}
		}
		round := func(v float64) float64 { return math.Round(v*scale*100) / 100 }
		return scenario.Problem{Field: sheetFields[sheet.Value], Code: scenario.ImpossibleSheet, Got: format.Input(round(sheet.Got)),
			Min: round(sheet.Min), Max: round(sheet.Max)}
	}
	p := scenario.Problem{Field: scenario.Place, Code: scenario.WeatherRefused, Got: next.Place}
	var bright *climate.ClearSkyError
	if errors.As(err, &bright) && next.GHI.Known[bright.Month] {
		return scenario.Problem{Field: scenario.MonthGHI, Code: scenario.MonthTooBright, Got: format.Input(bright.Mean), Min: float64(bright.Month), Max: bright.Limit}
	}
	if bright != nil {
		p.Got, p.Min, p.Max = bright.Place, float64(bright.Month), bright.Limit
	}
	return p
}

// use makes a scenario the present one and simulates it.
func (s *Store) use(next scenario.Scenario, p *simulate.Prepared) {
	if s.Prepared == nil || s.Prepared.Weather != p.Weather {
		s.cold = climate.MonthMeans(&p.Weather.ColdC)
	}
	s.Scenario, s.Prepared = next, p
	s.rules.forget()
	s.hygiene.forget()
	s.boost.forget()
	s.savings.forget()
	s.water.forget()
	s.household.forget()
	s.calibration.forget()
	s.replay.forget()
	s.simulateBare()
	s.pause()
	s.simulate()
	s.pause()
}

// simulateBare runs the year without modules, backup all day: what the sun saves.
func (s *Store) simulateBare() {
	bare, prev := s.Scenario.WithoutModules(), s.bare
	if prev == nil || prev.Weather != s.Prepared.Weather {
		prev = s.Prepared // at least its weather
	}
	p, err := simulate.Prepare(&bare, s.files[bare.Weather], prev)
	if err != nil {
		panic("state: weather in use cannot be prepared: " + err.Error())
	}
	s.bare = p
	s.pause()
	p.RunYear(scenario.Backup{AllDay: true}, &s.ws, &s.year)
	s.Bare = s.year.Total
}

// simulate runs the year for the present hours, and the days shown of it. A fault of the
// engine is a panic, which the page tells of.
func (s *Store) simulate() {
	s.Prepared.RunYear(s.Scenario.Backup, &s.ws, &s.Results.Year)
	if err := s.Results.Year.Err; err != nil {
		panic("state: " + err.Error())
	}
	s.pause()
	s.simulateDay()
}

// simulateDay runs the day shown and the month's dull one.
func (s *Store) simulateDay() {
	b, month := s.Scenario.Backup, int(s.Scenario.Month)
	s.Prepared.RunDay(b, month, scenario.Dull, &s.ws, &s.Results.Dull)
	s.pause()
	if day, real := s.RealDay(); real {
		s.Prepared.Replay(b, &s.Results.Year, day, &s.ws, &s.Results.Day)
	} else {
		s.Prepared.RunDay(b, month, s.Scenario.Sky, &s.ws, &s.Results.Day)
	}
}

// RealDay is the day of the year (0 to 364) that is shown instead of a month's average one;
// ok is false where none is.
func (s *Store) RealDay() (day int, ok bool) { return s.real - 1, s.real > 0 }

// ShowDay shows a day of the year; -1 shows the month's again.
func (s *Store) ShowDay(day int) {
	s.Cancel()
	s.real = day + 1
	s.simulateDay()
}

// ShowDayOf shows the month and sky that another store shows; nobody has chosen them here.
func (s *Store) ShowDayOf(o *Store) { s.showMonth(o.Scenario.Month, o.Scenario.Sky) }

func (s *Store) showMonth(month int8, sky scenario.Sky) {
	s.Scenario.Month, s.Scenario.Sky = month, sky
	s.simulateDay()
}

// Rehearse simulates a year and changes nothing: it warms the code up.
func (s *Store) Rehearse() {
	if s.Before == nil {
		s.Prepared.RunYear(s.Scenario.Backup, &s.ws, &s.year)
	}
}

// File is the weather file that the scenario names, nil if it names none or it is not
// open.
func (s *Store) File() *climate.Record { return s.files[s.Scenario.Weather] }

// Link is the fragment that restores the scenario.
func (s *Store) Link() string { return scenario.Encode(&s.Scenario) }

// Example tells whether nobody has confirmed anything: the invented house.
func (s *Store) Example() bool {
	return s.Scenario.Known.Without(scenario.Month, scenario.SkyKind, scenario.BackupHours, scenario.SecondHours) == scenario.FieldSet{}
}

func (s *Store) remember() {
	s.redo = s.redo[:0]
	if len(s.undo) == undoDepth {
		s.undo = append(s.undo[:0], s.undo[1:]...)
	}
	s.undo = append(s.undo, s.Scenario)
}

// CanUndo tells whether a change can be taken back.
func (s *Store) CanUndo() bool { return len(s.undo) > 0 }

// CanRedo tells whether a change that was taken back can be made again.
func (s *Store) CanRedo() bool { return len(s.redo) > 0 }

// Redo makes the change again that was last taken back.
func (s *Store) Redo() {
	s.step(&s.redo, &s.undo)
}

// Undo takes the last change back.
func (s *Store) Undo() {
	s.step(&s.undo, &s.redo)
}

// step uses the last scenario of a list, which was in use before, and puts the present one
// on the other.
func (s *Store) step(from, to *[]scenario.Scenario) {
	last := len(*from) - 1
	if last < 0 {
		return
	}
	s.Cancel()
	was := (*from)[last]
	*from = (*from)[:last]
	*to = append(*to, s.Scenario)
	s.Since = nil
	clear(s.Refused)
	p, err := simulate.Prepare(&was, s.files[was.Weather], s.Prepared)
	if err != nil {
		panic("state: a scenario that was in use cannot be prepared: " + err.Error())
	}
	s.use(was, p)
}
