package simulate

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// BackupW is the power with which the grid heats, W: the element's at the voltage of the
// mains.
func (p *Prepared) BackupW() float64 { return p.backupW }

// ReadyAfter is for how many minutes the grid must heat a tank full of cold water of a
// month (0 to 11) until so many litres are ready in one go; ok is false where a day is
// not enough.
func (p *Prepared) ReadyAfter(litres float64, month int, ws *Workspace) (minutes float64, ok bool) {
	coldC := p.skyColdC[month]
	r := p.start(scenario.Backup{}, ws)
	p.fill(ws, coldC)
	r.room(climate.AverageDay(month))
	for minutes < scenario.DayMinutes {
		if r.usable(coldC) >= litres {
			return minutes, true
		}
		ws.tank.Heat(60, p.backupW, &p.backupElement, &r.backup)
		minutes++
	}
	return 0, false
}

// HeatingMinutes is how long the grid may heat on a day: its hours less the outage.
func (p *Prepared) HeatingMinutes(b scenario.Backup, day int) (minutes float64) {
	from, to, _ := p.Hours(b, day)
	if b.AllDay {
		from, to = 0, scenario.DayMinutes
	}
	s := &p.Scenario
	const step = 5
	for at := 0; at < scenario.DayMinutes; at += step {
		middle := float64(at) + step/2.0
		first := from < middle && middle < to || middle+scenario.DayMinutes < to
		if (first || inSpan(middle, b.Second)) && !inSpan(middle, scenario.Span{Start: s.OutFrom, End: s.OutTo}) {
			minutes += step
		}
	}
	return minutes
}

// inSpan tells whether a minute lies in a part of the day.
func inSpan(minute float64, s scenario.Span) bool {
	from, to := float64(s.Start), float64(s.End)
	if from <= to {
		return minute >= from && minute < to
	}
	return minute >= from || minute < to
}
