package state

import (
	"strings"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
)

// Type sets a field from what was typed. Text that cannot be used stays with
// its problem in Refused, and the scenario stays as it was.
func (s *Store) Type(id scenario.FieldID, text string) {
	s.Cancel() // a tap that waits for its second
	if id == scenario.Place {
		s.typePlace(text)
		return
	}
	next := s.Scenario
	if p := read(&next, id, text); p != nil {
		s.Refused[id] = Refused{Typed: text, Problem: *p}
		return
	}
	s.change(id, next, text)
}

// Set sets a number, which must be one that its field accepts.
func (s *Store) Set(id scenario.FieldID, v float64) {
	s.Cancel()
	next := s.Scenario
	scenario.FieldOf(id).Set(&next, v)
	s.change(id, next, "")
}

// Choose sets a choice field.
func (s *Store) Choose(id scenario.FieldID, choice int) {
	s.Cancel()
	if s.real > 0 && (id == scenario.Month || id == scenario.SkyKind) {
		s.ShowDay(-1)
	}
	next := s.Scenario
	scenario.FieldOf(id).Set(&next, float64(choice))
	if id == scenario.Month || id == scenario.SkyKind { // a day is both
		next.Known = next.Known.With(scenario.Month, scenario.SkyKind)
	}
	s.change(id, next, "")
}

// Confirm marks assumed fields as right; nothing that is shown changes.
func (s *Store) Confirm(ids ...scenario.FieldID) {
	s.Cancel()
	next := s.Scenario
	next.Known = next.Known.With(ids...)
	since := s.Since
	s.change(ids[0], next, "")
	s.Since = since
}

// change makes another scenario the present one, with undo, and marks the field that
// was changed as confirmed.
func (s *Store) change(id scenario.FieldID, next scenario.Scenario, typed string) {
	delete(s.Refused, id)
	next.Known = next.Known.With(id)
	next.Settle()
	s.replace(id, next, typed)
}

// replace makes another scenario the present one, with undo. Where its weather cannot
// be, the field is refused and the scenario stays.
func (s *Store) replace(id scenario.FieldID, next scenario.Scenario, typed string) {
	if next == s.Scenario {
		return
	}
	p, err := simulate.Prepare(&next, s.files[next.Weather], s.Prepared)
	if err != nil {
		problem := prepareProblem(&next, err)
		if problem.Code == scenario.MonthTooBright {
			problem.Got = typed
		}
		s.Refused[id] = Refused{Typed: typed, Problem: problem}
		return
	}
	if !s.goesOn(id) {
		s.remember()
	}
	s.note(id, &s.Scenario, &s.Results.Year.Total)
	s.use(next, p)
}

// read sets one field of a scenario from typed text.
func read(next *scenario.Scenario, id scenario.FieldID, text string) *scenario.Problem {
	f := scenario.FieldOf(id)
	text = strings.TrimSpace(text)
	switch {
	case id == scenario.Place: // with its clock and name, see TakePlace
		return &scenario.Problem{Field: id, Code: scenario.UnknownPlace, Got: text}
	case id == scenario.Town, id == scenario.Country: // chosen with the place, see TakePlace
		return &scenario.Problem{Field: id, Code: scenario.WrongName, Got: text, Max: scenario.MostName}
	case id == scenario.SummerTime:
		next.Summer = summerText(text)
	case id == scenario.Horizon:
		list, ok := scenario.ReadHorizon(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.WrongHorizon, Got: text, Max: scenario.MostHorizon}
		}
		next.Skyline = scenario.WriteHorizon(list)
	case id == scenario.Stages:
		list, ok := scenario.ReadStages(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.WrongStages, Got: text, Min: scenario.LeastStageW, Max: scenario.MostStageW}
		}
		next.Stages = scenario.WriteStages(list)
	case id == scenario.BandPrices:
		list, ok := scenario.ReadBands(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.WrongBands, Got: text, Min: scenario.FieldOf(scenario.Price).Max, Max: scenario.MostBands}
		}
		next.Bands = scenario.WriteBands(list)
	case id == scenario.BlockPrices:
		list, ok := scenario.ReadBlocks(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.WrongBlocks, Got: text, Min: scenario.FieldOf(scenario.Price).Max, Max: scenario.MostBlocks}
		}
		next.Blocks = scenario.WriteBlocks(list)
	case id == scenario.Currency:
		next.Currency = text
	case f.Kind == scenario.Hours: // typed edge by edge, see TypeEdge
		return &scenario.Problem{Field: id, Code: scenario.WrongHours, Got: text}
	case f.Kind == scenario.Choice: // chosen, see Choose
		return &scenario.Problem{Field: id, Code: scenario.UnknownChoice, Got: text}
	case f.Kind == scenario.Months: // typed month by month, see TypeMonth
		return &scenario.Problem{Field: id, Code: scenario.WrongMonths, Got: text}
	case id == scenario.WeatherFile: // opened, see TakeFile
		return &scenario.Problem{Field: id, Code: scenario.WrongWeather, Got: text}
	case f.Unit == scenario.ClockMinute:
		minute, ok := format.ParseClock(text)
		if !ok || minute%int(f.Step) != 0 {
			return &scenario.Problem{Field: id, Code: scenario.WrongHours, Got: text}
		}
		f.Set(next, float64(minute))
	default:
		v, p := format.Taken(f, text)
		if p != nil {
			return p
		}
		f.Set(next, v)
	}
	for _, p := range next.Problems() {
		if p.Field == id {
			return &p
		}
	}
	return nil
}

// TypeEdge sets one edge of a window from a typed clock time.
func (s *Store) TypeEdge(window int, part dial.Part, text string) {
	minute, ok := format.ParseClock(text)
	if !ok || minute%Fine != 0 {
		s.Refused[hoursField(window)] = Refused{Typed: text, Problem: scenario.Problem{
			Field: hoursField(window), Code: scenario.WrongHours, Got: text}}
		return
	}
	s.Cancel()
	s.SetWindow(window, s.Window(window).Put(part, minute))
}

// summerText brings typed dates to the form of links: digits only, a dash between.
func summerText(text string) string {
	digits := strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return r
		}
		return -1
	}, text)
	switch {
	case len(digits) == 8:
		return digits[:4] + "-" + digits[4:]
	case digits == "" && (text == "" || strings.EqualFold(text, scenario.NoSummer)):
		return scenario.NoSummer
	}
	return text
}

// Text returns a field's value as its box shows it: what was typed if that was
// refused.
func (s *Store) Text(id scenario.FieldID) string {
	if r, ok := s.Refused[id]; ok {
		return r.Typed
	}
	f := scenario.FieldOf(id)
	switch {
	case id == scenario.Place:
		return s.placeText()
	case id == scenario.Town:
		return s.Scenario.Town
	case id == scenario.Country:
		return s.Scenario.Country
	case id == scenario.SummerTime:
		return s.Scenario.Summer
	case id == scenario.Horizon:
		return strings.ReplaceAll(s.Scenario.Skyline, ",", ", ")
	case id == scenario.Stages:
		return s.Scenario.Stages
	case id == scenario.BandPrices:
		return strings.ReplaceAll(s.Scenario.Bands, ",", ", ")
	case id == scenario.BlockPrices:
		return strings.ReplaceAll(s.Scenario.Blocks, ",", ", ")
	case id == scenario.Currency:
		return s.Scenario.Currency
	case id == scenario.Town:
		return s.Scenario.Town
	case id == scenario.Country:
		return s.Scenario.Country
	case f.Unit == scenario.ClockMinute:
		return format.Clock(int(f.Get(&s.Scenario)))
	}
	return format.Value(f, f.Get(&s.Scenario))
}
