package visit

import (
	"math"
	"testing"

	"suncask/engine/care"
	"suncask/engine/published"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/solar"
	"suncask/engine/tank"
)

func plates(t *testing.T, name string, want int) [][]float64 {
	t.Helper()
	return published.Rows[[]float64](t, "plates.json", name, want)
}

func close(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %g, not %g", what, got, want)
	}
}

func TestPlates_Closed(t *testing.T) {
	for _, r := range plates(t, "element", 1) {
		least, most := pv.OhmsRange(r[0], r[1])
		cold, top := ColdOhms(r[0], r[1])
		close(t, "ohms", pv.Ohms(r[0], r[1]), r[2], 0.01)
		close(t, "least", least, r[3], 0.01)
		close(t, "most", most, r[4], 0.01)
		close(t, "cold", cold, r[5], 0.01)
		close(t, "most, cold", top, r[4], 0.01)
	}
	for _, r := range plates(t, "hot", 1) {
		least, most, ok := HotWatts(r[0], r[1])
		close(t, "least watts", least, r[2], 1)
		close(t, "most watts", most, r[3], 1)
		if _, _, none := HotWatts(0, 240); !ok || none {
			t.Error("no ohms are an element")
		}
	}
	for _, r := range plates(t, "elsewhere", 3) {
		p := prepared(t, func(s *scenario.Scenario) { s.ElementW, s.ElementV, s.SupplyV = r[0], r[1], r[2] })
		close(t, "watts elsewhere", p.BackupW(), r[3], 0.1)
	}
	for _, r := range plates(t, "pulses", 1) {
		watts, ok := PulseWatts(r[0], r[1], r[2])
		close(t, "pulses", watts, r[3], 1)
		if _, none := PulseWatts(1, 1000, 0); !ok || none {
			t.Error("no time is a measurement")
		}
	}
	for _, r := range plates(t, "outside", 1) {
		litres, ok := OutsideLitres(r[0], r[1], r[2])
		close(t, "outside", litres, r[3], 0.1)
		if _, none := OutsideLitres(0.5, 1, 0.25); !ok || none {
			t.Error("insulation alone holds water")
		}
	}
	for _, r := range plates(t, "heated", 1) {
		litres, ok := HeatedLitres(r[0], r[1])
		close(t, "heated", litres, r[2], 0.1)
		if _, none := HeatedLitres(1, 0); !ok || none {
			t.Error("no rise tells litres")
		}
	}
}

func TestLoss_Closed(t *testing.T) {
	for _, r := range plates(t, "night", 2) {
		wPerK, ok := tank.LossOvernight(r[0], r[1], r[2], r[3], r[4])
		close(t, "a night", wPerK, r[5], 0.001)
		close(t, "its uncertainty, %", 100*NightShare(r[1], r[2], r[3]), r[6], 1)
		if !ok {
			t.Error("a night is refused")
		}
	}
	for _, r := range plates(t, "reheat", 1) {
		wPerK, ok := ReheatLoss(r[0], r[1], r[2], r[3])
		close(t, "a reheat", wPerK, r[4], 0.001)
		close(t, "its label", LabelLoss(wPerK), r[5], 0.001)
		if _, none := ReheatLoss(1, 24, 18, 18); !ok || none {
			t.Error("water as cold as its room loses heat")
		}
	}
}

func TestJoints_Closed(t *testing.T) {
	for _, r := range plates(t, "fault", 1) {
		n, ok := FaultModules(int(r[0]), r[1], r[2])
		close(t, "fault", n, r[3], 0.01)
		if _, both := FaultModules(6, 100, 100); !ok || both {
			t.Error("two positive readings are one fault")
		}
	}
	for _, r := range plates(t, "joint", 1) {
		ohms, watts, ok := Joint(r[0], r[1], r[2], r[3])
		close(t, "joint, ohm", ohms, r[4], 0.001)
		close(t, "joint, W", watts, r[5], 0.2)
		if _, _, none := Joint(200, 190, 0, 0.1); !ok || none {
			t.Error("no current tells a joint")
		}
	}
	for _, r := range plates(t, "insulation", 2) {
		close(t, "side by side", ParallelMegohm(r[0], r[1]), r[2], 0.001)
	}
}

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
	for _, r := range plates(t, "clear", 2) {
		close(t, "clear sky", solar.ClearSky(r[0]), r[1], 0.1)
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

// A clear sky's light on a plane: none at night; on a level plane Haurwitz's; the plane that faces
// the noon's sun gets more than a level one and no more than the sun above the air.
func TestClearLight_Property(t *testing.T) {
	for _, day := range []int{20, 172, 300} {
		level := prepared(t, func(s *scenario.Scenario) { s.TiltDeg = 0 })
		sun := &level.Weather.Sun[day]
		noon := int(60 * sun.Noon)
		if got := ClearLight(level, day, 0); got != 0 {
			t.Errorf("day %d: %g W/m2 at midnight", day, got)
		}
		want := solar.ClearSky(math.Sin(solar.DirectionAt(sun.Latitude, sun.Declination, (float64(noon)/60-sun.Noon)*math.Pi/12).Elevation))
		close(t, "level", ClearLight(level, day, noon), want, 1e-6*want)
		facing := prepared(t, func(s *scenario.Scenario) {
			s.TiltDeg, s.AzimuthDeg = math.Round((sun.Latitude-sun.Declination)*180/math.Pi), 180
		})
		if got := ClearLight(facing, day, noon); got < want || got > sun.ExtraWm2 {
			t.Errorf("day %d: %.0f W/m2 facing the sun, %.0f level", day, got, want)
		}
	}
}
