package plan

import (
	"math"
	"sort"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// How many drawn years are looked at, and by how many percent a month differs from
// year to year (standard deviation; an assumption).
const (
	YearCount     = 60
	YearSpreadPct = 8
)

// Years simulates a house under many drawn years, one at a time.
type Years struct {
	BoughtKWh, Cost, CoolDays []float64 // of each year so far

	p      *simulate.Prepared
	backup scenario.Backup
	many   *climate.Many
	ws     simulate.Workspace
	year   simulate.Year
}

// NewYears draws the years of a prepared house's climate. It fails where its months
// cannot be true (*climate.ClearSkyError).
func NewYears(p *simulate.Prepared, b scenario.Backup) (*Years, error) {
	many, err := p.Years(YearCount, YearSpreadPct)
	if err != nil {
		return nil, err
	}
	return &Years{p: p, backup: b, many: many}, nil
}

// Step simulates one year; it returns false when all are done.
func (y *Years) Step() bool {
	i := len(y.Cost)
	if i == y.many.Len() {
		return false
	}
	y.p.With(y.many.Year(i)).RunYear(y.backup, &y.ws, &y.year)
	t := &y.year.Total
	y.BoughtKWh = append(y.BoughtKWh, t.BoughtJ/simulate.JPerKWh)
	y.Cost = append(y.Cost, t.Cost)
	y.CoolDays = append(y.CoolDays, float64(t.CoolDays))
	return true
}

// Quantile is the value below which the part q (0 to 1) of the values lies, joined
// straight between them; NaN of none.
func Quantile(values []float64, q float64) float64 {
	if len(values) == 0 {
		return math.NaN()
	}
	sorted := append([]float64{}, values...)
	sort.Float64s(sorted)
	at := q * float64(len(sorted)-1)
	i := min(int(at), len(sorted)-1)
	next := min(i+1, len(sorted)-1)
	return sorted[i] + (sorted[next]-sorted[i])*(at-float64(i))
}
