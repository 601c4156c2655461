package care

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"suncask/engine/published"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

func house(t *testing.T, change func(*scenario.Scenario)) *simulate.Prepared {
	t.Helper()
	s := scenario.Defaults(scenario.LatestVersion)
	change(&s)
	if p := s.Problems(); len(p) > 0 {
		t.Fatal(p)
	}
	p, err := simulate.Prepare(&s, nil, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// at moves a house.
func at(place string) func(*scenario.Scenario) {
	return func(s *scenario.Scenario) {
		s.Place = place
		s.Settle()
	}
}

// price moves it to where a kWh costs so much.
func price(place string, perKWh float64) func(*scenario.Scenario) {
	return func(s *scenario.Scenario) {
		at(place)(s)
		s.Price, s.Known = perKWh, s.Known.With(scenario.Price)
	}
}

// has returns a finding of a house.
func has(t *testing.T, code Code, change func(*scenario.Scenario)) (Finding, bool) {
	t.Helper()
	p := house(t, change)
	open := OfYears(p, math.NaN(), math.NaN())
	for _, f := range slices.Concat(Findings(p), OfYears(p, 450, 900), open) {
		if f.Code == code {
			if f.Source == "" {
				t.Errorf("finding %d has no source", code)
			}
			return f, true
		}
	}
	return Finding{}, false
}

// side changes a house to one side of a limit.
type side = func(*scenario.Scenario)

// Every finding is there on one side of its limit and not on the other. Limits: 60 degC
// stored (HSG274 Part 2, 2014, read on a secondary page), 50 degC at a tap (AS/NZS
// 3500.4, from memory), 120 V d.c. (IEC 60364-4-41 clause 414, from memory), plate +5 %
// (IEC 60335-1, from memory), fuses from three strings on (IEC 62548), a cable's current
// (EN 50618, from memory), a second to a burn at 70 degC (Moritz & Henriques 1947, from
// memory), an expansion vessel's litres (Kell 1975, from memory, and Boyle's law); 0.8 of a
// relief valve's pressure, 5 and 1 bar of cold water, 1250 W/m2 at the edges of clouds, 10 % of
// dirt: common practice, no source; others are the device's own figures or common practice, no source.
func TestFindings_BothSides(t *testing.T) {
	direct := func(modules, inString int, watts float64) side {
		return func(s *scenario.Scenario) {
			s.Coupling, s.Modules, s.InString, s.ElementW = scenario.Direct, modules, inString, watts
		}
	}
	roof := func(modules, inString int, more side) side {
		return func(s *scenario.Scenario) {
			s.Modules, s.InString = modules, inString
			if more != nil {
				more(s)
			}
		}
	}
	fuse := func(shortA, maxA float64) side {
		return func(s *scenario.Scenario) {
			s.ModuleW, s.ShortA, s.MaxFuseA = math.Round(0.93*shortA*s.MostV), shortA, maxA
		}
	}
	stages := func(modules int, text string) side {
		return func(s *scenario.Scenario) { s.Coupling, s.Modules, s.Stages = scenario.Staged, modules, text }
	}
	cutOut := func(atC float64, both int8) side {
		return func(s *scenario.Scenario) { s.CutOutC, s.CutBoth = atC, both }
	}
	mains := func(watts, volts, supply, breaker float64) side {
		return func(s *scenario.Scenario) {
			s.ElementW, s.ElementV, s.SupplyV, s.BreakerA = watts, volts, supply, breaker
		}
	}
	thin := func(watts, volts, supply float64, cable int8, breaker float64) side {
		return func(s *scenario.Scenario) {
			mains(watts, volts, supply, breaker)(s)
			s.GridCable = cable
		}
	}
	// hot is the hottest water that both thermostats allow, under a local limit at the tap.
	hot := func(atC, tapC float64) side {
		return func(s *scenario.Scenario) { s.SetC, s.SunLimitC, s.TapC = atC, atC, tapC }
	}
	// expand is a tank of 250 L, 10 to 75 degC: 6.37 L, for which Boyle's law asks 21.5 L at
	// 3.5 and 6 bar.
	expand := func(by int8, vesselL, supply, relief float64) side {
		return func(s *scenario.Scenario) {
			tenDegrees(s)
			s.ExpandBy, s.VesselL, s.SupplyBar, s.ReliefBar = by, vesselL, supply, relief
		}
	}
	const unknown = scenario.Unknown
	none := func(s *scenario.Scenario) {}
	bare := func(s *scenario.Scenario) { s.Modules = 0 }
	tested := map[Code]bool{}
	for _, c := range []struct {
		code     Code
		yes, no  side
		severity Severity
	}{
		{StoredBelow60, func(s *scenario.Scenario) { s.SetC = 59 }, func(s *scenario.Scenario) { s.SetC = 60 }, Caution},
		{StoredScalds, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 51, 50 }, func(s *scenario.Scenario) { s.SetC, s.SunLimitC = 50, 50 }, Caution},
		{StoredScalds, func(s *scenario.Scenario) { s.ValveC, s.SunLimitC = 51, 69 }, func(s *scenario.Scenario) { s.ValveC, s.SunLimitC = 50, 69 }, Caution},
		{StoredScalds, hot(46, 45), hot(46, 46), Caution},
		{StoredScalds, func(s *scenario.Scenario) { hot(50, 50)(s); s.HeatUp = 1 }, hot(50, 50), Caution}, // to 65 degC once a week
		{StoredScalds, hot(45, 41), hot(44, 41), Caution},
		{StoredOverTap, hot(42, 41), hot(42, 42), Caution},
		{StoredOverTap, hot(44, 41), hot(45, 41), Caution},
		{ValveTooHot, func(s *scenario.Scenario) { s.ValveC, s.TapC = 46, 45 }, func(s *scenario.Scenario) { s.ValveC, s.TapC = 45, 45 }, Caution},
		{StoredScaldsAtOnce, func(s *scenario.Scenario) { s.SunLimitC = 70 }, func(s *scenario.Scenario) { s.SunLimitC = 69 }, Caution},
		{ValveTooHot, func(s *scenario.Scenario) { s.ValveC = 51 }, func(s *scenario.Scenario) { s.ValveC = 50 }, Caution},
		{ValveStarves, func(s *scenario.Scenario) { s.ValveC = 49 }, func(s *scenario.Scenario) { s.ValveC = 50 }, Note},
		{BelowElement, none, func(s *scenario.Scenario) { s.LowerPct = 2 }, Note},
		{BelowElement, func(s *scenario.Scenario) { s.LowerPct = 51 }, func(s *scenario.Scenario) { s.LowerPct = 0 }, Caution},
		{BelowUpper, func(s *scenario.Scenario) { s.Elements, s.HeatUp = scenario.TwoInTurn, 1 }, func(s *scenario.Scenario) { s.HeatUp = 1 }, Note},
		{ElementsCrossed, func(s *scenario.Scenario) { s.Elements, s.UpperPct, s.LowerPct = scenario.TwoInTurn, 60, 61 },
			func(s *scenario.Scenario) { s.Elements, s.UpperPct, s.LowerPct = scenario.TwoInTurn, 60, 60 }, Caution},
		{ElementTooLong, func(s *scenario.Scenario) { s.LowerPct, s.ReachPct = 80, 19 }, func(s *scenario.Scenario) { s.LowerPct, s.ReachPct = 80, 18 }, Caution},
		{Expands, none, expand(scenario.ExpandVessel, unknown, unknown, unknown), Note},
		{ExpandsVessel, expand(scenario.ExpandVessel, unknown, unknown, unknown), none, Note},
		{ExpandsValve, expand(scenario.ExpandValve, unknown, unknown, unknown), none, Note},
		{ExpandsVent, expand(scenario.ExpandVent, unknown, unknown, unknown), none, Note},
		{ExpandsBack, expand(scenario.ExpandBack, unknown, unknown, unknown), none, Note},
		{ReliefUnknown, none, expand(scenario.ExpandValve, unknown, unknown, 6), Caution},
		{ReliefUnknown, expand(scenario.ExpandUnknown, unknown, unknown, 6), expand(scenario.ExpandVessel, unknown, unknown, 6), Caution},
		{ReliefUnknown, expand(scenario.ExpandBack, unknown, unknown, unknown), expand(scenario.ExpandBack, unknown, unknown, 6), Caution},
		{ReliefUnknown, expand(scenario.ExpandUnknown, unknown, unknown, unknown), expand(scenario.ExpandVent, unknown, unknown, unknown), Caution},
		{VesselSmall, expand(scenario.ExpandVessel, 21, 3.5, 6), expand(scenario.ExpandVessel, 22, 3.5, 6), Caution},
		{VesselSmall, expand(scenario.ExpandVessel, 22, 3.5, 5.9), expand(scenario.ExpandVessel, 22, 3.4, 5.9), Caution},
		{VesselSmall, expand(scenario.ExpandVessel, 1, 3.5, 6), expand(scenario.ExpandValve, 1, 3.5, 6), Caution},
		{VesselSmall, expand(scenario.ExpandVessel, 200, 5.3, 6), expand(scenario.ExpandVessel, 200, 5.4, 6), Caution}, // then none is enough
		{VesselNeeds, expand(scenario.ExpandVessel, unknown, 3.5, 6), expand(scenario.ExpandVessel, 22, 3.5, 6), Note},
		{VesselNeeds, expand(scenario.ExpandVessel, unknown, 3.5, 6), expand(scenario.ExpandVessel, unknown, unknown, 6), Note},
		{VesselOpen, expand(scenario.ExpandVessel, 22, unknown, 6), expand(scenario.ExpandVessel, 22, 3.5, 6), Note},
		{VesselOpen, expand(scenario.ExpandVessel, 22, 3.5, unknown), expand(scenario.ExpandValve, 22, 3.5, unknown), Note},
		{SupplyNearRelief, expand(scenario.ExpandValve, unknown, 4.9, 6), expand(scenario.ExpandValve, unknown, 4.8, 6), Caution},
		{SupplyNearRelief, expand(scenario.ExpandVessel, 200, 5.4, 6), expand(scenario.ExpandVessel, 200, 5.4, unknown), Caution},
		{SupplyNearRelief, expand(scenario.ExpandUnknown, unknown, 5.7, 7), expand(scenario.ExpandUnknown, unknown, 5.6, 7), Caution},
		{SupplyHigh, expand(scenario.ExpandValve, unknown, 5.1, 10), expand(scenario.ExpandValve, unknown, 5, 10), Note},
		{SupplyLow, expand(scenario.ExpandVent, unknown, 0.9, unknown), expand(scenario.ExpandVent, unknown, 1, unknown), Note},
		{SupplyLow, expand(scenario.ExpandVent, unknown, 0.1, unknown), none, Note},
		{ReadingsImpossible, func(s *scenario.Scenario) { s.LossBy, s.EveningC, s.MorningC = scenario.LossOvernight, 55, 55 },
			func(s *scenario.Scenario) { s.LossBy, s.EveningC, s.MorningC = scenario.LossOvernight, 55, 54.5 }, Caution},
		{LabelImpossible, func(s *scenario.Scenario) { s.MixedL = 338 }, func(s *scenario.Scenario) { s.MixedL = 337 }, Caution}, // 55/30 of 184 L
		{LabelImpossible, func(s *scenario.Scenario) { s.MixedL = 237 }, func(s *scenario.Scenario) { s.MixedL = 238 }, Caution}, // the same less 100 L
		{StuckBoils, none, func(s *scenario.Scenario) { s.Modules, s.LossKWh = 1, 3 }, Caution},
		{FailedClosed, func(s *scenario.Scenario) { s.Modules, s.LossKWh = 1, 0.97 }, func(s *scenario.Scenario) { s.Modules, s.LossKWh = 1, 10 }, Caution},
		{GridStuck, none, func(s *scenario.Scenario) { s.ElementW, s.LossKWh = 200, 10 }, Caution},
		{CutOutUnknown, none, cutOut(85, scenario.CutYes), Caution},
		{CutOutUnknown, cutOut(85, scenario.CutUnknown), cutOut(85, scenario.CutYes), Caution},
		{CutOutNotSun, cutOut(85, scenario.CutNo), cutOut(85, scenario.CutYes), Stop},
		{CutOutNear, cutOut(80, scenario.CutYes), cutOut(81, scenario.CutYes), Caution},
		{CutOutNear, cutOut(65, scenario.CutNo), cutOut(66, scenario.CutNo), Caution},
		{CutOutNear, func(s *scenario.Scenario) { cutOut(70, scenario.CutNo)(s); s.HeatUp = 1 }, func(s *scenario.Scenario) { cutOut(71, scenario.CutNo)(s); s.HeatUp = 1 }, Caution},
		{AboveLowVoltage, roof(4, 0, nil), roof(2, 0, nil), Caution},
		{AboveLowVoltage, roof(2, 0, func(s *scenario.Scenario) { s.TouchV = 60 }), roof(2, 0, func(s *scenario.Scenario) { s.TouchV = 120 }), Caution},
		{ConverterOverVoltage, func(s *scenario.Scenario) { s.ConverterMaxV = 162 }, func(s *scenario.Scenario) { s.ConverterMaxV = 163 }, Stop},
		{ConverterUnderVoltage, func(s *scenario.Scenario) { s.ConverterLowV = 115 }, func(s *scenario.Scenario) { s.ConverterLowV = 100 }, Caution},
		{ConverterUnderVoltage, func(s *scenario.Scenario) { s.ConverterLowV, s.CableM = 100, 200 }, func(s *scenario.Scenario) { s.ConverterLowV, s.CableM = 100, 0 }, Caution},
		{ConverterShort, roof(4, 2, func(s *scenario.Scenario) { s.ConverterShortA = 27 }), roof(4, 2, func(s *scenario.Scenario) { s.ConverterShortA = 27.3 }), Stop},
		{ConverterCurrent, roof(4, 2, func(s *scenario.Scenario) { s.ConverterMaxA = 25 }), roof(4, 2, func(s *scenario.Scenario) { s.ConverterMaxA = 26 }), Caution},
		{ElementOverVoltage, direct(8, 0, 2000), direct(5, 0, 2000), Caution},
		{ElementOverload, direct(10, 0, 2000), direct(6, 0, 2000), Stop},
		{CloudEdge, direct(8, 0, 3800), direct(8, 0, 3900), Note},
		{ElementOverload, direct(10, 0, 2000), direct(8, 0, 3800), Stop}, // at a cloud's edge alone
		{CloudEdge, stages(6, "2000,700"), stages(5, "2000,700"), Note},
		{CloudEdge, direct(10, 0, 2000), func(s *scenario.Scenario) { direct(10, 0, 2000)(s); s.Coupling = scenario.Converter }, Caution},
		{CloudEdge, direct(8, 0, 3400), direct(8, 0, 3900), Caution}, // 1.22 times the plate; at 1.003 times a note, above
		{CloudEdge, direct(8, 0, 3800), func(s *scenario.Scenario) { direct(0, 0, 3800)(s) }, Note},
		{StageOverload, stages(8, "2000,200"), stages(5, "2000,200"), Stop},
		{ThermostatDC, direct(3, 0, 2000), func(s *scenario.Scenario) { direct(3, 0, 2000)(s); s.BreaksBy = scenario.BreaksContactor }, Caution},
		{ThermostatDC, func(s *scenario.Scenario) { s.ConverterOut, s.BreaksBy = scenario.OutDC, scenario.BreaksStat }, func(s *scenario.Scenario) { s.ConverterOut, s.BreaksBy = scenario.OutAC, scenario.BreaksStat }, Stop},
		{ThermostatDC, func(s *scenario.Scenario) { s.StatBy = scenario.StatElectronic }, func(s *scenario.Scenario) { s.StatBy = scenario.StatDC }, Caution},
		{StringFuses, roof(6, 2, nil), roof(4, 2, nil), Caution},
		{StringFuses, roof(6, 2, fuse(10.2, 20)), roof(4, 2, fuse(10.2, 20)), Caution},
		{NoFuseFits, roof(6, 2, fuse(13.62, 20)), roof(6, 2, fuse(13.62, 25)), Stop},
		{ModuleFuseUnknown, roof(6, 2, nil), roof(6, 2, fuse(13.62, 25)), Stop},
		{ModuleFuseUnknown, roof(4, 2, nil), roof(4, 4, nil), Caution},
		{FacesPole, func(s *scenario.Scenario) { s.AzimuthDeg = 301 }, func(s *scenario.Scenario) { s.AzimuthDeg = 300 }, Caution},
		{FacesPole, func(s *scenario.Scenario) { s.AzimuthDeg, s.TiltDeg = 0, 11 }, func(s *scenario.Scenario) { s.AzimuthDeg, s.TiltDeg = 0, 10 }, Caution},
		{FacesPole, func(s *scenario.Scenario) { s.Place, s.AzimuthDeg = "santiago", 180 }, func(s *scenario.Scenario) { s.Place, s.AzimuthDeg = "santiago", 0 }, Caution},
		{Soiled, func(s *scenario.Scenario) { s.SoilPct = 10.5 }, func(s *scenario.Scenario) { s.SoilPct = 10 }, Note},
		{Soiled, func(s *scenario.Scenario) { s.SoilPct, s.Place = 10.5, "singapore" }, func(s *scenario.Scenario) { s.SoilPct, s.Modules = 50, 0 }, Note},
		{PriceOdd, price("lisbon", 4.801), price("lisbon", 4.8), Caution}, // 20 times 0.24
		{PriceOdd, price("lisbon", 0.011), price("lisbon", 0.012), Caution},
		{PriceOdd, price("tokyo", 0.24), price("tokyo", 0), Caution},
		{PriceOdd, price("ankara", 171), price("ankara", 170), Caution}, // of the example at the rate of exchange
		{PriceOdd, func(s *scenario.Scenario) { s.Bands = "1700-2000:4.801" }, func(s *scenario.Scenario) { s.Bands = "1700-2000:4.8" }, Caution},
		{PriceOdd, func(s *scenario.Scenario) { s.Blocks = "300:24" }, func(s *scenario.Scenario) { s.Blocks = "300:0.24" }, Caution},
		{PriceOdd, func(s *scenario.Scenario) { s.LowPrice, s.LowFrom = 4.801, 60 }, func(s *scenario.Scenario) { s.LowPrice = 4.801 }, Caution},
		{PriceUnknown, at("ankara"), at("lisbon"), Note},
		{PriceUnknown, at("ankara"), price("ankara", 3), Note},
		{UnevenStrings, roof(5, 2, nil), roof(6, 2, nil), Stop},
		{ModuleSystemVoltage, func(s *scenario.Scenario) { s.MaxSystemV = 160 }, func(s *scenario.Scenario) { s.MaxSystemV = 170 }, Stop},
		{ModuleSystemUnknown, roof(15, 0, nil), roof(14, 0, nil), Caution},
		{CableDrop, func(s *scenario.Scenario) { s.CableM = 60 }, func(s *scenario.Scenario) { s.CableM = 10 }, Caution},
		{CableDrop, func(s *scenario.Scenario) { s.DropPct = 1.5 }, func(s *scenario.Scenario) { s.DropPct = 2 }, Caution},
		{CableCurrent, roof(3, 1, nil), roof(2, 1, nil), Stop},
		{CableCurrent, roof(2, 1, func(s *scenario.Scenario) { s.DesignPct = 160; s.CableSize = 1 }), roof(2, 1, func(s *scenario.Scenario) { s.DesignPct = 100; s.CableSize = 1 }), Stop},
		{GridOverload, mains(2000, 220, 226, 25), mains(2000, 220, 225, 25), Caution},
		{GridOverload, mains(2000, 220, 250, 25), mains(2000, 250, 250, 25), Stop},
		{GridBreaker, mains(2000, 220, 250, 10), mains(2000, 220, 250, 11), Stop},
		{GridBreakerNear, mains(2000, 220, 250, 13), mains(2000, 220, 250, 14), Note},
		{GridCableCurrent, thin(4000, 230, 230, 1, 32), thin(3680, 230, 230, 1, 16), Stop}, // 18.3 and 16.8 A in 1.5 mm2
		{GridCableGuard, thin(2000, 220, 230, 2, 25), thin(2000, 220, 230, 2, 24), Caution},
		{GridCableGuard, thin(2000, 220, 230, 3, 40), thin(2000, 220, 230, 4, 40), Caution},
		{PowerApart, func(s *scenario.Scenario) { s.PowerPct = -0.45 }, func(s *scenario.Scenario) { s.PowerPct = -0.35 }, Note},
		{PowerApart, func(s *scenario.Scenario) { s.PowerPct = -0.25 }, none, Note},
		{StepDown, none, func(s *scenario.Scenario) { s.ConverterSteps = scenario.StepsBoth }, Caution},
		{StepDown, none, func(s *scenario.Scenario) { s.ConverterSteps = scenario.StepsDown }, Caution},
		{StepDown, roof(8, 0, nil), roof(12, 0, func(s *scenario.Scenario) { s.ElementW = 3000 }), Caution},
		{StepDownOpen, roof(8, 0, nil), roof(12, 0, func(s *scenario.Scenario) { s.ElementW = 3000 }), Caution},
		{TwoSupplies, none, bare, Caution},
		{TwoSupplies, func(s *scenario.Scenario) { s.ChangeBy = scenario.ChangeOther }, bare, Stop},
		{InsulationLow, func(s *scenario.Scenario) { s.InsulationM = 0.99 }, func(s *scenario.Scenario) { s.InsulationM = 1 }, Stop},
		{InsulationLow, roof(3, 0, func(s *scenario.Scenario) { s.InsulationM = 0.6 }), roof(2, 0, func(s *scenario.Scenario) { s.InsulationM = 0.6 }), Stop},
		{InsulationLow, roof(6, 0, func(s *scenario.Scenario) { s.InsulationM = 0 }), none, Stop},
		{IsolatorRating, none, bare, Note},
	} {
		tested[c.code] = true
		f, ok := has(t, c.code, c.yes)
		if !ok || f.Severity != c.severity {
			t.Errorf("finding %d: there %v, severity %d", c.code, ok, f.Severity)
		}
		if c.no == nil {
			continue
		}
		if f, ok := has(t, c.code, c.no); ok {
			t.Errorf("finding %d on the other side: %+v", c.code, f)
		}
	}
	for _, code := range Codes() {
		if !tested[code] {
			t.Errorf("finding %d is not tested", code)
		}
	}
}

func TestBurnSeconds_Published(t *testing.T) {
	var b struct {
		Rows map[string][2]float64 `json:"second_third_degree_s"`
		CPSC map[string]float64    `json:"cpsc_third_degree_s"`
	}
	published.Block(t, "water.json", "burns", &b)
	if len(b.Rows) != 7 || len(b.CPSC) != 4 {
		t.Fatalf("%d and %d rows", len(b.Rows), len(b.CPSC))
	}
	for at, want := range b.Rows {
		c, _ := strconv.ParseFloat(at, 64)
		if got := BurnSeconds(c); got > want[1]*(1+1e-9) || got < want[1]/3 {
			t.Errorf("%s degC: %.1f s, want %g", at, got, want[1])
		}
	}
	// The severer of both tables is taken.
	for at, want := range b.CPSC {
		f, _ := strconv.ParseFloat(at[:len(at)-1], 64)
		if got := BurnSeconds((f - 32) / 1.8); got > want*(1+1e-9) || got < want/3 {
			t.Errorf("%s: %.1f s, published %g", at, got, want)
		}
	}
	var hot struct{ Rows [][2]float64 }
	published.Block(t, "water.json", "burns_hot", &hot)
	for _, r := range hot.Rows {
		if got := BurnSeconds(r[0]); got > r[1]*(1+1e-6) || got < r[1]/3 {
			t.Errorf("%g degC: %.2f s, known are %g at most", r[0], got, r[1])
		}
	}
	if !math.IsInf(BurnSeconds(40), 1) || BurnSeconds(90) != 1 {
		t.Error("ends of the table")
	}
}

// Sizes of fuses that lie in the window and that the modules bear; none where they do not.
// tenDegrees is a tank of 250 L with cold water of 10 degC all year.
func tenDegrees(s *scenario.Scenario) { coldTank(250, 10, 75)(s) }

// coldTank is one with that cold water all year, heated no hotter.
func coldTank(litres, coldC, hotC float64) side {
	return func(s *scenario.Scenario) {
		s.TankLitres, s.SetC, s.SunLimitC = litres, math.Min(60, hotC), hotC
		for m := range 12 {
			s.ColdC.Known[m], s.ColdC.Value[m] = true, coldC
		}
	}
}

// Figures of findings: 12 modules side by side on 4 mm2, 2000 W at 220 V on 250 V, a stage of
// 1000 W under 12 modules in series, 230 L above the grid's element from 60 degC to boiling
// with next to no loss (P/(m c) = 11.2 K/h), Toronto's coldest string (computed).
func TestFindings_Figures(t *testing.T) {
	for what, c := range map[string]struct {
		code   Code
		change side
		want   float64
		within float64
	}{
		"design current, A": {CableCurrent, func(s *scenario.Scenario) { s.Modules, s.InString, s.ShortA = 12, 1, 13.85 }, 207.75, 0.01},
		"grid, W":           {GridOverload, func(s *scenario.Scenario) { s.ElementW, s.ElementV, s.SupplyV = 2000, 220, 250 }, 2582.6, 0.1},
		"breaker, A":        {GridBreaker, func(s *scenario.Scenario) { s.ElementW, s.ElementV, s.SupplyV, s.BreakerA = 2000, 220, 250, 10 }, 10.85, 0.005},
		"stage, W":          {StageOverload, func(s *scenario.Scenario) { s.Coupling, s.Modules, s.Stages = scenario.Staged, 12, "1000" }, 3600, 350},
		"to boiling, h": {GridStuck, func(s *scenario.Scenario) {
			s.TankLitres, s.LowerPct, s.ElementW, s.LossKWh = 250, 8, 3000, 0.2
		}, 3.56, 0.03},
		"250 L, 10 to 75 degC, L":      {Expands, tenDegrees, 6.37, 0.03}, // Kell 1975, from memory
		"250 L, 10 to 60 degC, L":      {Expands, coldTank(250, 10, 60), 4.20, 0.03},
		"189.3 L, 5 to 60 degC, L":     {Expands, coldTank(189.3, 5, 60), 3.23, 0.03},
		"125 and 125 L, 10 to 75 degC": {Expands, func(s *scenario.Scenario) { coldTank(125, 10, 75)(s); s.Elements, s.SunTankL = scenario.TwoTanks, 125 }, 6.37, 0.03},
		"vessel, L": {VesselNeeds, func(s *scenario.Scenario) { // Boyle's law
			tenDegrees(s)
			s.ExpandBy, s.SupplyBar, s.ReliefBar = scenario.ExpandVessel, 3.5, 6
		}, 21.5, 0.1},
		"Toronto, V": {AboveLowVoltage, func(s *scenario.Scenario) {
			s.Place, s.Modules, s.OpenV, s.MostV, s.ShortA, s.VoltPct = "toronto", 6, 36.9, 30.8, 13.85, -0.26
			s.Settle()
			s.MostV, s.ShortA = 30.8, 13.85
		}, 250.76, 0.01},
	} {
		f, ok := has(t, c.code, c.change)
		if !ok || math.Abs(f.Args[0]-c.want) > c.within {
			t.Errorf("%s: %.2f, want %g (there %v)", what, f.Args[0], c.want, ok)
		}
	}
	var b struct{ Rows [][2]float64 }
	published.Block(t, "pv.json", "cold_strings", &b)
	for _, r := range b.Rows {
		if got := ColdOpenV(6, 36.9, -0.0026*36.9, r[0]); math.Abs(got-r[1]) > 0.01 {
			t.Errorf("%g degC: %.2f V", r[0], got)
		}
	}
}
