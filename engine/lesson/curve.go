package lesson

import (
	"math"
	"slices"

	"suncask/engine/climate"
	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
)

// curve is a figure at all tracks.
func (f Figure) curve(p *simulate.Prepared, tracks []Track) (o Outcome) {
	s := &p.Scenario
	var ws simulate.Workspace
	var y simulate.Year
	if f != StartCost {
		p.RunYear(s.Backup, &ws, &y)
	}
	for _, t := range tracks {
		v := 0.0
		switch f {
		case StartCost:
			b := s.Backup
			length := (b.End - b.Start + scenario.DayMinutes) % scenario.DayMinutes
			b.Start = int(60 * t.X)
			b.End = (b.Start + length) % scenario.DayMinutes
			p.RunYear(b, &ws, &y)
			v = y.Total.Cost
		case MonthSun:
			m := &y.Month[int(t.X)]
			v = (m.SunJ + m.UnusedSunJ) / simulate.JPerKWh
		case CoolingC:
			var d simulate.Day
			p.Replay(s.Backup, &y, climate.FirstDay(int(s.AwayFrom))+int(t.X)-1, &ws, &d)
			v = d.Trace.Points[len(d.Trace.Points)-1].MeanC
		}
		o.Curve = append(o.Curve, v)
	}
	switch f {
	case StartCost:
		least := slices.Min(o.Curve)
		o.Terms = []float64{least, tracks[slices.Index(o.Curve, least)].X}
	case MonthSun:
		o.Terms = []float64{slices.Min(o.Curve), slices.Max(o.Curve)}
	case CoolingC:
		perK, _ := p.StandingLoss()
		hours := p.Litres() * tank.HeatCapacity / perK / 3600
		o.Terms = []float64{math.Exp(-24 / hours), hours, s.RoomC}
	}
	return o
}

// Shape tells whether a guessed curve is one that a mistake leads to.
type Shape func(guess []float64) bool

// flat is a curve that moves by no more.
func flat(by float64) Shape {
	return func(g []float64) bool { return slices.Max(g)-slices.Min(g) <= by }
}

// lowestAt is one that is lowest at one of these tracks.
func lowestAt(tracks ...int) Shape {
	return func(g []float64) bool { return slices.Contains(tracks, slices.Index(g, slices.Min(g))) }
}

// even is one that changes by equal steps, to so much.
func even(to float64) Shape {
	return func(g []float64) bool {
		for i := 2; i < len(g); i++ {
			if math.Abs(g[i]-2*g[i-1]+g[i-2]) > to {
				return false
			}
		}
		return true
	}
}

// below is one that falls below a value.
func below(value float64) Shape { return func(g []float64) bool { return slices.Min(g) < value } }

// higherAt is one that is higher at a track than at another.
func higherAt(track, than int) Shape {
	return func(g []float64) bool { return g[track] > g[than] }
}

// Misshapen is the first shape of a round that a guessed curve has, -1 none.
func (e *Experiment) Misshapen(round int, guess []float64) int {
	return slices.IndexFunc(e.Rounds[round].Shapes, func(s Shape) bool { return s(guess) })
}
