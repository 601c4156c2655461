package chart

import (
	"github.com/go-echarts/go-echarts/v2/opts"

	"suncask/ui/curve"
)

// iv is the strings' current over their voltage in three lights, the element's line
// and the points at which they work.
func (p *Palette) iv() *options {
	var list [curve.IVSeries]series
	for i, style := range []opts.LineStyle{{Color: p.Sun, Width: 2.5}, {Color: p.Sun, Width: 1.8}, {Color: p.Sun, Width: 1.2}} {
		list[curve.Curve1000+i] = line(0, 3, style)
	}
	list[curve.ElementLine] = line(0, 2, opts.LineStyle{Color: p.Dull, Width: 1.5, Type: "dashed"})
	points := line(0, 5, opts.LineStyle{Color: p.Money, Width: 1, Type: "dotted"})
	points.ShowSymbol = true
	points.ItemStyle = &opts.ItemStyle{Color: p.Money}
	list[curve.WorkPoints] = points
	return &options{
		TextStyle: p.font(12),
		Grid:      []opts.Grid{{Left: "36", Right: "24", Top: "24", Height: "130"}},
		XAxis:     []opts.XAxis{p.x(0, 0, 1, 1, true)},
		YAxis:     []opts.YAxis{p.y(0)},
		Series:    list[:],
	}
}
