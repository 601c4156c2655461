package simulate

import (
	"math"
	"math/rand/v2"
	"os"
	"runtime"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
)

// variation changes every field of a house that neither weather nor roof depend on, all
// options included.
func variation(r *rand.Rand, of scenario.Scenario) scenario.Scenario {
	s, any := of, extreme(r)
	s.Uses, s.People, s.ShowerMinutes, s.ShowerFlow, s.When, s.PipeLitres = any.Uses, any.People, any.ShowerMinutes, any.ShowerFlow, any.When, any.PipeLitres
	s.TankLitres, s.LossKWh, s.SetC, s.SunLimitC, s.RoomC = any.TankLitres, any.LossKWh, any.SetC, any.SunLimitC, any.RoomC
	s.Backup, s.Rule, s.KeepL, s.RescueL, s.HeatUp = any.Backup, any.Rule, any.KeepL, any.RescueL, any.HeatUp
	s.OutFrom, s.OutTo, s.AwayFrom, s.AwayDays = any.OutFrom, any.OutTo, any.AwayFrom, any.AwayDays
	s.Elements, s.UpperPct, s.Stands, s.LossBy = any.Elements, any.UpperPct, any.Stands, any.LossBy
	s.LowerPct, s.ReachPct, s.SunTankL, s.SunTankKWh = any.LowerPct, any.ReachPct, any.SunTankL, any.SunTankKWh
	s.EveningC, s.MorningC, s.NightH = any.EveningC, any.MorningC, any.NightH
	s.RoomBy, s.Jacket, s.PipeLossW, s.Switching, s.DiffK = any.RoomBy, any.Jacket, any.PipeLossW, any.Switching, any.DiffK
	s.Price, s.LowPrice, s.LowFrom, s.LowTo = any.Price, any.LowPrice, any.LowFrom, any.LowTo
	return s
}

// Balance and potential close in 3,000 houses with all options on, in 10,000 with
// SUNCASK_EVERY=1; nothing is bought
// while nobody is at home.
func TestOptions_Property(t *testing.T) {
	want := 3000
	switch {
	case os.Getenv("SUNCASK_EVERY") != "":
		want = 10000
	case runtime.GOARCH == "wasm":
		want = 300 // the same code, five times slower
	}
	r := rand.New(rand.NewPCG(31, 32))
	ws, y := new(Workspace), new(Year)
	worst, houses := 0.0, 0
	for houses < want {
		base := extreme(r)
		for i := range base.More {
			base.More[i].Modules = 0
		}
		p, err := Prepare(&base, nil, nil)
		if err != nil {
			continue
		}
		for range 250 {
			s := variation(r, base)
			houses++
			q, err := Prepare(&s, nil, p)
			if err != nil {
				t.Fatal(err)
			}
			q.RunYear(s.Backup, ws, y)
			f := &y.Total
			worst = math.Max(worst, y.WorstBalance)
			if y.Err != nil || !(y.WorstBalance <= 1e-9) {
				t.Fatalf("%+v: error %v, balance %g", s, y.Err, y.WorstBalance)
			}
			if off := math.Abs(f.SunJ + f.UnusedSunJ - q.Potential.ElementJ); off > 1e-9*(1+q.Potential.ElementJ) {
				t.Fatalf("%+v: %g J of the potential are lost", s, off)
			}
			if f.DisplacedJ < 0 || f.DisplacedJ > f.UnusedSunJ+1e-6*(1+q.Potential.ElementJ) || f.BoughtJ < 0 || f.SunJ < 0 {
				t.Fatalf("%+v: %+v", s, *f)
			}
			for day := range climate.Days {
				if isAway(&s, day) && y.Day[day].BoughtJ+y.Day[day].DeliveredJ != 0 {
					t.Fatalf("%+v: away on day %d, %+v", s, day, y.Day[day])
				}
			}
		}
	}
	t.Logf("%d houses, worst balance %.1e", houses, worst)
}

// Whether less standing loss, a warmer thermostat or longer hours act as one would
// think: in the full model not always, because hours and uses interact. The shares are
// printed; nothing promises them.
func TestMonotone_Shares(t *testing.T) {
	r := rand.New(rand.NewPCG(41, 42))
	n := 120
	if runtime.GOARCH == "wasm" {
		n = 15
	}
	var lossRaises, warmerShort, longerShort int
	for range n {
		house := scenario.Defaults(scenario.LatestVersion)
		randomHouse(r)(&house)
		change := func(s *scenario.Scenario) { *s = house }
		b := scenario.Backup{Start: 15 * r.IntN(96), End: 15 * r.IntN(96)}
		base := year(t, prepared(t, change), b).Total
		less := year(t, prepared(t, func(s *scenario.Scenario) { change(s); s.Jacket = 1 }), b).Total
		if less.BoughtJ > base.BoughtJ*(1+1e-9)+1 {
			lossRaises++
		}
		warmer := year(t, prepared(t, func(s *scenario.Scenario) { change(s); s.SetC = math.Min(85, s.SetC+3) }), b).Total
		if warmer.ShortfallJ > base.ShortfallJ*(1+1e-9)+1 {
			warmerShort++
		}
		longer := b
		longer.End = (b.End + 60) % 1440
		if b.Length() > 0 && b.Length() < 1380 && year(t, prepared(t, change), longer).Total.ShortfallJ > base.ShortfallJ*(1+1e-9)+1 {
			longerShort++
		}
	}
	t.Logf("of %d random houses: a jacket raises what is bought in %d, a warmer thermostat what is missing in %d, an hour more what is missing in %d",
		n, lossRaises, warmerShort, longerShort)
	if lossRaises > n/4 || warmerShort > n/4 || longerShort > n/4 {
		t.Errorf("more than a quarter go against what one would think: %d, %d, %d", lossRaises, warmerShort, longerShort)
	}
}

// With all options on a year allocates nothing either.
func TestOptions_NoAllocations(t *testing.T) {
	for _, link := range []string{
		"v=1&rule=satisfied&heatup=weekly", "v=1&rule=sun&rescue=12&outfrom=228&outto=252&awaydays=14&elements=two&roomby=outside&valve=50",
		"v=1&elements=both&reach=20", "v=1&elements=tanks", "v=1&rescue=12&switching=cycle&backup=noon0130to1800&backup2=0400-0530",
	} {
		s, problems := scenario.Decode(link)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		p := prepared(t, func(to *scenario.Scenario) { *to = s })
		ws, y := new(Workspace), new(Year)
		p.RunYear(s.Backup, ws, y)
		if n := testing.AllocsPerRun(2, func() { p.RunYear(s.Backup, ws, y) }); n != 0 {
			t.Errorf("%s: %g allocations a year", link, n)
		}
	}
}
