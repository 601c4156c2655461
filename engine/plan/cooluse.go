package plan

import (
	"math"
	"slices"

	"suncask/engine/climate"
	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// CoolUse is a use that ran cool: on a day of the year (0 to 364), or where Day is negative
// on the scenario's month and sky, over and over. Use counts the day's uses from 0.
type CoolUse struct{ Day, Use int }

// FixesFor are the changes that keep a use from running cool without leaving more uses
// cool in the year: for each kind the one that is worth most, each a simulated year and
// day, none that brings or worsens a finding that stops. They are in the order of Fixes.
func FixesFor(p *simulate.Prepared, file *climate.Record, at CoolUse, ws *simulate.Workspace) []Fix {
	s := &p.Scenario
	y, day := new(simulate.Year), new(simulate.Day)
	p.RunYear(s.Backup, ws, y)
	at.run(p, y, ws, day)
	if at.Use < 0 || at.Use >= len(day.Uses) || !day.Uses[at.Use].RanCool {
		return nil
	}
	was := day.Uses[at.Use].Use
	number := ordinal(day.Uses, at.Use)
	year := y.Total
	presses, cost, ok := p.BoostUse(s.Backup, day, at.Use, ws)
	list := choose(p, file, ws, candidatesFor(s, was), math.MaxInt32, func(now *simulate.Flows, f *Fix, q *simulate.Prepared, y *simulate.Year) bool {
		if f.Year.CoolUses > now.CoolUses {
			return false
		}
		at.run(q, y, ws, day)
		if f.Change == MovedUse { // which shower it is now does not matter
			return !slices.ContainsFunc(day.Uses, func(u simulate.UseResult) bool { return u.RanCool })
		}
		i := find(day.Uses, was, number)
		return i >= 0 && !day.Uses[i].RanCool
	})
	if ok {
		year.Cost += cost
		year.CoolUses--
		list = append(list, Fix{Change: BoostPress, Field: scenario.NoField, To: *s, Year: year, Saves: -cost, Worth: -cost, Presses: presses})
		order(list, math.MaxInt32)
	}
	return list
}

// run replays the day.
func (at CoolUse) run(p *simulate.Prepared, y *simulate.Year, ws *simulate.Workspace, day *simulate.Day) {
	s := &p.Scenario
	if at.Day < 0 {
		p.RunDay(s.Backup, int(s.Month), s.Sky, ws, day)
		return
	}
	p.Replay(s.Backup, y, at.Day, ws, day)
}

// alike tells whether two uses are of one kind; their litres and minute may differ.
func alike(a, b *draw.Use) bool { return a.Kind == b.Kind && a.TempC == b.TempC }

// ordinal is how many uses like it a day has before a use.
func ordinal(uses []simulate.UseResult, use int) (n int) {
	for i := range uses[:use] {
		if alike(&uses[i].Use, &uses[use].Use) {
			n++
		}
	}
	return n
}

// find is the use like another that comes after so many of them; -1 if there is none.
func find(uses []simulate.UseResult, like draw.Use, after int) int {
	for i := range uses {
		if alike(&uses[i].Use, &like) {
			if after == 0 {
				return i
			}
			after--
		}
	}
	return -1
}

// candidatesFor are those of candidates and what helps one use.
func candidatesFor(s *scenario.Scenario, use draw.Use) []Fix {
	list := candidates(s)
	if b := s.Backup; b.Second.Start == b.Second.End && !b.AllDay {
		end := int(use.Minute/5) * 5
		for _, minutes := range []int{30, 60, 120} {
			list = tried(list, s, Fix{Change: SecondWindow, Field: scenario.SecondHours, changed: float64(minutes)}, func(t *scenario.Scenario) {
				t.Backup.Second = scenario.Span{Start: wrap(end - minutes), End: wrap(end)}
			})
		}
	}
	if s.Uses != scenario.Habits {
		return list
	}
	for when := scenario.Mornings; when <= scenario.Both; when++ {
		list = tried(list, s, Fix{Change: MovedUse, Field: scenario.Showers}, func(t *scenario.Scenario) { t.When = when })
	}
	for _, less := range []float64{1, 2, 3} {
		if s.ShowerMinutes-less >= leastShower {
			list = tried(list, s, Fix{Change: ShorterUse, Field: scenario.ShowerMinutes, changed: less}, func(t *scenario.Scenario) { t.ShowerMinutes -= less })
		}
	}
	return list
}

// leastShower is how short a shower may become, minutes.
const leastShower = 3.0
