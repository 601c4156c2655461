package scenario

import (
	"fmt"
	"math"
	"sort"
	"strconv"
	"strings"
	"unicode"

	"suncask/engine/climate"
	"suncask/engine/solar"
)

// NoSummer is the text of a clock without summer time.
const NoSummer = "none"

// WriteDates writes a clock's summer time: MMDD-MMDD, first day and first day after.
func WriteDates(c climate.Clock) string {
	if c.ShiftH == 0 || c.From == c.To {
		return NoSummer
	}
	date := func(day int) string {
		m := climate.MonthOf(day)
		return pad(m+1) + pad(day-climate.FirstDay(m)+1)
	}
	return date(c.From) + "-" + date(c.To)
}

// readDates reads what WriteDates wrote.
func readDates(text string) (c climate.Clock, ok bool) {
	if text == NoSummer {
		return c, true
	}
	from, to, _ := strings.Cut(text, "-")
	a, ok1 := climate.ReadDate(from)
	b, ok2 := climate.ReadDate(to)
	return climate.Clock{From: a, To: b}, ok1 && ok2 && a != b
}

// MostElevation is the highest that a point of the horizon may be, degrees.
const MostElevation = 85

// MostHorizon is how many points a horizon may have.
const MostHorizon = 36

// HorizonPoint is a point of the skyline in whole degrees.
type HorizonPoint struct{ AzimuthDeg, ElevationDeg int }

// ReadHorizon reads "azimuth:elevation" pairs between commas, semicolons or spaces;
// ok is false for anything else, for two points at one azimuth, and for too many. No
// pairs are a free horizon. Points come back in ascending azimuth.
func ReadHorizon(text string) (list []HorizonPoint, ok bool) {
	for _, pair := range entries(text) {
		az, el, _ := strings.Cut(pair, ":")
		a, err1 := strconv.Atoi(az)
		e, err2 := strconv.Atoi(el)
		if err1 != nil || err2 != nil || a < 0 || a > 359 || e < 0 || e > MostElevation {
			return nil, false
		}
		list = append(list, HorizonPoint{a, e})
	}
	sort.Slice(list, func(i, j int) bool { return list[i].AzimuthDeg < list[j].AzimuthDeg })
	for i := 1; i < len(list); i++ {
		if list[i].AzimuthDeg == list[i-1].AzimuthDeg {
			return nil, false
		}
	}
	return list, len(list) <= MostHorizon
}

// SkylineOf is a horizon's text as the sun meets it; free for one that cannot be read.
func SkylineOf(text string) (h solar.Horizon) {
	const rad = math.Pi / 180
	list, _ := ReadHorizon(text)
	for _, p := range list {
		h = append(h, solar.HorizonPoint{Azimuth: float64(p.AzimuthDeg) * rad, Elevation: float64(p.ElevationDeg) * rad})
	}
	return h
}

// WriteHorizon is the one text of a horizon: what links hold and scenarios compare.
func WriteHorizon(list []HorizonPoint) string {
	pairs := make([]string, len(list))
	for i, p := range list {
		pairs[i] = fmt.Sprintf("%d:%d", p.AzimuthDeg, p.ElevationDeg)
	}
	return strings.Join(pairs, ",")
}

// MostStages is how many switched resistances there may be.
const MostStages = 6

// Watts that one of them may have at the element's voltage.
const LeastStageW, MostStageW = 20, 9000

// ReadStages reads rated watts between commas, semicolons or spaces; ok is false for
// anything else, and for too many. None stand for all, half and a quarter of the
// element's.
func ReadStages(text string) (watts []int, ok bool) {
	for _, w := range entries(text) {
		n, err := strconv.Atoi(w)
		if err != nil || n < LeastStageW || n > MostStageW {
			return nil, false
		}
		watts = append(watts, n)
	}
	return watts, len(watts) <= MostStages
}

// WriteStages is their one text.
func WriteStages(watts []int) string {
	list := make([]string, len(watts))
	for i, w := range watts {
		list[i] = strconv.Itoa(w)
	}
	return strings.Join(list, ",")
}

func weatherOK(key string) bool {
	return key == "" || len(key) == 8 && strings.Trim(key, "0123456789abcdef") == ""
}

// problemOfText returns what is wrong with a text field.
func (s *Scenario) problemOfText(id FieldID) *Problem {
	switch id {
	case Place:
		if _, ok := climate.Locate(s.Place); !ok {
			return &Problem{Field: id, Code: UnknownPlace, Got: shorten(s.Place)}
		}
	case Town, Country:
		if !nameOK(*s.textOf(id)) {
			return &Problem{Field: id, Code: WrongName, Got: shorten(*s.textOf(id)), Max: MostName}
		}
	case SummerTime:
		if _, ok := readDates(s.Summer); !ok {
			return &Problem{Field: id, Code: WrongDates, Got: shorten(s.Summer)}
		}
	case WeatherFile:
		if !weatherOK(s.Weather) {
			return &Problem{Field: id, Code: WrongWeather, Got: shorten(s.Weather)}
		}
	case Horizon:
		if list, ok := ReadHorizon(s.Skyline); !ok || WriteHorizon(list) != s.Skyline {
			return &Problem{Field: id, Code: WrongHorizon, Got: shorten(s.Skyline), Max: MostHorizon}
		}
	case Stages:
		if list, ok := ReadStages(s.Stages); !ok || WriteStages(list) != s.Stages {
			return &Problem{Field: id, Code: WrongStages, Got: shorten(s.Stages), Min: LeastStageW, Max: MostStageW}
		}
	case BandPrices:
		if list, ok := ReadBands(s.Bands); !ok || WriteBands(list) != s.Bands {
			return &Problem{Field: id, Code: WrongBands, Got: shorten(s.Bands), Min: FieldOf(Price).Max, Max: MostBands}
		}
	case BlockPrices:
		if list, ok := ReadBlocks(s.Blocks); !ok || WriteBlocks(list) != s.Blocks {
			return &Problem{Field: id, Code: WrongBlocks, Got: shorten(s.Blocks), Min: FieldOf(Price).Max, Max: MostBlocks}
		}
	case Currency:
		if !currencyOK(s.Currency) {
			return &Problem{Field: id, Code: WrongCurrency, Got: shorten(s.Currency), Min: 1, Max: 4}
		}
	}
	return nil
}

// textOf is a text field's value.
func (s *Scenario) textOf(id FieldID) *string {
	switch id {
	case Place:
		return &s.Place
	case Town:
		return &s.Town
	case Country:
		return &s.Country
	case SummerTime:
		return &s.Summer
	case WeatherFile:
		return &s.Weather
	case Horizon:
		return &s.Skyline
	case Stages:
		return &s.Stages
	case BandPrices:
		return &s.Bands
	case BlockPrices:
		return &s.Blocks
	}
	return &s.Currency
}

// MostName is how long the name of a town or country may be, in runes.
const MostName = 40

// nameOK accepts letters and what stands between them in names.
func nameOK(text string) bool {
	n := 0
	for _, r := range text {
		if n++; r == unicode.ReplacementChar || !unicode.IsLetter(r) && !unicode.IsMark(r) && !strings.ContainsRune(" '\u2019.-()&", r) {
			return false
		}
	}
	return n <= MostName
}

// Name makes a name fit for a scenario: what it cannot hold ends it, but for quotes.
func Name(text string) string {
	text = strings.NewReplacer("\u2018", "\u2019", "`", "\u2019", "\u02bb", "\u2019").Replace(text)
	var b strings.Builder
	n := 0
	for _, r := range text {
		if n++; n > MostName || !nameOK(string(r)) {
			break
		}
		b.WriteRune(r)
	}
	return strings.TrimSpace(b.String())
}

// escaped tells whether links write a field's text in percent-encoding.
func (f *Field) escaped() bool { return f.ID == Currency || f.ID == Town || f.ID == Country }

// escape writes what is no letter in percent-encoding (RFC 3986, 2.1). net/url would bring
// network addresses into the page's program.
func escape(text string) string {
	var b strings.Builder
	for _, c := range []byte(text) {
		if c|0x20 >= 'a' && c|0x20 <= 'z' {
			b.WriteByte(c)
		} else {
			fmt.Fprintf(&b, "%%%02X", c)
		}
	}
	return b.String()
}

// unescape is the inverse of escape; ok is false for a percent sign without two
// hexadecimal digits.
func unescape(text string) (plain string, ok bool) {
	var b []byte
	for i := 0; i < len(text); i++ {
		c := text[i]
		if c == '%' {
			n, err := strconv.ParseUint(text[min(i+1, len(text)):min(i+3, len(text))], 16, 8)
			if err != nil || i+2 >= len(text) {
				return "", false
			}
			c = byte(n)
			i += 2
		}
		b = append(b, c)
	}
	return string(b), true
}
