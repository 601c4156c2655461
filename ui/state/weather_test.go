package state

import (
	"math"
	"strings"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/climate/hourly"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/words"
)

func aFile() *hourly.Result {
	r := &climate.Record{LatDeg: 40, LonDeg: 3, ElevationM: 12}
	for h := range climate.Hours {
		if at := h % 24; at > 6 && at < 18 {
			r.Global[h], r.Diffuse[h] = 3500, 1200
		}
		r.Air[h] = 1500
	}
	return &hourly.Result{Record: r, Layout: "EPW", Rows: 8760, Years: 1, ClockMin: -43.6}
}

// A file takes the house to its place; its shift is offered once; each step is an
// undo away; without the file the built-in climate stands in, and says so.
func TestTakeFile(t *testing.T) {
	s := Open("v=1&light=......700.....")
	before := s.Scenario
	file := aFile()
	s.TakeFile(file)
	if !s.Prepared.Weather.Measured || s.Scenario.Place != "40,3,12" || s.Scenario.GHI != (climate.Monthly{}) {
		t.Fatalf("at %q with %+v", s.Scenario.Place, s.Scenario.GHI)
	}
	if s.ShiftOffer() != 44 {
		t.Errorf("offered %g min", s.ShiftOffer())
	}
	s.Shift()
	if s.Scenario.ShiftMin != 44 || s.ShiftOffer() != 0 {
		t.Errorf("shifted by %g, offered %g", s.Scenario.ShiftMin, s.ShiftOffer())
	}
	link, bought := s.Link(), s.Results.Year.Total.BoughtJ
	other := Open(link)
	if !other.Prepared.FileMissing || other.Prepared.Weather.Measured {
		t.Error("another device has the file")
	}
	if refused := other.answer()[len(other.answer())-1].Value.([]any); len(refused) != 1 {
		t.Errorf("a script is told %q", refused)
	}
	other.Keep(file.Record)
	if other.Prepared.FileMissing || math.Abs(other.Results.Year.Total.BoughtJ-bought) > 1e-6 {
		t.Error("the kept file gives another year")
	}
	s.DropFile()
	if s.Prepared.Weather.Measured || s.Scenario.Weather != "" || s.Scenario.Known.Has(scenario.WeatherFile) {
		t.Error("the file is still in use")
	}
	s.Undo()
	if !s.Prepared.Weather.Measured {
		t.Error("undo does not bring the file back")
	}
	s.Undo()
	s.Undo()
	if s.Scenario != before {
		t.Errorf("after undo %+v", s.Scenario)
	}
}

// Undo comes back to the weather file of then, whichever is open now.
func TestUndo_EarlierFile(t *testing.T) {
	s := Open("")
	first, second := aFile(), aFile()
	second.Record.Global[200] += 500
	s.TakeFile(first)
	bought := s.Results.Year.Total.BoughtJ
	s.TakeFile(second)
	if s.Scenario.Weather == first.Record.Key() || s.Results.Year.Total.BoughtJ == bought {
		t.Fatal("the second file is not another")
	}
	s.Undo()
	if s.Prepared.FileMissing || s.Results.Year.Total.BoughtJ != bought {
		t.Errorf("undone: file missing %v, %g J bought, before %g", s.Prepared.FileMissing, s.Results.Year.Total.BoughtJ, bought)
	}
}

// A link that names another file is not answered from the one that is open.
func TestLoad_AnotherFile(t *testing.T) {
	s := Open("")
	s.TakeFile(aFile())
	s.Load("v=1&place=40,3,12&weather=00000001")
	if !s.Prepared.FileMissing || s.Prepared.Weather.Measured {
		t.Error("another file's weather was taken")
	}
}

func TestTypeMonth(t *testing.T) {
	s := Open("")
	s.TypeMonth(scenario.MonthGHI, 6, "6,5")
	if text, known := s.MonthText(scenario.MonthGHI, 6); text != "6.5" || !known {
		t.Errorf("July %q, known %v", text, known)
	}
	s.TypeMonth(scenario.MonthGHI, 6, "11.5")
	if r := s.Refused[scenario.MonthGHI]; r.Problem.Code != scenario.MonthTooBright || r.Problem.Max < 7.5 || r.Problem.Max > 11.5 || s.Scenario.GHI.Value[6] != 6.5 {
		t.Errorf("%+v, July %g", r, s.Scenario.GHI.Value[6])
	}
	// What is named as allowed is taken.
	most := s.Refused[scenario.MonthGHI].Problem.Max
	s.TypeMonth(scenario.MonthGHI, 6, format.Input(math.Floor(100*most)/100))
	if r, ok := s.Refused[scenario.MonthGHI]; ok {
		t.Errorf("%.2f was named as allowed: %+v", most, r.Problem)
	}
	for _, bad := range []string{"warm", "99", "nan"} {
		s.TypeMonth(scenario.MonthTempC, 0, bad)
		if _, ok := s.Refused[scenario.MonthTempC]; !ok {
			t.Errorf("%q was taken", bad)
		}
	}
	s.TypeMonth(scenario.MonthColdC, 0, "9")
	if text, known := s.MonthText(scenario.MonthColdC, 0); text != "9" || !known {
		t.Errorf("cold water %q, known %v", text, known)
	}
	s.TypeMonth(scenario.MonthGHI, 6, "")
	if s.Scenario.GHI != (climate.Monthly{}) || s.Scenario.Known.Has(scenario.MonthGHI) {
		t.Error("an emptied month is still known")
	}
}

// A link whose months are too bright is refused month by month, as what they are: its place
// and its other months stay.
func TestLoad_MonthsTooBright(t *testing.T) {
	s := Open("v=1&place=seville&light=900......710.....1100&tank=150")
	if len(s.LinkProblems) != 2 {
		t.Fatalf("%+v", s.LinkProblems)
	}
	for i, month := range []float64{0, 11} {
		p := s.LinkProblems[i]
		if p.Field != scenario.MonthGHI || p.Code != scenario.MonthTooBright || p.Min != month || !(p.Max > 2 && p.Max < 5) {
			t.Errorf("%+v", p)
		}
		if text := words.English().Problem(p); !strings.Contains(text, "brighter than a cloudless sky") || !strings.Contains(text, []string{"January", "December"}[i]) {
			t.Error(text)
		}
	}
	if s.Scenario.Place != "seville" || s.Scenario.TankLitres != 150 || !s.Scenario.GHI.Known[6] || s.Scenario.GHI.Known[0] || !s.Scenario.Known.Has(scenario.MonthGHI) {
		t.Errorf("place %s, tank %g, months %v", s.Scenario.Place, s.Scenario.TankLitres, s.Scenario.GHI.Known)
	}
	if s := Open("v=2&place=seville&light=.....1200......"); s.Scenario.Known.Has(scenario.MonthGHI) || len(s.LinkProblems) != 1 || s.LinkProblems[0].Field != scenario.MonthGHI {
		t.Errorf("%+v", s.LinkProblems)
	}
	for n, link := 0, "v=2&place=seville&light=1300"; n < 1; n++ {
		for range 11 {
			link += ".1300"
		}
		if s := Open(link); len(s.LinkProblems) != 12 || s.Scenario.Place != "seville" {
			t.Errorf("%d problems, place %s", len(s.LinkProblems), s.Scenario.Place)
		}
	}
}
