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
	{page.Trouble, "part-trouble", words.VisitTrouble},
	{page.Water, "part-water", words.VisitWater},
	{page.SheetPart, "part-sheet", words.VisitSheet},
	{page.Return, "part-return", words.VisitReturn},
}

// at is where the open part stands in the walk, 0 where none is open.
func (c *Visit) at() int {
	for i, p := range walk {
		if p.part == c.Page.Visit.Part {
			return i
		}
	}
	return 0
}

// name is that of the part that is open, and its number.
func (c *Visit) name() string { return c.Page.T(walk[c.at()].title) }

func (c *Visit) step() string { return c.Page.View.Words.Text(words.VisitStep, c.at()+1, len(walk)) }

// canGo tells whether there is a part so many further.
func (c *Visit) canGo(by int) bool { i := c.at() + by; return i >= 0 && i < len(walk) }

func (c *Visit) goName(by int) string {
	if !c.canGo(by) {
		return ""
	}
	key := words.VisitOn
	if by < 0 {
		key = words.VisitEarlier
	}
	return c.Page.View.Words.Text(key, c.Page.T(walk[c.at()+by].title))
}

// goBy opens the part so many further, from its beginning.
func (c *Visit) goBy(by int) {
	if c.canGo(by) {
		c.Page.OpenPart(walk[c.at()+by].part)
		if c.Page.Host != nil {
			c.Page.Host.Reveal("visit")
		}
	}
}

// counts says how many findings of each severity the house has.
func (c *Visit) counts() string {
	n := func(severity care.Severity) int { return care.Count(c.Page.Findings, severity) }
	return c.Page.View.Words.Text(words.VisitCounts, n(care.Stop), n(care.Caution), n(care.Note))
}

// lists tells whether what is to be minded stands below the part that is open: where there is room,
// and the part is not about it already.
func (c *Visit) lists() bool {
	return c.Page.Wide > 0 && c.Page.Visit.Part != page.Water && c.Page.Visit.Part != page.SheetPart
}

// section is a stop on the walk through the house.
type section struct {
	id     string
	title  words.Key
	fields []scenario.FieldID
}

var sections = []section{
	{"survey-roof", words.VisitRoof, []scenario.FieldID{scenario.Place, scenario.ColdestC, scenario.Modules, scenario.TiltDeg, scenario.AzimuthDeg, scenario.MountBy,
		scenario.ModuleW, scenario.OpenV, scenario.MostV, scenario.ShortA, scenario.VoltPct, scenario.AmpsPct, scenario.PowerPct, scenario.RearPct, scenario.MaxSystemV, scenario.MaxFuseA, scenario.CableM, scenario.CableSize, scenario.SoilPct, scenario.AgeYears}},
	{"survey-tank", words.VisitTank, []scenario.FieldID{scenario.TankLitres, scenario.Stands, scenario.ElementW, scenario.ElementV, scenario.ElementLoops, scenario.ElementsBy, scenario.LowerPct, scenario.StatBy, scenario.BreaksBy, scenario.CutOutC, scenario.CutBoth,
		scenario.SetC, scenario.SunLimitC, scenario.LossBy, scenario.LossKWh, scenario.EveningC, scenario.MorningC, scenario.NightH, scenario.RoomC,
		scenario.ValveC, scenario.TapC, scenario.ReliefBar, scenario.SupplyBar, scenario.ExpandBy, scenario.VesselL, scenario.ShowerFlow}},
	{"survey-board", words.VisitBoard, []scenario.FieldID{scenario.SupplyV, scenario.BreakerA, scenario.GridCable, scenario.ChangeBy, scenario.CoupledBy, scenario.ConverterSteps, scenario.ConverterOut, scenario.ConverterLowV, scenario.ConverterHighV,
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
