package towns

import (
	"math"
	"testing"
)

func TestReadPoint(t *testing.T) {
	none := math.NaN()
	for text, want := range map[string]Point{
		"53.48,-2.24":                 {53.48, -2.24, none},
		"53.48, -2.24":                {53.48, -2.24, none},
		" 53.48 -2.24 ":               {53.48, -2.24, none},
		"53.48; -2.24; 51":            {53.48, -2.24, 51},
		"53.48, -2.24, 51 m":          {53.48, -2.24, 51},
		"53.48 N 2.24 W":              {53.48, -2.24, none},
		"53.48N, 2.24W":               {53.48, -2.24, none},
		"N 53.48 W 2.24":              {53.48, -2.24, none},
		"2.24 W 53.48 N":              {53.48, -2.24, none},
		"53.48\u00b0 N, 2.24\u00b0 W": {53.48, -2.24, none},
		"53\u00b028'N 2\u00b014'W":    {53 + 28.0/60, -2 - 14.0/60, none},
		"53\u00b0 28\u2032 30\u2033 N, 2\u00b0 14\u2032 15\u2033 W": {53 + 28.0/60 + 30.0/3600, -2 - 14.0/60 - 15.0/3600, none},
		"33\u00b055'31''S 18\u00b025'26''E":                         {-33 - 55.0/60 - 31.0/3600, 18 + 25.0/60 + 26.0/3600, none},
		"40,4 N 3,7 O":                                              {40.4, -3.7, none},
		"-33,9 18,4":                                                {-33.9, 18.4, none},
		"38,-9,95":                                                  {38, -9, 95},
		"38,9":                                                      {38, 9, none},
		"-12.5 130.85 30m":                                          {-12.5, 130.85, 30},
		"38.7 N 9.1 W 95":                                           {38.7, -9.1, 95},
		"0 0":                                                       {0, 0, none},
		"\u221233.9 18.4":                                           {-33.9, 18.4, none},
		"31.5 n 34.75 e -400 m":                                     {31.5, 34.75, -400},
	} {
		p, ok := ReadPoint(text)
		if !ok || math.Abs(p.LatDeg-want.LatDeg) > 1e-9 || math.Abs(p.LonDeg-want.LonDeg) > 1e-9 || !(p.HeightM == want.HeightM || math.IsNaN(p.HeightM) && math.IsNaN(want.HeightM)) {
			t.Errorf("%q is %+v (%v), want %+v", text, p, ok, want)
		}
	}
	for _, text := range []string{"", "12", "12 S", "53.48 N 2.24", "53 N 54 S", "1 E 2 W", "53\u00b061'N 2\u00b0W", "1 2 3 4", "lisbon", "san 1 2", "1..2 3", "-53 S 2 W", "- -", "10 de octubre", "1 2 3 m m", "N S", "1\u00b02\u00b0 3", "\u00b0 1 2"} {
		if p, ok := ReadPoint(text); ok {
			t.Errorf("%q is %+v", text, p)
		}
	}
}
