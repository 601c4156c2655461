package care

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

const (
	fuseLeast = 1.5 // of a string's short circuit
	fuseMost  = 2.4
	// plainSystemV is a voltage that all modules bear as a string, where theirs is not known
	// (common practice, no source: labels say 600, 1000 or 1500 V).
	plainSystemV = 600.0
	// testOver is the insulation test's system voltage over the open circuit's at standard
	// conditions (IEC 62446-1, from memory).
	testOver = 1.25
)

// fuseSizes are rated currents of fuses for strings, A (IEC 60269-6, from memory).
var fuseSizes = [...]float64{10, 12, 15, 16, 20, 25, 30, 32}

// FuseWindow is what a string's fuse must be rated between, A, for modules of that
// short circuit (IEC 62548: 1.5 to 2.4 times; read in a trade guide of it).
func FuseWindow(shortA float64) (least, most float64) { return fuseLeast * shortA, fuseMost * shortA }

// FusesThatFit are the sizes that a string's fuse can have for modules that bear
// moduleFuseA.
func FusesThatFit(shortA, moduleFuseA float64) (sizes []float64) {
	least, most := FuseWindow(shortA)
	for _, size := range fuseSizes {
		if size >= least && size <= math.Min(most, moduleFuseA) {
			sizes = append(sizes, size)
		}
	}
	return sizes
}

// FusesNeeded tells whether the other strings can feed one of them more than its
// modules bear as a fuse, A (IEC 62548, as FuseWindow).
func FusesNeeded(strings int, shortA, moduleFuseA float64) bool {
	return float64(strings-1)*shortA > moduleFuseA
}

// moduleFuse is what modules bear as a series fuse, of their short circuit, where the
// label's is not known (common practice, no source).
const moduleFuse = 1.5

// ModuleFuse is what a house's modules bear as a series fuse, A: their label's, else a usual
// share of their short circuit.
func ModuleFuse(s *scenario.Scenario) (amps float64, known bool) {
	if s.MaxFuseA == scenario.Unknown {
		return moduleFuse * s.ShortA, false
	}
	return s.MaxFuseA, true
}

// ColdOpenV is a string's highest voltage: Voc (1 + beta (T - 25)) of each module (rule
// of IEC 62548; read in a guide of it).
func ColdOpenV(modules int, openV, voltagePerK, coldC float64) float64 {
	return float64(modules) * (openV + voltagePerK*(coldC-pv.StandardC))
}

// HighestV is that of a house's longest string in the lowest temperature on record.
func HighestV(s *scenario.Scenario, w *simulate.Wiring) float64 {
	return ColdOpenV(w.InString, s.OpenV, s.VoltPct/100*s.OpenV, w.ColdC)
}

// RearA is a module's short circuit with what its rear adds at most, A (IEC 62548-1, from memory).
func RearA(s *scenario.Scenario) float64 { return s.ShortA * (1 + s.RearPct/100) }

// DesignA is what switches and cables of so many strings are laid out for, A (IEC 62548-1, from memory).
func DesignA(s *scenario.Scenario, strings int) float64 {
	return s.DesignPct / 100 * RearA(s) * float64(strings)
}

// InsulationTest is the least insulation resistance, megohm, of strings of modules with
// that open circuit at standard conditions, and the voltage at which it is measured
// (IEC 62446-1, arrays up to 10 kWp, from memory): no more than the modules bear as a string,
// Unknown where that is not known.
func InsulationTest(modules int, openV, bearsV float64) (megohm, testV float64) {
	switch system := testOver * float64(modules) * openV; {
	case system < 120:
		megohm, testV = 0.5, 250
	case system <= 500:
		megohm, testV = 1, 500
	case system <= 1000:
		megohm, testV = 1, 1000
	default:
		megohm, testV = 1, 1500
	}
	for _, lower := range []float64{1000, 500, 250} {
		if bearsV != scenario.Unknown && testV > bearsV && lower < testV {
			testV = lower
		}
	}
	return megohm, testV
}

// strings are findings about how modules are strung and what voltage they reach.
func (l *findings) strings(s *scenario.Scenario, w *simulate.Wiring, cold float64) {
	if cold > s.TouchV {
		l.find(AboveLowVoltage, Caution, scenario.Modules, "IEC 60364-4-41 clause 414 and IEC 61140: 120 V d.c. without ripple, dry (from memory)", cold, s.TouchV, w.ColdC)
	}
	if !w.Even {
		l.find(UnevenStrings, Stop, scenario.InString, "strings side by side need the same voltage", float64(w.Modules), float64(s.InString))
	}
	switch {
	case s.MaxSystemV != scenario.Unknown && cold > s.MaxSystemV:
		l.find(ModuleSystemVoltage, Stop, scenario.MaxSystemV, sourceVoltage, cold, s.MaxSystemV)
	case s.MaxSystemV == scenario.Unknown && cold > plainSystemV:
		l.find(ModuleSystemUnknown, Caution, scenario.MaxSystemV, "common practice, no source: labels say 600, 1000 or 1500 V", cold)
	}
	if asked, volts := InsulationTest(w.InString, s.OpenV, s.MaxSystemV); s.InsulationM != scenario.Unknown && s.InsulationM < asked {
		l.find(InsulationLow, Stop, scenario.Insulation, "IEC 62446-1 table of insulation resistance, 1.25 times the open circuit at standard conditions (from memory)", s.InsulationM, asked, volts)
	}
}

// fuses are findings about strings side by side.
func (l *findings) fuses(s *scenario.Scenario, w *simulate.Wiring) {
	const source = "IEC 62548 (read in a trade guide of it)"
	bears, known := ModuleFuse(s)
	if !known {
		if w.Strings > 1 {
			severity := Caution
			if w.Strings > 2 {
				severity = Stop
			}
			l.find(ModuleFuseUnknown, severity, scenario.MaxFuseA, source, float64(w.Strings-1)*RearA(s), float64(w.Strings))
		}
	}
	short := RearA(s)
	if !FusesNeeded(w.Strings, short, bears) {
		return
	}
	least, most := FuseWindow(short)
	if known {
		most = math.Min(most, bears)
		if len(FusesThatFit(short, bears)) == 0 {
			l.find(NoFuseFits, Stop, scenario.MaxFuseA, source+"; sizes of IEC 60269-6 (from memory)", least, most, float64(w.Strings))
			return
		}
	}
	l.find(StringFuses, Caution, scenario.InString, source, least, most, float64(w.Strings))
}

// currents are findings about what cables and switches must carry.
func (l *findings) currents(s *scenario.Scenario, w *simulate.Wiring, cold float64) {
	design := DesignA(s, w.Strings)
	if carries, _ := pv.CableAmps(pv.CableSizes()[s.CableSize]); s.CableM > 0 && design > carries {
		l.find(CableCurrent, Stop, scenario.CableSize, "EN 50618 table A.3: two cables on a surface, air of 60 degC (from memory)", design, carries)
	}
	l.find(IsolatorRating, Note, scenario.DesignPct, "IEC 62548: full load of direct current at the highest voltage (from memory)", cold, design)
	if w.DropPct > s.DropPct {
		l.find(CableDrop, Caution, scenario.CableM, "IEC 60228 class 5 tinned copper at 50 degC (from memory); bound: common practice, no source", w.DropPct, s.DropPct)
	}
}

// powerApart is by how much a label's change of power may lie beside the model's, % a kelvin
// (assumption).
const powerApart = 0.06

// power finds a label whose change of power with temperature does not go with its other values.
func (l *findings) power(p *simulate.Prepared) {
	label, model := p.Scenario.PowerPct, p.PowerPctPerK()
	if label != scenario.Unknown && math.Abs(label-model) > powerApart {
		l.find(PowerApart, Note, scenario.PowerPct, "De Soto, Klein & Beckman 2006, 25 to 55 degC", label, model)
	}
}
