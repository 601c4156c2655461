package curve

import (
	"encoding/json"
	"math"

	"github.com/go-echarts/go-echarts/v2/opts"
)

// Series of the strip, in the order of its data.
const (
	Water       = iota // hot water ready
	WaterDull          // the same on a dull day
	WaterBefore        // as it was when the gesture began
	Money              // spent so far
	MoneyBefore
	WindowWater // the backup hours behind each grid
	WindowMoney
	seriesCount
)

// Strip is the data of the strip chart: two grids over one day.
type Strip struct {
	Series           [seriesCount][]Point // X in hours
	MaxWater, MaxFee float64              // tops of the axes
}

// Append writes the data as numbers for the page's script: the two tops, then
// for each series its length and its points.
func (s *Strip) Append(out []float64) []float64 {
	out = append(out, s.MaxWater, s.MaxFee)
	for _, list := range s.Series {
		out = append(out, float64(len(list)))
		for _, p := range list {
			out = append(out, p.X, p.Y)
		}
	}
	return out
}

// Nice returns the next round number at or above v: 1, 2, 2.5, 3, 4, 5, 6, 8
// times a power of ten.
func Nice(v float64) float64 {
	if v <= 0 {
		return 1
	}
	unit := math.Pow(10, math.Floor(math.Log10(v)))
	for _, k := range [...]float64{1, 2, 2.5, 3, 4, 5, 6, 8} {
		if k*unit >= v*(1-1e-12) {
			return k * unit
		}
	}
	return 10 * unit
}

// Palette is one theme's colours.
type Palette struct{ Text, Grid, Water, Dull, Money, Window string }

// The page's two themes; their contrast is on the page's tokens.
var (
	Light = Palette{Text: "#4b5563", Grid: "#d8d5cc", Water: "#0f7c86", Dull: "#4b5563", Money: "#3d2780", Window: "#5b3fa6"}
	Dark  = Palette{Text: "#aeb6c2", Grid: "#3a414c", Water: "#43c2cc", Dull: "#aeb6c2", Money: "#d6c8ff", Window: "#a78bfa"}
)

// series is a line of a chart; go-echarts' own ties a series to its page.
type series struct {
	Type       string          `json:"type"`
	XAxisIndex int             `json:"xAxisIndex"`
	YAxisIndex int             `json:"yAxisIndex"`
	ShowSymbol bool            `json:"showSymbol"`
	Silent     bool            `json:"silent"`
	Z          int             `json:"z"`
	LineStyle  *opts.LineStyle `json:"lineStyle"`
	AreaStyle  *opts.AreaStyle `json:"areaStyle,omitempty"`
	Data       []any           `json:"data"`
}

type options struct {
	Animation bool            `json:"animation"`
	TextStyle *opts.TextStyle `json:"textStyle"`
	Grid      []opts.Grid     `json:"grid"`
	XAxis     []opts.XAxis    `json:"xAxis"`
	YAxis     []opts.YAxis    `json:"yAxis"`
	Series    []series        `json:"series"`
}

// StripOptions returns the strip's options without data, as JSON for ECharts.
func StripOptions(p Palette) string {
	font := func(size int) *opts.TextStyle {
		return &opts.TextStyle{FontFamily: "inherit", FontSize: size, Color: p.Text}
	}
	label := func(show bool) *opts.AxisLabel {
		return &opts.AxisLabel{Show: opts.Bool(show), Color: p.Text, FontSize: 12, HideOverlap: opts.Bool(true),
			ShowMinLabel: opts.Bool(true), ShowMaxLabel: opts.Bool(true)}
	}
	split := &opts.SplitLine{Show: opts.Bool(false)}
	axis := &opts.AxisLine{Show: opts.Bool(true), LineStyle: &opts.LineStyle{Color: p.Grid}}
	x := func(grid int, labels bool) opts.XAxis {
		return opts.XAxis{Type: "value", Min: 0, Max: 24, MinInterval: 6, MaxInterval: 6, GridIndex: grid,
			SplitLine: split, AxisLine: axis, AxisLabel: label(labels)}
	}
	y := func(grid int) opts.YAxis {
		return opts.YAxis{Type: "value", Min: 0, Max: 1, SplitNumber: 1, GridIndex: grid, SplitLine: split, AxisLine: axis, AxisLabel: label(true)}
	}
	line := func(grid, z int, style opts.LineStyle) series {
		return series{Type: "line", XAxisIndex: grid, YAxisIndex: grid, Silent: true, Z: z, LineStyle: &style, Data: []any{}}
	}
	area := func(s series, colour string, opacity float64) series {
		s.AreaStyle = &opts.AreaStyle{Color: colour, Opacity: opts.Float(float32(opacity))}
		return s
	}
	var list [seriesCount]series
	list[Water] = area(line(0, 4, opts.LineStyle{Color: p.Water, Width: 2}), p.Water, 0.22)
	list[WaterDull] = line(0, 3, opts.LineStyle{Color: p.Dull, Width: 1.5, Type: "dotted"})
	list[WaterBefore] = line(0, 5, opts.LineStyle{Color: p.Water, Width: 1.2, Type: "dashed"})
	list[Money] = line(1, 4, opts.LineStyle{Color: p.Money, Width: 2})
	list[MoneyBefore] = line(1, 5, opts.LineStyle{Color: p.Money, Width: 1.2, Type: "dashed"})
	for i, grid := range map[int]int{WindowWater: 0, WindowMoney: 1} {
		list[i] = area(line(grid, 1, opts.LineStyle{Color: p.Window, Width: 1}), p.Window, 0.25)
	}
	raw, err := json.Marshal(options{
		TextStyle: font(12),
		Grid: []opts.Grid{
			{Left: "44", Right: "14", Top: "15", Height: "42"},
			{Left: "44", Right: "14", Top: "75", Height: "22"},
		},
		XAxis:  []opts.XAxis{x(0, false), x(1, true)},
		YAxis:  []opts.YAxis{y(0), y(1)},
		Series: list[:],
	})
	if err != nil {
		panic("curve: " + err.Error()) // only numbers and strings are in it
	}
	return string(raw)
}
