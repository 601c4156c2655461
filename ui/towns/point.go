package towns

import (
	"math"
	"strconv"
	"strings"
	"unicode"
)

// Point is a place by its numbers.
type Point struct {
	LatDeg, LonDeg float64
	HeightM        float64 // NaN where not given
}

// angle is what was read of one coordinate.
type angle struct {
	parts [3]float64 // degrees, minutes, seconds as they were written
	count int
	least int  // the mark of the last part: 0 none, 1 degrees, 2 minutes, 3 seconds
	minus bool // a minus before it
	side  rune // n, s, e, w; 0 none
}

func (a *angle) degrees() (v float64, ok bool) {
	for i, unit := range [3]float64{1, 60, 3600} {
		if i > 0 && a.parts[i] >= 60 {
			return 0, false
		}
		v += a.parts[i] / unit
	}
	south := a.side == 's' || a.side == 'w'
	if a.minus && a.side != 0 {
		return 0, false
	}
	if a.minus || south {
		v = -v
	}
	return v, a.count > 0
}

// ReadPoint reads latitude, longitude and if given metres above the sea in the usual forms:
// 53.48, -2.24, 51 or 53.48 N 2.24 W or 53° 28' 30" N, 2° 14' W; a decimal comma too where the
// numbers stand apart otherwise, and O for the Spanish west. ok is false for anything else; ranges
// are not checked.
func ReadPoint(text string) (p Point, ok bool) {
	p.HeightM = math.NaN()
	list, ok := angles(text)
	if !ok || len(list) < 2 || len(list) > 3 {
		return p, false
	}
	if len(list) == 3 {
		h := list[2]
		if h.count != 1 || h.side != 0 || h.least != 0 {
			return p, false
		}
		if p.HeightM = h.parts[0]; h.minus {
			p.HeightM = -p.HeightM
		}
	}
	lat, lon := list[0], list[1]
	if east(lat.side) || north(lon.side) { // longitude first
		lat, lon = lon, lat
	}
	if east(lat.side) || north(lon.side) || (lat.side == 0) != (lon.side == 0) {
		return p, false
	}
	var ok1, ok2 bool
	p.LatDeg, ok1 = lat.degrees()
	p.LonDeg, ok2 = lon.degrees()
	return p, ok1 && ok2
}

func north(side rune) bool { return side == 'n' || side == 's' }
func east(side rune) bool  { return side == 'e' || side == 'w' }

// angles cuts a text into its coordinates.
func angles(text string) (list []angle, ok bool) {
	runes := []rune(strings.ToLower(strings.TrimSpace(text)))
	decimal := decimalComma(runes)
	var a angle
	var ahead rune // a side before its number
	end := func() {
		if a.count > 0 {
			list = append(list, a)
		}
		a = angle{}
	}
	for i := 0; i < len(runes); {
		r := runes[i]
		switch {
		case r == '-' || r == '\u2212' || r == '+' || unicode.IsDigit(r) || r == '.':
			number, next := "", i
			minus := r == '-' || r == '\u2212'
			if minus || r == '+' {
				next++
			}
			for next < len(runes) && (unicode.IsDigit(runes[next]) || runes[next] == '.' || decimal && runes[next] == ',' && next+1 < len(runes) && unicode.IsDigit(runes[next+1])) {
				number += strings.Replace(string(runes[next]), ",", ".", 1)
				next++
			}
			v, err := strconv.ParseFloat(number, 64)
			if err != nil {
				return nil, false
			}
			if minus || r == '+' || a.least == 0 || a.count == 3 || a.side != 0 && a.side != ahead {
				end() // a coordinate of its own
			}
			if a.count == 0 {
				a.minus, a.side, ahead = minus, ahead, 0
			}
			mark, after := markAt(runes, next)
			if part := max(mark, a.least+1); mark == 0 && a.count == 0 {
				a.parts[0] = v
			} else if part > 3 || part <= a.least {
				return nil, false
			} else {
				a.parts[part-1], a.least = v, part
			}
			a.count++
			i = after
		case strings.ContainsRune("nsewo", r) && (i+1 == len(runes) || !unicode.IsLetter(runes[i+1])):
			if r == 'o' {
				r = 'w'
			}
			if a.count > 0 && a.side == 0 {
				a.side = r
				end()
			} else if ahead == 0 {
				end()
				ahead = r
			} else {
				return nil, false
			}
			i++
		case r == 'm' && len(list) == 2 && a.count == 1 && i+1 == len(runes):
			i++
		case r == ',' || r == ';':
			end()
			i++
		case unicode.IsSpace(r):
			i++
		default:
			return nil, false
		}
	}
	end()
	return list, ahead == 0
}

// markAt reads the mark of a part after a number, over spaces, 0 for none.
func markAt(runes []rune, at int) (part, after int) {
	i := at
	for i < len(runes) && unicode.IsSpace(runes[i]) {
		i++
	}
	if i == len(runes) {
		return 0, at
	}
	switch r := runes[i]; {
	case r == '\u00b0' || r == '\u00ba':
		return 1, i + 1
	case i+1 < len(runes) && isMinute(r) && isMinute(runes[i+1]):
		return 3, i + 2
	case isMinute(r):
		return 2, i + 1
	case strings.ContainsRune("\"\u2033\u201d", r):
		return 3, i + 1
	}
	return 0, at
}

func isMinute(r rune) bool { return strings.ContainsRune("'\u2032\u2019\u00b4", r) }

// decimalComma tells whether commas between digits are decimal: numbers then stand apart by
// spaces or semicolons, and no point is written.
func decimalComma(runes []rune) bool {
	commas, apart := 0, false
	for i, r := range runes {
		digit := func(at int) bool { return at >= 0 && at < len(runes) && unicode.IsDigit(runes[at]) }
		switch {
		case r == '.':
			return false
		case r == ',' && digit(i-1) && digit(i+1):
			commas++
		case r == ';' || unicode.IsSpace(r) || r == '\u00b0':
			apart = true
		}
	}
	return commas > 0 && apart
}
