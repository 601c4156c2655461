package view

import (
	"math"

	"suncask/engine/finance"
	"suncask/engine/simulate"
	"suncask/ui/curve"
	"suncask/ui/format"
	"suncask/ui/state"
	"suncask/ui/words"
)

// drawn are the charts beside the strip, by the id of their element.
var drawn = map[string]func(*View, *state.Store) *curve.Data{
	"iv": (*View).IV, "climate": (*View).Climate, "year": (*View).year, "cash": (*View).cash, "lengths": (*View).lengths, "flow": (*View).flow,
}

// Charts are the ids of all charts beside the strip.
func Charts() (list []string) {
	for id := range drawn {
		list = append(list, id)
	}
	return list
}

// Chart returns a chart's data; valid until the next call for any chart but the strip.
func (v *View) Chart(s *state.Store, id string) *curve.Data { return drawn[id](v, s) }

func point(x, y float64) curve.Point { return curve.Point{X: x, Y: y} }

// year is the heat of each month.
func (v *View) year(s *state.Store) *curve.Data {
	c, most := &v.chart, 0.0
	c.Clear(1, curve.YearSeries)
	for m := range s.Results.Year.Month {
		f := &s.Results.Year.Month[m]
		for series, joules := range [curve.YearSeries]float64{curve.FromGrid: f.BoughtJ, curve.FromSun: f.SunJ} {
			c.Series[series] = append(c.Series[series], point(float64(m+1), joules/simulate.JPerKWh))
		}
		most = math.Max(most, (f.SunJ+f.BoughtJ)/simulate.JPerKWh)
	}
	c.Axes[0] = curve.Axis{Max: curve.Nice(most)}
	return c
}

// cash is what the system has cost and saved after each year, against backup all day.
func (v *View) cash(s *state.Store) *curve.Data {
	c := &v.chart
	c.Clear(1, curve.CashSeries)
	least, most := 0.0, 0.0
	payments := s.Payments()
	for i, discount := range [2]float64{0, s.Scenario.DiscountPct / 100} {
		for year, sum := range finance.Cumulative(discount, payments) {
			c.Series[i] = append(c.Series[i], point(float64(year), sum))
			least, most = math.Min(least, sum), math.Max(most, sum)
		}
	}
	c.Across = curve.Axis{Max: float64(len(payments) - 1)}
	c.Series[curve.CashZero] = append(c.Series[curve.CashZero], point(0, 0), point(c.Across.Max, 0))
	c.Axes[0] = curve.Axis{Max: curve.Nice(most)}
	if least < 0 {
		c.Axes[0].Min = -curve.Nice(-least)
	}
	return c
}

// lengths are yearly cost and cool uses over the length of the window.
func (v *View) lengths(s *state.Store) *curve.Data {
	c := &v.chart
	c.Clear(curve.LengthAxes, curve.LengthSeries)
	var cost, cool float64
	for _, l := range s.Lengths() {
		c.Series[curve.LengthCost] = append(c.Series[curve.LengthCost], point(l.Hours, l.Cost))
		c.Series[curve.LengthCool] = append(c.Series[curve.LengthCool], point(l.Hours, l.CoolUses))
		cost, cool = math.Max(cost, l.Cost), math.Max(cool, l.CoolUses)
	}
	if b := s.Scenario.Backup; !b.FollowsSun() {
		h, t := float64(b.Length())/60, &s.Results.Year.Total
		c.Series[curve.CostHere] = append(c.Series[curve.CostHere], point(h, t.Cost))
		c.Series[curve.CoolHere] = append(c.Series[curve.CoolHere], point(h, float64(t.CoolUses)))
	}
	c.Axes[0], c.Axes[1] = curve.Axis{Max: curve.Nice(cost)}, curve.Axis{Max: curve.Nice(math.Max(4, cool))}
	return c
}

// Flows are the kilowatt-hours of the links of the energy flow: of the year, or of the day
// shown, which begins at the element.
func (v *View) Flows(s *state.Store) (kWh [len(curve.FlowLinks)]float64) {
	f, lost := &s.Results.Year.Total, 0.0
	if v.FlowDay {
		f = &s.Results.Day.Flows
	} else {
		q := &s.Prepared.Potential
		lost = q.CouplingJ + q.CableJ + q.ConverterJ + q.OverJ
	}
	for i, joules := range [len(kWh)]float64{f.SunJ, lost, f.DisplacedJ, f.UnusedSunJ - f.DisplacedJ, f.BoughtJ, f.DeliveredJ, f.PipeJ, f.LostJ} {
		kWh[i] = math.Max(0, joules/simulate.JPerKWh)
	}
	return kWh
}

func (v *View) flow(s *state.Store) *curve.Data {
	c := &v.chart
	c.Clear(0, 1)
	for i, kWh := range v.Flows(s) {
		c.Series[0] = append(c.Series[0], point(float64(i), kWh))
	}
	return c
}

// FlowNames are the nodes of the energy flow, each with its kilowatt-hours on a second line.
func (v *View) FlowNames(s *state.Store) (names [curve.FlowNodes]string) {
	var in, out [curve.FlowNodes]float64
	decimals := 0
	if v.FlowDay {
		decimals = 1
	}
	flows := v.Flows(s)
	for i, kWh := range format.AddUp(flows[:], decimals) { // a node is the sum of what is shown about it
		out[curve.FlowLinks[i][0]] += kWh
		in[curve.FlowLinks[i][1]] += kWh
	}
	for i, k := range [curve.FlowNodes]words.Key{
		curve.NodeSun: words.FlowSun, curve.NodeGrid: words.FlowGrid, curve.NodeTank: words.FlowTank, curve.NodeWiring: words.FlowWiring,
		curve.NodeDisplaced: words.FlowDisplaced, curve.NodeFull: words.FlowFull, curve.NodeTap: words.FlowTap, curve.NodePipes: words.FlowPipes, curve.NodeRoom: words.FlowRoom,
	} {
		names[i] = v.Words.Text(k) + "\n" + format.Number(math.Max(in[i], out[i]), decimals)
	}
	return names
}
