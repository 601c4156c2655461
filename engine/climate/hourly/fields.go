package hourly

import (
	"math"
	"strconv"
	"strings"
)

func isNumber(s string) bool {
	_, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	return err == nil
}

// columns is a line cut at its separator, read field by field with what went wrong.
type columns struct {
	field []string
	names []string // of the header; may be shorter
	err   *Error
}

func cut(line, separator string, names []string) columns {
	return columns{field: strings.Split(line, separator), names: names}
}

func (c *columns) name(i int) string {
	if i >= 0 && i < len(c.names) {
		return c.names[i]
	}
	return ""
}

func (c *columns) fail(code Code, i int, got, want string) {
	if c.err == nil {
		c.err = &Error{Code: code, Column: i + 1, Name: c.name(i), Got: got, Want: want}
	}
}

func (c *columns) text(i int) string {
	if i < 0 || i >= len(c.field) {
		c.fail(TooFewFields, i, strconv.Itoa(len(c.field)), strconv.Itoa(i+1))
		return ""
	}
	return strings.TrimSpace(c.field[i])
}

// whole reads an integer within bounds; 3 and 3.0 are the same.
func (c *columns) whole(i, lo, hi int) int {
	v := c.number(i, float64(lo), float64(hi))
	if v != math.Trunc(v) {
		c.fail(Unexpected, i, c.text(i), "a whole number")
		return lo
	}
	return int(v)
}

// number reads a number within bounds.
func (c *columns) number(i int, lo, hi float64) float64 {
	text := c.text(i)
	if c.err != nil {
		return lo
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
		c.fail(Unexpected, i, text, "a number")
		return lo
	}
	if v < lo || v > hi {
		c.fail(OutOfRange, i, text, strconv.FormatFloat(lo, 'g', -1, 64)+" to "+strconv.FormatFloat(hi, 'g', -1, 64))
		return lo
	}
	return v
}

// missing is a value that the file does not have.
var missing = math.NaN()

// mostLight is brighter than any hour on earth, W/m2: more is a slip, or a code.
const mostLight = 2000

// light reads an irradiance: an empty field, a value from code up or below -20 is
// missing, down to -20 it is night. clipped counts the latter.
func (c *columns) light(i int, code float64, clipped *int) float64 {
	return c.lightIn(1, i, code, clipped)
}

// lightIn is light for a column whose unit is that many W/m2.
func (c *columns) lightIn(unit float64, i int, code float64, clipped *int) float64 {
	v := c.given(i)
	if math.IsNaN(v) || v >= code || v < -20 {
		return missing
	}
	v *= unit
	switch {
	case v > mostLight:
		c.fail(OutOfRange, i, c.text(i), "0 to 2000")
	case v < 0:
		*clipped++
		return 0
	}
	return v
}

// air reads a temperature: an empty field or a code is missing.
func (c *columns) air(i int) float64 {
	v := c.given(i)
	if math.IsNaN(v) || v == 99.9 || v >= 999 || v <= -90 {
		return missing
	}
	if v > 65 {
		c.fail(OutOfRange, i, c.text(i), "-90 to 65")
	}
	return v
}

// given reads a number that may be missing: no such column, an empty field, or nan.
func (c *columns) given(i int) float64 {
	if i < 0 {
		return missing
	}
	text := c.text(i)
	if c.err != nil || text == "" || strings.EqualFold(text, "nan") {
		return missing
	}
	v := c.number(i, math.Inf(-1), math.Inf(1))
	if c.err != nil {
		return missing
	}
	return v
}
