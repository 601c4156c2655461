package state

import (
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/dial"
	"suncask/ui/format"
)

// Type sets a field from what was typed. Text that cannot be used stays with
// its problem in Refused, and the scenario stays as it was.
func (s *Store) Type(id scenario.FieldID, text string) {
	s.Cancel() // a tap that waits for its second
	next := s.Scenario
	if p := read(&next, id, text); p != nil {
		s.Refused[id] = Refused{Typed: text, Problem: *p}
		return
	}
	s.change(id, next, text)
}

// Choose sets a choice field.
func (s *Store) Choose(id scenario.FieldID, choice int) {
	s.Cancel()
	next := s.Scenario
	scenario.FieldOf(id).Set(&next, float64(choice))
	s.change(id, next, "")
}

// Confirm marks an assumed field as right.
func (s *Store) Confirm(id scenario.FieldID) {
	s.Cancel()
	s.change(id, s.Scenario, "")
}

func (s *Store) change(id scenario.FieldID, next scenario.Scenario, typed string) {
	delete(s.Refused, id)
	next.Known = next.Known.With(id)
	if next == s.Scenario {
		return
	}
	p, err := simulate.Prepare(&next, s.Prepared)
	if err != nil {
		s.Refused[id] = Refused{Typed: typed, Problem: weatherProblem(&next, err)}
		return
	}
	s.remember()
	s.use(next, p)
}

// read sets one field of a scenario from typed text.
func read(next *scenario.Scenario, id scenario.FieldID, text string) *scenario.Problem {
	f := scenario.FieldOf(id)
	text = strings.TrimSpace(text)
	switch {
	case id == scenario.Place:
		slug, ok := FindPlace(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.UnknownPlace, Got: text}
		}
		next.Place = slug
	case id == scenario.Currency:
		next.Currency = text
	case f.Kind == scenario.Hours: // typed edge by edge, see TypeEdge
		return &scenario.Problem{Field: id, Code: scenario.WrongHours, Got: text}
	case f.Kind == scenario.Choice: // chosen, see Choose
		return &scenario.Problem{Field: id, Code: scenario.UnknownChoice, Got: text}
	case f.Unit == scenario.ClockMinute:
		minute, ok := format.ParseClock(text)
		if !ok || minute%int(f.Step) != 0 {
			return &scenario.Problem{Field: id, Code: scenario.WrongHours, Got: text}
		}
		f.Set(next, float64(minute))
	default:
		v, ok := format.Parse(text)
		if !ok {
			return &scenario.Problem{Field: id, Code: scenario.NotANumber, Got: text, Min: f.Min, Max: f.Max}
		}
		if p := f.Check(v); p != nil {
			return p
		}
		f.Set(next, f.Snap(v))
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

// FindPlace finds a built-in place by slug, by name, or by "name, country".
func FindPlace(text string) (slug string, ok bool) {
	want := strings.ToLower(strings.TrimSpace(text))
	for _, p := range climate.Places() {
		name := strings.ToLower(p.Name)
		if want == p.Slug || want == name || want == name+", "+strings.ToLower(p.Country) {
			return p.Slug, true
		}
	}
	return "", false
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
		p, _ := climate.PlaceBySlug(s.Scenario.Place)
		return p.Name + ", " + p.Country
	case id == scenario.Currency:
		return s.Scenario.Currency
	case f.Unit == scenario.ClockMinute:
		return format.Clock(int(f.Get(&s.Scenario)))
	}
	return format.Input(f.Get(&s.Scenario))
}
