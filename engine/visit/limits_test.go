package visit

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// In 200 random houses no wiring of three drawn from each one's list that nothing stops passes a limit, worked out here from the fields by
// the formulas of the standards that care names (from memory): Voc (1 + beta (T - 25)) of a string
// against what modules and converter bear, 1.25 Isc of all strings against the cable (EN 50618),
// fuses of 1.5 to 2.4 Isc where others pass more than a module bears (IEC 62548), the converter's
// short circuit, V^2/R of the grid.
func TestWirings_LimitsHold(t *testing.T) {
	houses := 200
	if runtime.GOARCH == "wasm" { // the same arithmetic, five times as slow
		houses = 20
	}
	r := rand.New(rand.NewPCG(18, 200))
	amps := map[int]float64{0: 24, 1: 33, 2: 44, 3: 57, 4: 79, 5: 107, 6: 142, 7: 176, 8: 221}
	free, stopped := 0, 0
	var p *simulate.Prepared
	for range houses {
		s := house(t, nil)
		s.Modules = 1 + r.IntN(12)
		s.ColdestC = float64(r.IntN(50) - 40)
		s.MaxSystemV, s.MaxFuseA = []float64{scenario.Unknown, 150, 600, 1000}[r.IntN(4)], []float64{scenario.Unknown, 15, 20, 25}[r.IntN(4)]
		s.ConverterMaxV, s.ConverterShortA = float64(100+r.IntN(500)), []float64{scenario.Unknown, 15, 30, 60}[r.IntN(4)]
		s.CableSize, s.CableM = int8(r.IntN(9)), float64(1+r.IntN(60))
		s.ElementW, s.SupplyV = float64(1000+100*r.IntN(30)), float64(200+r.IntN(60))
		s.BreakerA = []float64{scenario.Unknown, 10, 16, 20}[r.IntN(4)]
		s.Known = s.Known.With(scenario.ColdestC)
		list := Houses(s)
		r.Shuffle(len(list), func(i, k int) { list[i], list[k] = list[k], list[i] })
		for _, to := range list[:min(3, len(list))] {
			q, err := simulate.Prepare(&to, nil, p)
			if err != nil {
				t.Fatal(err)
			}
			p = q
			w := Judge(q)
			if w.Stops() {
				stopped++
				continue
			}
			free++
			strings := float64(to.Modules / to.InString)
			volts := float64(to.InString) * to.OpenV * (1 + to.VoltPct/100*(to.ColdestC-25))
			if to.MaxSystemV != scenario.Unknown && volts > to.MaxSystemV {
				t.Errorf("%.0f V on modules for %g V", volts, to.MaxSystemV)
			}
			if to.Coupling == scenario.Converter && (volts > to.ConverterMaxV || to.ConverterShortA != scenario.Unknown && strings*to.ShortA > to.ConverterShortA) {
				t.Errorf("%.0f V and %.1f A shorted on a converter for %g V, %g A", volts, strings*to.ShortA, to.ConverterMaxV, to.ConverterShortA)
			}
			if design := to.DesignPct / 100 * strings * to.ShortA; design > amps[int(to.CableSize)] {
				t.Errorf("%.1f A in a cable for %g A", design, amps[int(to.CableSize)])
			}
			if to.MaxFuseA != scenario.Unknown && (strings-1)*to.ShortA > to.MaxFuseA {
				fits := false
				for _, size := range []float64{10, 12, 15, 16, 20, 25, 30, 32} {
					fits = fits || size >= 1.5*to.ShortA && size <= math.Min(2.4*to.ShortA, to.MaxFuseA)
				}
				if !fits {
					t.Errorf("%g strings of %g A, modules for %g A: no fuse fits", strings, to.ShortA, to.MaxFuseA)
				}
			}
			if to.MaxFuseA == scenario.Unknown && strings > 2 {
				t.Errorf("%g strings of modules whose fuse nobody knows", strings)
			}
			if grid := to.SupplyV * to.SupplyV / (to.ElementV * to.ElementV) * to.ElementW; grid > 1.15*to.ElementW*(1+1e-9) || to.BreakerA != scenario.Unknown && 1.05*to.SupplyV/(to.ElementV*to.ElementV)*to.ElementW > to.BreakerA*(1+1e-9) {
				t.Errorf("%.0f W of %g on the grid, breaker %g A", grid, to.ElementW, to.BreakerA)
			}
		}
	}
	if free < houses/2 || stopped < houses/2 {
		t.Errorf("%d wirings that nothing stops, %d stopped", free, stopped)
	}
}
