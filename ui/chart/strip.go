package chart

import (
	"github.com/go-echarts/go-echarts/v2/opts"

	"suncask/ui/curve"
)

// strip is one day: hot water ready above, money spent so far below.
func (p *Palette) strip() *options {
	var list [curve.StripSeries]series
	list[curve.Water] = line(0, 4, opts.LineStyle{Color: p.Water, Width: 2}).over(p.Water, 0.22)
	list[curve.WaterDull] = line(0, 3, opts.LineStyle{Color: p.Dull, Width: 1.5, Type: "dotted"})
	list[curve.WaterBefore] = line(0, 5, opts.LineStyle{Color: p.Water, Width: 1.2, Type: "dashed"})
	list[curve.Money] = line(1, 4, opts.LineStyle{Color: p.Money, Width: 2})
	list[curve.MoneyBefore] = line(1, 5, opts.LineStyle{Color: p.Money, Width: 1.2, Type: "dashed"})
	for i, grid := range map[int]int{curve.WindowWater: 0, curve.WindowMoney: 1} {
		list[i] = line(grid, 1, opts.LineStyle{Color: p.Window, Width: 1}).over(p.Window, 0.25)
	}
	return &options{
		TextStyle: p.font(12),
		Grid: []opts.Grid{
			{Left: "44", Right: "14", Top: "14", Height: "44"},
			{Left: "44", Right: "14", Top: "70", Height: "15"},
		},
		XAxis:  []opts.XAxis{p.x(0, 0, 24, 6, false), p.x(1, 0, 24, 6, true)},
		YAxis:  []opts.YAxis{p.y(0), p.y(1)},
		Series: list[:],
	}
}
