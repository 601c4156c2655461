package lesson

import (
	"math"
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
	e.Rounds = []Round{{"", 1000, nil}, {"", 500, nil}, {"", 250, nil}}
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

// Fields of a second case replace those of the first.
func TestCase_Replaces(t *testing.T) {
	e := Experiment{House: "v=1&people=1&modules=0", Rounds: []Round{{"", 0, nil}, {"people=6&jacket=jacket", 0, nil}}}
	for round, want := range []string{"v=1&people=1&modules=0", "v=1&modules=0&people=6&jacket=jacket"} {
		if got := e.Case(round); got != want {
			t.Errorf("%s, not %s", got, want)
		}
	}
}
