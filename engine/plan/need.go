package plan

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Need is what a day of a month asks of the grid, and what the hours can give, J.
type Need struct{ NeededJ, CanJ float64 }

// Needs are the months' days on average: what uses and losses took, and lacked, beyond the
// sun; and the element's power on the mains through the backup hours.
func Needs(p *simulate.Prepared, y *simulate.Year, b scenario.Backup) (list [12]Need) {
	day := 0
	for m := range list {
		f, first := &y.Month[m], day
		seconds := 0.0
		for ; day < first+climate.DaysIn[m]; day++ {
			seconds += p.HeatingMinutes(b, day) * 60
		}
		n := float64(climate.DaysIn[m])
		list[m] = Need{max(0, f.DeliveredJ+f.PipeJ+f.LostJ+f.ShortfallJ-f.SunJ) / n, seconds * p.BackupW() / n}
	}
	return list
}
