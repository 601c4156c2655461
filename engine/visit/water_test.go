package visit

import (
	"math"
	"testing"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

func TestWater_Closed(t *testing.T) {
	for _, r := range plates(t, "heat_up", 2) {
		close(t, "heat-up", HeatHours(r[0], r[1], r[2], r[3]), r[4], 0.005)
	}
	for _, r := range plates(t, "mixing", 1) {
		share, ok := HotShare(r[0], r[1], r[2])
		close(t, "mixing", share, r[3], 0.001)
		if _, none := HotShare(70, 65, 12); !ok || none {
			t.Error("a mix is hotter than what it is of")
		}
	}
	for _, r := range plates(t, "expansion", 3) {
		close(t, "expansion", r[0]*care.Expansion(r[1], r[2]), r[3], 0.03)
	}
	for _, r := range plates(t, "shower", 1) {
		close(t, "shower, kWh", HeatJ(r[0], r[1], r[2])/simulate.JPerKWh, r[4], 0.005)
		close(t, "shower, min", HeatHours(r[0], r[1], r[2], r[3])*60, r[5], 0.5)
	}
}

// The grid's first heat-up against the engine's own run with losses, some 1 % longer; by the sun it
// takes longer under duller skies, and no time is less than its energy over the most power.
func TestHeatUp_Property(t *testing.T) {
	for _, month := range []int{0, 5, 9} {
		p := prepared(t, nil)
		joules, hours := GridHeatUp(p, month)
		ran := p.HeatTimes(month, new(simulate.Workspace))
		if !ran.GridOK || ran.GridMinutes/60 < hours*0.995 || ran.GridMinutes/60 > hours*1.04 {
			t.Errorf("month %d: %.3f h without loss, %.3f h with it", month, hours, ran.GridMinutes/60)
		}
		close(t, "energy and time", joules, hours*3600*p.BackupW(), 1)
		last := 0.0
		for sky := scenario.Bright; sky <= scenario.Dull; sky++ {
			days, ok := SunHeatUp(p, month, sky)
			if ok && days < last || !ok && sky == scenario.Bright {
				t.Errorf("month %d: %.2f days under sky %d, %.2f under a brighter one", month, days, sky, last)
			}
			last = days
		}
		days, _ := SunHeatUp(p, month, scenario.Bright)
		if ran.SunOK && math.Abs(days*24*60-ran.SunFrom-ran.SunMinutes) > 30 {
			t.Errorf("month %d: by the sun %.0f min, the engine's run %.0f", month, days*24*60, ran.SunFrom+ran.SunMinutes)
		}
	}
}

// By the sun alone it takes no less time than with the most that the room can add, and no more than
// with the most that the tank can lose, all the while (heat balance, both summed up here by hour).
func TestSunHeatUp_Analytic(t *testing.T) {
	p := prepared(t, nil)
	s := &p.Scenario
	sun, _ := p.Elements()
	wPerK, _ := p.StandingLoss()
	for month := range 12 {
		for sky := scenario.Bright; sky <= scenario.Dull; sky++ {
			coldC, toC := p.ColdC(month), min(s.SetC, s.SunLimitC)
			need := s.TankLitres * (1 - sun.Low) * 4180 * (toC - coldC) // J/(L K)
			watts := p.SkyW(month, sky)
			days := func(moreW float64) float64 {
				sum := 0.0
				for hour := range 60 * 24 {
					w := watts[hour%24] + moreW
					if sum+w*3600 >= need {
						return (float64(hour) + (need-sum)/(w*3600)) / 24
					}
					sum = math.Max(0, sum+w*3600)
				}
				return math.Inf(1)
			}
			least, most := days(wPerK*math.Max(0, s.RoomC-coldC)), days(-wPerK*(toC-s.RoomC))
			got, ok := SunHeatUp(p, month, sky)
			if ok && (got < least-1e-9 || got > most+1e-9) || !ok && most < mostDays {
				t.Errorf("month %d, sky %d: %.3f days, not %.3f to %.3f", month, sky, got, least, most)
			}
		}
	}
}

// Water that comes warmer than the thermostats want it needs neither heat nor time.
func TestHeatUp_WarmAlready(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) {
		for month := range 12 {
			s.ColdC.Known[month], s.ColdC.Value[month] = true, 40
		}
		s.SetC, s.SunLimitC, s.ShowerC = 35, 35, 35
	})
	if p.ColdC(6) != 40 {
		t.Fatalf("cold water of %g degC", p.ColdC(6))
	}
	if joules, hours := GridHeatUp(p, 6); joules != 0 || hours != 0 {
		t.Errorf("the grid takes %g J, %g h", joules, hours)
	}
	if days, ok := SunHeatUp(p, 6, scenario.Bright); days != 0 || !ok {
		t.Errorf("the sun takes %g days", days)
	}
	if joules, minutes, ok := FirstShower(p, 6, new(simulate.Workspace)); joules != 0 || minutes != 0 || !ok {
		t.Errorf("a shower takes %g J, %g min", joules, minutes)
	}
}

// A first shower by hand: its water's own heat, in no less time than the grid gives that, and in no
// more than all the water above the element takes to its thermostat, losses within 4 %; where that
// water does not come to the shower's, none.
func TestFirstShower_Analytic(t *testing.T) {
	ws := new(simulate.Workspace)
	p := prepared(t, nil)
	s := &p.Scenario
	for month := range 12 {
		joules, minutes, ok := FirstShower(p, month, ws)
		want := s.ShowerMinutes * s.ShowerFlow * 4180 * (s.ShowerC - p.ColdC(month)) // J/(L K)
		close(t, "a shower's heat", joules, want, 1e-9*want)
		_, hours := GridHeatUp(p, month)
		if !ok || minutes < want/p.BackupW()/60 || minutes > hours*60*1.04 {
			t.Errorf("month %d: %g min, not %.1f to %.1f", month, minutes, want/p.BackupW()/60, hours*60*1.04)
		}
	}
	never := prepared(t, func(s *scenario.Scenario) { s.SetC, s.ShowerC = 35, 45 })
	if _, minutes, ok := FirstShower(never, 0, ws); ok {
		t.Errorf("water of 35 degC gives a shower of 45 after %g min", minutes)
	}
}
