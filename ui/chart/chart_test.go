package chart

import (
	"encoding/json"
	"testing"

	"suncask/ui/curve"
)

// Every chart has the series and axes that the page's data has, in both themes.
func TestAll_MatchesData(t *testing.T) {
	raw, err := All()
	if err != nil {
		t.Fatal(err)
	}
	var themes map[string]map[string]struct {
		Animation *bool
		Grid      []any
		YAxis     []any
		Series    []struct{ Type string }
	}
	if err := json.Unmarshal(raw, &themes); err != nil {
		t.Fatal(err)
	}
	want := map[string]struct{ axes, series int }{
		"strip":   {curve.StripAxes, curve.StripSeries},
		"climate": {curve.ClimateAxes, curve.ClimateSeries},
		"iv":      {curve.IVAxes, curve.IVSeries},
		"year":    {1, curve.YearSeries},
		"cash":    {1, curve.CashSeries},
		"lengths": {curve.LengthAxes, curve.LengthSeries},
		"flow":    {0, 1},
	}
	for _, theme := range []string{"light", "dark"} {
		if len(themes[theme]) != len(want) {
			t.Errorf("%s has %d charts, want %d", theme, len(themes[theme]), len(want))
		}
		for name, w := range want {
			o := themes[theme][name]
			if o.Animation == nil || *o.Animation || len(o.Grid) != w.axes || len(o.YAxis) != w.axes || len(o.Series) != w.series {
				t.Errorf("%s, %s: %+v", theme, name, o)
			}
			for i, s := range o.Series {
				if s.Type != "line" && s.Type != "bar" && !(s.Type == "sankey" && name == "flow") {
					t.Errorf("%s, %s: series %d: %+v", theme, name, i, s)
				}
			}
		}
	}
}
