package view

import (
	"strconv"

	"suncask/ui/band"
	"suncask/ui/state"
	"suncask/ui/words"
)

// bandIDs are the ids of the band's states.
var bandIDs = [band.States]string{band.Sun: "band-sun", band.Grid: "band-grid", band.HotEnough: "band-enough"}

var bandWords = [band.States]words.Key{band.Sun: words.BandSun, band.Grid: words.BandGrid, band.HotEnough: words.BandEnough}

// BandIDs are those of the band's states, by which the templates name its parts.
func BandIDs() []string { return bandIDs[band.Sun:] }

// band is who heats through the day shown: a path a state, and its word where it fits.
func (v *View) band(s *state.Store) {
	windows := s.Windows()
	list := band.Of(s.Results.Day.Trace.Points, func(minute float64) bool {
		for _, w := range windows {
			if w.Holds(minute) {
				return true
			}
		}
		return false
	})
	for of := band.Sun; of < band.States; of++ {
		id := bandIDs[of]
		v.set(id, "d", band.Path(list, of))
		x, word := "0", ""
		if minute, ok := band.Word(list, of); ok {
			x, word = strconv.FormatFloat(minute/band.Width*100, 'f', 1, 64)+"%", v.Words.Text(bandWords[of])
		}
		v.set(id+"-word", "x", x)
		v.set(id+"-word", "", word)
	}
}
