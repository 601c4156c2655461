package hourly

import "fmt"

// Code says why a file was refused.
type Code uint8

const (
	NotKnown       Code = iota // no layout that is read begins like this
	NotRead                    // a layout that is known and not read; Want names it
	NoColumn                   // a needed column is missing; Want is its name
	TooFewFields               // a line ends early; Want is how many fields it needs
	Unexpected                 // Got stands where Want is expected
	OutOfRange                 // Got is outside Want
	NoPlace                    // the file's own place cannot be read; Want says what of it
	NotHourly                  // the file has no hours; Want says what it has
	TooCoarse                  // its steps are longer than an hour
	SeveralYears               // more than one year; Got is where the second begins
	TooManyMissing             // Got hours of 8760 are missing, at most Want are filled
	OnAPlane                   // irradiance on a tilted plane, not on the horizontal
	WrongUnit                  // Got is a unit that is not read
	LineTooLong                // longer than Want bytes
	Empty                      // no line at all
)

// Error is a file that was refused. Line and Column count from 1; 0 where the file as
// a whole is meant. Name is the column's.
type Error struct {
	Code         Code
	Line, Column int
	Name         string
	Got, Want    string
}

// Error tells programmers; people read ui/words.
func (e *Error) Error() string {
	return fmt.Sprintf("hourly: line %d, column %d (%s): %q refused (code %d, want %s)", e.Line, e.Column, e.Name, e.Got, e.Code, e.Want)
}

// shorten keeps what was given readable.
func shorten(s string) string {
	const most = 40
	r := []rune(s)
	if len(r) > most {
		return string(r[:most]) + "..."
	}
	return s
}

// NoteCode says what was done to a file that was read.
type NoteCode uint8

const (
	FilledShort    NoteCode = iota // N missing hours filled between their neighbours
	FilledLong                     // N missing hours filled from the days around
	LeapDayLeft                    // 29 February left out
	DoubledHours                   // N hours given twice, their mean taken (a clock put back)
	MixedYears                     // months from N different years, as typical years are
	SplitByErbs                    // no diffuse column: split from the global one
	AirJoined                      // N hours without a temperature, joined straight
	NoTemperature                  // no temperature column: the built-in climate's taken
	NoPlaceInFile                  // the file does not say where it is: the present place taken
	NoZoneInFile                   // nor its clock: that of its longitude's hour taken
	GlobalDiffers                  // global differs from beam and diffuse by N percent of the year
	NightClipped                   // N values below 0 at night taken as 0
	HeightNotGiven                 // elevation unknown
)

// Note is one of them, with its number.
type Note struct {
	Code NoteCode
	N    int
}
