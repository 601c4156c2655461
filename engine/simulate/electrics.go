package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/pv"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Wiring are the figures of the strings at their extremes.
type Wiring struct {
	Modules  int // of the first plane
	InString int // of the longest string
	Strings  int // side by side, of all planes
	Even     bool
	ColdC    float64 // lowest air on record: the strings' voltage is highest then
	HotV     float64 // at maximum power behind the cable, hot cells: HotCellC on a rack, more where less air cools
	FullV    float64 // at the operating point in StandardWm2, cells of 25 degC
	FullA    float64
	FullW    float64   // into the element, cells of the year's coldest air less ColdMarginK
	StageW   []float64 // into each of the stages by itself then
	OutV     float64   // at the element, with FullW
	OutA     float64
	DropPct  float64 // of the voltage, lost in the cable in full sun, cells of 25 degC

	// EdgeW and EdgeStageW are FullW and StageW in CloudEdgeWm2; none with a converter.
	EdgeW      float64
	EdgeStageW []float64
}

// Margins of Wiring: assumptions.
const (
	ColdMarginK = 5.0
	HotCellC    = 70.0
)

// CloudEdgeWm2 is what light reaches for minutes at the edges of clouds (common practice, no
// source).
const CloudEdgeWm2 = 1250.0

// Wiring returns the figures of the strings; none without modules.
func (p *Prepared) Wiring() Wiring {
	s := &p.Scenario
	w := Wiring{Modules: s.Modules, Even: true}
	fullC := p.coldestAirC() - ColdMarginK
	w.ColdC = s.ColdestC
	if p.file != nil {
		w.ColdC = math.Min(w.ColdC, p.coldestAirC())
		if !s.Known.Has(scenario.ColdestC) {
			w.ColdC = math.Min(w.ColdC, fullC)
		}
	}
	for i, plane := range s.Planes() {
		if plane.Modules == 0 {
			continue
		}
		inString, strings, even := InStrings(plane.Modules, s.InString)
		if i > 0 && inString != w.InString && w.Strings > 0 {
			even = false
		}
		w.Even = w.Even && even
		w.InString = max(w.InString, inString)
		w.Strings += strings
	}
	if w.Strings == 0 {
		return w
	}
	ohms := p.chain.direct.CableOhms
	v, amps := p.strings(pv.StandardWm2, p.hotCellC()).MaximumPower(0, math.Inf(1))
	w.HotV = v - amps*ohms
	into := p.chain.direct.Into
	if s.Coupling == scenario.Converter {
		into = p.chain.converter.Into
	}
	full := into(p.strings(pv.StandardWm2, pv.StandardC))
	w.FullV, w.FullA = full.Volts, full.Amps
	if w.FullV > 0 {
		w.DropPct = 100 * w.FullA * ohms / w.FullV
	}
	cold := p.strings(pv.StandardWm2, fullC)
	w.FullW = into(cold).ElementW
	w.OutV, w.OutA = math.Sqrt(w.FullW*p.ElementOhms()), math.Sqrt(w.FullW/p.ElementOhms())
	if s.Coupling == scenario.Converter {
		return w
	}
	edge := p.strings(CloudEdgeWm2, fullC)
	w.EdgeW = into(edge).ElementW
	if s.Coupling == scenario.Staged {
		for _, stage := range p.chain.staged.Ohms {
			straight := pv.Direct{ElementOhms: stage, CableOhms: ohms}
			w.StageW = append(w.StageW, straight.Into(cold).ElementW)
			w.EdgeStageW = append(w.EdgeStageW, straight.Into(edge).ElementW)
		}
	}
	return w
}

// coldestAirC is the coldest hour of the year.
func (p *Prepared) coldestAirC() float64 {
	coldest := math.Inf(1)
	for day := range climate.Days {
		for _, c := range p.Weather.AirC[day] {
			coldest = math.Min(coldest, c)
		}
	}
	return coldest
}

// Elements are the sun's and the grid's, equal where there is one.
func (p *Prepared) Elements() (sun, grid tank.Element) { return p.sunElement, p.backupElement }

// Litres is the water in all tanks.
func (p *Prepared) Litres() float64 {
	if p.twoTanks {
		return p.tankParams.Litres + p.sunTankParams.Litres
	}
	return p.tankParams.Litres
}

// BelowElements is the water of each tank that no element reaches, L; of the sun's own
// tank 0 where there is none.
func (p *Prepared) BelowElements() (inTank, inSunTank float64) {
	if p.twoTanks {
		return p.backupElement.Low * p.tankParams.Litres, p.sunElement.Low * p.sunTankParams.Litres
	}
	return p.sunElement.Low * p.tankParams.Litres, 0
}

// StuckC is where the sun would bring the water in the sunniest month if its thermostat
// never opened and nobody drew: where mean power and loss are equal, degC.
func (p *Prepared) StuckC() float64 {
	most, day := 0.0, 0
	for m := range 12 {
		joules := 0.0
		for range climate.DaysIn[m] {
			joules += p.sun[day].j[24]
			day++
		}
		most = math.Max(most, joules/float64(climate.DaysIn[m])/86400)
	}
	if p.twoTanks {
		return p.roomC + most/p.sunTankParams.LossWPerK
	}
	return p.roomC + most/p.tankParams.LossWPerK
}

// GridStuckHours is how long the grid takes from its thermostat's set point to boiling
// if the thermostat never opened and nobody drew, h: of the water above its element,
// which loses heat to the room. ok is false where the loss holds it below.
func (p *Prepared) GridStuckHours() (hours float64, ok bool) {
	above := 1 - p.backupElement.Low
	endC := p.roomC + p.backupW/(p.tankParams.LossWPerK*above)
	if endC <= tank.BoilingC {
		return 0, false
	}
	return p.tankParams.Tau() / 3600 * math.Log((endC-p.Scenario.SetC)/(endC-tank.BoilingC)), true
}

// StageWatts are the rated watts of the stages.
func (p *Prepared) StageWatts() (watts []float64) {
	for _, ohms := range p.chain.staged.Ohms {
		watts = append(watts, p.Scenario.ElementV*p.Scenario.ElementV/ohms)
	}
	return watts
}

// strings are all strings in the light that their cells turn to something, and a cell
// temperature.
func (p *Prepared) strings(irradiance, cellC float64) (all pv.Strings) {
	for _, plane := range p.Scenario.Planes() {
		if plane.Modules > 0 {
			inString, strings, _ := InStrings(plane.Modules, p.Scenario.InString)
			all = append(all, p.chain.string(irradiance, cellC, inString, strings))
		}
	}
	return all
}

// Working returns what becomes of the strings' power in one light on all planes (W/m2,
// soiling and mismatch counted) and a cell temperature (degC), and the resistance that
// would hold them at their maximum.
func (p *Prepared) Working(irradiance, cellC float64) (split pv.Split, fitOhms float64) {
	all := p.strings(irradiance*p.chain.losses.Factor(), cellC)
	if v, a := all.MaximumPower(0, math.Inf(1)); a > 0 {
		fitOhms = v / a
	}
	return p.chain.load(all), fitOhms
}

// Metered are all strings as a meter meets them in one light on all planes (W/m2) and a cell
// temperature (degC): as old as they are, with nothing on them.
func (p *Prepared) Metered(irradiance, cellC float64) pv.Strings {
	return p.strings(irradiance*p.chain.losses.Age, cellC)
}

// AgeFactor is the part of their current that the modules' age has left.
func (p *Prepared) AgeFactor() float64 { return p.chain.losses.Age }

// Coupled is what becomes of the strings' power as they are coupled.
func (p *Prepared) Coupled(s pv.Strings) pv.Split { return p.chain.load(s) }

// CableOhms is the resistance of the cable between strings and tank, both ways.
func (p *Prepared) CableOhms() float64 { return p.chain.direct.CableOhms }

// IVCurve are points of the strings' common curve in one light, as Working.
func (p *Prepared) IVCurve(irradiance, cellC float64, points int) (volts, amps []float64) {
	all := p.strings(irradiance*p.chain.losses.Factor(), cellC)
	open := all.OpenCircuitV()
	for i := range points {
		v := open * float64(i) / float64(points-1)
		volts, amps = append(volts, v), append(amps, all.CurrentA(v))
	}
	return volts, amps
}

// hotCellC is how hot cells get on a hot day by their mounting, degC.
func (p *Prepared) hotCellC() float64 {
	return HotCellC + pv.Mounting(p.Scenario.Mount).CellC(pv.StandardWm2, 0) - pv.Rack.CellC(pv.StandardWm2, 0)
}

// ElementOhms is the element's resistance from its plate.
func (p *Prepared) ElementOhms() float64 { return pv.Ohms(p.Scenario.ElementW, p.Scenario.ElementV) }

// LightLost is the part of the light on the modules that comes to nothing by all named
// losses, 0 to 1: before the cable and the converter.
func (p *Prepared) LightLost() float64 { return 1 - p.chain.losses.Factor() }

// StandingLoss is what the tank loses to its room, jacket and pipes counted: W/K, and
// kWh in 24 h at the difference of scenario.LossTestK.
func (p *Prepared) StandingLoss() (wPerK, kWhADay float64) {
	wPerK = p.tankParams.LossWPerK
	return wPerK, wPerK * scenario.LossTestK * 24 / 1000
}
