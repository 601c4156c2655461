package visit

import (
	"math"
	"slices"
	"testing"

	"suncask/engine/scenario"
)

var lit = Given{Wm2: 800, CellC: 45, LightShare: ByMeter, CellK: SensorK}

// Readings at the check values' house, 800 W/m2 and 45 degC (testdata/visit.json, meters; computed by
// another program): what is asked contains them; what heats decides what else is asked.
func TestCommission_Asked(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { straight(s); s.SupplyV = 230 })
	sun := NewCommission(p, lit, true, SunHeats, nil)
	for code, want := range map[Code]float64{StringCode(OpenOf, 1): 207.97, StringCode(ShortOf, 1): 11.194, StringCode(WorkOf, 1): 9.440, SunV: 181.26, SunAmps: 9.440, ElementOhm: 19.2} {
		a, ok := sun.Asked(code)
		if !ok || math.Abs(a.Value/want-1) > 0.001 || a.Least >= want || a.Most <= want {
			t.Errorf("%s: %+v, %v, not about %g", code, a, ok, want)
		}
	}
	grid := NewCommission(p, lit, true, GridHeats, Readings{GridV: 230})
	a, ok := grid.Asked(GridAmps)
	if !ok || math.Abs(a.Value-11.98) > 0.005 { // I = V/R, computed apart
		t.Errorf("on the grid: %+v", a)
	}
	if a, ok = grid.Asked(SunAmps); !ok || a.Value != 0 {
		t.Errorf("the sun's amps while the grid heats: %+v, %v", a, ok)
	}
	for _, c := range []struct {
		work Work
		code Code
	}{{SunHeats, GridAmps}, {SunHeats, GridV}, {GridHeats, SunV}, {Satisfied, StringCode(WorkOf, 1)}, {SunHeats, StringCode(OpenOf, 2)}} {
		if _, ok := NewCommission(p, lit, true, c.work, nil).Asked(c.code); ok {
			t.Errorf("%s is asked while %d heats", c.code, c.work)
		}
	}
	dark := NewCommission(p, Given{}, false, SunHeats, nil)
	if _, ok := dark.Asked(SunV); ok {
		t.Error("volts are asked in a light that nobody knows")
	}
	if _, ok := dark.Asked(Sheath); !ok {
		t.Error("insulation hangs on the light")
	}
}

func TestCommission_Judge(t *testing.T) {
	p := prepared(t, straight)
	for _, c := range []struct {
		name  string
		given Given
		work  Work
		r     Readings
		code  Code
		want  Outcome
		ok    bool
	}{
		{"as the model expects", lit, SunHeats, Readings{SunV: 181}, SunV, Within, true},
		{"low", lit, SunHeats, Readings{SunV: 140}, SunV, Lower, true},
		{"reversed", lit, SunHeats, Readings{StringCode(OpenOf, 1): -208}, StringCode(OpenOf, 1), Reversed, true},
		{"low, but the light moved", lit, SunHeats, Readings{SunV: 140, LightAfter: 700}, SunV, NoJudge, true},
		{"low at dusk", lit, Dusk, Readings{SunV: 140}, SunV, NoJudge, true},
		{"a little low under a clear sky", Given{Wm2: 800, CellC: 45, LightShare: 0.001, CellK: AirK, ClearSky: true}, SunHeats, Readings{SunAmps: 8.3}, SunAmps, NoJudge, true},
		{"zero is a reading", lit, SunHeats, Readings{Sheath: 0}, Sheath, Lower, true},
		{"insulation of the least", lit, SunHeats, Readings{Sheath: 1}, Sheath, Within, true},
		{"insulation without end", lit, SunHeats, Readings{Sheath: 99999}, Sheath, Within, true},
		{"no current where none should flow", lit, Satisfied, Readings{SunAmps: 0}, SunAmps, Within, true},
		{"current where none should flow", lit, Satisfied, Readings{SunAmps: 9.4}, SunAmps, Higher, true},
		{"an element shorted", lit, SunHeats, Readings{ElementOhm: 9}, ElementOhm, Lower, true},
		{"hot water at the tap", lit, SunHeats, Readings{TapC: 60}, TapC, Higher, true},
		{"cool water at the tap", lit, SunHeats, Readings{TapC: 40}, TapC, Within, true},
		{"a loose bond", lit, SunHeats, Readings{Earth: 2}, Earth, Higher, true},
		{"not measured", lit, SunHeats, nil, SunV, 0, false},
		{"not asked", lit, SunHeats, Readings{GridV: 230}, GridV, 0, false},
	} {
		o, off, ok := NewCommission(p, c.given, true, c.work, c.r).Judge(c.code)
		if o != c.want || ok != c.ok || math.IsInf(off, 0) || math.IsNaN(off) || (o == Lower || o == Higher) && off <= 0 {
			t.Errorf("%s: %d, off %g, %v", c.name, o, off, ok)
		}
	}
}

// Judging is monotone: what is lower never comes to more.
func TestCommission_Monotone(t *testing.T) {
	p := prepared(t, straight)
	rank := map[Outcome]int{Reversed: -1, Lower: 0, Within: 1, Higher: 2}
	for _, code := range []Code{SunV, SunAmps, StringCode(OpenOf, 1), StringCode(ShortOf, 1), ElementOhm, Sheath, TapC} {
		last := -1
		for v := 0.0; v < 400; v += 0.25 {
			o, _, ok := NewCommission(p, lit, true, SunHeats, Readings{code: v}).Judge(code)
			if got := rank[o]; !ok || got < last {
				t.Fatalf("%s: %g comes to %d after %d", code, v, got, last)
			} else {
				last = got
			}
		}
	}
}

func TestCommission_Apart(t *testing.T) {
	p := prepared(t, func(s *scenario.Scenario) { s.InString = 2 }) // three strings
	r := Readings{StringCode(OpenOf, 1): 70, StringCode(OpenOf, 2): 69, StringCode(OpenOf, 3): 46}
	if got := NewCommission(p, lit, true, SunHeats, r).Apart(OpenOf); !slices.Equal(got, []int{3}) {
		t.Errorf("a low string: %v", got)
	}
	if got := NewCommission(p, lit, true, SunHeats, Readings{StringCode(OpenOf, 1): 70}).Apart(OpenOf); got != nil {
		t.Errorf("one string: %v", got)
	}
	if got := NewCommission(p, lit, true, SunHeats, Readings{StringCode(ShortOf, 1): 11, StringCode(ShortOf, 2): 11.2}).Apart(ShortOf); got != nil {
		t.Errorf("equal strings: %v", got)
	}
}
