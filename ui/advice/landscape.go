package advice

import (
	"math"
	"strconv"

	"suncask/engine/plan"
	"suncask/ui/format"
	"suncask/ui/landscape"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
	"suncask/ui/words"
)

// Landscape shows the yearly cost of all backup hours.
type Landscape struct {
	Page *page.Page
	kept shapes
}

// shapes are the paths of a landscape, kept while nothing is added to it.
type shapes struct {
	of    *landscape.Map
	known int
	in    landscape.Frame
	paths [landscape.Levels + 1]string
}

// Compute draws them anew where something was.
func (c *Landscape) Compute() {
	m, ok := c.Page.Store.Landscape()
	if !ok {
		c.kept = shapes{}
		return
	}
	if in := frameOf(c.Page); c.kept.of != m || c.kept.known != m.Known || c.kept.in != in {
		c.kept = shapes{m, m.Known, in, Shapes(c.Page)}
	}
}

// Shapes are the shades of the landscape, and what misses the promise.
func Shapes(c *page.Page) (paths [landscape.Levels + 1]string) {
	if m, ok := c.Store.Landscape(); ok {
		shades, missed := frameOf(c).Paths(m)
		copy(paths[:], shades[:])
		paths[landscape.Levels] = missed
	}
	return paths
}

// ShapeID is the id of one of Shapes.
func ShapeID(i int) string {
	if i == landscape.Levels {
		return "land-missed"
	}
	return landID(i)
}

func landID(i int) string { return "land-" + strconv.Itoa(i) }

func (c *Landscape) shape(i int) string { return c.kept.paths[i] }

// frameOf is which lengths the landscape shows: at first those that the house's own are among.
func frameOf(c *page.Page) landscape.Frame {
	if long := c.Store.Scenario.Backup.Length() > landscape.Short.Hours()*60; c.AllLengths != long {
		return landscape.All
	}
	return landscape.Short
}

// lengths names the button that shows the others.
func (c *Landscape) lengths() string {
	if frameOf(c.Page) == landscape.All {
		return c.Page.T(words.LandShort)
	}
	return c.Page.T(words.LandAll)
}

func (c *Landscape) frame() string {
	return "0 0 " + strconv.Itoa(landscape.Width) + " " + strconv.Itoa(frameOf(c.Page).Height())
}

// class hides the picture while there is none.
func (c *Landscape) class() string {
	if _, ok := c.Page.Store.Landscape(); ok {
		return "land"
	}
	return "land land-none"
}

// here is a cross at the present hours, where they are on the picture.
func (c *Landscape) here() string {
	b := c.Page.Store.Scenario.Backup
	if b.FollowsSun() {
		return ""
	}
	w := plan.Window{Start: b.Start / plan.StepMinutes, Steps: b.Length() / plan.StepMinutes}
	x, y, ok := frameOf(c.Page).Middle(w)
	if !ok {
		return ""
	}
	return "M" + format.Length(x-7) + " " + format.Length(y) + "h14M" + format.Length(x) + " " + format.Length(y-7) + "v14"
}

// best is the middle of the cheapest window that keeps the promise; off the picture while
// there is none.
func (c *Landscape) best() (x, y float64) {
	m, ok := c.Page.Store.Landscape()
	if !ok || math.IsNaN(m.LeastCost) {
		return -20, -20
	}
	if x, y, ok = frameOf(c.Page).Middle(m.Least); !ok {
		return -20, -20
	}
	return x, y
}

func (c *Landscape) bestX() string { x, _ := c.best(); return format.Length(x) }

func (c *Landscape) bestY() string { _, y := c.best(); return format.Length(y) }

// marks are the hours along both sides.
func (c *Landscape) marks() (list []parts.Mark) {
	f := frameOf(c.Page)
	for h := 0; h <= 24; h += 6 {
		x, y, _ := f.Middle(plan.Window{Start: h * 60 / plan.StepMinutes, Steps: f.Hours() * h / 24 * 60 / plan.StepMinutes})
		list = append(list, parts.NewMark("land-hour", format.Length(x), strconv.Itoa(f.Height()-8), strconv.Itoa(h)),
			parts.NewMark("land-length", strconv.Itoa(landscape.Left-6), format.Length(y+4), strconv.Itoa(f.Hours()*h/24)))
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
	return w.Text(words.LandTwin, c.Page.View.Hours(state.FirstWindow(b)), format.Money(m.LeastCost, s.Currency), format.Money(none, s.Currency), format.Money(all, s.Currency))
}

// title names the cheapest of all hours once the short ones are known.
func (c *Landscape) title() string {
	s, w := c.Page.Store, c.Page.View.Words
	m, ok := s.Landscape()
	switch {
	case !ok || m.Known < 2+plan.Places*plan.ShortSteps:
		return c.Page.T(words.HoursTitle)
	case math.IsNaN(m.LeastCost):
		return c.Page.T(words.LandNone)
	}
	b := m.Least.Backup(s.Scenario.Backup.Second)
	hours := c.Page.View.Hours(state.FirstWindow(b))
	return w.Text(words.LandBest, hours, format.Money(m.LeastCost, s.Scenario.Currency), format.Money(s.Results.Year.Total.Cost, s.Scenario.Currency))
}

// LandTapped takes the hours at a point of the picture, in its units.
func LandTapped(c *page.Page, x, y float64) {
	if w, ok := frameOf(c).WindowAt(x, y); ok {
		c.Store.GoTo(w)
		c.Changed()
	}
}
