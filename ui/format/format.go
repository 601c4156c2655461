// Package format turns numbers into the text that people read, and back.
package format

import (
	"math"
	"strconv"
	"strings"
)

// Space is the narrow no-break space between a number and its unit.
const Space = "\u202f"

// Clock writes minutes after midnight as 14:45.
func Clock(minute int) string {
	return two(minute/60) + ":" + two(minute%60)
}

func two(n int) string {
	if n < 10 {
		return "0" + strconv.Itoa(n)
	}
	return strconv.Itoa(n)
}

// ParseClock reads 14:45, 14.45, 1445, 7:30, 7 or 2:45 pm; ok is false for anything else
// and for times that do not exist.
func ParseClock(text string) (minute int, ok bool) {
	text = strings.ToLower(strings.TrimSpace(text))
	for _, half := range []string{"am", "pm"} {
		if rest, cut := strings.CutSuffix(text, half); cut {
			minute, ok = ParseClock(rest)
			if minute < 60 || minute >= 13*60 || strings.Contains(rest, "m") {
				return 0, false
			}
			minute %= 12 * 60
			if half == "pm" {
				minute += 12 * 60
			}
			return minute, ok
		}
	}
	h, m, cut := strings.Cut(strings.NewReplacer(".", ":", "h", ":").Replace(text), ":")
	if !cut && len(text) >= 3 && len(text) <= 4 {
		h, m = text[:len(text)-2], text[len(text)-2:]
	}
	if m == "" {
		m = "0"
	}
	hours, err1 := strconv.Atoi(h)
	minutes, err2 := strconv.Atoi(m)
	if err1 != nil || err2 != nil || hours < 0 || hours > 23 || minutes < 0 || minutes > 59 || strings.ContainsAny(text, "+-") {
		return 0, false
	}
	return hours*60 + minutes, true
}

// Duration writes minutes as "3 h 30 min", "45 min" or "3 h".
func Duration(minutes int) string {
	h, m := minutes/60, minutes%60
	switch {
	case h == 0:
		return strconv.Itoa(m) + Space + "min"
	case m == 0:
		return strconv.Itoa(h) + Space + "h"
	}
	return strconv.Itoa(h) + Space + "h " + strconv.Itoa(m) + Space + "min"
}

// mark stands between a number's whole part and its decimals.
var mark = "."

// SetDecimal sets that mark, a point or a comma. Call it once, before numbers are written.
func SetDecimal(m string) { mark = m }

// Number writes v with that many decimals, a thin space between thousands and a
// real minus sign.
func Number(v float64, decimals int) string {
	text := strconv.FormatFloat(math.Abs(v), 'f', decimals, 64)
	whole, rest, _ := strings.Cut(text, ".")
	if len(whole) > 4 {
		for i := len(whole) - 3; i > 0; i -= 3 {
			whole = whole[:i] + Space + whole[i:]
		}
	}
	if rest != "" {
		whole += mark + rest
	}
	if v < 0 && strings.Trim(text, "0.") != "" {
		return "\u2212" + whole
	}
	return whole
}

// AtLeast writes a number that something must reach, never below what it is.
func AtLeast(v float64, decimals int) string {
	return Number(roundTo(v-1e-9, decimals, math.Ceil), decimals)
}

// AtMost writes one that something must not pass, never above what it is.
func AtMost(v float64, decimals int) string {
	return Number(roundTo(v+1e-9, decimals, math.Floor), decimals)
}

// Input writes v for a field: no separators, no needless zeros.
func Input(v float64) string {
	return strings.Replace(strconv.FormatFloat(v, 'f', -1, 64), ".", mark, 1)
}

// Parse reads a number with point or comma; ok is false for anything else.
func Parse(text string) (v float64, ok bool) {
	text = strings.NewReplacer("\u202f", "", "\u00a0", "", " ", "", "\u2212", "-").Replace(strings.TrimSpace(text))
	if strings.Count(text, ",")+strings.Count(text, ".") > 1 || strings.ContainsAny(text, "xXpPeEnN_") {
		return 0, false
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err != nil || math.IsInf(v, 0) {
		return 0, false
	}
	return v, true
}

// Length writes a length of a picture.
func Length(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// Exact writes v with all its digits, for scripts and tests.
func Exact(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }
