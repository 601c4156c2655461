package tank

import "math"

// LossClasses are the energy classes of LossOfClass, best first.
var LossClasses = [...]string{"A+", "A", "B", "C", "D", "E", "F"}

// Coefficients of the classes' upper limits, W: a + b V^0.4 (Regulation (EU) 812/2013
// Annex II; read in two copies).
var lossLimits = [len(LossClasses)][2]float64{{5.5, 3.16}, {8.5, 4.25}, {12, 5.93}, {16.66, 8.33}, {21, 10.33}, {26, 13.66}, {31, 16.66}}

// ClassTestK is the difference at which the classes' losses are stated: 65 degC in a
// room of 20 degC (EN 12897; from memory).
const ClassTestK = 45.0

// LossOfClass is the upper limit of an energy class's standing loss, W, for a tank of
// that many litres. class counts LossClasses.
func LossOfClass(class int, litres float64) float64 {
	k := lossLimits[class]
	return k[0] + k[1]*math.Pow(litres, 0.4)
}

// Limits of AS/NZS 4692.2 for one element, kWh in 24 h at a difference of MEPSTestK,
// by litres (table of 2005, read). Between the rows straight lines.
var mepsLimits = [...][2]float64{{25, 0.98}, {31.5, 1.05}, {40, 1.12}, {50, 1.19}, {63, 1.33}, {80, 1.47}, {100, 1.61}, {125, 1.75},
	{160, 1.96}, {200, 2.17}, {250, 2.38}, {315, 2.66}, {400, 2.87}, {500, 3.15}, {630, 3.43}}

// MEPSTestK is the difference of tank and room of those limits, K.
const MEPSTestK = 55.0

// LossMEPS is the limit of AS/NZS 4692.2, W/K, for a tank of that many litres; beyond
// the ends of its table in proportion to V^(2/3), as surfaces grow.
func LossMEPS(litres float64) (wPerK float64) {
	last := len(mepsLimits) - 1
	kWh := 0.0
	switch {
	case litres <= mepsLimits[0][0]:
		kWh = mepsLimits[0][1] * math.Pow(litres/mepsLimits[0][0], 2.0/3)
	case litres >= mepsLimits[last][0]:
		kWh = mepsLimits[last][1] * math.Pow(litres/mepsLimits[last][0], 2.0/3)
	default:
		i := 1
		for litres > mepsLimits[i][0] {
			i++
		}
		a, b := mepsLimits[i-1], mepsLimits[i]
		kWh = a[1] + (b[1]-a[1])*(litres-a[0])/(b[0]-a[0])
	}
	return kWh * 1000 / 24 / MEPSTestK
}

// LossOvernight is the standing loss, W/K, of a tank that cooled from one mean
// temperature to another within hours without draws and heating: the inverse of
// T = T_a + (T_0 - T_a) e^(-t/tau). ok is false where that cannot be: a tank that does
// not cool, or cools to the room and below.
func LossOvernight(litres, eveningC, morningC, roomC, hours float64) (wPerK float64, ok bool) {
	if !(morningC < eveningC) || !(morningC > roomC) || !(hours > 0) {
		return 0, false
	}
	return litres * HeatCapacity / (hours * 3600) * math.Log((eveningC-roomC)/(morningC-roomC)), true
}
