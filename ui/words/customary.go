//go:build !outside

package words

import (
	"math"
	"regexp"
	"strconv"

	"suncask/engine/scenario"
	"suncask/ui/format"
)

// InCustomary is a catalogue whose texts name US customary units. Numbers that texts contain
// are converted here; those that texts are given, by package format.
func (c *Catalogue) InCustomary() *Catalogue {
	us := new(Catalogue)
	lists := us.lists()
	for i, list := range c.lists() {
		for _, text := range *list {
			*lists[i] = append(*lists[i], customaryText(text))
		}
	}
	for _, text := range c.Visit {
		us.Visit = append(us.Visit, customaryText(text))
	}
	us.Lesson, us.Cards = c.Lesson, c.Cards // a class reckons in units of the SI
	for _, f := range c.Fields {
		t := FieldText{Name: f.Name, Help: customaryText(f.Help)}
		for _, choice := range f.Choices {
			t.Choices = append(t.Choices, customaryText(choice))
		}
		us.Fields = append(us.Fields, t)
	}
	us.Units[scenario.WattPerKelvin] = "Btu/h a °F"
	us.Units[scenario.Metre] = "ft"
	us.Units[scenario.Bar] = "psi"
	us.Units[scenario.Litre], us.Units[scenario.LitrePerMinute], us.Units[scenario.Kelvin] = "gal", "gal/min", "°F"
	size := &us.Fields[scenario.CableSize]
	for i, mm2 := range size.Choices {
		size.Choices[i] = mm2 + " (\u2248 " + gauges[i] + " AWG)"
	}
	return us
}

// gauges are the even American wire gauges next to the cable sizes by area (ASTM B258,
// computed: TestGauges_Analytic).
var gauges = [...]string{"16", "14", "12", "10", "8", "6", "4", "2", "1/0"}

// A text's numbers and units; a space of either kind between them.
var (
	celsiusNumber = regexp.MustCompile(`(\d+)([ \x{a0}])°C`)
	kelvinNumber  = regexp.MustCompile(`(\d+)([ \x{a0}])K\b`)
	litreNumber   = regexp.MustCompile(`(\d+)([ \x{a0}])L\b`)
	kelvinGiven   = regexp.MustCompile(`(%[\[\]\d.]*[sdf][ \x{a0}])K\b`)
	litreGiven    = regexp.MustCompile(`((?:%[\[\]\d.]*[sdf][ \x{a0}])|, )L\b`)
	barGiven      = regexp.MustCompile(`(%[\[\]\d.]*[sdf][ \x{a0}])bar\b`)
	milesGiven    = regexp.MustCompile(`(%[\[\]\d.]*[sdf][ \x{a0}])km\b`)
	celsius       = regexp.MustCompile(`°C`)
)

func customaryText(text string) string {
	convert := func(number *regexp.Regexp, unit string, of func(float64) float64, decimals int) {
		text = number.ReplaceAllStringFunc(text, func(found string) string {
			part := number.FindStringSubmatch(found)
			v, _ := strconv.ParseFloat(part[1], 64)
			return strconv.FormatFloat(of(v), 'f', decimals, 64) + part[2] + unit
		})
	}
	convert(celsiusNumber, "°F", func(v float64) float64 { return format.FahrenheitAtZero + format.FahrenheitPerK*v }, 0)
	convert(kelvinNumber, "°F", func(v float64) float64 { return format.FahrenheitPerK * v }, 0)
	convert(litreNumber, "gal", func(v float64) float64 { return math.Round(v / format.LitresPerGallon) }, 0)
	text = kelvinGiven.ReplaceAllString(text, "${1}°F")
	text = litreGiven.ReplaceAllString(text, "${1}gal")
	text = barGiven.ReplaceAllString(text, "${1}psi")
	text = milesGiven.ReplaceAllString(text, "${1}mi")
	return celsius.ReplaceAllString(text, "°F")
}
