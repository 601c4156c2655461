package state

import (
	"math"
	"strings"
	"testing"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/dial"
)

func TestGesture_CommitUndoCancel(t *testing.T) {
	s := Open("")
	first, cost := s.Scenario, s.Results.Year.Total.Cost
	s.Begin(0, dial.EndGrip, 0)
	if !s.Drag(60, Coarse) || s.Results.Year.Total.Cost == cost || s.CanUndo() {
		t.Error("a preview must change the figures and leave no undo")
	}
	s.Cancel()
	if s.Scenario != first || s.Results.Year.Total.Cost != cost {
		t.Errorf("cancelled: %+v", s.Scenario.Backup)
	}
	s.Begin(0, dial.EndGrip, 0)
	s.Drag(60, Coarse)
	s.Commit()
	if s.Scenario.Backup.End != 1140 || !s.Scenario.Known.Has(scenario.BackupHours) || !s.CanUndo() {
		t.Errorf("committed: %+v", s.Scenario.Backup)
	}
	s.Undo()
	if s.Scenario != first || s.Results.Year.Total.Cost != cost {
		t.Errorf("undone: %+v", s.Scenario)
	}
	s.Begin(0, dial.StartGrip, 0)
	s.Commit()
	if s.CanUndo() {
		t.Error("a gesture that changed nothing leaves an undo")
	}
}

func TestType_RefusedStays(t *testing.T) {
	s := Open("")
	before := s.Scenario
	s.Type(scenario.TankLitres, "-5")
	if s.Scenario != before || s.Text(scenario.TankLitres) != "-5" || s.Refused[scenario.TankLitres].Problem.Code != scenario.OutOfRange {
		t.Errorf("%+v", s.Refused)
	}
	s.Type(scenario.TankLitres, "150")
	if s.Scenario.TankLitres != 150 || len(s.Refused) != 0 || !strings.Contains(s.Link(), "tank=150") {
		t.Errorf("%v, link %s", s.Refused, s.Link())
	}
	s.Type(scenario.Price, "0,305")
	if s.Scenario.Price != 0.305 {
		t.Errorf("price %v", s.Scenario.Price)
	}
	s.Type(scenario.Place, "cape town")
	if s.Scenario.Place != "cape-town" {
		t.Errorf("place %s, %v", s.Scenario.Place, s.Refused)
	}
	s.Type(scenario.LowFrom, "22:00")
	if s.Scenario.LowFrom != 1320 {
		t.Errorf("low price from %d, %v", s.Scenario.LowFrom, s.Refused)
	}
	if back, problems := scenario.Decode(s.Link()); len(problems) > 0 || back != s.Scenario {
		t.Errorf("the link %s gives %v", s.Link(), problems)
	}
}

func TestConfirm_MarksOnly(t *testing.T) {
	s := Open("")
	if !s.Example() {
		t.Error("an empty link is the example house")
	}
	cost := s.Results.Year.Total.Cost
	s.Confirm(scenario.TankLitres)
	if s.Example() || s.Results.Year.Total.Cost != cost || !strings.Contains(s.Link(), "tank=200") {
		t.Errorf("link %s", s.Link())
	}
}

func TestAnswer_AcceptsAnything(t *testing.T) {
	for _, fragment := range []string{"", "v=1&tank=150", "#v=1&tank=-5&x", "%%%", strings.Repeat("x=1&", 40000), "v=1&place=tongaat-kwazulu-natal"} {
		got := map[string]any{}
		for _, v := range Answer(fragment) {
			got[v.Name] = v.Value
		}
		if got["version"] != ScriptVersion || !(got["cost_year"].(float64) > 0) || got["worst_balance_relative"].(float64) > 1e-9 {
			t.Errorf("%.20q: %v", fragment, got)
		}
		refused := got["refused"].([]any)
		if bad := !strings.HasPrefix(fragment, "v=1&tank=150") && fragment != ""; bad != (len(refused) > 0) {
			t.Errorf("%.20q: refused %v", fragment, refused)
		}
	}
}

func TestTap_SecondKeeps(t *testing.T) {
	s := Open("")
	s.Tap(400) // 06:40: nearer to 15:00 going back than to 18:00? the start grip
	if s.Ghost != 405 || s.Before == nil {
		t.Fatalf("after one tap: ghost %d", s.Ghost)
	}
	s.Tap(20)
	if s.Ghost != 15 {
		t.Errorf("a tap elsewhere shows %d", s.Ghost)
	}
	s.Tap(30)
	if s.Before != nil || s.Scenario.Backup.End != 15 {
		t.Errorf("kept: %+v", s.Scenario.Backup)
	}
}

func FuzzType(f *testing.F) {
	for id, text := range map[scenario.FieldID]string{
		scenario.TankLitres: "150", scenario.Place: "38.7 N 9.1 W", scenario.Currency: "€", scenario.SecondHours: "0", scenario.Month: "jan",
		scenario.WeatherFile: "0", scenario.MonthGHI: "7", scenario.Horizon: "90:15 120:22", scenario.Stages: "2000; 700", scenario.SummerTime: "29.03.-25.10.", scenario.Zone: "5,75",
	} {
		f.Add(int16(id), text)
	}
	s := Open("")
	f.Fuzz(func(t *testing.T, id int16, text string) {
		if id < 0 || int(id) >= len(scenario.Fields()) {
			return
		}
		next := s.Scenario
		if p := read(&next, scenario.FieldID(id), text); p != nil {
			return
		}
		if p := next.Problems(); len(p) > 0 {
			t.Fatalf("field %d, %q is taken and wrong: %v", id, text, p)
		}
	})
}

// A tap that waits for its second is taken back by any other change.
func TestTap_OtherChangeTakesBack(t *testing.T) {
	s := Open("")
	hours := s.Scenario.Backup
	s.Tap(400)
	s.Choose(scenario.Month, 6)
	if s.Before != nil || s.Scenario.Backup != hours || s.Scenario.Month != 6 {
		t.Errorf("after another month: %+v", s.Scenario.Backup)
	}
	s.Tap(400)
	s.Type(scenario.TankLitres, "150")
	if s.Scenario.Backup != hours || s.Scenario.TankLitres != 150 {
		t.Errorf("after another tank: %+v", s.Scenario.Backup)
	}
	s.Tap(400)
	s.Undo()
	if s.Scenario.Backup != hours || s.Scenario.TankLitres != 200 {
		t.Errorf("after undo: %+v", s.Scenario)
	}
}

func TestSecondWindow_Life(t *testing.T) {
	s := Open("")
	first, one := s.Scenario, s.Results.Year.Total.BoughtJ
	s.AddSecond()
	if len(s.Windows()) != 2 || s.Window(1).Length() != 60 || s.Results.Year.Total.BoughtJ <= one {
		t.Fatalf("added: %+v", s.Windows())
	}
	if back, problems := scenario.Decode(s.Link()); len(problems) > 0 || back != s.Scenario {
		t.Errorf("link %s: %v", s.Link(), problems)
	}
	// Its grip moves it and leaves the first; all day is out of its reach.
	s.Begin(1, dial.EndGrip, 0)
	for finger := 0.0; finger < 1500; finger += 90 {
		s.Drag(finger, Coarse)
	}
	if w := s.Window(1); w.AllDay || w.Length() != dial.DayMinutes-Coarse || s.Window(0) != (dial.Window{Start: 900, End: 1080}) {
		t.Errorf("turned round: %+v", s.Windows())
	}
	s.Cancel()
	if s.Window(1).Length() != 60 {
		t.Errorf("cancelled: %+v", s.Windows())
	}
	// Closed by its own grip it stays until the gesture ends.
	s.Begin(1, dial.EndGrip, 0)
	s.Drag(1380, Coarse)
	if len(s.Windows()) != 2 || s.Window(1).Length() != 0 {
		t.Errorf("closing: %+v", s.Windows())
	}
	s.Commit()
	if len(s.Windows()) != 1 || s.Results.Year.Total.BoughtJ != one {
		t.Errorf("closed: %+v", s.Windows())
	}
	s.Undo()
	s.RemoveSecond()
	if len(s.Windows()) != 1 {
		t.Errorf("removed: %+v", s.Windows())
	}
	s.Undo()
	s.Undo()
	if s.Scenario.Backup != first.Backup {
		t.Errorf("undone: %+v", s.Scenario.Backup)
	}
}

// Each place of the look-ahead is the year that putting the grip there gives, and
// the best is the cheapest that brings no more cool days.
func TestLookAhead_IsTheYearThere(t *testing.T) {
	s := Open("v=1&people=4&tank=150&backup2=0300-0330")
	s.Begin(0, dial.StartGrip, 0)
	limit := s.Before.Total.CoolDays
	link, held := s.BeginAhead()
	if !held {
		t.Fatal("no grip is held")
	}
	n := 0
	for part := range Work(AheadJob, plan.Whole, link, nil) {
		if n++; n == 40 {
			s.Drag(50, Coarse) // the finger moves on meanwhile
		}
		if !s.TakePart(AheadJob, part) {
			t.Fatal("refused in its gesture")
		}
	}
	if s.Ahead.Done != AheadPlaces {
		t.Fatalf("%d places", s.Ahead.Done)
	}
	best, ok := s.Ahead.Best(limit)
	for i := 0; i < AheadPlaces; i += 7 {
		there := Open("v=1&people=4&tank=150&backup2=0300-0330")
		there.SetWindow(0, there.Window(0).Put(dial.StartGrip, i*Coarse))
		y := there.Results.Year.Total
		if y.Cost != s.Ahead.Cost[i] || y.CoolDays != s.Ahead.CoolDays[i] {
			t.Errorf("place %d: %v and %d cool days, the year there has %v and %d", i, s.Ahead.Cost[i], s.Ahead.CoolDays[i], y.Cost, y.CoolDays)
		}
		if ok && y.CoolDays <= limit && y.Cost < s.Ahead.Cost[best] {
			t.Errorf("place %d is cheaper than the best, %d", i, best)
		}
	}
	if !ok {
		t.Error("no best place, though the present one keeps the promise")
	}
	s.Commit()
	if _, held := s.BeginAhead(); held || s.TakePart(AheadJob, Part{Steps: 1, Numbers: []float64{1, 2}}) {
		t.Error("looks ahead without a gesture")
	}
}

func TestFind_TakesWhatItFound(t *testing.T) {
	s := Open("")
	before := s.Results.Year.Total
	s.StartFind()
	for s.FindStep() {
	}
	found, ok := s.EndFind()
	saved := found.Saved
	now := s.Results.Year.Total
	if !ok || !found.Took || !found.Kept || saved <= 0 || now.Cost > before.Cost-saved+1e-9 || int(now.CoolUses) > s.Scenario.AcceptUses || !s.CanUndo() ||
		found.FlatFrom > s.Scenario.Backup.Start || found.FlatTo < s.Scenario.Backup.Start {
		t.Errorf("saved %v (%v), from %v to %v, %d cool days", saved, ok, before.Cost, now.Cost, now.CoolDays)
	}
	s.Undo()
	if s.Results.Year.Total != before {
		t.Error("one undo must bring the old hours back")
	}
	// Another change meanwhile ends the search without effect.
	s.StartFind()
	s.FindStep()
	s.Choose(scenario.Month, 7)
	hours := s.Scenario.Backup
	if s.FindStep() {
		t.Error("the search goes on after a change")
	}
	if _, ok := s.EndFind(); ok || s.Scenario.Backup != hours {
		t.Error("a search that was overtaken changes the hours")
	}
}

// A day of the year on the dial is that day of the year, through drags too, until a month or
// a sky is chosen.
func TestShowDay_IsTheYears(t *testing.T) {
	s := Open("v=1&modules=2&backup=1500-1600")
	s.ShowDay(17)
	same := func(when string) {
		t.Helper()
		is, want := s.Results.Day.Flows, s.Results.Year.Day[17]
		if is.BoughtJ != want.BoughtJ || is.CoolUses != want.CoolUses || math.Abs(is.DeliveredJ-want.DeliveredJ) > 1e-9*want.DeliveredJ {
			t.Errorf("%s: %+v, the year has %+v", when, is, want)
		}
	}
	same("shown")
	s.Begin(0, dial.EndGrip, 16*60)
	s.Drag(17*60, Coarse)
	same("dragged")
	s.Commit()
	same("kept")
	s.Choose(scenario.SkyKind, int(s.Scenario.Sky))
	if _, real := s.RealDay(); real || s.Results.Day.Flows.SunJ == s.Results.Year.Day[17].SunJ {
		t.Error("a sky is chosen and the day stays")
	}
}
