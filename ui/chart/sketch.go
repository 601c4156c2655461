package chart

import (
	"fmt"
	"strings"

	"suncask/ui/curve"
	"suncask/ui/format"
)

// Sketch draws the strip as it is to look before the charts' script has come: as SVG of any
// width, with classes instead of colours.
func Sketch(d *curve.Data) string {
	var b strings.Builder
	b.WriteString(`<svg class="sketch" width="100%" height="104">`)
	for axis, g := range stripGrids {
		top, foot := d.Axes[axis].Max, g.top+g.height
		fmt.Fprintf(&b, `<text class="sketch-end" x="%d" y="%d">%s</text><text class="sketch-end" x="%[1]d" y="%[4]d">0</text>`, stripLeft-8, g.top+4, format.Exact(top), foot+4)
		fmt.Fprintf(&b, `<svg class="sketch-plot" x="%d" y="%d" height="%d" viewBox="0 0 24 %d" preserveAspectRatio="none">`, stripLeft, g.top, g.height, g.height)
		path := func(class string, series int, closed bool) {
			if len(d.Series[series]) == 0 {
				return
			}
			fmt.Fprintf(&b, `<path class="%s" d="`, class)
			command := "M"
			if closed {
				fmt.Fprintf(&b, "M%.4g %d", d.Series[series][0].X, g.height)
				command = "L"
			}
			last := 0.0
			for _, p := range d.Series[series] {
				fmt.Fprintf(&b, "%s%.4g %.3g", command, p.X, float64(g.height)*(1-p.Y/top))
				command, last = "L", p.X
			}
			if closed {
				fmt.Fprintf(&b, "L%.4g %dZ", last, g.height)
			}
			b.WriteString(`"></path>`)
		}
		if axis == curve.WaterAxis {
			path("sketch-hours", curve.WindowWater, true)
			path("sketch-ready", curve.Water, true)
			path("sketch-dull", curve.WaterDull, false)
			path("sketch-water", curve.Water, false)
		} else {
			path("sketch-hours", curve.WindowMoney, true)
			path("sketch-money", curve.Money, false)
		}
		fmt.Fprintf(&b, `<path class="sketch-axis" d="M0 0V%dH24"></path></svg>`, g.height)
	}
	fmt.Fprintf(&b, `<svg class="sketch-plot" x="%d" height="104">`, stripLeft)
	for h := 0; h <= 24; h += 6 {
		fmt.Fprintf(&b, `<text class="sketch-hour" x="%g%%" y="102">%d</text>`, float64(h)/0.24, h)
	}
	b.WriteString(`</svg></svg>`)
	return b.String()
}
