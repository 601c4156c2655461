package state

import (
	"strings"

	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/format"
)

// TakeFile makes a weather file that was read the scenario's weather, at its own
// place and on its own clock, and brings light that is off that clock back to it only
// if asked (Shift). What was before is an undo away.
func (s *Store) TakeFile(r *hourly.Result) {
	s.Cancel()
	next := s.Scenario
	moveTo(&next, r.Record.PointName())
	next.Weather, next.ShiftMin = r.Record.Key(), 0
	next.Known = next.Known.With(scenario.Place).With(scenario.WeatherFile)
	s.files[next.Weather], s.Read = r.Record, r
	s.change(scenario.WeatherFile, next, "")
}

// Keep opens a weather file that this device kept, for a scenario that names it.
func (s *Store) Keep(r *climate.Record) {
	if r.Key() != s.Scenario.Weather || s.Prepared.Weather.Measured {
		return
	}
	s.Cancel()
	s.files[r.Key()], s.Read = r, nil
	if p, err := simulate.Prepare(&s.Scenario, r, s.Prepared); err == nil {
		s.use(s.Scenario, p)
	}
}

// DropFile goes back to the built-in climate.
func (s *Store) DropFile() {
	s.Cancel()
	next := s.Scenario
	next.Weather, next.ShiftMin = "", 0
	next.Known = next.Known.Without(scenario.WeatherFile, scenario.ShiftMin)
	s.replace(scenario.Place, next, s.Text(scenario.Place))
}

// ShiftOffer is by how many minutes the light of the file should be moved later to
// stand on its clock; 0 where nothing is to be offered.
func (s *Store) ShiftOffer() float64 {
	if s.Read == nil || s.Prepared.FileMissing || s.Scenario.Weather == "" || s.Scenario.ShiftMin != 0 {
		return 0
	}
	if off := s.Read.ClockMin; off > hourly.OffClockMin || off < -hourly.OffClockMin {
		return scenario.FieldOf(scenario.ShiftMin).Snap(-off)
	}
	return 0
}

// Shift takes the offer.
func (s *Store) Shift() {
	next := s.Scenario
	next.ShiftMin = s.ShiftOffer()
	s.Cancel()
	s.change(scenario.ShiftMin, next, "")
}

// ColdMonths are the monthly means of the cold water, degC.
func (s *Store) ColdMonths() [12]float64 { return s.cold }

// MonthText is a month's value of a field of kind Months, or what was typed and
// refused, and whether somebody overtyped it.
func (s *Store) MonthText(id scenario.FieldID, month int) (text string, known bool) {
	if r, ok := s.Refused[id]; ok && s.refusedMonth == month {
		return r.Typed, false
	}
	p := &s.Prepared.Weather.Place
	v := p.GHI[month]
	switch id {
	case scenario.MonthTempC:
		v = p.TempC[month]
	case scenario.MonthColdC:
		v = s.cold[month]
	}
	f := scenario.FieldOf(id)
	return format.Value(f, f.Snap(v)), s.Scenario.MonthsOf(id).Known[month]
}

// TypeMonth overtypes a month's value; an empty text takes the place's again.
func (s *Store) TypeMonth(id scenario.FieldID, month int, text string) {
	s.Cancel()
	s.refusedMonth = month
	next := s.Scenario
	m, f := next.MonthsOf(id), scenario.FieldOf(id)
	if text = strings.TrimSpace(text); text == "" {
		m.Known[month], m.Value[month] = false, 0
	} else {
		v, p := format.Taken(f, text)
		if p != nil {
			s.Refused[id] = Refused{Typed: text, Problem: *p}
			return
		}
		m.Known[month], m.Value[month] = true, v
	}
	delete(s.Refused, id)
	if m.Known == [12]bool{} {
		next.Known = next.Known.Without(id)
		s.replace(scenario.Place, next, s.Text(scenario.Place))
		return
	}
	s.change(id, next, text)
}

// Plane adds modules to a further plane of the roof, or takes them away.
func (s *Store) Plane(i, modules int) {
	s.Cancel()
	next := s.Scenario
	next.More[i].Modules = modules
	s.change(scenario.Modules2+scenario.FieldID(3*i), next, "")
}
