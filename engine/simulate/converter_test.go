package simulate

import (
	"math"
	"math/rand/v2"
	"testing"

	"suncask/engine/pv"
	"suncask/engine/scenario"
)

// No part of the strings' power is below zero and the parts add up, in any light and in the
// year, however long and thin the cable is.
func TestPotential_Parts_Property(t *testing.T) {
	parts := func(what string, p *pv.Split) {
		list := []float64{p.CouplingW, p.CableW, p.ConverterW, p.OverW, p.ElementW}
		sum := 0.0
		for _, part := range list {
			sum += part
			if part < 0 || math.IsNaN(part) {
				t.Fatalf("%s: %+v", what, *p)
			}
		}
		if math.Abs(sum-p.MaximumW) > 1e-9*(1+p.MaximumW) {
			t.Fatalf("%s: parts are %g W of %g", what, sum, p.MaximumW)
		}
	}
	r := rand.New(rand.NewPCG(53, 8))
	links := []string{"v=1&string=1&cable=50&mm2=1.5", "v=2&string=1&cable=200&mm2=1.5&convlow=5", "v=2&modules=12&string=1&cable=200&mm2=1.5&convsteps=down"}
	for n := range 400 {
		s := extreme(r)
		if n < len(links) {
			s, _ = scenario.Decode(links[n])
		}
		w, err := newWiring(&s)
		if err != nil {
			continue
		}
		q := &Prepared{Scenario: s, chain: w}
		for range 20 {
			split := w.load(q.strings(1300*r.Float64(), -20+100*r.Float64()))
			parts(scenario.Encode(&s), &split)
		}
		if n < len(links) {
			p, err := Prepare(&s, nil, nil)
			if err != nil {
				t.Fatal(err)
			}
			q := p.Potential
			parts(links[n], &pv.Split{MaximumW: q.MaximumJ, CouplingW: q.CouplingJ, CableW: q.CableJ, ConverterW: q.ConverterJ, OverW: q.OverJ, ElementW: q.ElementJ})
		}
	}
}

// The example house's converter, if it only lowers the voltage, gives a third less: it
// has four modules in series on an element of 26.45 ohm. With strings of twelve nothing
// changes.
func TestOnlyDown_Year(t *testing.T) {
	p := prepared(t, func(*scenario.Scenario) {})
	down := p.OnlyDown()
	if down == nil {
		t.Fatal("no difference")
	}
	both, only := p.BoughtJ(p.Scenario.Backup)/JPerKWh, down.BoughtJ(p.Scenario.Backup)/JPerKWh
	t.Logf("%.1f kWh bought a year, %.1f if it only lowers the voltage", both, only)
	if only < 1.5*both || down.Potential.ElementJ > 0.8*p.Potential.ElementJ || math.Abs(down.Potential.MaximumJ/p.Potential.MaximumJ-1) > 0.01 {
		t.Errorf("%.1f and %.1f kWh, at the element %.0f and %.0f J", both, only, p.Potential.ElementJ, down.Potential.ElementJ)
	}
	direct := prepared(t, func(s *scenario.Scenario) { s.ConverterSteps = scenario.StepsDown })
	if again := direct.BoughtJ(p.Scenario.Backup) / JPerKWh; again != only {
		t.Errorf("%g kWh from its own scenario, %g", again, only)
	}
	// Another tank under the same light takes its sun from there.
	s := p.Scenario
	s.TankLitres = 300
	q, err := Prepare(&s, nil, p)
	if err != nil {
		t.Fatal(err)
	}
	s.ConverterSteps = scenario.StepsDown
	fresh, err := Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	if a, b := q.OnlyDown().BoughtJ(s.Backup), fresh.BoughtJ(s.Backup); a != b {
		t.Errorf("%g and %g J", a, b)
	}
	for what, change := range map[string]func(*scenario.Scenario){
		"twelve in series": func(s *scenario.Scenario) { s.Modules, s.ElementW = 12, 3000 },
		"no modules":       func(s *scenario.Scenario) { s.Modules = 0 },
		"straight":         func(s *scenario.Scenario) { s.Coupling = scenario.Direct },
		"known":            func(s *scenario.Scenario) { s.ConverterSteps = scenario.StepsDown },
	} {
		if prepared(t, change).OnlyDown() != nil {
			t.Errorf("%s: a difference", what)
		}
	}
}
