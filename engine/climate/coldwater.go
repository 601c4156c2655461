package climate

import "math"

// WaterModel says how the temperature of a place's water main is reckoned.
type WaterModel uint8

const (
	// AirMean: the yearly mean of the air, with the course of Burch & Christensen. Deep in
	// the ground and through the year the two means are near each other; published means of
	// mains lie within some 2 K of it in Europe.
	AirMean WaterModel = iota
	// NorthAmerica: Burch & Christensen 2007 with its offset of 6 degF, which is a fit to
	// data of the United States.
	NorthAmerica
	// Spain: monthly means by provincial capital, lower with height.
	Spain
	// UnitedKingdom: one table of monthly means.
	UnitedKingdom
	// Germany: a yearly mean of 10 degC, with the course of Burch & Christensen.
	Germany
)

// southOfFit is the latitude below which a place in the United States, in the tropics, is
// not among those that the fit is of.
const southOfFit = 24.0

// waterModel is the model for a country, by its name in the table of places.
func waterModel(country string, latDeg float64) WaterModel {
	switch country {
	case "United States", "Canada":
		if latDeg >= southOfFit {
			return NorthAmerica
		}
	case "Spain":
		return Spain
	case "United Kingdom":
		return UnitedKingdom
	case "Germany":
		return Germany
	}
	return AirMean
}

// fitOffsetK is the 6 degF of NorthAmerica.
const fitOffsetK = 6 / 1.8

// germanMeanC is the yearly mean of Germany (VDI 6002, from memory).
const germanMeanC = 10.0

// britishMains are the monthly means of UnitedKingdom, degC (SAP 10.2 table J1, cold water
// from the mains, from memory).
var britishMains = [12]float64{8.0, 8.2, 9.3, 12.7, 14.6, 16.7, 18.4, 17.6, 16.6, 14.3, 11.1, 8.5}

// capital is a provincial capital of Spain with its monthly means.
type capital struct {
	latDeg, lonDeg, heightM float64
	monthC                  [12]float64
}

// spanishMains: Spanish building code CTE DB-HE, appendix with cold-water temperatures
// (from memory, not all capitals): Madrid, Seville, Barcelona, Valencia, Malaga, Bilbao,
// Saragossa, Las Palmas.
var spanishMains = [...]capital{
	{40.42, -3.70, 589, [12]float64{8, 8, 10, 12, 14, 17, 20, 19, 17, 13, 10, 8}},
	{37.39, -5.99, 9, [12]float64{11, 11, 13, 14, 16, 19, 21, 21, 20, 16, 13, 11}},
	{41.39, 2.17, 1, [12]float64{9, 10, 11, 12, 14, 17, 19, 19, 17, 15, 12, 10}},
	{39.47, -0.38, 8, [12]float64{10, 11, 12, 13, 15, 17, 19, 20, 18, 16, 13, 11}},
	{36.72, -4.42, 0, [12]float64{12, 12, 13, 14, 16, 18, 20, 20, 19, 16, 14, 12}},
	{43.26, -2.93, 214, [12]float64{9, 10, 10, 11, 13, 15, 17, 17, 16, 14, 11, 10}},
	{41.65, -0.88, 207, [12]float64{8, 9, 10, 12, 15, 17, 20, 19, 17, 14, 10, 8}},
	{28.12, -15.43, 114, [12]float64{15, 15, 16, 16, 17, 18, 19, 19, 19, 18, 17, 16}},
}

// Fall of Spain's means with height over the capital's, K/m: October to March, and the
// other months (CTE DB-HE, as spanishMains).
const winterFall, summerFall = 0.0066, 0.0033

// spanishMonths are the monthly means of a point in Spain: the nearest capital's.
func spanishMonths(latDeg, lonDeg, heightM float64) (month [12]float64) {
	near, least := 0, math.Inf(1)
	for i, c := range spanishMains {
		if km := DistanceKm(latDeg, lonDeg, c.latDeg, c.lonDeg); km < least {
			near, least = i, km
		}
	}
	c := &spanishMains[near]
	over := heightM - c.heightM
	if math.IsNaN(heightM) {
		over = 0
	}
	for m := range month {
		fall := winterFall
		if m >= 3 && m <= 8 {
			fall = summerFall
		}
		month[m] = math.Max(coldestMainsC, c.monthC[m]-fall*over)
	}
	return month
}

// coldestMainsC is the least that water in a main is taken to have, degC.
const coldestMainsC = 1.0

// ColdWater returns the temperature of the water main on a day of the year
// (0-364), degC, never below 1 degC. Burch & Christensen 2007, in degF:
//
//	T = T_avg + 6 + R (dT/2) sin(0.986 (day - 15 - lag) - 90)    (degrees; + 90 in the south)
//	R = 0.4 + 0.01 (T_avg - 44),  lag = 35 - (T_avg - 44)
//
// with the yearly mean T_avg of the air and the difference dT of its warmest and
// coldest month. The 6 degF are a fit to the United States; elsewhere see [WaterModel].
func ColdWater(meanC, swingK float64, south bool, day int) float64 {
	return math.Max(coldestMainsC, meanC+fitOffsetK+waterCourse(meanC, swingK, south, day))
}

// waterCourse is how far ColdWater is from its yearly mean, K.
func waterCourse(meanC, swingK float64, south bool, day int) float64 {
	avg := meanC*1.8 + 32
	ratio := 0.4 + 0.01*(avg-44)
	lag := 35 - (avg - 44)
	phase := -90.0
	if south {
		phase = 90
	}
	angle := 0.986*(float64(day+1)-15-lag) + phase
	return ratio * swingK / 2 * math.Sin(angle*math.Pi/180)
}

// coldYear returns the cold water of every day by the place's model, with the months that
// are known instead of their means.
func (p *Place) coldYear() (year [Days]float64) {
	switch p.Water {
	case Spain:
		year = dailyOf(spanishMonths(p.LatDeg, p.LonDeg, p.ElevationM))
	case UnitedKingdom:
		year = dailyOf(britishMains)
	default:
		p.waterOfAir(&year)
	}
	if p.Cold.Known != [12]bool{} {
		year = dailyOf(p.Cold.Over(MonthMeans(&year)))
	}
	return year
}

// waterOfAir fills a year by the models that follow the air.
func (p *Place) waterOfAir(year *[Days]float64) {
	mean, low, high := 0.0, math.Inf(1), math.Inf(-1)
	for m, t := range p.TempC {
		mean += t * float64(DaysIn[m]) / Days
		low, high = math.Min(low, t), math.Max(high, t)
	}
	middle := mean
	switch p.Water {
	case NorthAmerica:
		middle += fitOffsetK
	case Germany:
		middle = germanMeanC
	}
	for day := range year {
		year[day] = math.Max(coldestMainsC, middle+waterCourse(mean, high-low, p.LatDeg < 0, day))
	}
}

// dailyOf are daily values with those monthly means.
func dailyOf(month [12]float64) (year [Days]float64) {
	nodes := joinedMeans(month)
	for day := range year {
		year[day] = joined(&nodes, day)
	}
	return year
}

// MonthMeans are the monthly means of daily values.
func MonthMeans(year *[Days]float64) (mean [12]float64) {
	for day, v := range year {
		m := MonthOf(day)
		mean[m] += v / float64(DaysIn[m])
	}
	return mean
}
