// Package plan turns simulated years into advice.
package plan

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// stepMinutes is the grid on which hours are tried.
const stepMinutes = 15

const places = scenario.DayMinutes / stepMinutes

// costSlack is the yearly cost below which two choices count as equal.
const costSlack = 1e-9

// Better looks for cheaper hours of the first backup window, one simulated year
// at a time: it moves the start, the end and both together over the whole day,
// takes the cheapest that brings no more days with a cool use than now, and
// starts over until nothing gets better. It finds better hours, not always the
// best: it does not try all pairs. Hours that follow the sun are only where it
// starts; it tries hours by the clock.
type Better struct {
	p     *simulate.Prepared
	clock scenario.Span // where hours that follow the sun lie in the middle of March
	limit int32         // days with a cool use that are accepted

	at       choice // the best so far
	sweep    choice // the best of the present sweep
	move     int    // 0 start, 1 end, 2 both
	place    int
	improved bool

	ws   simulate.Workspace
	year simulate.Year
	runs int
}

type choice struct {
	backup scenario.Backup
	cost   float64
	length int
}

// NewBetter starts the search for a prepared house from those hours.
func NewBetter(p *simulate.Prepared, from scenario.Backup) *Better {
	b := &Better{p: p}
	b.at.backup = from
	if start, end, ok := p.Hours(from, climate.AverageDay(2)); ok {
		b.clock = scenario.Span{Start: onGrid(start), End: onGrid(end)}
	}
	b.run(&b.at)
	b.limit = b.year.Total.CoolDays
	b.sweep = b.at
	return b
}

// onGrid is a minute as a clock time of the grid.
func onGrid(minute float64) int {
	steps := int(math.Round(minute / stepMinutes))
	return (steps%places + places) % places * stepMinutes
}

func (b *Better) run(c *choice) {
	b.p.RunYear(c.backup, &b.ws, &b.year)
	b.runs++
	c.cost = b.year.Total.Cost
	c.length = c.backup.Length()
}

// Step simulates one year; it returns false when the search is over.
func (b *Better) Step() bool {
	if b.move == 3 {
		return false
	}
	c := choice{backup: b.at.backup}
	c.backup.AllDay = false
	if c.backup.FollowsSun() {
		c.backup = scenario.Backup{Start: b.clock.Start, End: b.clock.End, Second: c.backup.Second}
	}
	minute := b.place * stepMinutes
	switch b.move {
	case 0:
		c.backup.Start = minute
	case 1:
		c.backup.End = minute
	case 2:
		c.backup.Start = (c.backup.Start + minute) % scenario.DayMinutes
		c.backup.End = (c.backup.End + minute) % scenario.DayMinutes
	}
	b.run(&c)
	if b.year.Total.CoolDays <= b.limit && c.betterThan(b.sweep) {
		b.sweep = c
	}
	if b.place++; b.place == places {
		b.endSweep()
	}
	return true
}

func (b *Better) endSweep() {
	if b.sweep.betterThan(b.at) {
		b.at, b.improved = b.sweep, true
	}
	b.place = 0
	if b.move++; b.move == 3 && b.improved {
		b.move, b.improved = 0, false
	}
}

// betterThan prefers the lower cost, and at equal cost the shorter window.
func (c choice) betterThan(d choice) bool {
	if c.cost < d.cost-costSlack {
		return true
	}
	return c.cost <= d.cost+costSlack && c.length < d.length
}

// Result returns the hours found and their yearly cost; those of the start if
// none are better. Runs is how many years were simulated.
func (b *Better) Result() (backup scenario.Backup, cost float64) { return b.at.backup, b.at.cost }

// Runs is how many years were simulated so far.
func (b *Better) Runs() int { return b.runs }
