package house

import (
	"slices"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

// panel is a group of inputs: the fields that most houses need, and more on demand. Some
// are of one entry only.
type panel struct {
	id     string
	icon   string
	title  words.Key
	fields []scenario.FieldID
	more   []scenario.FieldID
	entry  state.Entry
}

// all are the fields of a card.
func (p *panel) all() []scenario.FieldID {
	return append(p.fields[:len(p.fields):len(p.fields)], p.more...)
}

// panelOf is the panel of an id, an empty one for none.
func panelOf(id string) *panel {
	for i := range panels {
		if panels[i].id == id {
			return &panels[i]
		}
	}
	return new(panel)
}

// CardOf is the first card that has a field; ok is false where none has.
func CardOf(id scenario.FieldID) (card string, title words.Key, ok bool) {
	for i := range panels {
		if p := &panels[i]; p.entry == state.Home && slices.Contains(p.all(), id) {
			return p.id, p.title, true
		}
	}
	return "", 0, false
}

var panels = []panel{
	{page.LessonPanel, "lesson", words.PanelLesson, nil, nil, state.Lesson},
	{page.WeatherPanel, "place", words.PanelWeather, []scenario.FieldID{scenario.Place, scenario.ShiftMin}, []scenario.FieldID{scenario.DrawsBy, scenario.Zone, scenario.SummerTime}, state.Home},
	{page.HomePanel, "people", words.PanelHome, []scenario.FieldID{scenario.UsesFrom, scenario.People, scenario.Showers,
		scenario.ShowerMinutes, scenario.ShowerFlow, scenario.ShowerC, scenario.PipeLitres}, []scenario.FieldID{scenario.MorningShowers, scenario.EveningShowers, scenario.MorningHands, scenario.MiddayDishes, scenario.EveningDishes, scenario.NightHands,
		scenario.ValveC, scenario.TapC, scenario.MeterKWh}, state.Home},
	{page.RoofPanel, "roof", words.PanelRoof, []scenario.FieldID{scenario.Modules, scenario.ModuleW, scenario.TiltDeg, scenario.AzimuthDeg,
		scenario.Modules2, scenario.Tilt2, scenario.Face2, scenario.Modules3, scenario.Tilt3, scenario.Face3,
		scenario.Modules4, scenario.Tilt4, scenario.Face4}, []scenario.FieldID{scenario.MountBy, scenario.Horizon, scenario.SoilPct, scenario.ShadePct, scenario.MismatchPct, scenario.ConnectPct, scenario.FirstLightPct, scenario.PlatePct, scenario.DownPct, scenario.AgeYears}, state.Home},
	{page.WiringPanel, "wiring", words.PanelWiring, []scenario.FieldID{scenario.CoupledBy, scenario.ConverterSteps, scenario.InString, scenario.ElementW, scenario.ElementV},
		[]scenario.FieldID{scenario.Stages, scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.AmpsPct, scenario.PowerPct, scenario.RearPct, scenario.ElementLoops, scenario.SupplyV, scenario.CableM, scenario.CableSize,
			scenario.ConverterLowV, scenario.ConverterHighV, scenario.ConverterW,
			scenario.ConverterPct, scenario.ConverterStartW, scenario.ConverterOut, scenario.ConverterMaxV, scenario.ConverterMaxA, scenario.ConverterShortA,
			scenario.ColdestC, scenario.MaxSystemV, scenario.MaxFuseA, scenario.BreaksBy, scenario.ChangeBy, scenario.BreakerA, scenario.GridCable, scenario.DesignPct, scenario.DropPct, scenario.TouchV, scenario.Insulation}, state.Home},
	{page.TankPanel, "tank", words.PanelTank, []scenario.FieldID{scenario.TankLitres, scenario.SetC, scenario.SunLimitC, scenario.ElementW,
		scenario.LossBy, scenario.LossKWh, scenario.EveningC, scenario.MorningC, scenario.NightH, scenario.RoomC},
		[]scenario.FieldID{scenario.RoomBy, scenario.JacketOn, scenario.PipeLoss, scenario.ElementsBy, scenario.LowerPct, scenario.UpperPct, scenario.ReachPct, scenario.SunTankL, scenario.SunTankLoss, scenario.Stands, scenario.MixedLitres, scenario.WallOf,
			scenario.Switching, scenario.DiffK, scenario.StatBy, scenario.CutOutC, scenario.CutBoth, scenario.ReliefBar, scenario.SupplyBar, scenario.ExpandBy, scenario.VesselL}, state.Home},
	{page.BackupPanel, "hours", words.PanelBackup, []scenario.FieldID{scenario.AcceptUses, scenario.RuleBy, scenario.KeepLitres},
		[]scenario.FieldID{scenario.RescueLitres, scenario.HeatUp, scenario.OutFrom, scenario.OutTo, scenario.AwayDays, scenario.AwayFrom}, state.Home},
	{page.PricesPanel, "prices", words.PanelPrices, []scenario.FieldID{scenario.Price, scenario.Currency, scenario.LowPrice, scenario.LowFrom, scenario.LowTo, scenario.ModuleCost, scenario.FixedCost},
		[]scenario.FieldID{scenario.BandPrices, scenario.BlockPrices, scenario.OtherKWh, scenario.Standing, scenario.ExportPrice, scenario.ExportKWh, scenario.ExportRest, scenario.GridCO2, scenario.TankCost, scenario.ReplaceCost, scenario.ReplaceYear, scenario.UpkeepCost, scenario.PriceRise, scenario.Discount, scenario.HorizonYears}, state.Home},
}

// Ranged are the fields of the open card that have a slider.
func Ranged(c *page.Page) (list []scenario.FieldID) {
	if !c.Sees(page.HousePlace) {
		return nil
	}
	for _, id := range panelOf(c.Panel).fields {
		if _, ok := plan.RangeOf(id); ok && state.Applies(&c.Store.Scenario, id) {
			list = append(list, id)
		}
	}
	return list
}
