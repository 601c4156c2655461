package house

import (
	"errors"
	"math"

	"suncask/engine/climate/hourly"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// status says which file is in use, and how far its light is off its clock.
func (c *Weather) status() string {
	s, w := c.Page.Store, c.Page.View.Words
	switch {
	case c.Page.FileReading >= 0:
		return FileReading(c.Page)
	case s.Scenario.Weather == "":
		return ""
	case s.Prepared.FileMissing:
		return w.Text(words.FileAbsent, s.Scenario.Weather)
	case s.Read == nil:
		return c.Page.T(words.FileKept)
	}
	side := words.FileLate
	if s.Read.ClockMin < 0 {
		side = words.FileEarly
	}
	return w.Text(words.FileRead, s.Read.Layout, format.Number(float64(s.Read.Rows), 0)) + " " +
		w.Text(words.FileClock, format.Number(math.Abs(s.Read.ClockMin), 0), c.Page.T(side))
}

// FileReading says how far a weather file is read.
func FileReading(c *page.Page) string { return c.View.Words.Text(words.FileReading, c.FileReading) }

// notes are the sentences about what was done to the file.
func (c *Weather) notes() (list []string) {
	s := c.Page.Store
	if s.Read == nil || s.Scenario.Weather == "" || s.Prepared.FileMissing {
		return nil
	}
	for _, n := range s.Read.Notes {
		list = append(list, c.Page.View.Words.FileNote(n))
	}
	return list
}

func (c *Weather) offered() bool { return c.Page.Store.ShiftOffer() != 0 }

func (c *Weather) offer() string {
	by, side := c.Page.Store.ShiftOffer(), words.Later
	if by < 0 {
		side = words.Earlier
	}
	return c.Page.View.Words.Text(words.FileShift, format.Number(math.Abs(by), 0), c.Page.T(side))
}

func (c *Weather) shift() {
	c.Page.Store.Shift()
	c.Page.Changed()
}

func (c *Weather) named() bool { return c.Page.Store.Scenario.Weather != "" }

func (c *Weather) back() {
	c.Page.Store.DropFile()
	c.Page.Changed()
}

// FileEnded takes a weather file that was read, or why it was not; the scenario stays
// as it was then.
func FileEnded(c *page.Page, r *hourly.Result, err error) {
	c.FileReading = -1
	c.Changed()
	var refused *hourly.Error
	switch {
	case errors.As(err, &refused):
		c.FileProblem = c.View.Words.FileError(refused)
	case err != nil:
		c.FileProblem = err.Error()
	default:
		c.Store.TakeFile(r)
		c.FileProblem = c.Problem(scenario.WeatherFile)
	}
}
