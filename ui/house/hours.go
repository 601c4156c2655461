package house

import (
	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/words"
)

// edges are what can be counted from the clock or from the sun.
var edges = []dial.Part{dial.StartGrip, dial.EndGrip}

// anchors are what an edge is counted from, as the buttons list them.
var anchors = []scenario.Anchor{scenario.Clock, scenario.SolarNoon, scenario.Sunset}

func edgeID(p dial.Part) string { return []string{"start", "end"}[p] }

func (c *Card) edgeName(p dial.Part) string {
	return c.Page.T([]words.Key{words.StartCounted, words.EndCounted}[p])
}

func (c *Card) anchorName(a scenario.Anchor) string {
	return c.Page.T([]words.Key{words.ByClock, words.BySolarNoon, words.BySunset}[a])
}

func (c *Card) countsFrom(p dial.Part, a scenario.Anchor) bool {
	b := &c.Page.Store.Scenario.Backup
	return a == []scenario.Anchor{b.StartFrom, b.EndFrom}[p]
}

func (c *Card) countFrom(p dial.Part, a scenario.Anchor) {
	c.Page.Store.CountFrom(p, a)
	c.Page.Changed()
}

// sunHours says where hours that follow the sun lie on the day shown, and on which
// days there are none.
func (c *Card) sunHours() (list []string) {
	s, v := c.Page.Store, c.Page.View
	b := s.Scenario.Backup
	if !b.FollowsSun() {
		return nil
	}
	list = append(list, v.Words.Text(words.SunHoursNow, v.Words.Months[s.ShownMonth()], v.Hours(s.Window(0))))
	if days := s.Prepared.EmptyDays(b); len(days) > 0 {
		list = append(list, v.Words.Text(words.SunHoursEmpty, len(days), c.dates(days)))
	}
	polar := 0
	for day := range climate.Days {
		if !s.Prepared.SunSets(day) {
			polar++
		}
	}
	if polar > 0 && (b.StartFrom == scenario.Sunset || b.EndFrom == scenario.Sunset) {
		list = append(list, v.Words.Text(words.SunHoursPolar, polar))
	}
	return list
}

// dates writes days of the year as stretches: 3 May-8 August, 1 October.
func (c *Card) dates(days []int) string {
	text := ""
	for i := 0; i < len(days); {
		j := i
		for j+1 < len(days) && days[j+1] == days[j]+1 {
			j++
		}
		if text != "" {
			text += ", "
		}
		text += c.Page.View.Date(days[i])
		if j > i {
			text += "\u2013" + c.Page.View.Date(days[j])
		}
		i = j + 1
	}
	return text
}
