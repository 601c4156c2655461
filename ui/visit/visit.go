// Package visit is an installer's visit: what to write down on the walk through the house, how
// its modules can be wired, and what meters should read.
package visit

import (
	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/ui/page"
	"suncask/ui/state"
	"suncask/ui/words"
)

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Visit shows the parts of a visit, one open at a time.
type Visit struct{ Page *page.Page }

// walk is the order of the parts.
var walk = []struct {
	part  page.VisitPart
	id    string
	title words.Key
}{
	{page.Survey, "part-survey", words.VisitSurvey},
	{page.Wiring, "part-wiring", words.VisitWiring},
	{page.Meters, "part-meters", words.VisitTest},
}

// counts says how many findings of each severity the house has.
func (c *Visit) counts() string {
	n := func(severity care.Severity) int { return care.Count(c.Page.Findings, severity) }
	return c.Page.View.Words.Text(words.VisitCounts, n(care.Stop), n(care.Caution), n(care.Note))
}

// section is a stop on the walk through the house.
type section struct {
	id     string
	title  words.Key
	fields []scenario.FieldID
}

var sections = []section{
	{"survey-roof", words.VisitRoof, []scenario.FieldID{scenario.Place, scenario.ColdestC, scenario.Modules, scenario.TiltDeg, scenario.AzimuthDeg, scenario.MountBy,
		scenario.ModuleW, scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.MaxSystemV, scenario.MaxFuseA, scenario.CableM, scenario.CableSize, scenario.SoilPct, scenario.AgeYears}},
	{"survey-tank", words.VisitTank, []scenario.FieldID{scenario.TankLitres, scenario.Stands, scenario.ElementW, scenario.ElementV, scenario.ElementsBy, scenario.LowerPct, scenario.StatBy, scenario.BreaksBy, scenario.CutOutC, scenario.CutBoth,
		scenario.SetC, scenario.SunLimitC, scenario.LossBy, scenario.LossKWh, scenario.EveningC, scenario.MorningC, scenario.NightH, scenario.RoomC,
		scenario.ValveC, scenario.TapC, scenario.ReliefBar, scenario.SupplyBar, scenario.ExpandBy, scenario.VesselL, scenario.ShowerFlow}},
	{"survey-board", words.VisitBoard, []scenario.FieldID{scenario.SupplyV, scenario.BreakerA, scenario.ChangeBy, scenario.CoupledBy, scenario.ConverterSteps, scenario.ConverterOut, scenario.ConverterLowV, scenario.ConverterHighV,
		scenario.ConverterW, scenario.ConverterMaxV, scenario.ConverterMaxA, scenario.ConverterShortA, scenario.ConverterPct, scenario.ConverterStartW, scenario.RuleBy, scenario.OutFrom, scenario.OutTo}},
	{"survey-bill", words.VisitBill, []scenario.FieldID{scenario.Price, scenario.Currency, scenario.People, scenario.Showers, scenario.ShowerMinutes}},
}

// fields are those of the section that is open, which say something about this house.
func (c *Visit) fields() (list []scenario.FieldID) {
	for _, id := range sections[c.Page.Visit.Section].fields {
		if state.Applies(&c.Page.Store.Scenario, id) {
			list = append(list, id)
		}
	}
	return list
}
