package scenario

import "suncask/engine/draw"

// LatestVersion is the link version that Encode writes.
const LatestVersion = 2

// Defaults returns the default table of a link version: the example house, invented
// and tuned to nothing, with what is assumed of its place ([Scenario.Settle]). A table is
// frozen once links of its version exist: a new default is a new version. It panics on a
// version that does not exist.
func Defaults(version int) Scenario {
	switch version {
	case 1:
		return first()
	case 2:
		s := first()
		s.usualLosses()
		s.Settle()
		return s
	}
	panic("scenario: no such link version")
}

// usualLosses are those of Dobos 2014 (NREL/TP-6A20-62641, table of default losses, from
// memory): 12.3 % together. Its 2 % for cables are reckoned from the cable itself.
func (s *Scenario) usualLosses() {
	s.SoilPct, s.ShadePct, s.MismatchPct, s.ConnectPct = 2, 3, 2, 0.5
	s.FirstLightPct, s.PlatePct, s.DownPct = 1.5, 1, 3
}

// first is the table of version 1.
func first() Scenario {
	return Scenario{
		Place: "lisbon", ZoneH: 0, Summer: "0329-1025", Month: 2, Sky: Typical,
		Uses: Habits, People: 3, ShowerMinutes: 6, ShowerFlow: 8, ShowerC: 40, When: Both, PipeLitres: 1.5,
		UseAt:      [draw.Occasions]int{6*60 + 30, 19 * 60, 7*60 + 40, 13*60 + 15, 20*60 + 15, 22*60 + 15},
		TankLitres: 200, LossKWh: 2, SetC: 60, SunLimitC: 75, ElementW: 2000, RoomC: 20,
		Modules: 4, ModuleW: 400, TiltDeg: 35, AzimuthDeg: 180,
		More:  [MorePlanes]Plane{{TiltDeg: 35, AzimuthDeg: 90}, {TiltDeg: 35, AzimuthDeg: 270}, {TiltDeg: 35, AzimuthDeg: 180}},
		OpenV: 37.2, MostV: 31.2, ShortA: 13.62, VoltPct: -0.27, AmpsPct: 0.05, PowerPct: Unknown, CableM: 15, CableSize: 2,
		ConverterLowV: 30, ConverterHighV: 450, ConverterW: 3000, ElementV: 230, ElementLoops: 1, SupplyV: 230,
		ColdestC: -10, MaxSystemV: Unknown, MaxFuseA: Unknown, ConverterMaxV: 450, ConverterMaxA: Unknown, ConverterShortA: Unknown, ConverterPct: 96, ConverterStartW: 20,
		BreakerA: Unknown, DesignPct: 125, TouchV: 120, DropPct: 3, CutOutC: Unknown, ReliefBar: Unknown, SupplyBar: Unknown, VesselL: Unknown, TapC: 50, MixedL: Unknown, InsulationM: Unknown,
		Price: 0.24, LowPrice: 0.15, Currency: "EUR", OtherKWh: 200, GridCO2: 166,
		ModuleCost: 150, FixedCost: 900, TankCost: 900, ReplaceCost: 250, ReplaceYear: 12, UpkeepCost: 10, PriceRisePct: 2, DiscountPct: 3, HorizonYears: 30,
		Backup:     Backup{Start: 15 * 60, End: 18 * 60},
		AcceptUses: 5, KeepL: 80, DiffK: 6, SoilPct: 3, MismatchPct: 2, AwayFrom: 7, UpperPct: 60, LowerPct: UprightLowerPct, SunTankL: 200, SunTankKWh: 2, EveningC: 60, MorningC: 56, NightH: 10,
	}
}
