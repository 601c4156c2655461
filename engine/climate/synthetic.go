package climate

import (
	"fmt"
	"math"
)

// Year is a year of hourly weather at a place, on its local clock.
type Year struct {
	Place    Place
	Measured bool // hours from a file, not drawn
	Sun      SunYear
	Light    [Days][24]HourLight
	AirC     [Days][24]float64
	ColdC    [Days]float64 // cold water
	Clear    [12]Clearness // distribution of each month's daily clearness; zero in polar night
	MonthKt  [12]float64   // mean clearness index
}

// dark is the monthly irradiation below which a month has no weather, kWh/m2 a day.
const dark = 0.05

// darkest is the least daily clearness that is drawn.
const darkest = 0.02

// brightest is the highest daily clearness that a wider distribution reaches.
const brightest = 0.85

// ClearSkyError says that a month's mean is brighter than a cloudless sky.
type ClearSkyError struct {
	Place       string
	Month       int     // 0-11
	Mean, Limit float64 // kWh/m2 a day
}

func (e *ClearSkyError) Error() string {
	return fmt.Sprintf("climate: %s, month %d: mean irradiation %.2f kWh/m2 a day is above the %.2f of a cloudless sky",
		e.Place, e.Month+1, e.Mean, e.Limit)
}

// Typical returns a year whose months keep the place's means of irradiation to
// 1e-12 and of temperature to a millionth of a kelvin, and whose days vary as real
// ones do. The same seed gives the same draws on every machine.
func Typical(p *Place, how Generator, seed uint64) (*Year, error) {
	return TypicalInTurns(p, how, seed, func() {})
}

// TypicalInTurns is Typical that calls turn between its months.
func TypicalInTurns(p *Place, how Generator, seed uint64, turn func()) (*Year, error) {
	y := newYear(p, turn)
	turn()
	w := newWalk(how, seed)
	for m := range 12 {
		s, err := y.month(m)
		if err != nil {
			return nil, err
		}
		days := make([]float64, s.n)
		if how == Autoregressive {
			s.drawMean(w, &y.Clear[m], days)
		} else {
			s.draw(w, y.MonthKt[m], &y.Clear[m], days)
		}
		if s.lit {
			rescale(days, s.least[:s.n], s.most[:s.n], s.target)
		}
		y.spread(s, days)
		turn()
	}
	return y, nil
}

// newYear fills what does not depend on the days' clearness.
func newYear(p *Place, turn func()) *Year {
	y := &Year{Place: *p, Sun: SunYearOf(p), ColdC: p.coldYear()}
	turn()
	for m := range 12 {
		extra := 0.0
		for day := FirstDay(m); day < FirstDay(m)+DaysIn[m]; day++ {
			extra += y.Sun[day].ExtraJ
		}
		target := p.GHI[m] * 3.6e6 * float64(DaysIn[m])
		if p.GHI[m] >= dark && extra > target {
			y.MonthKt[m] = target / extra
			y.Clear[m] = ClearnessOfSpread(y.MonthKt[m], p.dailySpread(m))
		}
	}
	turn()
	y.fillAir()
	return y
}

// AirCourse is a place's air temperature, hour by hour.
func (p *Place) AirCourse() (air [Hours]float64) {
	y := newYear(p, func() {})
	for h := range air {
		air[h] = y.AirC[h/24][h%24]
	}
	return air
}

// span is a month's days with the bounds of their irradiation, J/m2.
type span struct {
	first, n    int
	lit         bool
	target      float64 // sum of the month
	outside     [31]float64
	least, most [31]float64
}

// month returns a month's bounds, or an error if its mean is above them.
func (y *Year) month(m int) (*span, error) {
	s := &span{first: FirstDay(m), n: DaysIn[m], lit: y.MonthKt[m] > 0}
	s.target = y.Place.GHI[m] * 3.6e6 * float64(s.n)
	limit, clearest := 0.0, 0.0
	if s.lit {
		clearest = ClearnessOf(y.MonthKt[m]).Max
	}
	for i := range s.n {
		sun := &y.Sun[s.first+i]
		s.outside[i] = sun.ExtraJ
		s.least[i] = darkest * sun.ExtraJ
		// Haurwitz knows no height above sea level: the clearest day of Bendt's
		// distribution counts as cloudless where it is brighter.
		s.most[i] = math.Max(sun.ClearJ(), math.Max(clearest, y.Clear[m].Max)*sun.ExtraJ)
		limit += s.most[i]
	}
	if y.Place.GHI[m] >= dark && (!s.lit || s.target > limit) {
		return nil, &ClearSkyError{y.Place.Name, m, y.Place.GHI[m], limit / 3.6e6 / float64(s.n)}
	}
	return s, nil
}

// draw fills a month's daily irradiation, J/m2, from a distribution and its mean.
func (s *span) draw(w *walk, mean float64, c *Clearness, days []float64) {
	for i := range days {
		k := w.next(c, mean)
		days[i] = 0
		if s.lit {
			days[i] = math.Min(math.Max(k*s.outside[i], s.least[i]), s.most[i])
		}
	}
}

// drawMean draws days whose sum is the month's: their normal variates are moved by one
// amount until it is. Scaling the days instead would carry them out of their
// distribution.
func (s *span) drawMean(w *walk, c *Clearness, days []float64) {
	var z [31]float64
	for i := range days {
		z[i] = w.variate()
	}
	if !s.lit {
		clear(days)
		return
	}
	lo, hi := -8.0, 8.0
	for range 20 { // to 1e-5; the rest is scaled
		by := (lo + hi) / 2
		sum := 0.0
		for i := range days {
			days[i] = math.Min(math.Max(c.at(z[i]+by)*s.outside[i], s.least[i]), s.most[i])
			sum += days[i]
		}
		if sum < s.target {
			lo = by
		} else {
			hi = by
		}
	}
}

// rescale brings days to their sum: clip to their bounds and scale what is not
// clipped, until the sum stands.
func rescale(days, least, most []float64, target float64) {
	for range 200 {
		sum, free := 0.0, 0.0
		for i := range days {
			days[i] = math.Min(math.Max(days[i], least[i]), most[i])
			sum += days[i]
			if days[i] > least[i] && days[i] < most[i] {
				free += days[i]
			}
		}
		gap := target - sum
		if math.Abs(gap) <= 1e-13*target || free == 0 {
			return
		}
		for i := range days {
			if days[i] > least[i] && days[i] < most[i] {
				days[i] *= 1 + gap/free
			}
		}
	}
}

// spread turns a month's daily irradiation into hours.
func (y *Year) spread(s *span, days []float64) {
	for i, j := range days {
		y.Sun[s.first+i].Spread(j, &y.Light[s.first+i])
	}
}

// fillAir gives every day the mean of straight lines between the months.
func (y *Year) fillAir() {
	nodes := joinedMeans(y.Place.TempC)
	for day := range Days {
		y.air(day, joined(&nodes, day))
	}
}

// air fills a day's hourly temperatures about the day's mean, with a swing of
// A = 25.8 K_t - 5.21 kelvin (Erbs, Klein & Beckman 1983, from memory):
//
//	A (0.4632 cos(t-3.805) + 0.0984 cos(2t-0.360) + 0.0168 cos(3t-0.822) + 0.0138 cos(4t-3.513)),  t = 2 pi (h-1)/24
func (y *Year) air(day int, meanC float64) {
	swing := math.Max(0, 25.8*y.MonthKt[MonthOf(day)]-5.21)
	for h := range 24 {
		t := 2 * math.Pi * (float64(h) + 0.5 - 1) / 24
		y.AirC[day][h] = meanC + swing*(0.4632*math.Cos(t-3.805)+0.0984*math.Cos(2*t-0.360)+
			0.0168*math.Cos(3*t-0.822)+0.0138*math.Cos(4*t-3.513))
	}
}
