package lesson

import (
	"math"

	"suncask/engine/plan"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
)

// Figure is what an experiment asks for.
type Figure int8

// Figures, each with the numbers that it is explained by.
const (
	// BoughtDay is bought on the day shown, kWh: P in kW, t in h at most, E.
	BoughtDay Figure = iota
	// ShowerHotL is what the first use takes from the tank, L: litres used, degC of use, of cold and of
	// hot water, share of the hot.
	ShowerHotL
	// ReadyL is hot water ready at a minute of that day, L: mean of all water and top, degC; litres
	// that are warm enough; their mean, degC; of cold water, degC.
	ReadyL
	// LostYear is the tank's loss in a year, kWh: W/K, mean of its water and of the room, degC.
	LostYear
	// BoughtYear is bought in a year, kWh: sun into the water, sun not used, kWh.
	BoughtYear
	// WorthMoney is the system's present value beyond its cost: cost, saved in the first year, years.
	WorthMoney
	// ElementPower is at the element in a light, W/m2, with cells of 25 degC, W: V, A, ohm.
	ElementPower
	// CablePower is lost in the cable in full sun with cells of 25 degC, W: ohm, A, V.
	CablePower
	// StartCost is a year's cost where the window of backup begins at an hour, in the house's currency:
	// the least, and the hour at which it is.
	StartCost
	// MonthSun is the sun at the element in a month, counted from 0, kWh: the least and the most.
	MonthSun
	// CoolingC is the mean of all water at the end of a day of the month of absence, degC: part of the
	// difference to the room that a day leaves; time constant, h; room, degC.
	CoolingC
)

const fullC = 25.0 // of cells, at standard test conditions

// of is the figure of a prepared house, at a minute of the day or in a light.
func (f Figure) of(p *simulate.Prepared, at float64) Outcome {
	s := &p.Scenario
	switch f {
	case BoughtDay, ShowerHotL, ReadyL:
		var ws simulate.Workspace
		var d simulate.Day
		p.RunDay(s.Backup, int(s.Month), s.Sky, &ws, &d)
		return f.ofDay(p, &d, at)
	case ElementPower:
		split := p.Coupled(p.Metered(at, fullC))
		volts := math.Sqrt(split.ElementW * p.ElementOhms())
		return Outcome{Value: split.ElementW, Terms: []float64{volts, volts / p.ElementOhms(), p.ElementOhms()}}
	case CablePower:
		amps, ohms := p.Wiring().FullA, p.CableOhms()
		return Outcome{Value: amps * amps * ohms, Terms: []float64{ohms, amps, amps * ohms}}
	}
	now := year(p, s.Backup)
	switch f {
	case LostYear:
		perK, _ := p.StandingLoss()
		const seconds = 365 * 86400
		return Outcome{Value: now.LostJ / simulate.JPerKWh, Terms: []float64{perK, s.RoomC + now.LostJ/perK/seconds, s.RoomC}}
	case WorthMoney:
		bare := s.WithoutModules()
		b, err := simulate.Prepare(&bare, nil, p)
		if err != nil {
			return Outcome{Value: math.NaN()}
		}
		savings := plan.Savings{AllDay: year(b, scenario.Backup{AllDay: true}), Hours: year(b, s.Backup), Now: now}
		worth, _ := savings.Worth(s)
		return Outcome{Value: worth.NPV, Terms: []float64{plan.SystemCost(s), savings.Timer() + savings.Sun(), float64(s.HorizonYears)}}
	}
	return Outcome{Value: now.BoughtJ / simulate.JPerKWh, Terms: []float64{now.SunJ / simulate.JPerKWh, now.UnusedSunJ / simulate.JPerKWh}}
}

func year(p *simulate.Prepared, b scenario.Backup) simulate.Flows {
	var ws simulate.Workspace
	var y simulate.Year
	p.RunYear(b, &ws, &y)
	return y.Total
}

// ofDay is a figure of the day shown.
func (f Figure) ofDay(p *simulate.Prepared, d *simulate.Day, at float64) Outcome {
	s := &p.Scenario
	switch f {
	case BoughtDay:
		return Outcome{Value: d.Flows.BoughtJ / simulate.JPerKWh, Terms: []float64{p.BackupW() / 1000, p.HeatingMinutes(s.Backup, 0) / 60}}
	case ShowerHotL:
		if len(d.Uses) == 0 {
			return Outcome{Value: math.NaN()}
		}
		u := &d.Uses[0]
		share := u.HotL / u.Litres
		return Outcome{Value: u.HotL, Terms: []float64{u.Litres, u.TempC, d.ColdC, d.ColdC + (u.TempC-d.ColdC)/share, share}}
	}
	i, litres := readyAt(d, at)
	if i < 0 {
		return Outcome{Value: math.NaN()}
	}
	layers := d.Trace.Layers(i)
	warm, heat := 0.0, 0.0
	for _, l := range layers {
		if l.TempC >= s.ShowerC-simulate.ToleranceK {
			warm += l.Litres
			heat += l.Litres * l.TempC
		}
	}
	meanC := d.ColdC
	if warm > 0 {
		meanC = heat / warm
	}
	return Outcome{Value: litres, Terms: []float64{d.Trace.Points[i].MeanC, layers[len(layers)-1].TempC, warm, meanC, d.ColdC}}
}

// readyAt is the hot water ready at a minute, straight between the points of the day's curve, and the
// point before it; -1 where there is none.
func readyAt(d *simulate.Day, minute float64) (before int, litres float64) {
	points := d.Trace.Points
	for i := len(points) - 1; i >= 0; i-- {
		if a := &points[i]; a.Minute <= minute {
			if i+1 == len(points) || points[i+1].Minute == a.Minute {
				return i, a.UsableL
			}
			b := &points[i+1]
			return i, a.UsableL + (b.UsableL-a.UsableL)*(minute-a.Minute)/(b.Minute-a.Minute)
		}
	}
	return -1, math.NaN()
}
