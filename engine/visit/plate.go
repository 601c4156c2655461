package visit

import (
	"math"

	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// wireGain is how much resistance an element's wire gains from cold to working (a wire's handbook,
// from memory).
const wireGain = 0.07

// ColdOhms are the least and the most that an ohmmeter may show on an element of a plate's watts
// and volts, cold, ohm: what its plate allows, and the wire's gain less at the low end.
func ColdOhms(watts, volts float64) (least, most float64) {
	least, most = pv.OhmsRange(watts, volts)
	return least * (1 - wireGain), most
}

// HotWatts are the least and the most that an element takes at work that has so many ohm cold, W;
// ok is false for resistances that are none.
func HotWatts(ohms, volts float64) (least, most float64, ok bool) {
	most = volts * volts / ohms
	return most / (1 + wireGain), most, ohms > 0 && volts > 0
}

// PulseWatts is the power at which a meter of so many pulses a kWh gives some of them in a time, s,
// W.
func PulseWatts(pulses, perKWh, seconds float64) (watts float64, ok bool) {
	return 3.6e6 * pulses / (perKWh * seconds), pulses > 0 && perKWh > 0 && seconds > 0
}

// tankShare is how much of a cylinder inside its insulation is water (common practice, no source).
const tankShare = 0.95

// OutsideLitres is what an upright cylinder holds, by its diameter, height and insulation, m, to
// some 15 %; ok is false where the insulation leaves nothing.
func OutsideLitres(diameterM, heightM, insulationM float64) (litres float64, ok bool) {
	d, h := diameterM-2*insulationM, heightM-2*insulationM
	return 1000 * tankShare * math.Pi / 4 * d * d * h, d > 0 && h > 0 && insulationM >= 0
}

// HeatedLitres is the water that so much heat, kWh, warms by a difference, K, without draws.
func HeatedLitres(kWh, riseK float64) (litres float64, ok bool) {
	return kWh * 3.6e6 / (tank.HeatCapacity * riseK), kWh > 0 && riseK > 0
}

// ReheatLoss is a standing loss, W/K, from what a tank that was hot takes to be hot again, kWh,
// after hours without draws and sun, its water meanwhile of a mean temperature in a room, degC.
func ReheatLoss(kWh, hours, meanC, roomC float64) (wPerK float64, ok bool) {
	return 1000 * kWh / (hours * (meanC - roomC)), kWh > 0 && hours > 0 && meanC > roomC
}

// LabelLoss is a loss as fields state it, kWh in 24 h at scenario.LossTestK.
func LabelLoss(wPerK float64) (kWh float64) { return wPerK * 24 * scenario.LossTestK / 1000 }

// Standard deviations of the readings of a night (assumptions).
const (
	nightLitres = 0.05 // of the tank
	nightK      = 0.5  // of each temperature of the water, K
	nightRoomK  = 1.0  // of the room's, K
)

// NightShare is how far tank.LossOvernight may be off, as a share, twice the standard deviation:
// each reading moves it by itself, the squares added. It is infinite where LossOvernight refuses the
// temperatures: they tell nothing.
func NightShare(eveningC, morningC, roomC float64) float64 {
	if !(roomC < morningC && morningC < eveningC) {
		return math.Inf(1)
	}
	e, m := eveningC-roomC, morningC-roomC
	l := math.Log(e / m)
	return 2 * math.Hypot(math.Hypot(nightLitres, nightRoomK/l*(1/e-1/m)), math.Hypot(nightK/(e*l), nightK/(m*l)))
}
