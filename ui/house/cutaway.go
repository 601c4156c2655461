package house

import (
	"math"
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/tank"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/words"
)

// Cutaway shows the layers of the tank at an hour of the day shown.
type Cutaway struct{ Page *page.Page }

// tankTop and tankHeight are the tank's place in the picture.
const tankTop, tankHeight = 2.0, 200.0

func (c *Cutaway) clock() string { return format.Clock(c.Page.TankMinute % 1440) }

func (c *Cutaway) name() string { return c.Page.View.Words.Text(words.TankName, c.clock()) }

func (c *Cutaway) value() string { return strconv.Itoa(c.Page.TankMinute) }

func (c *Cutaway) turn(event vugu.DOMEvent) {
	if minute, err := strconv.Atoi(event.PropString("target", "value")); err == nil && minute >= 0 && minute <= 1440 {
		c.Page.TankMinute = minute
	}
}

// point is the last point of the day's curve up to the hour.
func (c *Cutaway) point() int {
	points := c.Page.Store.Results.Day.Trace.Points
	at := 0
	for i := range points {
		if points[i].Minute <= float64(c.Page.TankMinute)+1e-6 {
			at = i
		}
	}
	return at
}

type tankLayer struct {
	in               vessel
	class, y, height string
}

// vessel is a tank in the picture.
type vessel struct{ x, width float64 }

// vessels are the tank, and left of it the sun's own where the house has one.
func (c *Cutaway) vessels() []vessel {
	if c.Page.Store.Scenario.Elements == scenario.TwoTanks {
		return []vessel{{42, 36}, {2, 36}}
	}
	return []vessel{{2, 76}}
}

func (v vessel) left() string { return format.Length(v.x) }

func (v vessel) wide() string { return format.Length(v.width) }

// layers are those of each tank, bottom to top, in a colour for every 5 degrees.
func (c *Cutaway) layers() (list []tankLayer) {
	trace, at := &c.Page.Store.Results.Day.Trace, c.point()
	water := [][]tank.Layer{trace.Layers(at), trace.Ahead(at)}
	for i, v := range c.vessels() {
		below, litres := 0.0, 0.0
		for _, l := range water[i] {
			litres += l.Litres
		}
		for _, l := range water[i] {
			step := max(0, min(14, int(math.Floor((l.TempC-10)/5))))
			height := l.Litres / litres * tankHeight
			list = append(list, tankLayer{v, "warm warm-" + strconv.Itoa(step), format.Length(tankTop + tankHeight - below - height), format.Length(height)})
			below += height
		}
	}
	return list
}

// elements are the lines of the one or two elements.
func (c *Cutaway) elements() (list []string) {
	sun, grid := c.Page.Store.Prepared.Elements()
	vessels := c.vessels()
	line := func(v vessel, e tank.Element) {
		right, low := format.Length(v.x+v.width), tankTop+tankHeight*(1-e.Low)
		left, turn := format.Length(v.x+v.width*0.37), format.Length(math.Max(4, tankHeight*(e.High-e.Low))/2)
		list = append(list, "M"+right+" "+format.Length(low)+"H"+left+"q-8 0 -8 -"+turn+"t8 -"+turn+"H"+right)
	}
	if len(vessels) == 2 {
		line(vessels[1], sun)
	} else if grid != sun {
		line(vessels[0], sun)
	}
	line(vessels[0], grid)
	return list
}

// marks are the temperatures of top and bottom beside the tank.
func (c *Cutaway) marks() [][2]string {
	layers := c.Page.Store.Results.Day.Trace.Layers(c.point())
	return [][2]string{{"14", format.Degrees(layers[len(layers)-1].TempC) + "\u00b0"}, {"200", format.Degrees(layers[0].TempC) + "\u00b0"}}
}
