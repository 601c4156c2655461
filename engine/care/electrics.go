package care

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

const (
	lowVoltageV  = 120.0 // extra-low voltage, d.c. without ripple
	dropPct      = 3.0   // of voltage in a cable
	isolatorOver = 1.25  // of the short circuit's current
	fuseLeast    = 1.5   // of a string's short circuit
	fuseMost     = 2.4
)

// FuseWindow is what a string's fuse must be rated between, A, for modules of that
// short circuit (IEC 62548: 1.5 to 2.4 times; read in a trade guide of it).
func FuseWindow(shortA float64) (least, most float64) { return fuseLeast * shortA, fuseMost * shortA }

// FusesNeeded tells whether the other strings can feed one of them more than its
// modules bear as a fuse, A (IEC 62548, as FuseWindow).
func FusesNeeded(strings int, shortA, moduleFuseA float64) bool {
	return float64(strings-1)*shortA > moduleFuseA
}

// moduleFuse is what modules bear as a series fuse, of their short circuit, where the
// datasheet's is not asked for (common practice, no source).
const moduleFuse = 1.5

// ColdOpenV is a string's highest voltage: Voc (1 + beta (T - 25)) of each module (rule
// of IEC 62548; read in a guide of it).
func ColdOpenV(modules int, openV, voltagePerK, coldC float64) float64 {
	return float64(modules) * (openV + voltagePerK*(coldC-pv.StandardC))
}

// InsulationTest is the least insulation resistance, megohm, of strings of that highest
// voltage, and the voltage at which it is measured (IEC 62446-1, from memory).
func InsulationTest(openV float64) (megohm, testV float64) {
	switch {
	case openV < lowVoltageV:
		return 0.5, 250
	case openV <= 500:
		return 1, 500
	}
	return 1, 1000
}

func (l *findings) electrics(p *simulate.Prepared) {
	s := &p.Scenario
	w := p.Wiring()
	if w.Strings == 0 {
		return
	}
	cold := ColdOpenV(w.InString, s.OpenV, s.VoltPct/100*s.OpenV, w.ColdC)
	if cold > lowVoltageV {
		l.find(AboveLowVoltage, Caution, scenario.Modules, "IEC 60449 band I: 120 V d.c. (from memory); coldest air of the year less 5 K", cold, lowVoltageV, w.ColdC)
	}
	if !w.Even {
		l.find(UnevenStrings, Stop, scenario.InString, "strings side by side need the same voltage", float64(w.Modules), float64(s.InString))
	}
	least, most := FuseWindow(s.ShortA)
	if FusesNeeded(w.Strings, s.ShortA, moduleFuse*s.ShortA) {
		l.find(StringFuses, Caution, scenario.InString, "IEC 62548 (read in a trade guide of it)", least, most, float64(w.Strings))
	}
	l.find(IsolatorRating, Note, scenario.CoupledBy, "IEC 62548: full load of direct current at the highest voltage, 1.25 times the short circuit (from memory)",
		cold, isolatorOver*s.ShortA*float64(w.Strings))
	if s.Coupling == scenario.Converter {
		if cold > s.ConverterHighV {
			l.find(ConverterOverVoltage, Stop, scenario.ConverterHighV, "rule of IEC 62548 for the highest voltage (read in a guide of it)", cold, s.ConverterHighV)
		}
		if w.HotV < s.ConverterLowV {
			l.find(ConverterUnderVoltage, Caution, scenario.ConverterLowV, "De Soto, Klein & Beckman 2006, cells of 70 degC", w.HotV, s.ConverterLowV)
		}
	} else {
		l.find(ThermostatDC, Caution, scenario.CoupledBy, "common practice, no source: contacts without a d.c. rating break some 30 V", cold, w.FullA)
		if cold > s.ElementV {
			l.find(ElementOverVoltage, Caution, scenario.ElementV, "rated voltage of the plate", cold, s.ElementV)
		}
		if allowed := math.Max(s.ElementW*(1+pv.PlateUp), s.ElementW+20); w.FullW > allowed {
			l.find(ElementOverload, Stop, scenario.ElementW, "IEC 60335-1 clause 10, +5 % or 20 W (from memory)", w.FullW, allowed)
		}
	}
	if asked, volts := InsulationTest(cold); s.InsulationM > 0 && s.InsulationM < asked {
		l.find(InsulationLow, Stop, scenario.Insulation, "IEC 62446-1 table of insulation resistance (from memory)", s.InsulationM, asked, volts)
	}
	if w.DropPct > dropPct {
		l.find(CableDrop, Caution, scenario.CableM, "common practice, no source", w.DropPct, dropPct)
	}
}
