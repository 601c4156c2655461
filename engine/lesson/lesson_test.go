package lesson

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/scenario"
)

func outcome(t *testing.T, name string, round int) Outcome {
	t.Helper()
	i, ok := ByName(name)
	if !ok {
		t.Fatalf("no experiment %q", name)
	}
	o, err := experiments[i].Simulate(round, nil)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// Outcomes against what a class can work out by hand: E = P t; shares of mixed water; the resistance
// of copper there and back (IEC 60228 class 5 tinned, 13.7 ohm/km at 20 degC, from memory) in cells'
// full sun; half the light through a fixed resistance left of the knee.
func TestOutcome_ByHand(t *testing.T) {
	mixed := func(cold, hot float64) float64 { return 48 * (40 - cold) / (hot - cold) }
	for _, c := range []struct {
		name   string
		round  int
		want   float64
		within float64
	}{
		{"power", 0, 3 * 2, 1e-9}, {"power", 1, 1 * 6, 1e-9},
		{"tap", 0, mixed(15, 60), 0.02}, {"tap", 1, mixed(5, 60), 0.02}, {"tap", 2, mixed(15, 75), 0.02},
	} {
		if got := outcome(t, c.name, c.round).Value; math.Abs(got-c.want) > c.within {
			t.Errorf("%s, round %d: %g, not %g", c.name, c.round, got, c.want)
		}
	}
	for round, metres := range []float64{50, 25} {
		o := outcome(t, "cable", round)
		ohms := 2 * metres / 1000 * 13.7 * (1 + 0.00393*30)
		if math.Abs(o.Terms[0]-ohms) > 1e-9 || math.Abs(o.Value-o.Terms[1]*o.Terms[1]*ohms) > 1e-9 || math.Abs(o.Terms[2]-o.Terms[1]*ohms) > 1e-9 {
			t.Errorf("%g m: %+v, %g ohm by hand", metres, o, ohms)
		}
	}
	i, _ := ByName("straight")
	e := experiments[i]
	e.Rounds = []Round{{At: 1000}, {At: 500}, {At: 250}}
	full, _ := e.Simulate(0, nil)
	half, _ := e.Simulate(1, nil)
	quarter, _ := e.Simulate(2, nil)
	if r := half.Value / full.Value; math.Abs(r-0.25) > 0.005 {
		t.Errorf("half the light: %.4f of the power", r)
	}
	if r := quarter.Value / half.Value; math.Abs(r-0.25) > 0.005 {
		t.Errorf("a quarter: %.4f of half's", r)
	}
}

// What the engine came to when the experiments were written: a regression, not a truth.
func TestOutcome_Regression(t *testing.T) {
	for _, c := range []struct {
		name  string
		round int
		want  float64
	}{
		{"power", 2, 8.0102}, {"layers", 0, 99.761}, {"layers", 1, 187.42}, {"layers", 2, 18.001},
		{"leak", 0, 619.48}, {"leak", 1, 477.81}, {"wash", 0, 1378.12}, {"wash", 1, 909.18}, {"wash", 2, 486.89},
		{"worth", 0, 9941.55}, {"worth", 1, 16628.58}, {"worth", 2, 4757.66}, {"straight", 0, 269.9}, {"straight", 1, 67.9}, {"straight", 2, 677.0}, {"cable", 0, 242.07}, {"cable", 1, 123.81},
	} {
		if got := outcome(t, c.name, c.round).Value; math.Abs(got/c.want-1) > 0.001 {
			t.Errorf("%s, round %d: %.6g, was %g", c.name, c.round, got, c.want)
		}
	}
}

// Every house opens, every outcome lies on its scale and in no trap, and traps of a round are apart,
// on the scale and within reach of a mark.
func TestExperiments_Property(t *testing.T) {
	names := map[string]bool{}
	for i := range experiments {
		e := &experiments[i]
		if names[e.Name] || len(e.Rounds) < 2 {
			t.Errorf("%s: twice, or %d rounds", e.Name, len(e.Rounds))
		}
		names[e.Name] = true
		if _, problems := scenario.Decode(e.House); len(problems) > 0 {
			t.Errorf("%s: %+v", e.Name, problems)
		}
		for round := range e.Rounds {
			o, err := e.Simulate(round, nil)
			if len(e.Tracks) > 0 {
				curveProperty(t, e, round, o)
				continue
			}
			if err != nil || !e.Scale.Fit(o.Value) || e.Trapped(round, o.Value) >= 0 {
				t.Errorf("%s, round %d: %+v %v", e.Name, round, o, err)
			}
			if near := e.Scale.Snap(o.Value); e.Trapped(round, near) >= 0 {
				t.Errorf("%s, round %d: the right mark %g is in a trap", e.Name, round, near)
			}
			for n, trap := range e.Rounds[round].Traps {
				middle := e.Scale.Snap((trap.From + trap.To) / 2)
				if !(trap.From < trap.To) || !e.Scale.Fit(trap.From) || !e.Scale.Fit(trap.To) || e.Trapped(round, middle) != n {
					t.Errorf("%s, round %d: trap %+v", e.Name, round, trap)
				}
			}
		}
	}
}

// A curve lies on its scale and has no shape of a mistake; each shape is one that some marks have.
func curveProperty(t *testing.T, e *Experiment, round int, o Outcome) {
	marks := make([]float64, len(o.Curve))
	for i, v := range o.Curve {
		marks[i] = e.Scale.Snap(v)
		if !e.Scale.Fit(v) {
			t.Errorf("%s, round %d: %g is beside the scale", e.Name, round, v)
		}
	}
	if len(o.Curve) != len(e.Tracks) || e.Misshapen(round, o.Curve) >= 0 || e.Misshapen(round, marks) >= 0 {
		t.Errorf("%s, round %d: %v has a shape of a mistake", e.Name, round, o.Curve)
	}
	reached := map[int]bool{}
	r := rand.New(rand.NewPCG(1, uint64(round)))
	for range 20000 {
		guess := make([]float64, len(o.Curve))
		from, step, noise := e.Scale.Most*r.Float64(), e.Scale.Most*(r.Float64()-0.5)/4, e.Scale.Most*float64(r.IntN(3))/2
		for i := range guess {
			guess[i] = e.Scale.Snap(from + step*float64(i) + noise*r.Float64())
		}
		reached[e.Misshapen(round, guess)] = true
	}
	for n := range e.Rounds[round].Shapes {
		if !reached[n] {
			t.Errorf("%s, round %d: nothing has shape %d", e.Name, round, n)
		}
	}
}

// A tank that is left alone keeps each day the same part of its difference to the room: e^(-24 h / tau),
// tau = c V / U, from 200 L and the label's loss of 2 kWh in 24 h at 45 K (closed form; layers of unlike
// warmth and the wall's conduction move the mean by less than 0.1 K).
func TestCooling_ByHand(t *testing.T) {
	o := outcome(t, "cooling", 0)
	tau := 200 * 4180 / (2000.0 / 24 / 45) / 3600
	if math.Abs(o.Terms[1]/tau-1) > 1e-3 {
		t.Errorf("time constant %g h, by hand %g", o.Terms[1], tau)
	}
	for i := 1; i < len(o.Curve); i++ {
		if want := 20 + (o.Curve[i-1]-20)*math.Exp(-48/tau); math.Abs(o.Curve[i]-want) > 0.1 {
			t.Errorf("two days after %g degC: %g, by hand %g", o.Curve[i-1], o.Curve[i], want)
		}
	}
}

// Fields of a second case replace those of the first.
func TestCase_Replaces(t *testing.T) {
	e := Experiment{House: "v=1&people=1&modules=0", Rounds: []Round{{}, {Fields: "people=6&jacket=jacket"}}}
	for round, want := range []string{"v=1&people=1&modules=0", "v=1&modules=0&people=6&jacket=jacket"} {
		if got := e.Case(round); got != want {
			t.Errorf("%s, not %s", got, want)
		}
	}
}

// What the cards say of the houses that are shown: 6 kWh, 1067 W at 1000 W/m2, some 36 W in the cable,
// about 500 saved in the first year, all water mixed cooler than a shower of 40 degC.
func TestHouses_AsTold(t *testing.T) {
	house := func(name string, at float64) Outcome {
		i, _ := ByName(name)
		e := experiments[i]
		e.Rounds = []Round{{At: at}}
		o, err := e.Simulate(0, nil)
		if err != nil {
			t.Fatal(err)
		}
		return o
	}
	for _, c := range []struct {
		what              string
		got, want, within float64
	}{
		{"bought, kWh", house("power", 0).Value, 6, 0.01}, {"full light, W", house("straight", 1000).Value, 1067, 0.5}, {"cable, W", house("cable", 0).Value, 36, 0.5},
		{"saved", house("worth", 0).Terms[1], 500, 10}, {"mixed, degC", house("layers", 540).Terms[0], 33, 1}, {"one person's loss, kWh", house("leak", 0).Value, 630, 30},
	} {
		if math.Abs(c.got-c.want) > c.within {
			t.Errorf("%s: %g, told %g", c.what, c.got, c.want)
		}
	}
}
