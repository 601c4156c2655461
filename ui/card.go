package ui

import (
	"strings"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Card shows the fields of the open card, with what belongs to them.
type Card struct{ Page *Page }

// WeatherPanel is the id of the group that shows the climate.
const WeatherPanel = "panel-weather"

// TankPanel is that of the group that shows the tank.
const TankPanel = "panel-tank"

// WiringPanel is that of the group that shows the strings' curve.
const WiringPanel = "panel-wiring"

// RoofPanel is that of the modules.
const RoofPanel = "panel-roof"

// PricesPanel is that of the money.
const PricesPanel = "panel-prices"

// BackupPanel is that of the hours and what they are chosen by.
const BackupPanel = "panel-backup"

// HomePanel is that of the household.
const HomePanel = "panel-home"

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

var panels = []panel{
	{PlatesPanel, "visit", words.PanelPlates, []scenario.FieldID{scenario.TankLitres, scenario.ElementW, scenario.ElementV, scenario.Modules, scenario.ModuleW,
		scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.Price}, nil, state.Visit},
	{LessonPanel, "lesson", words.PanelLesson, nil, nil, state.Lesson},
	{WeatherPanel, "place", words.PanelWeather, []scenario.FieldID{scenario.Place, scenario.ShiftMin}, []scenario.FieldID{scenario.DrawsBy, scenario.Zone, scenario.SummerTime}, state.Home},
	{HomePanel, "people", words.PanelHome, []scenario.FieldID{scenario.UsesFrom, scenario.People, scenario.Showers,
		scenario.ShowerMinutes, scenario.ShowerFlow, scenario.ShowerC, scenario.PipeLitres}, []scenario.FieldID{scenario.MorningShowers, scenario.EveningShowers, scenario.MorningHands, scenario.MiddayDishes, scenario.EveningDishes, scenario.NightHands,
		scenario.ValveC, scenario.TapC, scenario.MeterKWh}, state.Home},
	{RoofPanel, "roof", words.PanelRoof, []scenario.FieldID{scenario.Modules, scenario.ModuleW, scenario.TiltDeg, scenario.AzimuthDeg,
		scenario.Modules2, scenario.Tilt2, scenario.Face2, scenario.Modules3, scenario.Tilt3, scenario.Face3,
		scenario.Modules4, scenario.Tilt4, scenario.Face4}, []scenario.FieldID{scenario.MountBy, scenario.Horizon, scenario.SoilPct, scenario.ShadePct, scenario.MismatchPct, scenario.ConnectPct, scenario.FirstLightPct, scenario.PlatePct, scenario.DownPct, scenario.AgeYears}, state.Home},
	{WiringPanel, "wiring", words.PanelWiring, []scenario.FieldID{scenario.CoupledBy, scenario.ConverterSteps, scenario.InString, scenario.ElementW, scenario.ElementV},
		[]scenario.FieldID{scenario.Stages, scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.SupplyV, scenario.CableM, scenario.CableSize,
			scenario.ConverterLowV, scenario.ConverterHighV, scenario.ConverterW,
			scenario.ConverterPct, scenario.ConverterStartW, scenario.ConverterOut, scenario.ConverterMaxV, scenario.ConverterMaxA, scenario.ConverterShortA,
			scenario.ColdestC, scenario.MaxSystemV, scenario.MaxFuseA, scenario.BreaksBy, scenario.ChangeBy, scenario.BreakerA, scenario.DesignPct, scenario.DropPct, scenario.TouchV, scenario.Insulation}, state.Home},
	{TankPanel, "tank", words.PanelTank, []scenario.FieldID{scenario.TankLitres, scenario.SetC, scenario.SunLimitC, scenario.ElementW,
		scenario.LossBy, scenario.LossKWh, scenario.EveningC, scenario.MorningC, scenario.NightH, scenario.RoomC},
		[]scenario.FieldID{scenario.RoomBy, scenario.JacketOn, scenario.PipeLoss, scenario.ElementsBy, scenario.LowerPct, scenario.UpperPct, scenario.ReachPct, scenario.SunTankL, scenario.SunTankLoss, scenario.Stands, scenario.MixedLitres, scenario.WallOf,
			scenario.Switching, scenario.DiffK, scenario.StatBy, scenario.CutOutC, scenario.CutBoth, scenario.ReliefBar, scenario.SupplyBar, scenario.ExpandBy, scenario.VesselL}, state.Home},
	{BackupPanel, "hours", words.PanelBackup, []scenario.FieldID{scenario.AcceptUses, scenario.RuleBy, scenario.KeepLitres},
		[]scenario.FieldID{scenario.RescueLitres, scenario.HeatUp, scenario.OutFrom, scenario.OutTo, scenario.AwayDays, scenario.AwayFrom}, state.Home},
	{PricesPanel, "prices", words.PanelPrices, []scenario.FieldID{scenario.Price, scenario.Currency, scenario.LowPrice, scenario.LowFrom, scenario.LowTo, scenario.ModuleCost, scenario.FixedCost},
		[]scenario.FieldID{scenario.BandPrices, scenario.BlockPrices, scenario.OtherKWh, scenario.Standing, scenario.ExportPrice, scenario.ExportKWh, scenario.ExportRest, scenario.GridCO2, scenario.TankCost, scenario.ReplaceCost, scenario.ReplaceYear, scenario.UpkeepCost, scenario.PriceRise, scenario.Discount, scenario.HorizonYears}, state.Home},
}

// row is one field as it stands on the page.
type row struct {
	id                        scenario.FieldID
	key, name, help           string
	value, unit, allowed      string
	problem                   string
	choices                   []string
	findings                  []care.Finding
	chosen                    int
	assumed, decimal, isPlace bool
	text                      bool     // no number and no time
	compass                   []string // directions to turn to, of an azimuth
	span                      *spanned // of a slider, nil for none
}

// rows are the fields of the open panel.
func (c *Card) rows() []row {
	if c.Page.Panel < 0 || c.Page.Panel >= len(panels) {
		return nil
	}
	p := &panels[c.Page.Panel]
	list := c.rowsOf(p.fields)
	for _, r := range c.rowsOf(p.more) {
		if c.Page.More || !r.assumed || r.problem != "" { // what somebody gave is shown
			list = append(list, r)
		}
	}
	return list
}

// hasMore tells whether the open panel has more than it shows at first.
func (c *Card) hasMore() bool { return c.Page.Panel >= 0 && len(panels[c.Page.Panel].more) > 0 }

func (c *Card) moreName() string {
	if c.Page.More {
		return c.Page.T(words.FewerChoices)
	}
	return c.Page.T(words.MoreChoices)
}

// rowsOf are those of the fields that say something about this house.
func (c *Card) rowsOf(fields []scenario.FieldID) []row {
	s, w := c.Page.Store, c.Page.View.Words
	var list []row
	for _, id := range fields {
		if !shown(&s.Scenario, id) {
			continue
		}
		f := scenario.FieldOf(id)
		text := w.Fields[id]
		var mind []care.Finding
		for _, f := range c.Page.minded {
			if f.Field == id {
				mind = append(mind, f)
			}
		}
		r := row{id: id, findings: mind, key: "field-" + f.Key, name: text.Name, help: text.Help, problem: c.Page.problem(id),
			assumed: !s.Scenario.Known.Has(id), isPlace: id == scenario.Place}
		if r.isPlace {
			r.help = c.Page.placeNote(text.Help)
		}
		r.text = f.Kind == scenario.Text
		if f.Kind == scenario.Choice {
			r.choices, r.chosen = text.Choices, int(f.Get(&s.Scenario))
		} else {
			r.value, r.unit = s.Text(id), w.Units[f.Unit]
		}
		if f.Kind == scenario.Number && f.Unit != scenario.ClockMinute {
			r.decimal = true
			least, most := format.Range(f)
			r.allowed = w.Text(words.Range, least, most)
		}
		if id == scenario.AzimuthDeg || id == scenario.Face2 || id == scenario.Face3 || id == scenario.Face4 {
			r.compass, r.chosen = c.Page.compass(), int(f.Get(&s.Scenario)/45+0.5)%8
		}
		r.span = c.Page.spanOf(id)
		if f.Unit.IsMoney() {
			r.unit = strings.TrimSpace(s.Scenario.Currency + " " + r.unit)
		}
		list = append(list, r)
	}
	return list
}

// shown tells whether a field says anything about this house: those of a roof plane
// that is not there do not, nor the shift of a file that is not open.
func shown(s *scenario.Scenario, id scenario.FieldID) bool {
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
		return s.Rule == scenario.SunFirst && shown(s, scenario.RuleBy)
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

// on tells whether a panel is open.
func (c *Card) on(id string) bool { return c.Page.Shows(id) }

// canAddPlane tells whether the roof has room for another plane.
func (c *Card) canAddPlane() bool { return freePlane(&c.Page.Store.Scenario) >= 0 }

// freePlane is the first further plane without modules, -1 if all have some.
func freePlane(s *scenario.Scenario) int {
	for i, p := range s.More {
		if p.Modules == 0 {
			return i
		}
	}
	return -1
}

// newPlaneModules is what an added plane starts with.
const newPlaneModules = 2

func (c *Card) addPlane() {
	c.Page.Store.Plane(freePlane(&c.Page.Store.Scenario), newPlaneModules)
	c.Page.changed()
}

// furtherPlanes are the indices of those with modules.
func (c *Card) furtherPlanes() (list []int) {
	for i, p := range c.Page.Store.Scenario.More {
		if p.Modules > 0 {
			list = append(list, i)
		}
	}
	return list
}

func (c *Card) removePlane(i int) {
	c.Page.Store.Plane(i, 0)
	c.Page.changed()
}

func (c *Card) removeName(i int) string { return c.Page.View.Words.Text(words.PlaneRemove, i+2) }

func (r row) mode() string {
	if r.decimal {
		return "decimal"
	}
	return "text"
}
