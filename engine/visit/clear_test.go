package visit

import (
	"math"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/solar"
)

// An invented house at sea, its clock three hours behind UTC, two from 29 March to 25 October.
const atSea, seaLat, seaLon = "v=1&place=36.5,-40,0&zone=-12&summer=0329-1025&modules=6", 36.5, -40.0

func seaHouse(t *testing.T, change func(*scenario.Scenario)) *simulate.Prepared {
	t.Helper()
	s, problems := scenario.Decode(atSea)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	change(&s)
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// spencer is the sun at sea by another way than the engine's: the series of Spencer 1971 for the
// equation of time (to 0.0025 rad) and the declination (to 0.0006 rad), from memory.
func spencer(day int, minute float64) (cosZenith, declination, noon float64) {
	b := 2 * math.Pi * float64(day) / 365
	declination = 0.006918 - 0.399912*math.Cos(b) + 0.070257*math.Sin(b) - 0.006758*math.Cos(2*b) + 0.000907*math.Sin(2*b) - 0.002697*math.Cos(3*b) + 0.00148*math.Sin(3*b)
	time := 0.000075 + 0.001868*math.Cos(b) - 0.032077*math.Sin(b) - 0.014615*math.Cos(2*b) - 0.04089*math.Sin(2*b)
	ahead := -3.0
	if day >= 87 && day < 297 { // 29 March, 25 October
		ahead = -2
	}
	noon = 60*(12+ahead-seaLon/15) - time*720/math.Pi
	const lat = seaLat * math.Pi / 180
	hour := (minute - noon) * math.Pi / 720
	return math.Sin(lat)*math.Sin(declination) + math.Cos(lat)*math.Cos(declination)*math.Cos(hour), declination, noon
}

func TestClearSky_Source(t *testing.T) {
	for _, r := range plates(t, "clear", 2) {
		close(t, "clear sky", solar.ClearSky(r[0]), r[1], 0.1)
	}
}

// On a level plane it is Haurwitz's light of the sun by the clock, in summer time and out of it. The
// two suns differ by up to 0.0035 rad of hour angle and 0.004 of declination, 1098 W/m2 a radian at
// most: 8 W/m2; an equation of time turned round would be 25 and more on days 41 and 305, an hour
// 100 and more.
func TestClearLight_ByTheClock(t *testing.T) {
	level := seaHouse(t, func(s *scenario.Scenario) { s.TiltDeg = 0 })
	for _, day := range []int{20, 41, 86, 87, 172, 296, 297, 305} {
		for _, minute := range []int{0, 9*60 + 15, 12 * 60, 15*60 + 10, 23*60 + 59} {
			cosZenith, _, _ := spencer(day, float64(minute))
			want := 0.0
			if cosZenith > 0 {
				want = 1098 * cosZenith * math.Exp(-0.059/cosZenith)
			}
			if got := ClearLight(level, day, minute); math.Abs(got-want) > 8 || want == 0 && got != 0 {
				t.Errorf("day %d, minute %d: %.1f W/m2, not %.1f", day, minute, got, want)
			}
		}
	}
}

// The plane that faces the noon's sun gets no less than with all of the sky's light even over the
// sky, and no more than with all of it from beside the sun, within 1 % for the rounded tilt, the
// horizon and the other sun; the engine's sky lies between. A plane turned away gets no beam. The
// sky's part is that of Erbs, Klein & Duffie 1982, the solar constant 1361 W/m2 (both from memory).
func TestClearLight_BetweenClosedForms(t *testing.T) {
	for _, day := range []int{20, 86, 172, 305} {
		_, declination, noon := spencer(day, 0)
		cz, _, _ := spencer(day, noon)
		global := 1098 * cz * math.Exp(-0.059/cz)
		k := global / (1361 * (1 + 0.033*math.Cos(2*math.Pi*float64(day+1)/365)) * cz)
		diffuse := global * (0.9511 - 0.1604*k + 4.388*k*k - 16.638*k*k*k + 12.336*k*k*k*k)
		if k <= 0.22 || k > 0.80 {
			t.Fatalf("day %d: clearness %g is beyond the polynomial", day, k)
		}
		tilt := math.Round(seaLat - declination*180/math.Pi)
		c := math.Cos(tilt * math.Pi / 180)
		ground := 0.2 * global * (1 - c) / 2
		even := (global-diffuse)/cz + diffuse*(1+c)/2 + ground
		beside := global/cz + ground
		facing := seaHouse(t, func(s *scenario.Scenario) { s.TiltDeg, s.AzimuthDeg = tilt, 180 })
		if got := ClearLight(facing, day, int(noon)); got < 0.99*even || got > 1.01*beside {
			t.Errorf("day %d: %.1f W/m2 facing the sun, not %.1f to %.1f", day, got, even, beside)
		}
		away := seaHouse(t, func(s *scenario.Scenario) { s.TiltDeg, s.AzimuthDeg = 90, 0 })
		if got := ClearLight(away, day, int(noon)); got < 0.1*global || got > 0.1*global+diffuse {
			t.Errorf("day %d: %.1f W/m2 on a wall turned away, not %.1f to %.1f", day, got, 0.1*global, 0.1*global+diffuse)
		}
	}
}

// Behind a skyline the sun's own part is missing; above it nothing is.
func TestClearLight_Skyline(t *testing.T) {
	const noon = 12*60 + 20 // some; the sun stands 33 degrees high in January, some 77 in June
	open := seaHouse(t, func(s *scenario.Scenario) { s.TiltDeg, s.AzimuthDeg = 35, 180 })
	behind := seaHouse(t, func(s *scenario.Scenario) { s.TiltDeg, s.AzimuthDeg, s.Skyline = 35, 180, "0:45,180:45" })
	if free, hidden := ClearLight(open, 20, noon), ClearLight(behind, 20, noon); !(hidden > 0 && hidden < 0.25*free) {
		t.Errorf("January: %.1f W/m2 behind a skyline, %.1f without", hidden, free)
	}
	if free, over := ClearLight(open, 172, noon), ClearLight(behind, 172, noon); free != over || free < 500 {
		t.Errorf("June: %.1f W/m2 above a skyline, %.1f without", over, free)
	}
}
