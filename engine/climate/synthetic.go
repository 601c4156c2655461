package climate

import (
	"fmt"
	"math"
	"math/rand/v2"
)

// Year is a year of hourly weather at a place, on its local clock.
type Year struct {
	Place   *Place
	Sun     [Days]SunDay
	Light   [Days][24]HourLight
	AirC    [Days][24]float64
	ColdC   [Days]float64 // cold water
	Clear   [12]Clearness // distribution of each month's daily clearness; zero in polar night
	MonthKt [12]float64   // mean clearness index
}

// phi is the correlation of a day's clearness (as a normal variate) with the day
// before: 0.29 for all months and places (Graham, Hollands & Unny 1988, from
// memory); typical-year files show 0.12 to 0.38 about the monthly mean.
const phi = 0.29

// dark is the monthly irradiation below which a month has no weather, kWh/m2 a day.
const dark = 0.05

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
// ones do: daily clearness follows Bendt's distribution through an AR(1) normal
// variate. The same seed gives the same draws on every machine.
func Typical(p *Place, seed uint64) (*Year, error) {
	y := &Year{Place: p}
	draws := rand.NewPCG(seed, 0x5ca1ab1e)
	z := normal(draws)
	for m := range 12 {
		if err := y.month(m, draws, &z); err != nil {
			return nil, err
		}
	}
	nodes := p.airNodes()
	for day := range Days {
		y.ColdC[day] = p.ColdWater(day)
		y.air(day, joined(&nodes, day))
	}
	return y, nil
}

// normal draws a standard normal variate by inversion of 53 random bits.
func normal(r *rand.PCG) float64 {
	u := (float64(r.Uint64()>>11) + 0.5) / (1 << 53)
	return math.Sqrt2 * math.Erfinv(2*u-1)
}

func (y *Year) month(m int, draws *rand.PCG, z *float64) error {
	first, n := FirstDay(m), DaysIn[m]
	extra, limit := 0.0, 0.0
	var raw, most [31]float64
	for i := range n {
		day := first + i
		y.Sun[day] = SunDayOf(y.Place, day)
		extra += y.Sun[day].ExtraJ
	}
	target := y.Place.GHI[m] * 3.6e6 * float64(n)
	lit := y.Place.GHI[m] >= dark && extra > target
	if lit {
		y.MonthKt[m] = target / extra
		y.Clear[m] = ClearnessOf(y.MonthKt[m])
	}
	for i := range n {
		// Drawn in dark months too, so that a month never depends on another's light.
		*z = phi**z + math.Sqrt(1-phi*phi)*normal(draws)
		if !lit {
			continue
		}
		sun := &y.Sun[first+i]
		raw[i] = y.Clear[m].Quantile(math.Erfc(-*z/math.Sqrt2)/2) * sun.ExtraJ
		// Haurwitz knows no height above sea level: the clearest day of the month's
		// own distribution counts as cloudless where it is brighter.
		most[i] = math.Max(sun.ClearJ, y.Clear[m].Max*sun.ExtraJ)
		limit += most[i]
	}
	if !lit {
		if y.Place.GHI[m] >= dark {
			return &ClearSkyError{y.Place.Name, m, y.Place.GHI[m], extra / 3.6e6 / float64(n)}
		}
		return nil
	}
	if target > limit {
		return &ClearSkyError{y.Place.Name, m, y.Place.GHI[m], limit / 3.6e6 / float64(n)}
	}
	y.rescale(first, n, target, raw[:], most[:])
	return nil
}

// rescale brings a month's days to their sum: clip to [0.02 H0, clear day] and
// scale what is not clipped, until the sum stands.
func (y *Year) rescale(first, n int, target float64, raw, most []float64) {
	for range 200 {
		sum, free := 0.0, 0.0
		for i := range n {
			least := 0.02 * y.Sun[first+i].ExtraJ
			raw[i] = math.Min(math.Max(raw[i], least), most[i])
			sum += raw[i]
			if raw[i] > least && raw[i] < most[i] {
				free += raw[i]
			}
		}
		gap := target - sum
		if math.Abs(gap) <= 1e-13*target || free == 0 {
			break
		}
		for i := range n {
			least := 0.02 * y.Sun[first+i].ExtraJ
			if raw[i] > least && raw[i] < most[i] {
				raw[i] *= 1 + gap/free
			}
		}
	}
	for i := range n {
		y.Sun[first+i].Spread(raw[i], &y.Light[first+i])
	}
}

// airNodes returns the mid-month temperatures whose straight joins have the
// place's monthly means.
func (p *Place) airNodes() (nodes [12]float64) {
	nodes = p.TempC
	for range 60 {
		var mean [12]float64
		for day := range Days {
			m := MonthOf(day)
			mean[m] += joined(&nodes, day) / float64(DaysIn[m])
		}
		for m := range 12 {
			nodes[m] += p.TempC[m] - mean[m]
		}
	}
	return nodes
}

// joined is the value of straight lines between mid-month nodes on a day.
func joined(nodes *[12]float64, day int) float64 {
	m := MonthOf(day)
	pos := (float64(day-FirstDay(m)) + 0.5) / float64(DaysIn[m])
	if pos > 0.5 {
		return nodes[m]*(1.5-pos) + nodes[(m+1)%12]*(pos-0.5)
	}
	return nodes[m]*(0.5+pos) + nodes[(m+11)%12]*(0.5-pos)
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
