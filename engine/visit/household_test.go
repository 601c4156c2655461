package visit

import (
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Effects are differences of whole years: each equals the year of the house set so, less its own;
// steps that are not allowed have none.
func TestEffects_Property(t *testing.T) {
	p := prepared(t, nil)
	ws := new(simulate.Workspace)
	more, less := Effects(p, nil, ws)
	var now, then simulate.Year
	p.RunYear(p.Scenario.Backup, ws, &now)
	for setting := range Settings {
		for _, c := range []struct {
			up bool
			e  Effect
		}{{true, more[setting]}, {false, less[setting]}} {
			to, _, ok := moved(&p.Scenario, setting, c.up)
			if ok != c.e.OK {
				t.Errorf("setting %d, up %v: allowed %v, effect %v", setting, c.up, ok, c.e.OK)
			}
			if !ok {
				continue
			}
			q, err := simulate.Prepare(&to, nil, nil)
			if err != nil {
				t.Fatal(err)
			}
			q.RunYear(to.Backup, ws, &then)
			if want := then.Total.Cost - now.Total.Cost; c.e.Cost != want {
				t.Errorf("setting %d, up %v: %g, not %g", setting, c.up, c.e.Cost, want)
			}
		}
	}
	if !more[SetShower].OK || more[SetShower].Cost <= 0 || less[SetShower].Cost >= 0 {
		t.Errorf("longer showers cost %g more, shorter %g", more[SetShower].Cost, less[SetShower].Cost)
	}
	if more[SetHeatUp].OK == less[SetHeatUp].OK {
		t.Error("a heat-up is neither on nor off")
	}
	hot := prepared(t, func(s *scenario.Scenario) { s.SetC = scenario.FieldOf(scenario.SetC).Max; s.Backup.AllDay = true })
	more, less = Effects(hot, nil, ws)
	if more[SetStat].OK || !less[SetStat].OK || more[SetHours].OK || less[SetHours].OK {
		t.Errorf("at its highest, all day: %+v, %+v", more, less)
	}
}

// Seasons are the days that the page shows of those months; in the south midwinter is in June.
func TestSeasons_Property(t *testing.T) {
	ws := new(simulate.Workspace)
	for _, c := range []struct {
		place  string
		winter int
	}{{"lisbon", 11}, {"cape-town", 5}} {
		p := prepared(t, func(s *scenario.Scenario) { s.Place = c.place })
		list := Seasons(p, ws)
		if list[0].Month != c.winter {
			t.Errorf("%s: midwinter in month %d", c.place, list[0].Month)
		}
		sum := func(s *Season) (j float64) {
			for _, w := range s.SunW {
				j += w * 3600
			}
			return j
		}
		if sum(&list[0]) >= sum(&list[2]) || list[0].BoughtJ < list[2].BoughtJ {
			t.Errorf("%s: %.0f J of sun in midwinter, %.0f in midsummer; bought %.0f, %.0f", c.place, sum(&list[0]), sum(&list[2]), list[0].BoughtJ, list[2].BoughtJ)
		}
		for i := range list {
			day := new(simulate.Day)
			p.RunDay(p.Scenario.Backup, list[i].Month, scenario.Typical, ws, day)
			if day.Flows.BoughtJ != list[i].BoughtJ || len(day.Trace.Points) != len(list[i].ReadyL) || len(list[i].UseAt) == 0 {
				t.Errorf("%s: month %d differs from its day", c.place, list[i].Month)
			}
		}
		if _, ok := Ready(p, list[0].Month, scenario.Dull, ws); !ok {
			t.Errorf("%s: nothing is known of the first use", c.place)
		}
	}
}
