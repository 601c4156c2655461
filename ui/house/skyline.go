package house

import (
	"fmt"
	"math"

	"suncask/engine/solar"
	"suncask/ui/format"
	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/skyline"
	"suncask/ui/words"
)

// Skyline is the picture of the horizon, on which it can be drawn.
type Skyline struct{ Page *page.Page }

func skylineFrame() string { return fmt.Sprintf("0 0 %d %d", skyline.Width, skyline.Height) }

func (c *Skyline) name() string { return c.Page.T(words.SkylineName) }

func (c *Skyline) south() bool { return c.Page.Store.South() }

func (c *Skyline) land() string {
	d := skyline.Of(c.Page.Store.Scenario.Skyline)
	return d.Land(c.south())
}

// paths are the sun's at both solstices and the equinox.
func (c *Skyline) paths() (list []string) {
	const rad = math.Pi / 180
	latitude := c.Page.Store.Prepared.Weather.Place.LatDeg * rad
	for _, month := range []int{6, 3, 12} {
		sun := solar.At(solar.JulianDay(2001, month, 21, 0.5))
		list = append(list, skyline.SunPath(latitude, sun.Declination, c.south()))
	}
	return list
}

func (c *Skyline) marks() (list []parts.Mark) {
	for i, key := range []words.Key{words.North, words.East, words.South, words.West} {
		list = append(list, parts.NewMark("skyline-side", format.Length(skyline.X(float64(90*i), c.south())), "146", c.Page.T(key)))
	}
	for _, e := range []float64{0, 30, 60} {
		list = append(list, parts.NewMark("skyline-height", "25", format.Length(skyline.Y(e)+4), format.Number(e, 0)+"\u00b0"))
	}
	return list
}
