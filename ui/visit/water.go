package visit

import (
	"math"

	"suncask/engine/care"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/visit"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Water is what an installer works out on the water's side, and what to look at there.
type Water struct {
	Page *page.Page

	ws simulate.Workspace
}

func (c *Water) unit(u scenario.Unit) string { return format.Space + c.Page.View.Words.Units[u] }

func (c *Water) degrees(tempC float64) string {
	return format.Degrees(tempC) + c.unit(scenario.Celsius)
}

func (c *Water) litres(l float64) string {
	return format.In(scenario.Litre, l, 1) + c.unit(scenario.Litre)
}

// duration writes minutes.
func (c *Water) duration(minutes float64) string { return duration(minutes) }

func duration(minutes float64) string {
	return format.Duration(int(math.Ceil(minutes)))
}

// pair is a value with its name.
type pair struct{ name, value string }

// pairs are what can be worked out.
func (c *Water) pairs() (list []pair) {
	p, w := c.Page.Store.Prepared, c.Page.View.Words
	s, t := &p.Scenario, c.Page.T
	month := int(s.Month)
	add := func(name, value string) { list = append(list, pair{name, value}) }
	pushed, coldC, hotC := visit.Pushed(p)
	add(w.Text(words.WaterPushed, c.degrees(coldC), c.degrees(hotC)), c.litres(pushed))
	vessel := t(words.WaterVesselAsk)
	if s.ReliefBar != scenario.Unknown && s.SupplyBar != scenario.Unknown {
		vessel = "\u2013"
		if litres, ok := care.VesselLitres(pushed, s.SupplyBar, s.ReliefBar); ok {
			vessel = format.AtLeast(format.Shown(scenario.Litre, litres), 1) + c.unit(scenario.Litre)
		}
	}
	add(t(words.WaterVessel), vessel)
	joules, hours := visit.GridHeatUp(p, month)
	add(w.Text(words.WaterGrid, c.degrees(s.SetC)), format.KWh(joules, 1)+format.Space+"kWh, "+c.duration(60*hours))
	if s.AllModules() > 0 {
		for sky, name := range [...]words.Key{words.WaterSunBright, words.WaterSunTypical, words.WaterSunDull} {
			text := t(words.WaterNever)
			if days, ok := visit.SunHeatUp(p, month, scenario.Sky(sky)); ok {
				text = w.Text(words.WaterDays, format.Number(days, 1))
			}
			add(w.Text(name, w.Months[month]), text)
		}
	}
	if joules, minutes, ok := visit.FirstShower(p, month, &c.ws); ok && s.Uses == scenario.Habits {
		add(t(words.WaterShower), format.KWh(joules, 1)+format.Space+"kWh, "+c.duration(minutes))
	}
	if s.ValveC > 0 {
		if share, ok := visit.HotShare(s.ValveC, hotC, p.ColdC(month)); ok {
			add(t(words.WaterShare), format.Number(100*share, 0)+format.Space+"%")
		}
	}
	add(t(words.WaterRelief), format.AtLeast(visit.RatingsOf(p).ReliefW, 0)+format.Space+"W")
	return list
}

// heatUp says whether the weekly heat-up is on, and what it does not reach.
func (c *Water) heatUp() string {
	p := c.Page.Store.Prepared
	if p.Scenario.HeatUp == 0 {
		return c.Page.T(words.WaterHeatUpOff)
	}
	_, grid := p.Elements()
	return c.Page.View.Words.Text(words.WaterHeatUpOn, format.In(scenario.Litre, grid.Low*p.Scenario.TankLitres, 0))
}

// waterFields are those on which findings of water hang.
var waterFields = map[scenario.FieldID]bool{
	scenario.SetC: true, scenario.SunLimitC: true, scenario.ValveC: true, scenario.TapC: true, scenario.CutOutC: true, scenario.CutBoth: true,
	scenario.ReliefBar: true, scenario.SupplyBar: true, scenario.ExpandBy: true, scenario.VesselL: true, scenario.HeatUp: true, scenario.LowerPct: true,
}

// findings are those of water.
func (c *Water) findings() (list []care.Finding) {
	for _, f := range c.Page.Findings {
		if waterFields[f.Field] {
			list = append(list, f)
		}
	}
	return list
}
