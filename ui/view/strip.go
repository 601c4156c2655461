package view

import (
	"math"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/ui/curve"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// headroom is what an axis of the strip has above its curve once a gesture has outgrown it: axes
// that change cost a frame more than curves that move.
const headroom = 1.5

// Strip returns the strip chart's data; valid until the next call. In a gesture its axes only
// grow.
func (v *View) Strip(s *state.Store) *curve.Data {
	s = v.seen(s)
	c, d := &v.strip, &s.Results.Day
	ready := func(litres float64) float64 { return format.Shown(scenario.Litre, litres) }
	if v.InShowers {
		shower := s.ShowerL()
		ready = func(litres float64) float64 { return litres / shower }
	}
	water, fee := ready(d.FullL), d.Flows.Cost
	c.Clear(curve.StripAxes, curve.StripSeries)
	add := func(series int, trace []simulate.Point, fee bool) {
		for _, p := range trace {
			y := ready(p.UsableL)
			if fee {
				y = p.Cost
			}
			c.Series[series] = append(c.Series[series], curve.Point{X: p.Minute / 60, Y: y})
		}
	}
	add(curve.Water, d.Trace.Points, false)
	add(curve.Money, d.Trace.Points, true)
	if s.Scenario.Sky != scenario.Dull {
		add(curve.WaterDull, s.Results.Dull.Trace.Points, false)
	}
	if b := s.Before; b != nil {
		add(curve.WaterBefore, b.Trace, false)
		add(curve.MoneyBefore, b.Trace, true)
		fee = math.Max(fee, b.Day.Cost)
	}
	for _, p := range d.Trace.Points {
		water = math.Max(water, ready(p.UsableL))
	}
	if fee = math.Max(fee, 0.01); s.Before == nil {
		v.top = [curve.StripAxes]float64{curve.WaterAxis: curve.Nice(water), curve.MoneyAxis: curve.Nice(fee)}
	}
	for axis, most := range [curve.StripAxes]float64{curve.WaterAxis: water, curve.MoneyAxis: fee} {
		if most > v.top[axis] {
			v.top[axis] = curve.Nice(headroom * most)
		}
	}
	topWater, topFee := v.top[curve.WaterAxis], v.top[curve.MoneyAxis]
	c.Axes[curve.WaterAxis].Max, c.Axes[curve.MoneyAxis].Max = topWater, topFee
	for i := range c.Series {
		top := topWater
		if i == curve.Money || i == curve.MoneyBefore {
			top = topFee
		}
		c.Series[i] = curve.Thin(c.Series[i], curve.MaxPoints, 24, top)
	}
	for _, w := range s.Windows() {
		c.Series[curve.WindowWater] = hoursBand(w, topWater, c.Series[curve.WindowWater])
		c.Series[curve.WindowMoney] = hoursBand(w, topFee, c.Series[curve.WindowMoney])
	}
	return c
}

// hoursBand is the backup hours as a line that stands at the top within them.
func hoursBand(w dial.Window, top float64, list []curve.Point) []curve.Point {
	length := w.Length()
	if length == 0 {
		return list
	}
	from, to := float64(w.Start)/60, float64(w.Start+length)/60
	block := func(a, b float64) {
		list = append(list, curve.Point{X: a}, curve.Point{X: a, Y: top}, curve.Point{X: b, Y: top}, curve.Point{X: b})
	}
	if length == dial.DayMinutes {
		block(0, 24)
		return list
	}
	if to > 24 {
		block(0, to-24)
		to = 24
	}
	block(from, to)
	return list
}

// Twin is the strip in words, for those who cannot see it.
func (v *View) Twin(s *state.Store) string {
	if v.Hidden {
		return unseen
	}
	points := s.Results.Day.Trace.Points
	least, most := points[0], points[0]
	for _, p := range points {
		if p.UsableL < least.UsableL {
			least = p
		}
		if p.UsableL > most.UsableL {
			most = p
		}
	}
	clock := func(p simulate.Point) string { return format.Clock(int(p.Minute) % dial.DayMinutes) }
	return v.Words.Text(words.StripTwin, format.In(scenario.Litre, least.UsableL, 0), clock(least), format.In(scenario.Litre, most.UsableL, 0), clock(most),
		format.Money(s.Results.Day.Flows.Cost, s.Scenario.Currency))
}
