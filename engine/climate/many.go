package climate

import "math"

// Many are synthetic years that differ as years do. Only the mean of each calendar
// month over all of them is that of the place; no single month is brought to it.
type Many struct {
	base *Year
	days [][]float64 // by year, daily irradiation, J/m2
	span [12]*span
}

// NewMany draws years. spreadPct is the standard deviation of a month's irradiation
// from year to year, in percent of its mean: where the chance of its days alone makes
// it larger, as in dull winters, it stays at that.
func NewMany(p *Place, how Generator, seed uint64, years int, spreadPct float64) (*Many, error) {
	m := &Many{base: newYear(p, func() {}), days: make([][]float64, years)}
	for i := range m.span {
		s, err := m.base.month(i)
		if err != nil {
			return nil, err
		}
		m.span[i] = s
	}
	w := newWalk(how, seed)
	for y := range m.days {
		m.days[y] = make([]float64, Days)
		for i, s := range m.span {
			mean := m.base.MonthKt[i]
			own, clearest := 0.0, 0.0
			if s.lit {
				own = m.base.Clear[i].monthSpread(s.n) / mean
				clearest = ClearnessOf(mean).Max
			}
			target := math.Sqrt(math.Max(0, spreadPct*spreadPct/1e4-own*own))
			k := mean * (1 + target*w.normal())
			// A year's own distribution must stay one: between half the mean and nine
			// tenths of the way to its clearest day.
			k = math.Min(math.Max(k, 0.5*mean), mean+0.9*(clearest-mean))
			var c Clearness
			if s.lit {
				c = ClearnessOfSpread(k, m.base.Place.dailySpread(i))
			}
			s.draw(w, k, &c, m.days[y][s.first:s.first+s.n])
		}
	}
	for _, s := range m.span {
		if s.lit {
			m.settle(s)
		}
	}
	return m, nil
}

// settle brings the mean of one calendar month over all years to its target.
func (m *Many) settle(s *span) {
	var days, least, most []float64
	for _, year := range m.days {
		days = append(days, year[s.first:s.first+s.n]...)
		least = append(least, s.least[:s.n]...)
		most = append(most, s.most[:s.n]...)
	}
	rescale(days, least, most, s.target*float64(len(m.days)))
	for y, year := range m.days {
		copy(year[s.first:s.first+s.n], days[y*s.n:])
	}
}

// Len is the number of years.
func (m *Many) Len() int { return len(m.days) }

// Year returns one of the years.
func (m *Many) Year(i int) *Year {
	y := *m.base
	for _, s := range m.span {
		y.spread(s, m.days[i][s.first:s.first+s.n])
	}
	return &y
}

// monthSpread is the standard deviation of the mean clearness of n days that chance
// alone makes, with the days' correlation.
func (c *Clearness) monthSpread(n int) float64 {
	mean, square := 0.0, 0.0
	const steps = 400
	for i := range steps {
		k := c.Quantile((float64(i) + 0.5) / steps)
		mean += k / steps
		square += k * k / steps
	}
	sum, correlation := 1.0, 1.0
	for lag := 1; lag < n; lag++ {
		correlation *= phi
		sum += 2 * (1 - float64(lag)/float64(n)) * correlation
	}
	return math.Sqrt((square - mean*mean) / float64(n) * sum)
}
