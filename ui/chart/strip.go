package chart

import (
	"strconv"

	"github.com/go-echarts/go-echarts/v2/opts"

	"suncask/ui/curve"
)

// stripGrid is where a part of the strip stands, px; across it reaches from stripLeft to
// stripRight short of the right.
type stripGrid struct{ top, height int }

const stripLeft, stripRight = 44, 14

var stripGrids = [curve.StripAxes]stripGrid{curve.WaterAxis: {14, 44}, curve.MoneyAxis: {70, 15}}

func (g stripGrid) grid() opts.Grid {
	return opts.Grid{Left: strconv.Itoa(stripLeft), Right: strconv.Itoa(stripRight), Top: strconv.Itoa(g.top), Height: strconv.Itoa(g.height)}
}

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
		Grid:      []opts.Grid{stripGrids[0].grid(), stripGrids[1].grid()},
		XAxis:     []opts.XAxis{p.x(0, 0, 24, 6, false), p.x(1, 0, 24, 6, true)},
		YAxis:     []opts.YAxis{p.y(0), p.y(1)},
		Series:    list[:],
	}
}
