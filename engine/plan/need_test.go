package plan

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// What a month's days need of the grid is what was bought, plus what uses lacked, less what
// the tank kept; what the hours can give is power times time.
func TestNeeds_Balance(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Backup, s.OutFrom, s.OutTo = scenario.Backup{Start: 15 * 60, End: 18 * 60}, 16*60, 16*60+30
	p, ws, y := prepare(t, s), new(simulate.Workspace), new(simulate.Year)
	p.RunYear(s.Backup, ws, y)
	days := [12]float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}
	for m, n := range Needs(p, y, s.Backup) {
		f := &y.Month[m]
		want := math.Max(0, f.BoughtJ+f.ShortfallJ-f.StoredJ) / days[m]
		if math.Abs(n.NeededJ-want) > 1e-6*(want+1) {
			t.Errorf("month %d: %.0f J needed, want %.0f", m, n.NeededJ, want)
		}
		if want := 2000 * 2.5 * 3600.0; math.Abs(n.CanJ-want) > 1e-6*want {
			t.Errorf("month %d: can give %.0f J, want %.0f", m, n.CanJ, want)
		}
	}
}

// A reading that a house with other showers would have gives back those showers.
func TestCalibrate_Property(t *testing.T) {
	for _, minutes := range []float64{2, 4.5, 7.5, 11} {
		s := scenario.Defaults(scenario.LatestVersion)
		s.ShowerMinutes = minutes
		ws, y := new(simulate.Workspace), new(simulate.Year)
		prepare(t, s).RunYear(s.Backup, ws, y)
		s.ShowerMinutes = 6
		c, err := Calibrate(prepare(t, s), nil, 11, y.Month[11].BoughtJ/simulate.JPerKWh, ws)
		if err != nil || c.Minutes != minutes || !c.Possible {
			t.Errorf("%g min: %+v, %v", minutes, c, err)
		}
	}
	c, err := Calibrate(prepare(t, scenario.Defaults(scenario.LatestVersion)), nil, 11, 2000, new(simulate.Workspace))
	if err != nil || c.Possible || c.Most >= 2000 {
		t.Errorf("2000 kWh: %+v, %v", c, err)
	}
}

// At the latest start the use is warm, a quarter of an hour later it is not.
func TestLatestStart_Property(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	s.Month, s.Sky, s.Modules = 11, scenario.Dull, 2
	p, ws, day := prepare(t, s), new(simulate.Workspace), new(simulate.Day)
	p.RunDay(s.Backup, 11, s.Sky, ws, day)
	found := 0
	for use := range day.Uses {
		at, ok := LatestStart(p, use, ws)
		if !ok {
			continue
		}
		found++
		for by, cool := range map[int]bool{0: false, StepMinutes: true} {
			b := s.Backup
			b.Start = at + by
			if b.Start > b.End {
				continue // no backup at all keeps it warm
			}
			p.RunDay(b, 11, s.Sky, ws, day)
			if day.Uses[use].RanCool != cool {
				t.Errorf("use %d, from %d: cool %v, want %v", use, b.Start, day.Uses[use].RanCool, cool)
			}
		}
	}
	if found == 0 {
		t.Error("no use has a latest start")
	}
}

// Windows of all lengths about one middle are those of the grid.
func TestLengths_AreYears(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	p, ws, y := prepare(t, s), new(simulate.Workspace), new(simulate.Year)
	n := 0
	for l := range Lengths(p) {
		n++
		if l.Hours != 3 {
			continue
		}
		p.RunYear(s.Backup, ws, y)
		if l.Cost != y.Total.Cost || l.CoolUses != float64(y.Total.CoolUses) {
			t.Errorf("3 h: %g, want %g", l.Cost, y.Total.Cost)
		}
	}
	if n != 49 {
		t.Errorf("%d lengths", n)
	}
}
