package format

import (
	"math"
	"strconv"
	"strings"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// customary tells whether lengths, volumes and temperatures are shown in US customary units.
var customary bool

// SetCustomary chooses between metric and US customary units. Call it once, before numbers
// are written.
func SetCustomary(on bool) { customary = on }

// Customary tells whether they are.
func Customary() bool { return customary }

// What a metric unit is in US customary ones: NIST SP 811 (2008), appendix B.8, from
// memory; the gallon, foot and mile are exact. A psi is 6894.757 Pa.
const (
	LitresPerGallon  = 3.785411784
	metresPerFoot    = 0.3048
	kilometrePerMile = 1.609344
	btuPerHourOfW    = 3.412141633
	barPerPsi        = 0.06894757
	FahrenheitPerK   = 1.8
	FahrenheitAtZero = 32
)

// scale is how a unit is shown: the metric value times factor, plus offset.
func scale(u scenario.Unit) (factor, offset float64) {
	if customary {
		switch u {
		case scenario.Litre, scenario.LitrePerMinute:
			return 1 / LitresPerGallon, 0
		case scenario.Celsius:
			return FahrenheitPerK, FahrenheitAtZero
		case scenario.Kelvin:
			return FahrenheitPerK, 0
		case scenario.Metre:
			return 1 / metresPerFoot, 0
		case scenario.WattPerKelvin:
			return btuPerHourOfW / FahrenheitPerK, 0
		case scenario.Bar:
			return 1 / barPerPsi, 0
		}
	}
	return 1, 0
}

// Shown is a metric value in the unit that is shown.
func Shown(u scenario.Unit, v float64) float64 {
	factor, offset := scale(u)
	return v*factor + offset
}

// Metric is the inverse of Shown.
func Metric(u scenario.Unit, v float64) float64 {
	factor, offset := scale(u)
	return (v - offset) / factor
}

// In writes a metric value in the unit that is shown, gallons with one decimal more than
// litres.
func In(u scenario.Unit, v float64, decimals int) string {
	if customary && u == scenario.Litre {
		decimals++
	}
	return Number(Shown(u, v), decimals)
}

// Kilometres writes a distance in kilometres or miles.
func Kilometres(km float64) string {
	if customary {
		km /= kilometrePerMile
	}
	return Number(km, 0)
}

// Converted tells whether a field is shown in another unit than it is kept in.
func Converted(f *scenario.Field) bool {
	factor, _ := scale(f.Unit)
	return factor != 1
}

// places is how many decimals a converted field is shown with: not coarser than its steps,
// and not so fine that two numbers in its box would be kept as one. Monthly values are kept
// in whole steps, others in tenths.
func places(f *scenario.Field) int {
	factor, _ := scale(f.Unit)
	n := -math.Log10(f.Step * factor)
	if f.Kind == scenario.Months {
		return max(0, int(math.Floor(n)))
	}
	return max(0, int(math.Ceil(n)))
}

// Value writes a field's value for its box.
func Value(f *scenario.Field, v float64) string {
	if f.Empty(v) {
		return ""
	}
	if !Converted(f) {
		return Input(v)
	}
	return Input(roundTo(Shown(f.Unit, v), places(f), math.Round))
}

func roundTo(v float64, decimals int, round func(float64) float64) float64 {
	text := strconv.FormatFloat(round(v*math.Pow10(decimals))/math.Pow10(decimals), 'f', decimals, 64)
	v, _ = strconv.ParseFloat(text, 64)
	return v + 0 // no negative zero
}

// Range writes the least and the most that a field's box takes.
func Range(f *scenario.Field) (least, most string) {
	if !Converted(f) {
		return Input(f.Min), Input(f.Max)
	}
	n := places(f)
	return Input(roundTo(Shown(f.Unit, f.Min), n, math.Ceil)), Input(roundTo(Shown(f.Unit, f.Max), n, math.Floor))
}

// Taken is the metric value of what was typed into a field's box, or what is wrong with it.
func Taken(f *scenario.Field, text string) (float64, *scenario.Problem) {
	if f.Optional && strings.TrimSpace(text) == "" {
		return scenario.Unknown, nil
	}
	number, unit, named := written(f, text)
	v, ok := Parse(number)
	if !ok {
		return 0, &scenario.Problem{Field: f.ID, Code: scenario.NotANumber, Got: text, Min: f.Min, Max: f.Max}
	}
	if f.Max < 0 && v > 0 { // number pads without a minus
		v = -v
	}
	step, metric := f.Step, v
	if Converted(f) {
		step, metric = math.Pow10(-places(f)), Metric(f.Unit, v)
	}
	if named {
		step, metric = 0, inUnit(v, unit)
	}
	p := f.Check(metric)
	if p != nil && p.Code == scenario.OffStep {
		p = nil // snapped below
	}
	if p == nil && (f.Kind == scenario.Number || Converted(f)) && step > 0 && !scenario.Multiple(v, step) {
		p = &scenario.Problem{Field: f.ID, Code: scenario.OffStep, Min: step}
	}
	if p != nil {
		p.Got = text
		return 0, p
	}
	if whole := math.Round(metric/f.Step) * f.Step; Value(f, whole) == Value(f, metric) && f.Check(whole) == nil {
		metric = whole // the shorter link reads back as it was typed
	}
	return f.Snap(metric), nil
}

// Degrees writes a temperature in whole degrees, without their unit.
func Degrees(tempC float64) string { return In(scenario.Celsius, tempC, 0) }

// KWh writes an energy in kWh, without their unit.
func KWh(joules float64, decimals int) string { return Number(joules/simulate.JPerKWh, decimals) }
