// Package words holds every sentence of the page, one file per language. The
// engine speaks in codes with arguments; here they become text.
package words

import (
	"fmt"
	"math"
	"strings"

	"suncask/engine/care"
	"suncask/engine/climate/hourly"
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/format"
)

// Catalogue is one language; the lists are indexed by what they name.
type Catalogue struct {
	Fields   []FieldText
	Units    []string
	Problems []string // see Problem for the arguments
	Findings []string
	Changes  []string // of plan.Change
	Months   []string // twelve
	Page     []string
	Visit    []string // of an installer's visit, after those of the page
	Lesson   []string // around a class's questions, after those
	Cards    []Card   // the questions
	Files    []string // see FileError for the arguments
	Notes    []string // one argument: a number
}

// FieldText names a field, its choices and what it means.
type FieldText struct {
	Name    string
	Help    string
	Choices []string
}

// Text returns one text of the page, with its arguments filled in.
func (c *Catalogue) Text(k Key, args ...any) string {
	text := ""
	switch {
	case k < visitKeys:
		text = c.Page[k]
	case k < lessonKeys:
		text = c.Visit[k-visitKeys]
	default:
		text = c.Lesson[k-lessonKeys]
	}
	if len(args) == 0 {
		return text
	}
	return fmt.Sprintf(text, args...)
}

// HasVisit tells whether the texts of a visit are here: they are fetched when they are needed.
func (c *Catalogue) HasVisit() bool { return len(c.Visit) == int(lessonKeys-visitKeys) }

// HasLesson tells the same of those of a lesson.
func (c *Catalogue) HasLesson() bool { return len(c.Lesson) == int(keyCount-lessonKeys) }

// Problem says what was refused, what was given and what is allowed.
func (c *Catalogue) Problem(p scenario.Problem) string {
	name, unit := "", ""
	if p.Field != scenario.NoField {
		name = c.Fields[p.Field].Name
		f := scenario.FieldOf(p.Field)
		if u := c.Units[f.Unit]; u != "" {
			unit = format.Space + u
		}
		if p.Code == scenario.UnknownChoice {
			unit = list(f.Choices)
		}
	}
	month := ""
	if (p.Code == scenario.WeatherRefused || p.Code == scenario.MonthTooBright) && p.Min >= 0 && p.Min < 12 {
		month = c.Months[int(p.Min)]
	}
	most := p.Max
	if p.Code == scenario.MonthTooBright {
		most = math.Floor(100*most) / 100 // it was computed, not chosen
	}
	from, to := format.Input(p.Min), format.Input(most)
	if p.Field != scenario.NoField && (p.Code == scenario.OutOfRange || p.Code == scenario.NotANumber) {
		from, to = format.Range(scenario.FieldOf(p.Field))
	}
	return fmt.Sprintf(c.Problems[p.Code], name, p.Got, from, to, unit, month)
}

func list(names []string) string {
	s := ""
	for i, n := range names {
		if i > 0 {
			s += ", "
		}
		s += n
	}
	return s
}

// argUnits are the units of findings' arguments that are not shown alike everywhere.
var argUnits = [...][3]scenario.Unit{
	care.StoredBelow60:      {scenario.Celsius, scenario.Celsius},
	care.StoredScalds:       {scenario.Celsius, scenario.Celsius},
	care.ValveTooHot:        {scenario.Celsius, scenario.Celsius},
	care.ValveStarves:       {scenario.Celsius, scenario.Celsius},
	care.BelowElement:       {scenario.Litre, scenario.Litre},
	care.ReadingsImpossible: {scenario.Celsius, scenario.Celsius, scenario.Celsius},
	care.FailedClosed:       {scenario.Celsius, scenario.Celsius},
	care.Expands:            {scenario.Litre, scenario.Celsius, scenario.Celsius},
	care.AboveLowVoltage:    {scenario.NoUnit, scenario.NoUnit, scenario.Celsius},
	care.StoredScaldsAtOnce: {scenario.Celsius, scenario.Celsius},
	care.StuckBoils:         {scenario.Celsius},
	care.GridStuck:          {scenario.NoUnit, scenario.Celsius},
	care.CutOutNear:         {scenario.Celsius, scenario.Celsius},
	care.LabelImpossible:    {scenario.Litre, scenario.Litre, scenario.Litre},
	care.BelowUpper:         {scenario.Litre, scenario.Litre},
	care.StoredOverTap:      {scenario.Celsius, scenario.Celsius},
	care.ExpandsVessel:      {scenario.Litre, scenario.Celsius, scenario.Celsius},
	care.ExpandsValve:       {scenario.Litre, scenario.Celsius, scenario.Celsius},
	care.ExpandsVent:        {scenario.Litre, scenario.Celsius, scenario.Celsius},
	care.ExpandsBack:        {scenario.Litre, scenario.Celsius, scenario.Celsius},
	care.VesselSmall:        {scenario.Litre, scenario.Litre, scenario.Litre},
	care.VesselNeeds:        {scenario.Litre, scenario.Bar, scenario.Bar},
	care.SupplyNearRelief:   {scenario.Bar, scenario.Bar},
	care.SupplyHigh:         {scenario.Bar, scenario.Bar},
	care.SupplyLow:          {scenario.Bar, scenario.Bar},
}

// argRounds are the directions in which findings' arguments are rounded: what something
// must bear at least up, what it may at most down, so that no rounding hides a danger.
var argRounds = [...][3]func(float64) float64{
	care.StoredScalds:          {math.Ceil, nil, math.Floor},
	care.StoredScaldsAtOnce:    {math.Ceil},
	care.FailedClosed:          {math.Ceil},
	care.Expands:               {math.Ceil, math.Ceil, math.Floor},
	care.AboveLowVoltage:       {math.Ceil, math.Floor, math.Floor},
	care.ConverterOverVoltage:  {math.Ceil, math.Floor},
	care.ConverterUnderVoltage: {math.Floor, math.Ceil},
	care.ElementOverVoltage:    {math.Ceil, math.Floor},
	care.ElementOverload:       {math.Ceil, math.Floor},
	care.ThermostatDC:          {math.Ceil, math.Ceil},
	care.StringFuses:           {math.Ceil, math.Floor},
	care.CableDrop:             {math.Ceil, math.Floor},
	care.IsolatorRating:        {math.Ceil, math.Ceil},
	care.InsulationLow:         {math.Floor, math.Ceil},
	care.GridStuck:             {math.Floor},
	care.CableCurrent:          {math.Ceil, math.Floor},
	care.StageOverload:         {math.Ceil, math.Floor},
	care.GridOverload:          {math.Ceil, math.Floor, math.Ceil},
	care.GridBreaker:           {math.Ceil, math.Floor},
	care.GridBreakerNear:       {math.Ceil, math.Floor},
	care.GridCableCurrent:      {math.Ceil, math.Floor},
	care.GridCableGuard:        {math.Ceil, math.Floor},
	care.ModuleSystemVoltage:   {math.Ceil, math.Floor},
	care.ModuleSystemUnknown:   {math.Ceil},
	care.NoFuseFits:            {math.Ceil, math.Floor},
	care.ModuleFuseUnknown:     {math.Ceil},
	care.ConverterShort:        {math.Ceil, math.Floor},
	care.ConverterCurrent:      {math.Ceil, math.Floor},
	care.StoredOverTap:         {math.Ceil},
	care.ExpandsVessel:         {math.Ceil, math.Ceil, math.Floor},
	care.ExpandsValve:          {math.Ceil, math.Ceil, math.Floor},
	care.ExpandsVent:           {math.Ceil, math.Ceil, math.Floor},
	care.ExpandsBack:           {math.Ceil, math.Ceil, math.Floor},
	care.VesselSmall:           {math.Floor, math.Ceil, math.Ceil},
	care.VesselNeeds:           {math.Ceil, math.Ceil, math.Floor},
	care.SupplyNearRelief:      {math.Ceil, math.Floor},
	care.SupplyHigh:            {math.Ceil, math.Floor},
	care.SupplyLow:             {math.Floor, math.Ceil},
	care.CloudEdge:             {math.Ceil, math.Floor},
	care.Soiled:                {math.Ceil, math.Floor},
}

// rounded rounds to decimals in a direction, nil for the nearest.
func rounded(v float64, decimals int, to func(float64) float64) float64 {
	if to == nil || math.IsInf(v, 0) {
		return v
	}
	scale := math.Pow10(decimals)
	if nearest := math.Round(v*scale) / scale; math.Abs(v-nearest) < 1e-9*math.Abs(v) {
		return nearest
	}
	return to(v*scale) / scale
}

// Finding says what a finding means, with its numbers.
func (c *Catalogue) Finding(f care.Finding) string {
	var args [len(f.Args)]any
	for i, v := range f.Args {
		if int(f.Code) < len(argUnits) {
			v = format.Shown(argUnits[f.Code][i], v)
		}
		decimals := 0
		switch a := math.Abs(v); {
		case a == math.Round(a):
		case a < 1:
			decimals = format.TwoDigits(v)
		case a < 10:
			decimals = 1
		}
		if int(f.Code) < len(argRounds) {
			v = rounded(v, decimals, argRounds[f.Code][i])
		}
		args[i] = format.Number(v, decimals)
		if math.IsInf(v, 0) {
			args[i] = "\u221e"
		}
	}
	return fmt.Sprintf(c.Findings[f.Code]+"%.0[1]s%.0[2]s%.0[3]s", args[:]...)
}

// FileError says why a weather file was refused, and where.
func (c *Catalogue) FileError(e *hourly.Error) string {
	where := ""
	if e.Line > 0 {
		where = c.Text(AtLine, e.Line)
		if e.Column > 0 {
			where += c.Text(AtColumn, e.Column)
		}
		if e.Name != "" {
			where += " (" + e.Name + ")"
		}
		where += ": "
	}
	return where + fmt.Sprintf(c.Files[e.Code], e.Got, e.Want)
}

// FileNote says what was done to a weather file.
func (c *Catalogue) FileNote(n hourly.Note) string { return fmt.Sprintf(c.Notes[n.Code], n.N) }

// Change names a change. Arguments: backup hours, litres of rescue, rule, flow, degC of
// the sun's limit and of the thermostat, modules, litres of the tank, second hours,
// minutes of a shower, when, times.
func (c *Catalogue) Change(change plan.Change, args ...any) string {
	text := c.Changes[change]
	if !strings.Contains(text, "%") {
		return text
	}
	return fmt.Sprintf(text, args...)
}
