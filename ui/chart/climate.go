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
		XAxis:  []opts.XAxis{p.x(0, 0.5, 12.5, 1, false), p.x(1, 0.5, 12.5, 1, true)},
		YAxis:  []opts.YAxis{p.y(0), p.y(1)},
		Series: list[:],
	}
}
