package simulate

import "suncask/engine/climate"

// coldestMainsC is the least that colder water is taken to have, degC.
const coldestMainsC = 0.5

// ColdWaterC is the yearly mean of the house's cold water, degC.
func (p *Prepared) ColdWaterC() (mean float64) {
	for _, c := range p.Weather.ColdC {
		mean += c / climate.Days
	}
	return mean
}

// WithColdWater returns the house with water from the main warmer by k kelvin on every day,
// never below half a degree.
func (p *Prepared) WithColdWater(k float64) *Prepared {
	q, y := *p, *p.Weather
	for day, c := range y.ColdC {
		y.ColdC[day] = max(coldestMainsC, c+k)
	}
	for m, c := range q.skyColdC {
		q.skyColdC[m] = max(coldestMainsC, c+k)
	}
	q.Weather = &y
	return &q
}
