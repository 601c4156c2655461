package words

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/format"
)

// metric finds a unit that is not shown beside US customary ones. W/m2 and mm2 stay: light
// and cables are given in them there too.
var metric = regexp.MustCompile(`°C|(%[\[\]\d.]*[sdf]|\d|,)[ \x{a0}](L|K|m|km|bar)($|\PL)|L/min|W/K|litr`)

// No text in US customary units names a metric one, takes other arguments or is missing.
func TestInCustomary_Whole(t *testing.T) {
	for _, c := range All() {
		us := c.InCustomary()
		lists := us.lists()
		for i, list := range c.lists() {
			for k, text := range *list {
				got := (*lists[i])[k]
				if metric.MatchString(got) {
					t.Errorf("%q has a metric unit", got)
				}
				if strings.Join(verb.FindAllString(text, -1), " ") != strings.Join(verb.FindAllString(got, -1), " ") {
					t.Errorf("%q takes other arguments than %q", got, text)
				}
			}
		}
		for i, f := range us.Fields {
			if text := f.Name + f.Help + strings.Join(f.Choices, "; "); metric.MatchString(text) {
				t.Errorf("field %d: %q has a metric unit", i, text)
			}
			if len(f.Choices) != len(c.Fields[i].Choices) {
				t.Errorf("field %d: %d choices", i, len(f.Choices))
			}
		}
	}
}

func TestInCustomary_Texts(t *testing.T) {
	us := English().InCustomary()
	for _, c := range [][2]string{
		{us.Page[StripWater], "hot water ready, gal"},
		{us.Fields[scenario.LossKWh].Help, "Standing loss at 81 °F above the room, as on the label."},
		{us.Fields[scenario.RescueLitres].Help, "Hot water ready; it stops once 5 gal more are ready. 0: never."},
		{us.Fields[scenario.UsesFrom].Choices[3], "profile L, 11.7 kWh"},
		{us.Fields[scenario.CableSize].Choices[2], "4 (≈ 12 AWG)"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}

// A finding's numbers stand in the unit that its text names: 60 degC is 140 degF, 50 L are
// 13 gal (NIST SP 811, 2008, appendix B.8, from memory).
func TestFinding_Customary(t *testing.T) {
	format.SetCustomary(true)
	defer format.SetCustomary(false)
	us := English().InCustomary()
	for code, want := range map[care.Code][]string{
		care.StoredBelow60:         {"at 131 °F", "at 140 °F"},
		care.StoredScalds:          {"of 131 °F", "Above 140 °F"},
		care.BelowElement:          {"15 of 16 gal"},
		care.ReadingsImpossible:    {"from 131 to 140 °F", "room of 149 °F"},
		care.FailedClosed:          {"to 131 °F", "cut-out (140 °F"},
		care.Expands:               {"to 140 °F", "by 15 gal", "from 149 to"},
		care.ExpandsVessel:         {"from 149 to 140 °F", "by 15 gal"},
		care.StoredOverTap:         {"of 131 °F", "of 140 °F"},
		care.VesselSmall:           {"of 14 gal", "the 18 gal", "have 16 gal"},
		care.VesselNeeds:           {"of 871 psi", "have 15 gal", "valve's 942 psi"},
		care.SupplyNearRelief:      {"water's 798 psi", "valve's 870 psi"},
		care.SupplyHigh:            {"has 798 psi", "above 870 psi"},
		care.AboveLowVoltage:       {"(149 °F)", "reaches 55 V"},
		care.ConverterUnderVoltage: {"give 55 V"},
	} {
		got := us.Finding(care.Finding{Code: code, Args: [3]float64{55, 60, 65}})
		for _, part := range want {
			if !strings.Contains(got, part) {
				t.Errorf("%q does not say %q", got, part)
			}
		}
	}
	for _, code := range care.Codes() {
		if text := us.Findings[code]; strings.Contains(text, "°F") || strings.Contains(text, "gal") || strings.Contains(text, "psi") {
			if int(code) >= len(argUnits) || argUnits[code] == [3]scenario.Unit{} {
				t.Errorf("%q: its arguments are not converted", text)
			}
		}
	}
	p := scenario.Problem{Field: scenario.SetC, Code: scenario.OutOfRange, Got: "300"}
	if got, want := us.Problem(p), "Thermostat: 300 is outside what is allowed, 95 to 185\u202f°F."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// The even gauge next to each cable by area: diameters by ASTM B258, 0.127 mm 92^((36-n)/39)
// (from memory), 1/0 is gauge 0.
func TestGauges_Analytic(t *testing.T) {
	for i, text := range English().Fields[scenario.CableSize].Choices {
		mm2, _ := strconv.ParseFloat(text, 64)
		best, off := 0, math.Inf(1)
		for n := 20; n >= 0; n -= 2 {
			d := 0.127 * math.Pow(92, float64(36-n)/39)
			if e := math.Abs(math.Log(math.Pi / 4 * d * d / mm2)); e < off {
				best, off = n, e
			}
		}
		want := strconv.Itoa(best)
		if best == 0 {
			want = "1/0"
		}
		if gauges[i] != want {
			t.Errorf("%s mm2: %s AWG, the next is %s", text, gauges[i], want)
		}
	}
}
