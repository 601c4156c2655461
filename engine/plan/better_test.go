package plan

import (
	"math/rand/v2"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

func prepare(t *testing.T, s scenario.Scenario) *simulate.Prepared {
	t.Helper()
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// What is found costs no more and runs cool on no more days than the start, is a
// real year, and no move of one edge or of both betters it.
func TestBetter_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 9))
	for i := range 6 {
		s := scenario.Defaults(scenario.LatestVersion)
		s.People, s.When = 1+r.IntN(5), scenario.When(r.IntN(3))
		s.TankLitres, s.Modules = float64(100+r.IntN(200)), 1+r.IntN(6)
		s.Backup = scenario.Backup{Start: 15 * r.IntN(96), End: 15 * r.IntN(96)}
		if i%3 == 0 {
			s.Backup = scenario.Backup{StartFrom: scenario.SolarNoon, Start: 60, End: 18 * 60}
		}
		p := prepare(t, s)
		var before, after simulate.Year
		p.RunYear(s.Backup, new(simulate.Workspace), &before)
		b := NewBetter(p, s.Backup)
		for b.Step() {
		}
		found, cost := b.Result()
		p.RunYear(found, new(simulate.Workspace), &after)
		if after.Total.Cost != cost || cost > before.Total.Cost+costSlack || after.Total.CoolDays > before.Total.CoolDays {
			t.Errorf("from %+v (%.2f, %d cool days) to %+v (%.2f, year %.2f, %d cool days)", s.Backup, before.Total.Cost, before.Total.CoolDays, found, cost, after.Total.Cost, after.Total.CoolDays)
		}
		s.Backup = found
		again := NewBetter(prepare(t, s), found)
		for again.Step() {
		}
		if next, _ := again.Result(); next != found {
			t.Errorf("%+v is not where it stays: %+v", found, next)
		}
		t.Logf("%.2f to %.2f in %d years", before.Total.Cost, cost, b.Runs())
	}
}

// Against every pair of edges on an hourly grid: found within the tenth of a
// percent, or better, in the example house.
func TestBetter_AgainstGrid(t *testing.T) {
	s := scenario.Defaults(scenario.LatestVersion)
	p := prepare(t, s)
	b := NewBetter(p, s.Backup)
	for b.Step() {
	}
	_, cost := b.Result()
	ws, y := new(simulate.Workspace), new(simulate.Year)
	p.RunYear(s.Backup, ws, y)
	limit, least := y.Total.CoolDays, y.Total.Cost
	for start := 0; start < 1440; start += 60 {
		for end := 0; end < 1440; end += 60 {
			p.RunYear(scenario.Backup{Start: start, End: end}, ws, y)
			if y.Total.CoolDays <= limit {
				least = min(least, y.Total.Cost)
			}
		}
	}
	t.Logf("found %.3f, best of the hourly grid %.3f", cost, least)
	if cost > least*1.001 {
		t.Errorf("found %.3f, the hourly grid has %.3f", cost, least)
	}
}
