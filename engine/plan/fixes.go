package plan

import (
	"cmp"
	"math"
	"slices"

	"suncask/engine/care"
	"suncask/engine/climate"
	"suncask/engine/finance"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Change is a kind of change to a house.
type Change int8

const (
	Longer    Change = iota // backup hours
	Shifted                 // backup hours
	Rescue                  // when little water is ready
	OtherRule               // for who has the element
	Jacket
	LessFlow  // of showers
	HotterSun // a higher limit for the sun
	CoolerSet // a lower thermostat of the backup, not below what hygiene asks, with a higher limit for the sun
	OneModule // more
	MoreLitres
	changeCount
)

// Changes returns all kinds.
func Changes() (list []Change) {
	for c := range changeCount {
		list = append(list, c)
	}
	return list
}

// Fix is a change with the year it was simulated for.
type Fix struct {
	Change  Change
	Field   scenario.FieldID // that is changed
	To      scenario.Scenario
	Year    simulate.Flows
	Saves   float64        // a year
	Invest  float64        // today, as far as the scenario knows what it costs
	Worth   float64        // today, over the scenario's years
	Brings  []care.Finding // cautions that were not there
	changed float64        // how far, in steps of its kind
}

// Fixes are the changes that leave fewer uses cool, where more run cool than accepted;
// else those that cost less in a year and keep to what is accepted. Each is a simulated
// year, the best of its kind, and brings no finding that stops, nor worsens one. Those
// that bring no caution come first, then what is worth most.
func Fixes(p *simulate.Prepared, file *climate.Record, ws *simulate.Workspace) []Fix {
	s := &p.Scenario
	y := new(simulate.Year)
	p.RunYear(s.Backup, ws, y)
	now, found := y.Total, care.Findings(p)
	accept := int32(s.AcceptUses)
	best := map[Change]Fix{}
	for _, f := range candidates(s) {
		q, err := simulate.Prepare(&f.To, file, p)
		if err != nil {
			continue // no module has such a datasheet, or no weather
		}
		var stops bool
		if f.Brings, stops = brought(found, care.Findings(q)); stops {
			continue
		}
		q.RunYear(f.To.Backup, ws, y)
		f.Year, f.Saves = y.Total, now.Cost-y.Total.Cost
		if now.CoolUses > accept && f.Year.CoolUses >= now.CoolUses ||
			now.CoolUses <= accept && (f.Year.CoolUses > accept || f.Saves < 0.005*now.Cost+1e-9) {
			continue
		}
		project := Project(s, f.Saves, 0)
		project.Cost, project.Upkeep, project.Replacement = f.Invest, 0, 0
		f.Worth = finance.NPV(project.Discount, project.Payments())
		if b, ok := best[f.Change]; !ok || f.before(&b, accept) {
			best[f.Change] = f
		}
	}
	var list []Fix
	for c := range changeCount {
		if f, ok := best[c]; ok {
			list = append(list, f)
		}
	}
	slices.SortStableFunc(list, func(a, b Fix) int {
		if c := cmp.Compare(min(1, len(a.Brings)), min(1, len(b.Brings))); c != 0 {
			return c
		}
		if c := cmp.Compare(max(0, a.Year.CoolUses-accept), max(0, b.Year.CoolUses-accept)); c != 0 {
			return c
		}
		return cmp.Compare(b.Worth, a.Worth)
	})
	return list
}

// before orders fixes of one kind: the promise, then worth, then the smaller change.
func (f *Fix) before(o *Fix, accept int32) bool {
	if a, b := max(0, f.Year.CoolUses-accept), max(0, o.Year.CoolUses-accept); a != b {
		return a < b
	}
	if math.Abs(f.Worth-o.Worth) > costSlack {
		return f.Worth > o.Worth
	}
	return f.changed < o.changed
}

// brought lists the cautions that a change brings, and tells whether it brings or worsens
// a finding that stops.
func brought(was, is []care.Finding) (cautions []care.Finding, stops bool) {
	for _, f := range is {
		i := slices.IndexFunc(was, func(w care.Finding) bool { return w.Code == f.Code && w.Severity >= f.Severity })
		switch {
		case f.Severity == care.Stop && (i < 0 || f.Args[0] > was[i].Args[0]+1e-9):
			stops = true
		case f.Severity == care.Caution && i < 0:
			cautions = append(cautions, f)
		}
	}
	return cautions, stops
}

// candidates are the changes that are tried.
func candidates(s *scenario.Scenario) (list []Fix) {
	try := func(c Change, field scenario.FieldID, invest, changed float64, do func(*scenario.Scenario)) {
		to := *s
		do(&to)
		to.Known = to.Known.With(field)
		to.Settle()
		if to != *s && len(to.Problems()) == 0 {
			list = append(list, Fix{Change: c, Field: field, To: to, Invest: invest, changed: changed})
		}
	}
	wrap := func(m int) int { return (m + scenario.DayMinutes) % scenario.DayMinutes }
	if b := s.Backup; !b.FollowsSun() && !b.AllDay {
		for _, by := range []int{15, 30, 60, 90, 120} {
			if b.Length()+by < scenario.DayMinutes {
				try(Longer, scenario.BackupHours, 0, float64(by), func(t *scenario.Scenario) { t.Backup.Start = wrap(b.Start - by) })
				try(Longer, scenario.BackupHours, 0, float64(by), func(t *scenario.Scenario) { t.Backup.End = wrap(b.End + by) })
			}
			for _, way := range []int{-by, by} {
				if b.Length() > 0 {
					try(Shifted, scenario.BackupHours, 0, float64(by), func(t *scenario.Scenario) {
						t.Backup.Start, t.Backup.End = wrap(b.Start+way), wrap(b.End+way)
					})
				}
			}
		}
	}
	if s.RescueL == 0 {
		for _, litres := range []float64{20, 40} {
			try(Rescue, scenario.RescueLitres, 0, litres, func(t *scenario.Scenario) { t.RescueL = litres })
		}
	}
	if !s.Elements.Apart() {
		for _, rule := range []scenario.Rule{scenario.WholeWindow, scenario.SunWhenSatisfied, scenario.SunFirst} {
			try(OtherRule, scenario.RuleBy, 0, 0, func(t *scenario.Scenario) { t.Rule = rule })
		}
	}
	try(Jacket, scenario.JacketOn, 0, 0, func(t *scenario.Scenario) { t.Jacket = 1 })
	if s.Uses == scenario.Habits && s.ShowerFlow > 6 {
		try(LessFlow, scenario.ShowerFlow, 0, 0, func(t *scenario.Scenario) { t.ShowerFlow = max(6, math.Round(1.5*t.ShowerFlow)/2) })
	}
	if s.SunLimitC < 80 && s.Modules > 0 {
		try(HotterSun, scenario.SunLimitC, 0, 0, func(t *scenario.Scenario) { t.SunLimitC = min(80, t.SunLimitC+5) })
		if s.SetC > simulate.HygieneC {
			try(CoolerSet, scenario.SetC, 0, 0, func(t *scenario.Scenario) { t.SetC, t.SunLimitC = simulate.HygieneC, min(80, t.SunLimitC+5) })
		}
	}
	try(OneModule, scenario.Modules, s.ModuleCost, 0, func(t *scenario.Scenario) { t.Modules++ })
	try(MoreLitres, scenario.TankLitres, 0, 0, func(t *scenario.Scenario) { t.TankLitres += 50 })
	return list
}
