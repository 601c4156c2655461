package format

import (
	"math"
	"strings"

	"suncask/engine/scenario"
)

// What people write beside a number, and what it makes of the number in the field's own unit.
var writtenUnits = map[scenario.Unit]map[string][2]float64{
	scenario.Litre:            {"l": {1}, "litre": {1}, "litres": {1}, "liter": {1}, "liters": {1}, "litro": {1}, "litros": {1}, "gal": {LitresPerGallon}, "gallon": {LitresPerGallon}, "gallons": {LitresPerGallon}},
	scenario.LitrePerMinute:   {"l/min": {1}, "lpm": {1}, "gpm": {LitresPerGallon}, "gal/min": {LitresPerGallon}},
	scenario.Celsius:          {"c": {1}, "°c": {1}, "°": {1}, "f": {1 / FahrenheitPerK, -FahrenheitAtZero / FahrenheitPerK}, "°f": {1 / FahrenheitPerK, -FahrenheitAtZero / FahrenheitPerK}},
	scenario.Watt:             {"w": {1}, "watt": {1}, "watts": {1}, "kw": {1000}},
	scenario.Metre:            {"m": {1}, "ft": {metresPerFoot}, "feet": {metresPerFoot}},
	scenario.Volt:             {"v": {1}, "volt": {1}, "volts": {1}},
	scenario.Bar:              {"bar": {1}, "bars": {1}, "psi": {barPerPsi}, "kpa": {0.01}},
	scenario.Ampere:           {"a": {1}, "amp": {1}, "amps": {1}},
	scenario.Minute:           {"min": {1}, "minutes": {1}, "minutos": {1}},
	scenario.Hour:             {"h": {1}, "hours": {1}},
	scenario.Degree:           {"°": {1}, "deg": {1}, "degrees": {1}, "grados": {1}},
	scenario.Percent:          {"%": {1}},
	scenario.PercentAYear:     {"%": {1}},
	scenario.PercentPerKelvin: {"%": {1}, "%/k": {1}},
	scenario.KWhPerDay:        {"kwh": {1}, "kwh/day": {1}, "kwh/24h": {1}, "kwh/d": {1}},
	scenario.KWhAMonth:        {"kwh": {1}},
	scenario.MoneyPerKWh:      {"/kwh": {1}, "ct": {0.01}, "cts": {0.01}, "c": {0.01}, "¢": {0.01}, "cent": {0.01}, "cents": {0.01}, "ct/kwh": {0.01}},
	scenario.Money:            {},
	scenario.MoneyAYear:       {"/year": {1}, "/a": {1}},
	scenario.MoneyAMonth:      {"/month": {1}},
}

// directions are azimuths by name, degrees clockwise from north.
var directions = map[string]float64{
	"n": 0, "north": 0, "norte": 0, "ne": 45, "northeast": 45, "noreste": 45, "e": 90, "east": 90, "este": 90, "se": 135, "southeast": 135, "sureste": 135,
	"s": 180, "south": 180, "sur": 180, "sw": 225, "so": 225, "southwest": 225, "suroeste": 225, "w": 270, "o": 270, "west": 270, "oeste": 270, "nw": 315, "no": 315, "northwest": 315, "noroeste": 315,
}

// signs of currencies.
const signs = "$\u20ac\u00a3\u00a5\u20b9\u20a9\u20a6\u20b1\u20ab\u20aa\u20b4\u20ba\u20bd"

// bare takes the sign or code of a currency away that stands before or after a sum.
func bare(text string) string {
	text = strings.TrimSpace(text)
	for _, side := range []func(string, func(rune) bool) string{strings.TrimLeftFunc, strings.TrimRightFunc} {
		rest := side(text, func(r rune) bool { return r >= 'a' && r <= 'z' || strings.ContainsRune(signs, r) })
		if len([]rune(text))-len([]rune(rest)) <= 3 { // R$, EUR
			text = strings.TrimSpace(rest)
		}
	}
	return text
}

// written takes apart what was typed: the number's text, and what its unit, where one was
// written, makes of it in the field's own unit.
func written(f *scenario.Field, text string) (number string, unit [2]float64, named bool) {
	number = strings.ToLower(strings.TrimSpace(text))
	if f.Unit == scenario.Degree && f.Max > 180 {
		if azimuth, ok := directions[strings.ReplaceAll(number, "-", "")]; ok {
			return Input(azimuth), [2]float64{1}, true
		}
	}
	at := strings.LastIndexFunc(number, func(r rune) bool { return r >= '0' && r <= '9' || r == '.' || r == ',' })
	if at >= 0 {
		tail := strings.Join(strings.Fields(number[at+1:]), "")
		if unit, named = writtenUnits[f.Unit][tail]; named {
			number = number[:at+1]
		}
	}
	if f.Unit.IsMoney() {
		number = bare(number)
		if unit == [2]float64{1} || !named { // the currency is the house's
			named = false
		}
	}
	return grouped(f, strings.TrimSpace(number)), unit, named
}

// grouped takes marks between thousands away: those before another kind of mark, and a single
// one before three digits in fields of whole numbers above a thousand. Text in which not each
// mark but the last stands before three digits comes back as it is.
func grouped(f *scenario.Field, text string) string {
	const marks = ".,' "
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(marks, r) })
	if n := len(parts); n < 2 || len(parts[0]) > 3 || strings.Trim(strings.Join(parts, ""), "0123456789") != "" || len(text) != len(strings.Join(parts, ""))+n-1 {
		return text
	}
	for _, p := range parts[1 : len(parts)-1] {
		if len(p) != 3 {
			return text
		}
	}
	first, last := text[strings.IndexAny(text, marks)], text[strings.LastIndexAny(text, marks)]
	tail := parts[len(parts)-1]
	switch {
	case first != last:
		return strings.Join(parts[:len(parts)-1], "") + "." + tail
	case len(tail) == 3 && (len(parts) > 2 || f.Step >= 1 && f.Max > 1000):
		return strings.Join(parts, "")
	}
	return text
}

// inUnit is a number in a unit that was written beside it, in the field's own.
func inUnit(v float64, unit [2]float64) float64 {
	v = v*unit[0] + unit[1]
	return math.Round(v*1e9) / 1e9
}
