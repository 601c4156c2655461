package view

import (
	"strconv"
	"strings"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Date writes a day of the year.
func (v *View) Date(day int) string {
	m := climate.MonthOf(day)
	return v.Words.Text(words.Date, format.Number(float64(day-climate.FirstDay(m)+1), 0), v.Words.Months[m])
}

// Month names the month on the dial, or the real day there.
func (v *View) Month(s *state.Store) string {
	if day, real := s.RealDay(); real {
		return v.Date(day)
	}
	return v.Words.Months[s.Scenario.Month]
}

// Day names the day on the dial: a real one, or a month's under its sky.
func (v *View) Day(s *state.Store) string {
	if _, real := s.RealDay(); real {
		return v.Month(s)
	}
	return v.Month(s) + ", " + v.Words.Fields[scenario.SkyKind].Choices[s.Scenario.Sky]
}

// Backup writes the backup hours of any house, those that follow the sun too.
func (v *View) Backup(b scenario.Backup) string {
	if b.FollowsSun() {
		return v.SunHours(&b)
	}
	text := v.Hours(state.FirstWindow(b))
	if s := b.Second; s.Start != s.End {
		text += ", " + v.Hours(dial.Window{Start: s.Start, End: s.End})
	}
	return text
}

// Strings says how a house's modules are wired.
func (v *View) Strings(s *scenario.Scenario) string {
	if s.InString == 0 || s.InString == s.Modules {
		return v.Words.Text(words.OneString)
	}
	return v.Words.Text(words.ManyStrings, strconv.Itoa(s.Modules/s.InString), strconv.Itoa(s.InString))
}

// Compass are the names of eight directions from north on.
func (v *View) Compass() []string { return strings.Fields(v.Words.Text(words.Compass)) }

// Direction is the nearest of them to an azimuth, degrees clockwise from north.
func (v *View) Direction(azimuth float64) string {
	names := v.Compass()
	return names[int(azimuth/45+0.5)%len(names)]
}

// Field is a field of a house in words; empty where it is not known.
func (v *View) Field(s *state.Store, id scenario.FieldID) string {
	f := scenario.FieldOf(id)
	switch {
	case id == scenario.BackupHours:
		return v.Backup(s.Scenario.Backup)
	case id == scenario.SecondHours: // among those
		return ""
	case f.Kind == scenario.Choice:
		return v.Words.Fields[id].Choices[int(f.Get(&s.Scenario))]
	case f.Kind == scenario.Months, f.Kind == scenario.Hours, id == scenario.WeatherFile:
		return s.Scenario.Written(id)
	}
	text := s.Text(id)
	if text == "" { // not known
		return ""
	}
	return strings.TrimSpace(text + " " + v.Words.Units[f.Unit])
}
