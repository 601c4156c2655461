package ui

import (
	"math"
	"strconv"

	"github.com/vugu/vugu"

	"suncask/engine/scenario"
	"suncask/engine/simulate"
	"suncask/engine/tank"
	"suncask/ui/format"
	"suncask/ui/words"
)

// Cutaway shows the layers of the tank at an hour of the day shown.
type Cutaway struct{ Page *Page }

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

// play lets the day pass, from midnight once it is over, or stops it.
func (c *Page) play() {
	c.Playing = !c.Playing && c.Host != nil
	if c.TankMinute >= 1440 {
		c.TankMinute = 0
	}
	if c.Playing {
		c.Host.Play()
	}
}

func (c *Cutaway) playName() string {
	if c.Page.Playing {
		return c.Page.T(words.JobStop)
	}
	return c.Page.T(words.TankPlay)
}

// Tick lets a quarter of an hour pass; false where the day is over, or nobody looks.
func (c *Page) Tick() bool {
	if c.Playing = c.Playing && c.TankMinute < 1440 && c.Shows(TankPanel); c.Playing {
		c.TankMinute += 15
	}
	return c.Playing
}

// ShowTank shows the tank at the minute of the day that was tapped, to a quarter of an
// hour.
func (c *Page) ShowTank(minute float64) {
	c.TankMinute = int(math.Round(minute/15)) * 15
	c.show(TankPanel)
	c.reveal("tank-hour")
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

func (v vessel) left() string { return svgNumber(v.x) }

func (v vessel) wide() string { return svgNumber(v.width) }

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
			list = append(list, tankLayer{v, "warm warm-" + strconv.Itoa(step), svgNumber(tankTop + tankHeight - below - height), svgNumber(height)})
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
		right, low := svgNumber(v.x+v.width), tankTop+tankHeight*(1-e.Low)
		left, turn := svgNumber(v.x+v.width*0.37), svgNumber(math.Max(4, tankHeight*(e.High-e.Low))/2)
		list = append(list, "M"+right+" "+svgNumber(low)+"H"+left+"q-8 0 -8 -"+turn+"t8 -"+turn+"H"+right)
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
	return [][2]string{{"14", degrees(layers[len(layers)-1].TempC) + "\u00b0"}, {"200", degrees(layers[0].TempC) + "\u00b0"}}
}

// degrees writes a temperature in whole degrees, without their unit.
func degrees(tempC float64) string { return format.In(scenario.Celsius, tempC, 0) }

func (c *Cutaway) twin() string {
	at := c.point()
	layers, p := c.Page.Store.Results.Day.Trace.Layers(at), c.Page.Store.Results.Day.Trace.Points[at]
	text := c.Page.View.Words.Text(words.TankTwin, degrees(layers[len(layers)-1].TempC), degrees(layers[0].TempC),
		degrees(p.MeanC), format.In(scenario.Litre, p.UsableL, 0))
	if sun := c.Page.Store.Results.Day.Trace.Ahead(at); len(sun) > 0 {
		text += " " + c.Page.View.Words.Text(words.TankTwinAhead, degrees(sun[len(sun)-1].TempC), degrees(sun[0].TempC))
	}
	return text
}

// showers tells whether the household has showers to wait for.
func (c *Page) showers() bool {
	return c.Store.ShowerL() > 0 && c.Store.Scenario.Uses != scenario.NoUses
}

// ready says how many showers the tank gives at the hour.
func (c *Cutaway) ready() string {
	if !c.Page.showers() {
		return ""
	}
	p := &c.Page.Store.Results.Day.Trace.Points[c.point()]
	return c.Page.View.Words.Text(words.TankReady, format.Number(math.Floor(10*p.UsableL/c.Page.Store.ShowerL())/10, 1))
}

// heatTimes says how long grid and sun take to heat the tank.
func (c *Cutaway) heatTimes() string {
	w, s := c.Page.View.Words, c.Page.Store
	h := s.HeatTimes()
	cold, to := degrees(h.ColdC), degrees(h.ToC)
	text := w.Text(words.HeatGridNever, cold, to)
	if h.GridOK {
		text = w.Text(words.HeatGrid, cold, to, format.Duration(int(math.Ceil(h.GridMinutes))))
	}
	month := w.Months[s.Scenario.Month]
	switch {
	case h.SunOK:
		text += " " + w.Text(words.HeatSun, month, format.Duration(int(math.Ceil(h.SunMinutes))), format.Clock(int(math.Ceil(h.SunFrom+h.SunMinutes))))
	case s.Prepared.Wiring().Strings > 0:
		text += " " + w.Text(words.HeatSunNever, month)
	}
	return text
}

// hygiene says how often the year's water is heated through, and how much stands where
// bacteria grow.
func (c *Cutaway) hygiene() string {
	w, h := c.Page.View.Words, c.Page.Store.Hygiene()
	heated := w.Text(words.HygieneNever, degrees(simulate.HygieneC), simulate.HygieneMinutes)
	if h.HeatUps > 0 {
		heated = w.Text(words.HygieneHeated, degrees(simulate.HygieneC), simulate.HygieneMinutes, h.HeatUps, format.Number(h.LongestDays, 1))
	}
	dose := w.Text(words.DoseNone)
	switch {
	case c.Page.Store.Scenario.Uses == scenario.NoUses: // nobody draws
		dose = ""
	case h.LeastDose >= 0.05:
		dose = w.Text(words.DoseSome, format.Number(h.LeastDose, 1))
	}
	return heated + " " + dose + " " + w.Text(words.HygieneGrow, format.Number(h.GrowHours, 0), format.In(scenario.Litre, h.GrowLitres, 0), degrees(simulate.GrowFromC), degrees(simulate.GrowToC))
}
