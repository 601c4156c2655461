package ui

import (
	"math"
	"strconv"

	"suncask/engine/plan"
	"suncask/ui/dial"
	"suncask/ui/format"
	"suncask/ui/landscape"
	"suncask/ui/words"
)

// Landscape shows the yearly cost of all backup hours.
type Landscape struct{ Page *Page }

// landShapes are the paths of a landscape, kept while nothing is added to it.
type landShapes struct {
	of    *landscape.Map
	known int
	in    landscape.Frame
	paths [landscape.Levels + 1]string
}

// landFrame is which lengths the landscape shows: at first those that the house's own are among.
func (c *Page) landFrame() landscape.Frame {
	if long := c.Store.Scenario.Backup.Length() > landscape.Short.Hours()*60; c.AllLengths != long {
		return landscape.All
	}
	return landscape.Short
}

// lengths names the button that shows the others.
func (c *Landscape) lengths() string {
	if c.Page.landFrame() == landscape.All {
		return c.Page.T(words.LandShort)
	}
	return c.Page.T(words.LandAll)
}

// LandPaths are the shades of the landscape, and what misses the promise.
func (c *Page) LandPaths() *[landscape.Levels + 1]string {
	m, ok := c.Store.Landscape()
	if !ok {
		return new([landscape.Levels + 1]string)
	}
	f := c.landFrame()
	if k := &c.landKept; k.of != m || k.known != m.Known || k.in != f {
		shades, missed := f.Paths(m)
		*k = landShapes{of: m, known: m.Known, in: f}
		copy(k.paths[:], shades[:])
		k.paths[landscape.Levels] = missed
	}
	return &c.landKept.paths
}

// LandID is the id of one of LandPaths.
func LandID(i int) string {
	if i == landscape.Levels {
		return "land-missed"
	}
	return landID(i)
}

func landID(i int) string { return "land-" + strconv.Itoa(i) }

func (c *Landscape) shape(i int) string { return c.Page.LandPaths()[i] }

func (c *Landscape) frame() string {
	return "0 0 " + strconv.Itoa(landscape.Width) + " " + strconv.Itoa(c.Page.landFrame().Height())
}

// class hides the picture while there is none.
func (c *Landscape) class() string {
	if _, ok := c.Page.Store.Landscape(); ok {
		return "land"
	}
	return "land land-none"
}

// LandTapped takes the hours at a point of the picture, in its units.
func (c *Page) LandTapped(x, y float64) {
	if w, ok := c.landFrame().WindowAt(x, y); ok {
		c.Store.GoTo(w)
		c.changed()
	}
}

// here is a cross at the present hours, where they are on the picture.
func (c *Landscape) here() string {
	b := c.Page.Store.Scenario.Backup
	if b.FollowsSun() {
		return ""
	}
	w := plan.Window{Start: b.Start / plan.StepMinutes, Steps: b.Length() / plan.StepMinutes}
	x, y, ok := c.Page.landFrame().Middle(w)
	if !ok {
		return ""
	}
	return "M" + svgNumber(x-7) + " " + svgNumber(y) + "h14M" + svgNumber(x) + " " + svgNumber(y-7) + "v14"
}

// best is the middle of the cheapest window that keeps the promise; off the picture while
// there is none.
func (c *Landscape) best() (x, y float64) {
	m, ok := c.Page.Store.Landscape()
	if !ok || math.IsNaN(m.LeastCost) {
		return -20, -20
	}
	if x, y, ok = c.Page.landFrame().Middle(m.Least); !ok {
		return -20, -20
	}
	return x, y
}

func (c *Landscape) bestX() string { x, _ := c.best(); return svgNumber(x) }

func (c *Landscape) bestY() string { _, y := c.best(); return svgNumber(y) }

// marks are the hours along both sides.
func (c *Landscape) marks() (list []textMark) {
	f := c.Page.landFrame()
	for h := 0; h <= 24; h += 6 {
		x, y, _ := f.Middle(plan.Window{Start: h * 60 / plan.StepMinutes, Steps: f.Hours() * h / 24 * 60 / plan.StepMinutes})
		list = append(list, textMark{"land-hour", svgNumber(x), strconv.Itoa(f.Height() - 8), strconv.Itoa(h)},
			textMark{"land-length", strconv.Itoa(landscape.Left - 6), svgNumber(y + 4), strconv.Itoa(f.Hours() * h / 24)})
	}
	return list
}

func (c *Landscape) name() string {
	if _, ok := c.Page.Store.Landscape(); ok {
		return c.Page.T(words.LandName)
	}
	return ""
}

// twin says in words what the picture shows.
func (c *Landscape) twin() string {
	m, ok := c.Page.Store.Landscape()
	if !ok {
		return ""
	}
	none, _, known1 := m.At(plan.Window{})
	all, _, known2 := m.At(plan.Window{Steps: plan.Places})
	if !known1 || !known2 {
		return ""
	}
	w, s := c.Page.View.Words, &c.Page.Store.Scenario
	if math.IsNaN(m.LeastCost) {
		return w.Text(words.LandTwinNone, format.Money(none, s.Currency), format.Money(all, s.Currency))
	}
	b := m.Least.Backup(s.Backup.Second)
	best := dial.Window{Start: b.Start, End: b.End, AllDay: b.AllDay}
	return w.Text(words.LandTwin, c.Page.View.Hours(best), format.Money(m.LeastCost, s.Currency), format.Money(none, s.Currency), format.Money(all, s.Currency))
}
