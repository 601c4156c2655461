package plan

import (
	"suncask/engine/finance"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Savings are the years that a house's own year is compared with.
type Savings struct {
	AllDay simulate.Flows // backup all day, no modules
	Hours  simulate.Flows // the house's backup hours, no modules
	Now    simulate.Flows // with modules
}

// Timer is what the hours alone save in a year, Sun what the modules save beyond.
func (s *Savings) Timer() float64 { return s.AllDay.Cost - s.Hours.Cost }

// Sun is what the modules save beside the hours.
func (s *Savings) Sun() float64 { return s.Hours.Cost - s.Now.Cost }

// AtEqualComfort is what hours and modules save together once the heat that uses lack is
// charged at the mean price of a kWh bought all day.
func (s *Savings) AtEqualComfort() float64 {
	perJ := 0.0
	if s.AllDay.BoughtJ > 0 {
		perJ = s.AllDay.Cost / s.AllDay.BoughtJ
	}
	return s.AllDay.Cost - s.Now.Cost - perJ*(s.Now.ShortfallJ-s.AllDay.ShortfallJ)
}

// SystemCost is what a scenario's system costs today; nothing without modules.
func SystemCost(s *scenario.Scenario) float64 {
	modules := s.AllModules()
	if modules == 0 {
		return 0
	}
	return s.FixedCost + float64(modules)*s.ModuleCost
}

// Bill is a house's electricity bill of a year in which its water costs so much.
func Bill(s *scenario.Scenario, water float64) float64 {
	t := s.Tariff()
	return 12*(s.Standing+t.Month(s.OtherKWh)) + water
}

// CarbonKg is the CO2 equivalent of what a year's water took from the grid, kg.
func CarbonKg(s *scenario.Scenario, year *simulate.Flows) float64 {
	return year.BoughtJ / simulate.JPerKWh * s.GridCO2 / 1000
}

// Project is a scenario's system as an investment that saves so much in its first year,
// while the water takes sunKWh of the sun. A house without modules has nothing to keep up,
// one without a converter none to replace.
func Project(s *scenario.Scenario, saving, sunKWh float64) finance.Project {
	p := finance.Project{
		Cost: SystemCost(s), Saving: saving, KWh: sunKWh, Upkeep: s.UpkeepCost,
		Replacement: s.ReplaceCost, ReplacementYear: s.ReplaceYear,
		PriceRise: s.PriceRisePct / 100, UpkeepRise: 0, Degradation: scenario.AgePctAYear / 100,
		Discount: s.DiscountPct / 100, Years: s.HorizonYears,
	}
	if p.Cost == 0 {
		p.Upkeep, p.Degradation = 0, 0
	}
	if p.Cost == 0 || s.Coupling != scenario.Converter {
		p.Replacement = 0
	}
	return p
}

// Worth values the system against backup all day and against the same hours, both without
// modules.
func (s *Savings) Worth(of *scenario.Scenario) (againstAllDay, againstHours finance.Worth) {
	kWh := s.Now.SunJ / simulate.JPerKWh
	a := Project(of, s.Timer()+s.Sun(), kWh)
	h := Project(of, s.Sun(), kWh)
	return a.Worth(), h.Worth()
}
