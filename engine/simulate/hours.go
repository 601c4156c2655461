package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/solar"
)

// sunTimes are a place's solar noons and sunsets, by day.
type sunTimes [climate.Days]solar.Day

func sunTimesOf(p *climate.Place) *sunTimes {
	t := new(sunTimes)
	for day := range t {
		t[day] = climate.SunTimes(p, day)
	}
	return t
}

// Mark returns the minute of a day (0-364) from which an edge is counted: midnight,
// solar noon or sunset. Where the sun does not set that day, sunset is six hours
// after solar noon.
func (p *Prepared) Mark(from scenario.Anchor, day int) float64 {
	switch from {
	case scenario.SolarNoon:
		return p.times[day].Noon * 60
	case scenario.Sunset:
		return p.times[day].Set * 60
	}
	return 0
}

// SunSets tells whether the sun rises and sets on a day.
func (p *Prepared) SunSets(day int) bool { return p.times[day].Polar == 0 }

// Hours returns the first backup hours of a day, in minutes from its midnight; ok is
// false where the end does not come after the start, so that there are none. Hours by
// the clock that wrap past midnight end after 1440.
func (p *Prepared) Hours(b scenario.Backup, day int) (from, to float64, ok bool) {
	if !b.FollowsSun() {
		from = float64(b.Start)
		return from, from + float64(b.Length()), b.Length() > 0
	}
	from = p.Mark(b.StartFrom, day) + float64(b.Start)
	to = p.Mark(b.EndFrom, day) + float64(b.End)
	if b.EndFrom == scenario.Clock && b.End == 0 {
		to = scenario.DayMinutes
	}
	return from, to, to > from
}

// EmptyDays lists the days (0-364) on which hours that follow the sun are none.
func (p *Prepared) EmptyDays(b scenario.Backup) (days []int) {
	for day := range climate.Days {
		if _, _, ok := p.Hours(b, day); !ok && b.FollowsSun() {
			days = append(days, day)
		}
	}
	return days
}

// follow puts the edges of hours that follow the sun into the events of a day, which
// the hours of the days before and after may reach into, and counts those that are
// open at its midnight.
func (r *dayRun) follow(days [3]int) {
	ws := r.ws
	ws.events = append(ws.events[:0], ws.still...)
	r.open0 = r.stillOpen
	for i, day := range days {
		from, to, ok := r.p.Hours(r.hours, day)
		if !ok {
			continue
		}
		shift := float64(i-1) * scenario.DayMinutes
		from, to = math.Max(0, from+shift), math.Min(scenario.DayMinutes, to+shift)
		if to <= from {
			continue
		}
		if from == 0 {
			r.open0++
		} else {
			ws.insert(r.p.timed(event{at: from * 60, kind: windowEdge, i: 1}))
		}
		if to < scenario.DayMinutes {
			ws.insert(r.p.timed(event{at: to * 60, kind: windowEdge, i: -1}))
		}
	}
}

// onDay makes a run ready for a day of the year.
func (r *dayRun) onDay(day int) {
	s := &r.p.Scenario
	r.away, r.weekly = isAway(s, day), weekly(s, day)
	r.prices = r.p.bill.on(day)
	r.room(day)
	if r.hours.FollowsSun() {
		r.follow([3]int{(day + climate.Days - 1) % climate.Days, day, (day + 1) % climate.Days})
	}
}

// always makes a run ready for one day, a weekday, over and over.
func (r *dayRun) always(day int) {
	r.prices = r.p.bill.prices[climate.MonthOf(day)][0]
	r.room(day)
	if r.hours.FollowsSun() {
		r.follow([3]int{day, day, day})
	}
}

// room sets the temperature about the tank.
func (r *dayRun) room(day int) {
	r.roomC = r.p.roomOn(day)
	r.ws.tank.SetRoom(r.roomC)
	r.ws.sunTank.SetRoom(r.roomC)
}

// insert puts an event into the order.
func (ws *Workspace) insert(e event) {
	ws.events = append(ws.events, e)
	for i := len(ws.events) - 1; i > 0 && e.before(&ws.events[i-1]); i-- {
		ws.events[i], ws.events[i-1] = ws.events[i-1], e
	}
}

// before tells whether an event comes before another: by time, then by kind.
func (e *event) before(o *event) bool { return e.at < o.at || e.at == o.at && e.kind < o.kind }
