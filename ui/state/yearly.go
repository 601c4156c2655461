package state

import (
	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Payments are those of the system against backup all day without modules: today and at
// the end of each year.
func (s *Store) Payments() []float64 {
	v := s.Savings()
	worth, _ := v.Worth(&s.Scenario)
	return worth.Payments
}

// Needs are what the months' days ask of the grid, and what the hours can give.
func (s *Store) Needs() [12]plan.Need {
	return plan.Needs(s.Prepared, &s.Results.Year, s.Scenario.Backup)
}

// Replay is a day of the year (0 to 364), from its real midnight.
func (s *Store) Replay(day int) *simulate.Day {
	if s.replayDay != day {
		s.replay.forget()
		s.replayDay = day
	}
	return s.replay.get(&s.Scenario, func() *simulate.Day {
		d := new(simulate.Day)
		s.Prepared.Replay(s.Scenario.Backup, &s.Results.Year, day, &s.ws, d)
		return d
	})
}

// EachHour hands out the hours of the year shown.
func (s *Store) EachHour(do func(day, hour int, h *simulate.Hour)) {
	s.Prepared.EachHour(s.Scenario.Backup, &s.Results.Year, &s.ws, do)
}

// ReadyAfter is for how many minutes a tank must be heated for a first shower in the month
// shown.
func (s *Store) ReadyAfter(left simulate.Left) (minutes float64, ok bool) {
	return s.Prepared.ReadyAfter(s.ShowerL(), int(s.Scenario.Month), left, &s.ws)
}

// ShowerL is what a shower takes, L at its temperature.
func (s *Store) ShowerL() float64 { return s.Scenario.ShowerMinutes * s.Scenario.ShowerFlow }

// ColdC is the cold water of the month shown, degC.
func (s *Store) ColdC() float64 { return s.Prepared.ColdC(int(s.Scenario.Month)) }

// HeatTimes are how long grid and sun take in the month shown from cold water to the thermostat.
func (s *Store) HeatTimes() simulate.HeatTimes {
	return s.Prepared.HeatTimes(int(s.Scenario.Month), &s.ws)
}

// LatestStart is the latest start of the hours that keeps a use of the day shown warm.
func (s *Store) LatestStart(use int) (minute int, ok bool) {
	return plan.LatestStart(s.Prepared, use, &s.ws)
}

// Calibration is what the meter's reading says; ok is false without one, or for uses that
// are not from habits.
func (s *Store) Calibration() (c plan.Calibration, ok bool) {
	sc := &s.Scenario
	if sc.MeterKWh == 0 || sc.Uses != scenario.Habits {
		return c, false
	}
	r := s.calibration.get(sc, func() calibrated {
		c, err := plan.Calibrate(s.Prepared, s.File(), int(sc.Month), sc.MeterKWh, &s.ws)
		return calibrated{c, err == nil}
	})
	return r.c, r.ok
}

type calibrated struct {
	c  plan.Calibration
	ok bool
}

// TakeCalibration makes the showers those that fit the reading, as one change.
func (s *Store) TakeCalibration() {
	c, ok := s.Calibration()
	if !ok {
		return
	}
	s.Cancel()
	next := s.Scenario
	next.ShowerMinutes = c.Minutes
	s.change(scenario.ShowerMinutes, next, "")
}
