package simulate

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// BackupW is the power with which the grid heats, W: the element's at the voltage of the
// mains.
func (p *Prepared) BackupW() float64 { return p.backupW }

// Left is the water in a tank from which somebody waits for a shower.
type Left struct {
	TempC float64 // throughout, degC; cold water is the least
	UsedL float64 // litres of shower water drawn since the grid had heated it to its thermostat; 0 where TempC is known
}

// ReadyAfter is for how many minutes the grid must heat a tank in a month (0 to 11) until so
// many litres are ready in one go; ok is false where a day is not enough. It counts from what
// is left and no use or sun in between.
func (p *Prepared) ReadyAfter(litres float64, month int, left Left, ws *Workspace) (minutes float64, ok bool) {
	coldC := p.skyColdC[month]
	r := p.start(scenario.Backup{}, ws)
	p.fill(ws, max(coldC, left.TempC))
	r.room(climate.AverageDay(month))
	heat := func() float64 { return ws.tank.Heat(60, p.backupW, &p.backupElement, &r.backup) }
	if left.UsedL > 0 {
		for heat() > 30*p.backupW && minutes < scenario.DayMinutes {
			minutes++
		}
		minutes = 0
		var got tank.Served
		ws.tank.Draw(&tank.Draw{Litres: left.UsedL, UseC: p.Scenario.ShowerC, ToleranceK: ToleranceK}, coldC, &got)
	}
	for minutes < scenario.DayMinutes {
		if r.usable(coldC) >= litres {
			return minutes, true
		}
		heat()
		minutes++
	}
	return 0, false
}

// ColdC is the cold water of a month (0 to 11), degC.
func (p *Prepared) ColdC(month int) float64 { return p.skyColdC[month] }

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
