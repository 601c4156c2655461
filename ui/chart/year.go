package chart

import (
	"strconv"

	"github.com/go-echarts/go-echarts/v2/opts"

	"suncask/ui/curve"
)

func bars(colour, stack string, grid, z int) series {
	return series{Type: "bar", Stack: stack, XAxisIndex: grid, YAxisIndex: grid, Silent: true, Z: z, ItemStyle: &opts.ItemStyle{Color: colour}, Data: []any{}}
}

// year is twelve months: heat from the grid, with its number, and from the sun above it.
func (p *Palette) year() *options {
	var list [curve.YearSeries]series
	list[curve.FromGrid] = bars(p.Window, "in", 0, 2)
	list[curve.FromGrid].Label = &opts.Label{Show: opts.Bool(true), Color: p.OnSun, FontSize: 12, FontWeight: "bold", Position: "top"}
	list[curve.FromGrid].Z = 3 // its numbers stand on the sun
	list[curve.FromSun] = bars(p.SunArea, "in", 0, 2)
	list[curve.FromSun].ItemStyle.BorderColor, list[curve.FromSun].ItemStyle.BorderWidth = p.SunEdge, 0.8
	return p.oneGrid("40", months(p.x(0, 0, 13, 1, true)), list[:])
}

// cash is a system's cumulative payments over the years, as they are and at today's value.
func (p *Palette) cash() *options {
	var list [curve.CashSeries]series
	list[curve.Cash] = line(0, 3, opts.LineStyle{Color: p.Money, Width: 2.5})
	list[curve.CashToday] = line(0, 2, opts.LineStyle{Color: p.Dull, Width: 1.5, Type: "dashed"})
	list[curve.CashZero] = line(0, 1, opts.LineStyle{Color: p.Dull, Width: 1})
	return p.oneGrid("62", p.x(0, 0, 1, 1, true), list[:])
}

// lengths is yearly cost over the window's length above, cool uses below; a dot each where
// the house is.
func (p *Palette) lengths() *options {
	var list [curve.LengthSeries]series
	for i, colour := range []string{p.Money, p.Water} {
		list[curve.LengthCost+i] = line(i, 3, opts.LineStyle{Color: colour, Width: 2})
		dot := line(i, 4, opts.LineStyle{Color: colour, Width: 0})
		dot.ShowSymbol, dot.ItemStyle = true, &opts.ItemStyle{Color: colour}
		list[curve.CostHere+i] = dot
	}
	return &options{
		TextStyle: p.font(12),
		Grid: []opts.Grid{
			{Left: "44", Right: "12", Top: "12", Height: "72"},
			{Left: "44", Right: "12", Top: "104", Height: "60"},
		},
		XAxis:  []opts.XAxis{p.x(0, 0, 24, 6, false), p.x(1, 0, 24, 6, true)},
		YAxis:  []opts.YAxis{p.y(0), p.y(1)},
		Series: list[:],
	}
}

// oneGrid is a chart with room for the numbers of its vertical axis, px.
func (p *Palette) oneGrid(room string, x opts.XAxis, list []series) *options {
	return &options{
		TextStyle: p.font(12),
		Grid:      []opts.Grid{{Left: room, Right: "4", Top: "12", Height: "150"}},
		XAxis:     []opts.XAxis{x},
		YAxis:     []opts.YAxis{p.y(0)},
		Series:    list,
	}
}

// flow is where energy comes from and goes to; the page gives each link its value and
// each node its name.
func (p *Palette) flow() *options {
	s := series{Type: "sankey", Silent: true, Left: "4", Right: "156", Top: "14", Bottom: "16",
		NodeWidth: 10, NodeGap: 24, LayoutIterations: 0,
		Label:     &opts.Label{Show: opts.Bool(true), Color: p.Text, FontSize: 12, LineHeight: 13, Position: "right"},
		LineStyle: &opts.LineStyle{Color: "source", Opacity: opts.Float(0.35)}}
	colours := [curve.FlowNodes]string{curve.NodeSun: p.Sun, curve.NodeGrid: p.Window, curve.NodeTank: p.Water, curve.NodeTap: p.Water}
	for i, c := range colours {
		if c == "" {
			c = p.Dull
		}
		s.Data = append(s.Data, node{strconv.Itoa(i), opts.ItemStyle{Color: c}})
	}
	for _, l := range curve.FlowLinks {
		s.Links = append(s.Links, link{l[0], l[1], 1})
	}
	return &options{TextStyle: p.font(12), Series: []series{s}}
}

type node struct {
	Name      string         `json:"name"`
	ItemStyle opts.ItemStyle `json:"itemStyle"`
}

type link struct {
	Source int     `json:"source"`
	Target int     `json:"target"`
	Value  float64 `json:"value"`
}
