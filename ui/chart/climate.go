package chart

import (
	"github.com/go-echarts/go-echarts/v2/opts"

	"suncask/ui/curve"
)

// climate is twelve months: light as bars above, air and cold water as lines below.
func (p *Palette) climate() *options {
	var list [curve.ClimateSeries]series
	list[curve.Light] = series{Type: "bar", Silent: true, ItemStyle: &opts.ItemStyle{Color: p.Sun}, Data: []any{}}
	list[curve.Air] = line(1, 3, opts.LineStyle{Color: p.Dull, Width: 2, Type: "dashed"})
	list[curve.Cold] = line(1, 4, opts.LineStyle{Color: p.Water, Width: 2})
	return &options{
		TextStyle: p.font(12),
		Grid: []opts.Grid{
			{Left: "36", Right: "8", Top: "24", Height: "60"},
			{Left: "36", Right: "8", Top: "114", Height: "60"},
		},
		XAxis:  []opts.XAxis{months(p.x(0, 0, 13, 1, false)), months(p.x(1, 0, 13, 1, true))},
		YAxis:  []opts.YAxis{p.y(0), p.y(1)},
		Series: list[:],
	}
}

// months leaves the ends of an axis from 0 to 13 without a label.
func months(x opts.XAxis) opts.XAxis {
	x.AxisLabel.ShowMinLabel, x.AxisLabel.ShowMaxLabel = opts.Bool(false), opts.Bool(false)
	return x
}
