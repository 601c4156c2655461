package scenario

import (
	"fmt"
	"math"
	"strings"
)

// Code says what is wrong with an input or a link.
type Code int8

const (
	NotANumber      Code = iota
	OutOfRange           // Min and Max are allowed
	OffStep              // Min is the step
	UnknownChoice        // not among the field's choices
	UnknownPlace         // no built-in place of that name
	WrongCurrency        // not one to four letters or signs
	WrongHours           // not two clock times, all or none
	UnknownKey           // a link's key that this version does not know; Got is the key
	KeyTwice             // a link gives one key twice
	NotAPair             // a part of a link that is not key=value
	NoVersion            // a link without a version
	NewerVersion         // a link of a later version; Max is the latest known
	LinkTooLong          // Max is the most that is read, in bytes
	WrongDates           // not two dates or none
	WrongWeather         // not a weather file's key
	WrongHorizon         // not pairs of azimuth and elevation, Max at most
	WrongMonths          // not twelve values
	MonthTooBright       // brighter than a cloudless sky; Min is the month, Max the limit
	ImpossibleSheet      // a datasheet's value that no module has beside the others
	WrongStages          // not rated watts, Min to Max, six at most
	WrongBands           // not hours with prices up to Min, Max of them at most
	WrongBlocks          // not ascending kWh with prices up to Min, Max of them at most
	WrongName            // not the name of a town or country
	WeatherRefused       // the place's record is brighter than a cloudless sky; Min is the month, Max the limit
)

// Problem is one input that was refused. Got is what was given, cut to a
// readable length.
type Problem struct {
	Field    FieldID
	Code     Code
	Got      string
	Min, Max float64
}

// Error names the problem for programmers; people read ui/words.
func (p Problem) Error() string {
	key := "link"
	if p.Field != NoField {
		key = fields[p.Field].Key
	}
	return fmt.Sprintf("scenario: %s %q refused (code %d, allowed %g to %g)", key, p.Got, p.Code, p.Min, p.Max)
}

// gotLimit is how much of what was given a Problem keeps, in runes.
const gotLimit = 40

func shorten(s string) string {
	r := []rune(strings.ToValidUTF8(s, "?"))
	if len(r) > gotLimit {
		return string(r[:gotLimit]) + "..."
	}
	return string(r)
}

// Problems returns what is wrong with a scenario; none for one that every part
// of the engine accepts.
func (s *Scenario) Problems() []Problem {
	var list []Problem
	for i := range fields {
		if p := s.problem(&fields[i]); p != nil {
			list = append(list, *p)
		}
	}
	return list
}

func (s *Scenario) problem(f *Field) *Problem {
	switch f.ID {
	case BackupHours, SecondHours:
		b := hoursOf(s, f.ID)
		return b.problem(f.ID)
	}
	switch f.Kind {
	case Text:
		return s.problemOfText(f.ID)
	case Months:
		return f.problemOfMonths(s.MonthsOf(f.ID))
	}
	return f.Check(f.Get(s))
}

// Check returns what is wrong with a number for a field, nil if nothing is.
func (f *Field) Check(v float64) *Problem {
	if f.Empty(v) {
		return nil
	}
	got := fmt.Sprintf("%.6g", v)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return &Problem{Field: f.ID, Code: NotANumber, Got: got, Min: f.Min, Max: f.Max}
	}
	if v < f.Min-1e-9 || v > f.Max+1e-9 {
		return &Problem{Field: f.ID, Code: OutOfRange, Got: got, Min: f.Min, Max: f.Max}
	}
	step := f.Step
	if f.Fine() {
		step /= parts
	}
	if !Multiple(v, step) {
		return &Problem{Field: f.ID, Code: OffStep, Got: got, Min: step}
	}
	return nil
}

// Multiple tells whether v is a whole number of steps, but for rounding.
func Multiple(v, step float64) bool {
	n := v / step
	return math.Abs(n-math.Round(n)) <= 1e-6
}

// currencyOK accepts one to four letters or currency signs.
func currencyOK(s string) bool {
	n := 0
	for _, r := range s {
		n++
		if !(r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || strings.ContainsRune("$£¥€₦₨₩₪₫₱₴₹₺₽₿", r)) {
			return false
		}
	}
	return n >= 1 && n <= 4
}
