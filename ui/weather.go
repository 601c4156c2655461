package ui

import (
	"fmt"
	"math"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Weather is the weather file and the table of monthly means.
type Weather struct{ Page *Page }

// monthFields are the columns of the table.
var monthFields = []scenario.FieldID{scenario.MonthGHI, scenario.MonthTempC, scenario.MonthColdC}

var months = []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}

// status says which file is in use, and how far its light is off its clock.
func (c *Weather) status() string {
	s, w := c.Page.Store, c.Page.View.Words
	switch {
	case c.Page.FileReading >= 0:
		return c.Page.Reading()
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
	c.Page.changed()
}

func (c *Weather) named() bool { return c.Page.Store.Scenario.Weather != "" }

func (c *Weather) back() {
	c.Page.Store.DropFile()
	c.Page.changed()
}

func (c *Weather) head(f scenario.FieldID) string {
	w := c.Page.View.Words
	return w.Fields[f].Name + ", " + w.Units[scenario.FieldOf(f).Unit]
}

func (c *Weather) month(m int) string { return c.Page.View.Words.Months[m] }

func cellID(f scenario.FieldID, m int) string {
	return fmt.Sprintf("%s-%d", scenario.FieldOf(f).Key, m+1)
}

func (c *Weather) cellName(f scenario.FieldID, m int) string {
	w := c.Page.View.Words
	return w.Text(words.MonthCell, w.Fields[f].Name, w.Months[m])
}

func (c *Weather) cell(f scenario.FieldID, m int) string {
	text, _ := c.Page.Store.MonthText(f, m)
	return text
}

func (c *Weather) class(f scenario.FieldID, m int) string {
	if _, known := c.Page.Store.MonthText(f, m); known {
		return "known"
	}
	return "guess"
}

// fixed tells whether a column is the file's and cannot be overtyped.
func (c *Weather) fixed(f scenario.FieldID) bool {
	return c.Page.Store.Prepared.Weather.Measured && f != scenario.MonthColdC
}

func (c *Weather) typed(event vugu.DOMEvent, f scenario.FieldID, m int) {
	c.Page.Store.TypeMonth(f, m, event.PropString("target", "value"))
	c.Page.changed()
}

func (c *Weather) monthsProblem() string {
	for _, f := range monthFields {
		if text := c.Page.problem(f); text != "" {
			return text
		}
	}
	return c.Page.problem(scenario.Place)
}
