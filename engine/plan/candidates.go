package plan

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// tried adds a change, unless it changes nothing or makes a house that is not allowed.
func tried(list []Fix, s *scenario.Scenario, f Fix, do func(*scenario.Scenario)) []Fix {
	f.To = *s
	do(&f.To)
	f.To.Known = f.To.Known.With(f.Field)
	f.To.Settle()
	if f.To == *s || len(f.To.Problems()) > 0 {
		return list
	}
	return append(list, f)
}

// wrap brings minutes into the day.
func wrap(m int) int { return (m + scenario.DayMinutes) % scenario.DayMinutes }

// candidates are the changes that are tried.
func candidates(s *scenario.Scenario) (list []Fix) {
	try := func(c Change, field scenario.FieldID, invest, changed float64, do func(*scenario.Scenario)) {
		list = tried(list, s, Fix{Change: c, Field: field, Invest: invest, changed: changed}, do)
	}
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
	try(MoreLitres, scenario.TankLitres, s.TankCost, 0, func(t *scenario.Scenario) { t.TankLitres += 50 })
	return list
}
