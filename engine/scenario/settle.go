package scenario

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/tariff"
)

// ShortOverMost is the short circuit's current over that at maximum power of a common
// module (common practice, no source); it stands in where the datasheet's is not known.
const ShortOverMost = 1.0623

// MostOverOpen is the voltage at maximum power over that without load, as
// ShortOverMost.
const MostOverOpen = 0.8387

// ColdestUnderK is by how much the lowest air on record is taken to lie below the mean of
// the coldest month: typical years of 13 stations come 6 to 16 K below it (computed), and
// a record lies below those (assumption).
const ColdestUnderK = 20.0

// Settle brings assumed values that follow from others into line with them: the clock
// of the place, the short circuit of modules of other watts, the currency of the country.
func (s *Scenario) Settle() {
	s.settleFirst()
	s.settleRoof()
	s.settleMoney()
}

// located is the scenario's place as it was found, in its country.
func (s *Scenario) located() (f climate.Found, ok bool) {
	f, ok = climate.Locate(s.Place)
	if ok && f.Between {
		f.PutIn(s.Country)
	}
	return f, ok
}

// settleFirst is what version 1 brings into line.
func (s *Scenario) settleFirst() {
	switch open, most := s.Known.Has(OpenV), s.Known.Has(MostV); {
	case open && !most:
		s.MostV = math.Round(MostOverOpen*s.OpenV*10) / 10
	case most && !open:
		s.OpenV = math.Min(200, math.Round(s.MostV/MostOverOpen*10)/10)
	}
	if !s.Known.Has(ShortA) {
		s.ShortA = math.Max(0.1, math.Min(40, math.Round(ShortOverMost*s.ModuleW/s.MostV*100)/100))
	}
	if !s.Known.Has(ConverterMaxV) {
		s.ConverterMaxV = s.ConverterHighV
	}
	if !s.Known.Has(SupplyV) {
		s.SupplyV = math.Min(FieldOf(SupplyV).Max, math.Max(FieldOf(SupplyV).Min, s.ElementV))
	}
	if !s.Known.Has(LowerPct) {
		s.LowerPct = UprightLowerPct
		if s.Stands == 1 {
			s.LowerPct = LyingLowerPct
		}
	}
	f, ok := s.located()
	if !ok {
		return
	}
	if !s.Known.Has(ColdestC) {
		coldest := math.Inf(1)
		for _, c := range s.TempC.Over(f.TempC) {
			coldest = math.Min(coldest, c)
		}
		s.ColdestC = math.Max(FieldOf(ColdestC).Min, math.Min(FieldOf(ColdestC).Max, math.Floor(coldest-ColdestUnderK)))
	}
	if !s.Known.Has(GridCO2) {
		c, _ := tariff.Carbon(f.Country)
		s.GridCO2 = float64(c.GramsKWh)
	}
	if !s.Known.Has(Zone) {
		s.ZoneH = f.Clock.OffsetH
	}
	if !s.Known.Has(SummerTime) {
		s.Summer = WriteDates(f.Clock)
	}
}
