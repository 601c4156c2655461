package state

import (
	"math"
	"testing"

	"suncask/engine/published"
	"suncask/engine/simulate"
	"suncask/engine/visit"
)

// What scripts get of a visit: the check values' light (testdata/visit.json: 9.05 A at 45 degC are
// 647 W/m2), wirings as the page's own judgement, and no light, no expectations.
func TestAnswerVisit(t *testing.T) {
	var link string
	published.Block(t, "visit.json", "house", &link)
	nan := math.NaN()
	get := func(list []Named) map[string]any {
		m := map[string]any{}
		for _, v := range list {
			m[v.Name] = v.Value
		}
		return m
	}
	got := get(AnswerVisit(link, VisitAsk{Wm2: nan, CellC: 45, BackC: nan, AirC: nan, ShortA: 9.05, Readings: visit.Readings{visit.Sheath: 0, visit.StringCode(visit.OpenOf, 1): -200}}))
	if light := got["light_wm2"].(float64); math.Abs(light-647) > 0.1 {
		t.Errorf("%g W/m2", light)
	}
	outcomes := got["outcomes"].(map[string]any)
	if outcomes["ri"].([]any)[0] != "lower" || outcomes["v1"].([]any)[0] != "reversed" {
		t.Errorf("%v", outcomes)
	}
	s := Open(link)
	rows := got["wirings"].([]any)
	found := false
	for _, r := range rows {
		row := r.(map[string]any)
		if row["in_series"] == 6 && row["coupling"] == "converter" {
			found = math.Abs(row["offered_kwh"].(float64)-s.Prepared.Potential.ElementJ/simulate.JPerKWh) < 1e-9 &&
				math.Abs(row["into_water_kwh"].(float64)-s.Results.Year.Total.SunJ/simulate.JPerKWh) < 1e-9
		}
	}
	if len(rows) != 12 || !found {
		t.Errorf("%d wirings; the house's own is its potential and its year: %v", len(rows), found)
	}
	for _, ask := range []VisitAsk{{nan, nan, nan, nan, nan, nil}, {800, nan, nan, nan, nan, nil}, {0, 45, nan, nan, nan, nil}} {
		if got := get(AnswerVisit("v=2&tank=nonsense", ask)); got["expected"] != nil || len(got["refused"].([]any)) != 1 {
			t.Errorf("%+v: %v", ask, got["expected"])
		}
	}
}

// Readings travel in a link only where they are asked for; wrecked ones are refused, not half read.
func TestReadings_InLinks(t *testing.T) {
	r := visit.Readings{visit.StringCode(visit.OpenOf, 1): 207.4, visit.Sheath: 0}
	s := Open("v=2&modules=6&view=visit")
	if link := s.Address(); link != "v=2&modules=6&view=visit" {
		t.Error(link)
	}
	link := WithReadings(s.Address(), r)
	to := Open(link)
	if to.Readings.String() != r.String() || to.Entry != Visit || len(to.LinkProblems) > 0 || to.Address() != s.Address() {
		t.Errorf("%s becomes %q, %v", link, to.Readings, to.LinkProblems)
	}
	if bad := Open("v=2&read=v1:x"); len(bad.LinkProblems) != 1 || len(bad.Readings) != 0 {
		t.Errorf("%v, %v", bad.Readings, bad.LinkProblems)
	}
	if len(WithReadings("v=2", nil)) != 3 {
		t.Error("no readings are some")
	}
}
