// Package simulate runs a scenario's tank through a day or a year.
package simulate

import (
	"math"

	"suncask/engine/climate"
	"suncask/engine/draw"
	"suncask/engine/scenario"
	"suncask/engine/tank"
)

// Assumptions that are not inputs yet, each to be shown as assumed.
const (
	CableC     = 50.0 // cables in the sun
	ToleranceK = 2.0  // below use temperature by more than this is cool
	// The inlet of a lying tank mixes more (assumption).
	LyingMixedShare = 0.30
	MixedShare      = 0.10 // well-mixed litres at the inlet, as part of the label's mixed water
	labelHotC       = 65.0 // the label's test: EN 50440 (from memory)
	labelColdC      = 10.0
	restMinutes     = 20.0  // a pause after which the pipe has gone cold
	slugAhead       = 60.0  // the same with a tank ahead, whose water may be warmer
	slugSeconds     = 360.0 // a longer draw is split into parts of at most this: the cell tank of the tests sees no difference
	slugHeated      = 60.0  // the same where the grid may heat meanwhile
)

// Prepared is a scenario in SI units, with everything computed that does not
// depend on the backup hours.
type Prepared struct {
	Scenario    scenario.Scenario
	Weather     *climate.Year
	FileMissing bool // the scenario's weather file is not here: the built-in climate is used
	file        *climate.Record

	tankParams tank.Params
	sunElement tank.Element
	// backupElement is the sun's, or the upper of two.
	backupElement tank.Element
	backupW       float64
	roomC         float64
	// apart tells whether the sun has an element, or a tank, that heats beside the grid's.
	apart         bool
	twoTanks      bool // the sun's own tank is ahead of the other
	sunTankParams tank.Params
	uses          []draw.Use
	steps         []drawStep // coarse ones, then those where the grid heats
	coarse        int
	bill          bill

	times    *sunTimes
	clock    clock
	sun      [climate.Days]sunDay // power that could reach the element
	sky      [12][3]sunDay        // the same for the day view
	sunny    [24]bool             // hours in which the sun heats
	skyColdC [12]float64

	Potential Potential // of the year
	chain     *wiring
	yields    *comparison
}

// drawStep is an instant of a day at which water leaves the tank.
type drawStep struct {
	at   float64 // s after midnight
	draw tank.Draw
	use  int // index into uses
}

// highestEnd is where an element that reaches up ends at the latest, as part of the tank.
const highestEnd = 0.98

// muchBelow is the part of the tank below the lower element above which what is
// conducted there is resolved, see tank.Params: a lying tank's third of the height is not.
const muchBelow = 0.35

// Seed of the built-in synthetic years.
const Seed = 1

// Prepare turns a valid scenario into SI and computes its sun. file is the weather
// record that the scenario's key names; nil, or another one, means that it is not on
// this device, and the built-in climate takes its place (FileMissing). With prev, the
// parts whose inputs are equal are taken from it. It fails where the place's
// months cannot be true (*climate.ClearSkyError) and where no module has the values of
// the datasheet (*pv.DatasheetError).
func Prepare(s *scenario.Scenario, file *climate.Record, prev *Prepared) (*Prepared, error) {
	return PrepareInTurns(s, file, prev, func() {})
}

// PrepareInTurns is Prepare that calls turn between its parts, some milliseconds each: a
// browser can do something else there.
func PrepareInTurns(s *scenario.Scenario, file *climate.Record, prev *Prepared, turn func()) (*Prepared, error) {
	p := &Prepared{Scenario: *s}
	if file != nil && s.Weather != "" && (prev != nil && prev.file == file && prev.Scenario.Weather == s.Weather || file.Key() == s.Weather) {
		p.file = file
	}
	p.FileMissing = s.Weather != "" && p.file == nil
	if prev != nil && prev.file == p.file && sameWeather(&prev.Scenario, s) {
		p.Weather, p.times = prev.Weather, prev.times
	} else {
		year, err := weather(s, p.file, turn)
		if err != nil {
			return nil, err
		}
		p.Weather = year
	}
	if err := p.finish(prev, turn); err != nil {
		return nil, err
	}
	return p, nil
}

// With returns the prepared house under other weather of the same place.
func (p *Prepared) With(y *climate.Year) *Prepared {
	q := &Prepared{Scenario: p.Scenario, Weather: y, times: p.times}
	if err := q.finish(nil, func() {}); err != nil {
		panic("simulate: a prepared house cannot be prepared: " + err.Error())
	}
	return q
}

func (p *Prepared) finish(prev *Prepared, turn func()) error {
	s := &p.Scenario
	if p.times == nil {
		p.times = sunTimesOf(&p.Weather.Place)
	}
	p.setTank()
	p.setUses()
	p.setBill()
	if prev != nil && prev.Weather == p.Weather && sameRoof(&prev.Scenario, s) {
		p.sun, p.sky, p.skyColdC, p.Potential, p.chain, p.yields = prev.sun, prev.sky, prev.skyColdC, prev.Potential, prev.chain, prev.yields
	} else if err := p.setSun(turn); err != nil {
		return err
	}
	p.integrate()
	return nil
}

func (p *Prepared) setTank() {
	s := &p.Scenario
	p.tankParams = tank.Params{
		Litres:    s.TankLitres,
		LossWPerK: p.lossWPerK(),
		Geometry:  tank.Geometry{Orientation: tank.Orientation(s.Stands)},
	}
	p.tankParams.Geometry.ConductivityWPerMK = p.tankParams.Geometry.WallConductivity(tank.Wall(s.Wall), s.TankLitres)
	low := s.LowerPct / 100
	p.sunElement = tank.Element{Low: low, High: math.Max(low, math.Min(highestEnd, low+s.ReachPct/100))}
	p.apart = s.Elements.Apart()
	p.twoTanks = s.Elements == scenario.TwoTanks
	p.backupElement = p.sunElement
	if s.Elements.Upper() {
		high := math.Max(p.sunElement.Low, s.UpperPct/100)
		p.backupElement = tank.Element{Low: high, High: high}
	}
	p.tankParams.InletMixedLitres = p.mixedLitres(s.TankLitres)
	if mixed, _, _, ok := p.LabelMixed(); ok {
		p.tankParams.InletMixedLitres = mixed
	}
	p.tankParams.Resolve = p.twoTanks || p.sunElement.Low > muchBelow
	p.sunTankParams = p.tankParams
	p.sunTankParams.Litres = s.SunTankL
	p.sunTankParams.Geometry.ConductivityWPerMK = p.tankParams.Geometry.WallConductivity(tank.Wall(s.Wall), s.SunTankL)
	p.sunTankParams.InletMixedLitres = p.mixedLitres(s.SunTankL)
	p.sunTankParams.LossWPerK = s.SunTankKWh * 1000 / 24 / scenario.LossTestK
	p.backupW = s.ElementW * (s.SupplyV / s.ElementV) * (s.SupplyV / s.ElementV) // P = V^2/R
	p.roomC = s.RoomC
	if s.RoomBy == 1 {
		p.roomC = 0
		for day := range climate.Days {
			p.roomC += p.outsideC(day) / climate.Days
		}
	}
}

// mixedLitres is the well-mixed volume at the inlet of a tank whose label is not known.
func (p *Prepared) mixedLitres(litres float64) float64 {
	share := MixedShare
	if p.Scenario.Stands == 1 {
		share = LyingMixedShare
	}
	return math.Min(0.5, share*(labelHotC-labelColdC)/(40-labelColdC)) * litres
}

// LabelMixed is the well-mixed volume that the label's mixed water tells, L, and the labels
// that a tank like this can have; ok is false where none is known or it is not among them.
func (p *Prepared) LabelMixed() (mixed, least, most float64, ok bool) {
	s, heats := &p.Scenario, p.sunElement
	if p.twoTanks {
		heats = p.backupElement
	}
	mixed, least, most, ok = tank.InletMixedLitres(s.TankLitres, heats.Low*s.TankLitres, s.MixedL, labelHotC, labelColdC)
	return mixed, least, most, ok && s.MixedL != scenario.Unknown
}

// outsideC is a day's mean air.
func (p *Prepared) outsideC(day int) (mean float64) {
	for _, c := range p.Weather.AirC[day] {
		mean += c / 24
	}
	return mean
}

// roomOn is the temperature about the tank on a day of the year.
func (p *Prepared) roomOn(day int) float64 {
	if p.Scenario.RoomBy == 1 {
		return p.outsideC(day)
	}
	return p.roomC
}

// reached are the temperatures to which sun and grid heat: their thermostats', or where the
// cut-out ends it, degC.
func (p *Prepared) reached() (sunC, gridC float64) {
	s := &p.Scenario
	sunC, gridC = s.CutOuts()
	return math.Min(sunC, s.SunLimitC), math.Min(gridC, s.SetC)
}

// thermostats at their elements.
func (p *Prepared) thermostats(r *dayRun) {
	s := &p.Scenario
	sunCutC, gridCutC := s.CutOuts()
	at := func(e tank.Element, setC, cutC float64) tank.Thermostat {
		return tank.Thermostat{SetC: math.Min(setC, cutC), Sensor: (e.Low + e.High) / 2, CutC: math.Min(cutC, tank.BoilingC)}
	}
	r.backup = at(p.backupElement, s.SetC, gridCutC)
	r.heatUp = at(p.backupElement, math.Max(s.SetC, scenario.HeatUpC), gridCutC)
	r.sun = at(p.sunElement, s.SunLimitC, sunCutC)
	if s.Switching == 1 {
		for _, th := range []*tank.Thermostat{&r.backup, &r.heatUp, &r.sun} {
			th.Mode, th.DifferentialK = tank.Cycle, s.DiffK
		}
	}
}

// MoveUses puts the household's uses to other times: what a drag does in every frame.
func (p *Prepared) MoveUses(at [draw.Occasions]int) {
	p.Scenario.UseAt = at
	p.setUses()
}

func (p *Prepared) setUses() {
	s := &p.Scenario
	switch s.Uses {
	case scenario.NoUses:
		p.uses = nil
	case scenario.Habits:
		p.uses = draw.Household{
			People: s.People, ShowerMinutes: s.ShowerMinutes, ShowerFlow: s.ShowerFlow,
			ShowerC: s.ShowerC, When: draw.When(s.When), At: s.UseAt,
		}.Day()
	default:
		p.uses = draw.Standard(draw.Profile(s.Uses))
	}
	p.setSteps()
}

// setSteps cuts the uses twice, as they are without the grid's heat and with it.
func (p *Prepared) setSteps() {
	s, slug := &p.Scenario, slugSeconds
	if p.twoTanks {
		slug = slugAhead
	}
	p.steps = drawSteps(p.uses, s.PipeLitres, s.ValveC, slug)
	p.coarse = len(p.steps)
	p.steps = append(p.steps, drawSteps(p.uses, s.PipeLitres, s.ValveC, slugHeated)...)
}

// lossWPerK is the standing loss with jacket and pipes.
func (p *Prepared) lossWPerK() float64 {
	s, own := &p.Scenario, p.ownLossWPerK()
	if s.Jacket == 1 {
		own *= scenario.JacketShare
	}
	return own + s.PipeLossW
}

// ownLossWPerK is that of the tank, from whichever figure the scenario names.
func (p *Prepared) ownLossWPerK() float64 {
	s := &p.Scenario
	switch s.LossBy {
	case scenario.LossFigure:
		return s.LossKWh * 1000 / 24 / scenario.LossTestK
	case scenario.LossMEPS:
		return tank.LossMEPS(s.TankLitres)
	case scenario.LossOvernight:
		wPerK, ok := tank.LossOvernight(s.TankLitres, s.EveningC, s.MorningC, s.RoomC, s.NightH)
		if !ok { // care.ReadingsImpossible says so
			return s.LossKWh * 1000 / 24 / scenario.LossTestK
		}
		return wPerK
	}
	return tank.LossOfClass(int(s.LossBy)-1, s.TankLitres) / tank.ClassTestK
}

// drawSteps cuts uses into instants: parts of at most that many seconds, each at its
// middle. After a long pause the first part fills the pipe before. A mixing valve lets no
// more than valveC through; 0: there is none.
func drawSteps(uses []draw.Use, pipeLitres, valveC, slug float64) []drawStep {
	var steps []drawStep
	for i, u := range uses {
		prev := uses[(i+len(uses)-1)%len(uses)]
		pause := u.Minute - prev.Minute - prev.Minutes()
		if i == 0 {
			pause += scenario.DayMinutes
		}
		cold := 0.0
		if pause > restMinutes {
			cold = pipeLitres
		}
		useC := u.TempC
		if valveC > 0 {
			useC = math.Min(useC, valveC)
		}
		length := u.Minutes() * 60
		parts := math.Max(1, math.Ceil(length/slug))
		for n := range int(parts) {
			at := u.Minute*60 + (float64(n)+0.5)*length/parts
			steps = append(steps, drawStep{at: math.Min(at, 86400-1), use: i, draw: tank.Draw{
				PipeLitres: cold, Litres: u.Litres / parts, UseC: useC, ToleranceK: ToleranceK,
			}})
			cold = 0
		}
	}
	// Uses may overlap: order by time, keeping each use's own order.
	for i := 1; i < len(steps); i++ {
		for j := i; j > 0 && steps[j].at < steps[j-1].at; j-- {
			steps[j], steps[j-1] = steps[j-1], steps[j]
		}
	}
	return steps
}

// turnDays is how many days of light make a part.
const turnDays = 30

// setSun fills the power that could reach the element: every hour of the year,
// and the day view's days, which take the month's average day and a quantile of
// its clearness.
func (p *Prepared) setSun(turn func()) error {
	y := p.Weather
	r, err := p.roof()
	if err != nil {
		return err
	}
	p.Potential, p.chain, p.yields = Potential{}, r.wiring, new(comparison)
	var unused Potential
	for day := range climate.Days {
		r.hours(&y.Sun[day], &y.Light[day], &y.AirC[day], &p.sun[day].power, &p.Potential)
		if day%turnDays == 0 {
			turn()
		}
	}
	quantile := [3]float64{0.9, 0.5, 0.1} // bright, typical, dull
	for m := range 12 {
		day := climate.AverageDay(m)
		p.skyColdC[m] = y.ColdC[day]
		for sky, q := range quantile {
			var light [24]climate.HourLight
			if y.MonthKt[m] > 0 {
				y.Sun[day].Spread(y.Clear[m].Quantile(q)*y.Sun[day].ExtraJ, &light)
			}
			r.hours(&y.Sun[day], &light, &y.AirC[day], &p.sky[m][sky].power, &unused)
		}
	}
	return nil
}

// integrate fills the running integrals, which depend on the tank's time constant.
func (p *Prepared) integrate() {
	p.clock.set(p.tankParams)
	p.setSunny()
	for day := range p.sun {
		p.sun[day].integrate(&p.clock)
	}
	for m := range p.sky {
		for sky := range p.sky[m] {
			p.sky[m][sky].integrate(&p.clock)
		}
	}
}
