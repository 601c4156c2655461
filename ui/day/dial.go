package day

import (
	"strconv"

	"suncask/ui/dial"
	"suncask/ui/page"
)

// Dial is the figure: one SVG whose every moving attribute comes from the frame.
type Dial struct{ Page *page.Page }

func (c *Dial) a(id, name string) string { return c.Page.A(id, name) }

func dropID(i int, part string) string { return "drop-" + strconv.Itoa(i) + part }

func gripID(i int, part string) string { return "grip-" + strconv.Itoa(i) + part }

// partData is what a grip moves: three times its window and its part.
func partData(grip int) string { return strconv.Itoa(grip/2*3 + grip%2) }

// viewBox leaves room for the grips beside the rim.
func viewBox() string {
	return "0 0 " + strconv.Itoa(dial.Width) + " " + strconv.Itoa(dial.Height)
}

func hourID(i int) string { return "hour-" + strconv.Itoa(i*3) }

func hourX(i int) string { x, _ := dial.HourAt(i * 3); return x }

func hourY(i int) string { _, y := dial.HourAt(i * 3); return y }

func ringID(i int) string { return "pool-ring-" + strconv.Itoa(i) }
