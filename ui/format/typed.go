package format

import (
	"math"
	"slices"
	"strings"

	"suncask/engine/scenario"
)

// writtenUnits are what people write beside a number, and what it makes of the number in the field's
// own unit.
var writtenUnits = [...]struct {
	of    scenario.Unit
	names string
	to    [2]float64
}{
	{scenario.Litre, "l litre litres liter liters litro litros", [2]float64{1}},
	{scenario.Litre, "gal gallon gallons", [2]float64{LitresPerGallon}},
	{scenario.LitrePerMinute, "l/min lpm", [2]float64{1}},
	{scenario.LitrePerMinute, "gpm gal/min", [2]float64{LitresPerGallon}},
	{scenario.Celsius, "c °c °", [2]float64{1}},
	{scenario.Celsius, "f °f", [2]float64{1 / FahrenheitPerK, -FahrenheitAtZero / FahrenheitPerK}},
	{scenario.Watt, "w watt watts", [2]float64{1}},
	{scenario.Watt, "kw", [2]float64{1000}},
	{scenario.Metre, "m", [2]float64{1}},
	{scenario.Metre, "ft feet", [2]float64{metresPerFoot}},
	{scenario.Volt, "v volt volts", [2]float64{1}},
	{scenario.Bar, "bar bars", [2]float64{1}},
	{scenario.Bar, "psi", [2]float64{barPerPsi}},
	{scenario.Bar, "kpa", [2]float64{0.01}},
	{scenario.Ampere, "a amp amps", [2]float64{1}},
	{scenario.Minute, "min minutes minutos", [2]float64{1}},
	{scenario.Hour, "h hours", [2]float64{1}},
	{scenario.Degree, "° deg degrees grados", [2]float64{1}},
	{scenario.Percent, "%", [2]float64{1}},
	{scenario.PercentAYear, "%", [2]float64{1}},
	{scenario.PercentPerKelvin, "% %/k", [2]float64{1}},
	{scenario.KWhPerDay, "kwh kwh/day kwh/24h kwh/d", [2]float64{1}},
	{scenario.KWhAMonth, "kwh", [2]float64{1}},
	{scenario.MoneyPerKWh, "/kwh", [2]float64{1}},
	{scenario.MoneyPerKWh, "ct cts c ¢ cent cents ct/kwh", [2]float64{0.01}},
	{scenario.MoneyAYear, "/year /a", [2]float64{1}},
	{scenario.MoneyAMonth, "/month", [2]float64{1}},
}

// unitOf finds a unit that was written; ok is false for one that the field's numbers have not.
func unitOf(of scenario.Unit, name string) (to [2]float64, ok bool) {
	for i := range writtenUnits {
		if u := &writtenUnits[i]; u.of == of && slices.Contains(strings.Fields(u.names), name) {
			return u.to, true
		}
	}
	return to, false
}

// directions are azimuths by name, an eighth of a turn apart, clockwise from north.
var directions = [...]string{
	"n north norte", "ne northeast noreste", "e east este", "se southeast sureste",
	"s south sur", "sw so southwest suroeste", "w o west oeste", "nw no northwest noroeste",
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
		for i, names := range directions {
			if slices.Contains(strings.Fields(names), strings.ReplaceAll(number, "-", "")) {
				return Input(float64(45 * i)), [2]float64{1}, true
			}
		}
	}
	at := strings.LastIndexFunc(number, func(r rune) bool { return r >= '0' && r <= '9' || r == '.' || r == ',' })
	if at >= 0 {
		tail := strings.Join(strings.Fields(number[at+1:]), "")
		if unit, named = unitOf(f.Unit, tail); named {
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
