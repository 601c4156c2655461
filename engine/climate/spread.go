package climate

import "math"

// Bendt's distribution is a fit to stations of the United States, and its days spread too
// much where weather is even. Chosen on monthly standard deviations of nine hourly files
// (ClearnessOfSpread; testdata/clearness.json has them and eight others), the spread is a part of
// Bendt's that rises with the difference of the year's warmest and coldest month, which
// goes with travelling storms, and falls with the month's warmth, which goes with showers.
const (
	spreadLevel   = 0.725
	spreadPerK    = 0.0094  // of the year's difference, 1/K
	spreadPerDegC = -0.0066 // of a month above 0 degC, 1/K
	spreadLeast   = 0.4
	spreadMost    = 1.2
)

// dailySpread is a month's spread of daily clearness as a part of Bendt's.
func (p *Place) dailySpread(m int) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, t := range p.TempC {
		low, high = math.Min(low, t), math.Max(high, t)
	}
	s := spreadLevel + spreadPerK*(high-low) + spreadPerDegC*math.Max(0, p.TempC[m])
	return math.Min(math.Max(s, spreadLeast), spreadMost)
}
