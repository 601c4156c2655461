package plan

import "suncask/engine/simulate"

// LatestStart is the latest start of the backup hours, with their present end, under which
// a use of the scenario's day (counted from 0) does not run cool, as if every day were like
// that one; a quarter of an hour apart, the present start at the earliest. ok is false
// where the use runs cool as it is, or the hours follow the sun.
func LatestStart(p *simulate.Prepared, use int, ws *simulate.Workspace) (minute int, ok bool) {
	s := &p.Scenario
	b, day := s.Backup, new(simulate.Day)
	if b.FollowsSun() || b.AllDay {
		return 0, false
	}
	for left := b.Length(); left >= 0; left -= StepMinutes {
		later := b
		later.Start = wrap(b.End - left)
		p.RunDay(later, int(s.Month), s.Sky, ws, day)
		if use >= len(day.Uses) || day.Uses[use].RanCool {
			break
		}
		minute, ok = later.Start, true
	}
	return minute, ok
}
