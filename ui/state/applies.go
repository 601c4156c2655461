package state

import "suncask/engine/scenario"

// Applies tells whether a field says anything about this house: those of a roof plane
// that is not there do not, nor the shift of a file that is not open.
func Applies(s *scenario.Scenario, id scenario.FieldID) bool {
	switch {
	case id >= scenario.Modules2 && id <= scenario.Face4:
		return s.More[(id-scenario.Modules2)/3].Modules > 0
	case id == scenario.ConverterLowV, id == scenario.ConverterHighV, id >= scenario.ConverterW && id <= scenario.ConverterStartW:
		return s.Coupling == scenario.Converter
	case id == scenario.LossKWh:
		return s.LossBy == scenario.LossFigure
	case id == scenario.MorningShowers:
		return s.Uses == scenario.Habits && s.When != scenario.Evenings
	case id == scenario.EveningShowers:
		return s.Uses == scenario.Habits && (s.When == scenario.Evenings || s.When == scenario.Both && s.People > 1)
	case id >= scenario.MorningHands && id <= scenario.NightHands, id == scenario.MeterKWh, id == scenario.People, id == scenario.Showers,
		id == scenario.ShowerMinutes, id == scenario.ShowerFlow:
		return s.Uses == scenario.Habits
	case id == scenario.PipeLitres, id == scenario.ValveC, id == scenario.TapC:
		return s.Uses != scenario.NoUses
	case id == scenario.EveningC, id == scenario.MorningC, id == scenario.NightH:
		return s.LossBy == scenario.LossOvernight
	case id == scenario.RoomC:
		return s.RoomBy == 0
	case id == scenario.DiffK:
		return s.Switching == 1
	case id == scenario.UpperPct:
		return s.Elements.Upper()
	case id == scenario.SunTankL, id == scenario.SunTankLoss:
		return s.Elements == scenario.TwoTanks
	case id == scenario.VesselL:
		return s.ExpandBy == scenario.ExpandVessel
	case id == scenario.Stages:
		return s.Coupling == scenario.Staged
	case id == scenario.RuleBy: // with elements apart each has its own
		return !s.Elements.Apart()
	case id == scenario.KeepLitres:
		return s.Rule == scenario.SunFirst && Applies(s, scenario.RuleBy)
	case id == scenario.AwayFrom:
		return s.AwayDays > 0
	case id == scenario.ExportRest:
		return s.ExportKWh > 0
	case id == scenario.ShiftMin:
		return s.Weather != ""
	case id == scenario.DrawsBy:
		return s.Weather == ""
	}
	return true
}
