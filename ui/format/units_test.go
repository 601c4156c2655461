package format

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/scenario"
)

// Conversions against NIST SP 811 (2008), appendix B.8 (from memory): 1 gal = 3.785412 L,
// 1 ft = 0.3048 m, 1 mi = 1.609344 km, 1 Btu/h = 0.2930711 W, 1 psi = 6894.757 Pa, degF = 1.8 degC + 32.
func TestShown_NIST(t *testing.T) {
	SetCustomary(true)
	defer SetCustomary(false)
	for _, c := range []struct {
		unit      scenario.Unit
		metric, v float64
	}{
		{scenario.Litre, 3.785412, 1}, {scenario.LitrePerMinute, 9.463529, 2.5}, {scenario.Metre, 0.3048, 1},
		{scenario.Celsius, 60, 140}, {scenario.Celsius, -40, -40}, {scenario.Kelvin, 45, 81},
		{scenario.WattPerKelvin, 0.2930711 * 1.8, 1}, {scenario.Watt, 400, 400}, {scenario.Bar, 10.3421355, 150},
	} {
		if got := Shown(c.unit, c.metric); math.Abs(got-c.v) > 1e-6*math.Abs(c.v) {
			t.Errorf("unit %d: %g is shown as %g, want %g", c.unit, c.metric, got, c.v)
		}
	}
	if got := Kilometres(100); got != "62" {
		t.Errorf("100 km are %s mi", got)
	}
}

// In both systems: what a box shows is taken back as what is kept, and what is typed in the
// box's steps is shown again as it was typed.
func TestTaken_ShowsAgain_Property(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	defer SetCustomary(false)
	for _, us := range []bool{false, true} {
		SetCustomary(us)
		for _, f := range scenario.Fields() {
			if f.Kind != scenario.Number && f.Kind != scenario.Months || f.Unit == scenario.ClockMinute {
				continue
			}
			least, most := Range(&f)
			low, _ := Parse(least)
			high, _ := Parse(most)
			for range 300 {
				step := f.Step
				if Converted(&f) {
					step = math.Pow10(-places(&f))
				}
				n := math.Floor(r.Float64() * ((high-low)/step + 0.5))
				typed := Input(roundTo(low+n*step, 6, math.Round))
				v, p := Taken(&f, typed)
				if p != nil {
					t.Fatalf("%s: %s refused: %v (%s to %s)", f.Key, typed, p, least, most)
				}
				if got := Value(&f, v); got != typed {
					t.Fatalf("us %v, %s: %s is kept as %g and shown as %s", us, f.Key, typed, v, got)
				}
			}
		}
	}
}

func TestTaken_Refuses(t *testing.T) {
	SetCustomary(true)
	defer SetCustomary(false)
	set, tank := scenario.FieldOf(scenario.SetC), scenario.FieldOf(scenario.TankLitres)
	for _, c := range []struct {
		f     *scenario.Field
		typed string
		want  scenario.Code
	}{
		{set, "94", scenario.OutOfRange}, {set, "120.5", scenario.OffStep}, {set, "warm", scenario.NotANumber},
		{tank, "7.9", scenario.OutOfRange}, {tank, "40.55", scenario.OffStep}, {tank, "1e300", scenario.NotANumber},
	} {
		if _, p := Taken(c.f, c.typed); p == nil || p.Code != c.want || p.Got != c.typed {
			t.Errorf("%s %q: %v", c.f.Key, c.typed, p)
		}
	}
	if v, p := Taken(set, "120"); p != nil || v != 49 {
		t.Errorf("120 degF: %g, %v; want 49 degC, which is shown as 120", v, p)
	}
	if v, p := Taken(tank, "40"); p != nil || v != 151.4 {
		t.Errorf("40 gal: %g, %v; want 151.4 L", v, p)
	}
	if v, p := Taken(scenario.FieldOf(scenario.ReliefBar), "150"); p != nil || v != 10.34 {
		t.Errorf("150 psi: %g, %v; want 10.34 bar", v, p)
	}
}
