// Package chart describes the charts with go-echarts. It runs when the site is
// built: the page hands only numbers to what is described here.
package chart

import (
	"encoding/json"

	"github.com/go-echarts/go-echarts/v2/opts"
)

// Palette is one theme's colours.
type Palette struct{ Text, Grid, Water, Dull, Money, Window, Sun, SunArea, SunEdge, OnSun string }

// The page's two themes; their contrast is on the page's tokens.
var (
	LightTheme = Palette{Text: "#4b5563", Grid: "#d8d5cc", Water: "#0f7c86", Dull: "#4b5563", Money: "#3d2780", Window: "#5b3fa6", Sun: "#c77700", SunArea: "#f9d88c", SunEdge: "#8a5a00", OnSun: "#20242b"}
	DarkTheme  = Palette{Text: "#aeb6c2", Grid: "#3a414c", Water: "#43c2cc", Dull: "#aeb6c2", Money: "#d6c8ff", Window: "#a78bfa", Sun: "#f5b942", SunArea: "#7a5c1c", SunEdge: "#ffe2a3", OnSun: "#fff3d1"}
)

// All returns every chart in both themes as JSON: theme, then name.
func All() ([]byte, error) {
	themes := map[string]map[string]*options{}
	for name, p := range map[string]Palette{"light": LightTheme, "dark": DarkTheme} {
		themes[name] = map[string]*options{"strip": p.strip(), "climate": p.climate(), "iv": p.iv(),
			"year": p.year(), "cash": p.cash(), "lengths": p.lengths(), "flow": p.flow()}
	}
	return json.Marshal(themes)
}

// series is a line or bars of a chart; go-echarts' own ties a series to its page.
type series struct {
	Type       string          `json:"type"`
	Stack      string          `json:"stack,omitempty"`
	XAxisIndex int             `json:"xAxisIndex"`
	YAxisIndex int             `json:"yAxisIndex"`
	ShowSymbol bool            `json:"showSymbol"`
	Silent     bool            `json:"silent"`
	Z          int             `json:"z"`
	LineStyle  *opts.LineStyle `json:"lineStyle,omitempty"`
	AreaStyle  *opts.AreaStyle `json:"areaStyle,omitempty"`
	ItemStyle  *opts.ItemStyle `json:"itemStyle,omitempty"`
	Data       []any           `json:"data"`

	// Of an energy flow.
	Links            []link      `json:"links,omitempty"`
	Left             string      `json:"left,omitempty"`
	Right            string      `json:"right,omitempty"`
	Top              string      `json:"top,omitempty"`
	Bottom           string      `json:"bottom,omitempty"`
	NodeWidth        int         `json:"nodeWidth,omitempty"`
	NodeGap          int         `json:"nodeGap,omitempty"`
	LayoutIterations int         `json:"layoutIterations"`
	Label            *opts.Label `json:"label,omitempty"`
}

type options struct {
	Animation bool            `json:"animation"`
	TextStyle *opts.TextStyle `json:"textStyle"`
	Grid      []opts.Grid     `json:"grid,omitempty"`
	XAxis     []opts.XAxis    `json:"xAxis,omitempty"`
	YAxis     []opts.YAxis    `json:"yAxis,omitempty"`
	Series    []series        `json:"series"`
}

func (p *Palette) font(size int) *opts.TextStyle {
	return &opts.TextStyle{FontFamily: "inherit", FontSize: size, Color: p.Text}
}

func (p *Palette) label(show bool) *opts.AxisLabel {
	return &opts.AxisLabel{Show: opts.Bool(show), Color: p.Text, FontSize: 12, HideOverlap: opts.Bool(true),
		ShowMinLabel: opts.Bool(true), ShowMaxLabel: opts.Bool(true)}
}

func (p *Palette) axisLine() *opts.AxisLine {
	return &opts.AxisLine{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: p.Grid}}
}

// x is a horizontal axis of numbers with a label every so many.
func (p *Palette) x(grid int, from, to, every float64, labels bool) opts.XAxis {
	return opts.XAxis{Type: "value", Min: from, Max: to, MinInterval: every, MaxInterval: every, GridIndex: grid,
		SplitLine: &opts.SplitLine{Show: opts.Bool(false)}, AxisLine: p.axisLine(), AxisLabel: p.label(labels)}
}

// y is a vertical axis, labelled at its ends; the data moves them.
func (p *Palette) y(grid int) opts.YAxis {
	return opts.YAxis{Type: "value", Min: 0, Max: 1, SplitNumber: 1, GridIndex: grid,
		SplitLine: &opts.SplitLine{Show: opts.Bool(false)}, AxisLine: p.axisLine(), AxisLabel: p.label(true)}
}

func line(grid, z int, style opts.LineStyle) series {
	return series{Type: "line", XAxisIndex: grid, YAxisIndex: grid, Silent: true, Z: z, LineStyle: &style, Data: []any{}}
}

func (s series) over(colour string, opacity float32) series {
	s.AreaStyle = &opts.AreaStyle{Color: colour, Opacity: opts.Float(opacity)}
	return s
}
