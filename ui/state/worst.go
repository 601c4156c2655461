package state

import (
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// ShowWorst shows a day on which water runs cool, where more of the year's uses do than are
// accepted and nobody has chosen a day: the month with most of them, under the sky that brings
// one, a typical one first; else the year's worst day.
func (s *Store) ShowWorst() {
	y := &s.Results.Year
	chosen := s.real > 0 || s.Scenario.Known.Has(scenario.Month) || s.Scenario.Known.Has(scenario.SkyKind)
	if chosen || s.Entry == Lesson || int(y.Total.CoolUses) <= s.Scenario.AcceptUses {
		return
	}
	month := int8(0)
	for m := range y.Month {
		if y.Month[m].CoolUses > y.Month[month].CoolUses {
			month = int8(m)
		}
	}
	var day simulate.Day
	for _, sky := range [...]scenario.Sky{scenario.Typical, scenario.Dull, scenario.Bright} {
		if s.Prepared.RunDay(s.Scenario.Backup, int(month), sky, &s.ws, &day); day.Flows.CoolUses > 0 {
			s.showMonth(month, sky)
			return
		}
	}
	worst := 0
	for d := range y.Day {
		if y.Day[d].CoolUses > y.Day[worst].CoolUses {
			worst = d
		}
	}
	s.ShowDay(worst)
}
