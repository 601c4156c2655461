package simulate

import (
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// hottest is the warmest water of a traced day, degC.
func hottest(d *Day) (most float64) {
	for i := range d.Trace.Points {
		for _, layers := range [][]tank.Layer{d.Trace.Layers(i), d.Trace.Ahead(i)} {
			for _, l := range layers {
				most = max(most, l.TempC)
			}
		}
	}
	return most
}

// A weak, long element whose thermostat stands in cold water would bring the water at its
// upper end to 107 degC without a cut-out.
func TestCutOut_LongElement(t *testing.T) {
	for link, most := range map[string]float64{
		"v=1&lower=0&reach=45&element=900&set=85&backup=all1500":                       scenario.UsualCutOutC,
		"v=2&lower=0&reach=45&element=900&set=85&backup=all1500":                       scenario.UsualCutOutC,
		"v=2&lower=0&reach=45&element=90&set=85&backup=all1500&cutout=95":              95,
		"v=2&lower=0&reach=45&element=90&suncap=85&backup=none1500&cutboth=no&room=45": tank.BoilingC,
	} {
		s, problems := scenario.Decode(link)
		if len(problems) > 0 {
			t.Fatal(link, problems)
		}
		p, err := Prepare(&s, nil, nil)
		if err != nil {
			t.Fatal(err)
		}
		ws, y, d := new(Workspace), new(Year), new(Day)
		p.RunYear(s.Backup, ws, y)
		seen := 0.0
		for day := range climate.Days {
			p.Replay(s.Backup, y, day, ws, d)
			seen = max(seen, hottest(d))
		}
		t.Logf("%s: %.2f degC", link, seen)
		if seen > most+1e-6 || y.WorstBalance > 1e-9 || y.Err != nil {
			t.Errorf("%s: %.3f degC, balance %.1e, %v", link, seen, y.WorstBalance, y.Err)
		}
	}
}

// No water above boiling, nor above what its cut-outs let through, no negative part and no
// fraction outside 0 to 1 in 10,000 houses with all options.
func TestLimits_Property(t *testing.T) {
	houses := 10000
	if testing.Short() || runtime.GOARCH == "wasm" {
		houses = 500
	}
	r := rand.New(rand.NewPCG(91, 15))
	ws, y, d := new(Workspace), new(Year), new(Day)
	var prev *Prepared
	seen, hot := 0.0, 0
	for n := range houses {
		s := extreme(r)
		if prev != nil && n%40 > 0 { // light and wiring stay: they take most of the time
			o := prev.Scenario
			for _, f := range scenario.Fields() {
				switch {
				case f.Kind != scenario.Number && f.Kind != scenario.Choice:
				case f.ID >= scenario.PipeLitres && f.ID <= scenario.SunLimitC, f.ID >= scenario.AcceptUses && f.ID <= scenario.CutBoth:
					f.Set(&o, f.Get(&s))
				}
			}
			o.Backup = s.Backup
			s = o
		}
		s.Known = scenario.AllFields() // for links
		p, err := Prepare(&s, nil, prev)
		if err != nil {
			continue
		}
		prev = p
		p.RunDay(s.Backup, int(s.Month), s.Sky, ws, d)
		sunC, gridC := s.CutOuts()
		most := min(tank.BoilingC, max(sunC, gridC))
		got := hottest(d)
		if seen = max(seen, got); got > most-1 {
			hot++
		}
		if got > most+1e-6 {
			t.Fatalf("%.3f degC of %g: %s", got, most, scenario.Encode(&s))
		}
		f := &d.Flows
		if n%10 == 0 {
			p.RunYear(s.Backup, ws, y)
			f = &y.Total
			if y.WorstBalance > 1e-9 || y.Err != nil {
				t.Fatalf("balance %.1e, %v: %+v", y.WorstBalance, y.Err, s)
			}
		}
		warm := s.RoomBy == 0 && s.RoomC >= 41 // a room colder than the mains takes heat from what is drawn
		if part := f.SolarFraction(); part < 0 || part > 1 || f.SunJ < 0 || f.BoughtJ < 0 || f.DeliveredJ < 0 && warm || f.ShortfallJ < 0 || f.UnusedSunJ < -1e-3 {
			t.Fatalf("%+v: %s", f, scenario.Encode(&s))
		}
	}
	t.Logf("warmest %.3f degC; within a kelvin of what is allowed in %d houses", seen, hot)
}
