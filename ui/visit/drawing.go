package visit

import (
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/format"
)

// A drawing of a day: ten units an hour, what is drawn on a base line.
const (
	hourWide = 10.0
	baseY    = 90.0
	highY    = 14.0
	drawWide = 24 * hourWide
)

func xy(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// most is the highest sun and the most water of all seasons, so that they can be compared.
func (c *Sheet) most() (watts, litres float64) {
	for i := range c.of.Seasons {
		s := &c.of.Seasons[i]
		for _, w := range s.SunW {
			watts = max(watts, w)
		}
		for _, l := range s.ReadyL {
			litres = max(litres, l)
		}
	}
	return max(watts, 1), max(litres, 1)
}

// columns are the hours' sun at the element.
func (c *Sheet) columns(i int) string {
	most, _ := c.most()
	var b strings.Builder
	for hour, w := range c.of.Seasons[i].SunW {
		if w > 0 {
			high := w / most * (baseY - highY) * 0.75
			b.WriteString("M" + xy(float64(hour)*hourWide+1) + " " + xy(baseY) + "v-" + xy(high) + "h" + xy(hourWide-2) + "v" + xy(high) + "z")
		}
	}
	return b.String()
}

// water is the hot water that is ready.
func (c *Sheet) water(i int) string {
	_, most := c.most()
	s := &c.of.Seasons[i]
	var b strings.Builder
	for k, at := range s.Minute {
		mark := "L"
		if k == 0 {
			mark = "M"
		}
		b.WriteString(mark + xy(at/60*hourWide) + " " + xy(baseY-s.ReadyL[k]/most*(baseY-highY)))
	}
	return b.String()
}

// grid are the backup hours of a season's day.
func (c *Sheet) grid(i int) string {
	p := c.Page.Store.Prepared
	b := p.Scenario.Backup
	var spans [][2]float64
	if from, to, ok := p.Hours(b, climate.AverageDay(c.of.Seasons[i].Month)); b.AllDay {
		spans = append(spans, [2]float64{0, scenario.DayMinutes})
	} else if ok {
		spans = append(spans, [2]float64{from, to})
	}
	if s := b.Second; s.Start != s.End {
		to := s.End
		if to < s.Start {
			to += scenario.DayMinutes
		}
		spans = append(spans, [2]float64{float64(s.Start), float64(to)})
	}
	var path strings.Builder
	for _, span := range spans {
		for _, shift := range []float64{-scenario.DayMinutes, 0, scenario.DayMinutes} { // over midnight
			from, to := max(0, span[0]+shift), min(scenario.DayMinutes, span[1]+shift)
			if to > from {
				path.WriteString("M" + xy(from/60*hourWide) + " " + xy(highY) + "H" + xy(to/60*hourWide) + "V" + xy(baseY) + "H" + xy(from/60*hourWide) + "z")
			}
		}
	}
	return path.String()
}

// drops are the uses.
func (c *Sheet) drops(i int) string {
	var b strings.Builder
	for _, at := range c.of.Seasons[i].UseAt {
		b.WriteString("M" + xy(at/60*hourWide) + " " + xy(baseY-9) + "q3 3.500 3 5.500a3 3 0 0 1-6 0q0-2 3-5.500z")
	}
	return b.String()
}

// extremes are the least and the most of a season's ready water, where they are written.
func (c *Sheet) extremes(i int) (list []label) {
	s := &c.of.Seasons[i]
	if len(s.ReadyL) == 0 {
		return nil
	}
	_, most := c.most()
	least, top := 0, 0
	for k, l := range s.ReadyL {
		if l < s.ReadyL[least] {
			least = k
		}
		if l > s.ReadyL[top] {
			top = k
		}
	}
	at := func(k int, up float64) label {
		x := min(max(s.Minute[k]/60*hourWide, 18), drawWide-18)
		return label{xy(x), xy(baseY - s.ReadyL[k]/most*(baseY-highY) - up), format.In(scenario.Litre, s.ReadyL[k], 0) + format.Space + c.Page.View.Words.Units[scenario.Litre]}
	}
	return []label{at(top, 4), at(least, 4)}
}

type label struct{ x, y, text string }

// clock are the hours under a drawing.
var clock = []label{{"0", "104", "0"}, {"60", "104", "6"}, {"120", "104", "12"}, {"180", "104", "18"}, {"240", "104", "24"}}
