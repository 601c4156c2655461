package simulate

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/solar"
)

// Hours follow the sun's own times: noon after the equation of time as Duffie &
// Beckman's (1.5.3) gives it to half a minute (from memory), sunset where the
// centre's elevation is -50' (almanac convention).
func TestHours_FollowSun(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	at := &p.Weather.Place
	b := scenario.Backup{StartFrom: scenario.SolarNoon, Start: 90, EndFrom: scenario.Sunset, End: -30}
	for day := 0; day < climate.Days; day += 7 {
		from, to, ok := p.Hours(b, day)
		if !ok {
			t.Fatalf("day %d has no hours", day)
		}
		turn := 2 * math.Pi * float64(day) / 365
		equation := 229.2 * (0.000075 + 0.001868*math.Cos(turn) - 0.032077*math.Sin(turn) - 0.014615*math.Cos(2*turn) - 0.04089*math.Sin(2*turn))
		noon := 720 + 60*at.Clock.At(day) - 4*at.LonDeg - equation
		if math.Abs(from-90-noon) > 1 {
			t.Errorf("day %d: solar noon at %.1f min, by Spencer's series %.1f", day, from-90, noon)
		}
		// The sun where the hours say it sets.
		jd := solar.JulianDay(2001, 1, 1+day, 0) + ((to+30)/60-at.Clock.At(day))/24
		sun := solar.At(jd)
		w := (to + 30 - noon) * math.Pi / 720
		lat := at.LatDeg * math.Pi / 180
		height := math.Asin(math.Sin(lat)*math.Sin(sun.Declination) + math.Cos(lat)*math.Cos(sun.Declination)*math.Cos(w))
		if off := height*180/math.Pi + 50.0/60; math.Abs(off) > 0.3 {
			t.Errorf("day %d: at sunset the sun stands %.2f deg off the horizon", day, off)
		}
	}
}

// An interval whose end does not come after its start is empty that day, never nearly
// a whole day, and the days are listed.
func TestHours_EmptyDays(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	b := scenario.Backup{StartFrom: scenario.Sunset, Start: -60, End: 18 * 60}
	empty := p.EmptyDays(b)
	if len(empty) < 100 || len(empty) > 265 {
		t.Fatalf("%d empty days", len(empty))
	}
	y := year(t, p, b)
	none := map[int]bool{}
	for _, d := range empty {
		none[d] = true
		if y.Day[d].BoughtJ != 0 {
			t.Errorf("day %d has no hours and buys %g J", d, y.Day[d].BoughtJ)
		}
	}
	for d := range climate.Days {
		from, to, ok := p.Hours(b, d)
		if ok == none[d] || ok && to-from > 6*60 {
			t.Errorf("day %d: %g to %g, empty %v", d, from, to, none[d])
		}
	}
}

// Without sunrise and sunset the sun's mark is six hours after solar noon.
func TestHours_PolarDay(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.Place = "69.65,18.96,10"; s.Settle() })
	polar := 0
	for day := range climate.Days {
		if p.SunSets(day) {
			continue
		}
		polar++
		if set, noon := p.Mark(scenario.Sunset, day), p.Mark(scenario.SolarNoon, day); math.Abs(set-noon-360) > 1e-9 {
			t.Errorf("day %d: sunset %g, noon %g", day, set, noon)
		}
	}
	if polar < 80 || polar > 150 {
		t.Errorf("%d polar days at 69.65 deg", polar)
	}
	if y := year(t, p, scenario.Backup{StartFrom: scenario.Sunset, Start: -180, EndFrom: scenario.Sunset}); y.WorstBalance > 1e-9 {
		t.Errorf("balance %g", y.WorstBalance)
	}
}

// Hours that follow the sun buy, day by day, what hours by the clock at the same
// minutes buy from the same midnight, and a day replayed is the year's.
func TestHours_SameAsClock(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	p := prepared(t, func(*scenario.Scenario) {})
	// Conduction's stretches and the parts of draws follow the clock's hours.
	p.tankParams.Geometry.ConductivityWPerMK = 0
	fine := p.steps[p.coarse:]
	p.steps, p.coarse = append(fine[:len(fine):len(fine)], fine...), len(fine)
	ws, d := new(Workspace), new(Day)
	for range 12 {
		b := scenario.Backup{StartFrom: scenario.SolarNoon, Start: 5 * (r.IntN(144) - 72), EndFrom: scenario.Sunset, End: 5 * r.IntN(40)}
		y := *year(t, p, b)
		for day := 3; day < climate.Days; day += 19 {
			from, to, ok := p.Hours(b, day)
			if !ok || from < 0 || to > scenario.DayMinutes {
				t.Fatalf("%+v on day %d: %g to %g", b, day, from, to)
			}
			p.Replay(b, &y, day, ws, d)
			if math.Abs(d.Flows.BoughtJ-y.Day[day].BoughtJ) > 1e-3 || math.Abs(d.Flows.SunJ-y.Day[day].SunJ) > 1e-3 {
				t.Errorf("%+v: day %d replayed differs", b, day)
			}
			// Whole minutes of the clock on either side hold what the exact hours buy.
			inner := scenario.Backup{Start: int(math.Ceil(from)), End: int(math.Floor(to))}
			p.Replay(inner, &y, day, ws, d)
			if least := d.Flows.BoughtJ - 1; y.Day[day].BoughtJ < least || y.Day[day].BoughtJ > d.Flows.BoughtJ+2*60*p.backupW {
				t.Errorf("%+v: day %d buys %g J, by the clock %g", b, day, y.Day[day].BoughtJ, d.Flows.BoughtJ)
			}
		}
	}
}

// Hours that reach past midnight are the next day's: nothing of them is lost.
func TestHours_PastMidnight(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.Modules = 0 })
	// Without sun the house only feels the clock; the zone keeps noon within minutes
	// of a fixed time, so the year's energy is that of the clock's hours within 1 %.
	noon := 0.0
	for day := range climate.Days {
		noon += p.Mark(scenario.SolarNoon, day) / climate.Days
	}
	start := int(math.Round((noon+600)/5)) * 5
	sun := year(t, p, scenario.Backup{StartFrom: scenario.SolarNoon, Start: 600, EndFrom: scenario.SolarNoon, End: 900}).Total.BoughtJ
	clock := year(t, p, scenario.Backup{Start: start % 1440, End: (start + 300) % 1440}).Total.BoughtJ
	if math.Abs(sun/clock-1) > 0.01 {
		t.Errorf("following the sun %.1f kWh, by the clock %.1f", sun/JPerKWh, clock/JPerKWh)
	}
}

func TestHours_NoAllocations(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	b := scenario.Backup{StartFrom: scenario.SolarNoon, Start: 90, EndFrom: scenario.Sunset, End: 0}
	ws, y := new(Workspace), new(Year)
	p.RunYear(b, ws, y)
	if n := testing.AllocsPerRun(3, func() { p.RunYear(b, ws, y) }); n != 0 {
		t.Errorf("%g allocations a year", n)
	}
}
