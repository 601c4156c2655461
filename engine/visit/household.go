package visit

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Season is a typical day of a season at a house, as if every day were like it.
type Season struct {
	Month   int
	SunW    [24]float64 // power that could reach the element, by hour
	Minute  []float64   // instants of ReadyL
	ReadyL  []float64   // hot water ready in one go
	UseAt   []float64   // minutes at which uses begin
	BoughtJ float64     // a day
}

// Seasons are midwinter, an equinox and midsummer; south of the equator the months change places.
func Seasons(p *simulate.Prepared, ws *simulate.Workspace) (list [3]Season) {
	months := [3]int{11, 2, 5}
	if p.Weather.Place.LatDeg < 0 {
		months = [3]int{5, 8, 11}
	}
	day := new(simulate.Day)
	for i, m := range months {
		p.RunDay(p.Scenario.Backup, m, scenario.Typical, ws, day)
		s := Season{Month: m, SunW: day.SunW, BoughtJ: day.Flows.BoughtJ}
		for _, at := range day.Trace.Points {
			s.Minute, s.ReadyL = append(s.Minute, at.Minute), append(s.ReadyL, at.UsableL)
		}
		for _, u := range day.Uses {
			s.UseAt = append(s.UseAt, u.Minute)
		}
		list[i] = s
	}
	return list
}

// Ready is what is ready before the day's first use, on the days of a month (0 to 11) under a sky, L.
func Ready(p *simulate.Prepared, month int, sky scenario.Sky, ws *simulate.Workspace) (litres float64, ok bool) {
	day := new(simulate.Day)
	p.RunDay(p.Scenario.Backup, month, sky, ws, day)
	if len(day.Uses) == 0 || len(day.Trace.Points) == 0 {
		return 0, false
	}
	litres = day.Trace.Points[0].UsableL
	for _, at := range day.Trace.Points {
		if at.Minute >= day.Uses[0].Minute {
			break
		}
		litres = at.UsableL
	}
	return litres, true
}

// Setting is something that a household sets.
type Setting int8

// Settings.
const (
	SetHours Setting = iota
	SetStat
	SetSun
	SetHeatUp
	SetShower
	Settings
)

// Steps by which settings are tried.
const (
	hourMin    = 60
	statK      = 5.0
	sunK       = 10.0
	showerStep = 2.0 // minutes
)

// Effect is what a setting, moved one step, changes in a year; none where OK is false: the step
// is outside what is allowed, or there is nothing to set.
type Effect struct {
	OK       bool
	Value    float64 // of the setting then; of hours and the heat-up 0
	Cost     float64 // more, in the scenario's currency
	CoolDays int32   // more
}

// Effects are what more and less of each setting would change.
func Effects(p *simulate.Prepared, file *climate.Record, ws *simulate.Workspace) (more, less [Settings]Effect) {
	var now, then simulate.Year
	p.RunYear(p.Scenario.Backup, ws, &now)
	for setting := range Settings {
		for up, into := range map[bool]*Effect{true: &more[setting], false: &less[setting]} {
			to, value, ok := moved(&p.Scenario, setting, up)
			if !ok {
				continue
			}
			q, err := simulate.Prepare(&to, file, p)
			if err != nil {
				continue
			}
			q.RunYear(to.Backup, ws, &then)
			*into = Effect{true, value, then.Total.Cost - now.Total.Cost, then.Total.CoolDays - now.Total.CoolDays}
		}
	}
	return more, less
}

// moved is a scenario with a setting a step up or down; ok is false where that is not allowed.
func moved(s *scenario.Scenario, setting Setting, up bool) (to scenario.Scenario, value float64, ok bool) {
	to = *s
	by := 1.0
	if !up {
		by = -1
	}
	number := func(id scenario.FieldID, v float64) bool {
		f := scenario.FieldOf(id)
		value = f.Snap(v)
		if f.Check(value) != nil {
			return false
		}
		f.Set(&to, value)
		return true
	}
	switch setting {
	case SetHours:
		b := &to.Backup
		length := b.Length() + int(by)*hourMin
		if b.AllDay || b.FollowsSun() || length < 0 || length >= scenario.DayMinutes {
			return to, 0, false
		}
		b.End = (b.Start + length) % scenario.DayMinutes
	case SetStat:
		ok = number(scenario.SetC, s.SetC+by*statK)
		return to, value, ok
	case SetSun:
		ok = s.AllModules() > 0 && number(scenario.SunLimitC, s.SunLimitC+by*sunK)
		return to, value, ok
	case SetHeatUp:
		if (s.HeatUp == 1) == up {
			return to, 0, false
		}
		to.HeatUp = 1 - s.HeatUp
	case SetShower:
		ok = s.Uses == scenario.Habits && number(scenario.ShowerMinutes, s.ShowerMinutes+by*showerStep)
		return to, value, ok
	}
	to.Settle()
	return to, 0, true
}
