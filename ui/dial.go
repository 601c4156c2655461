package ui

import (
	"strconv"

	"suncask/ui/dial"
	"suncask/ui/words"
)

// Dial is the figure: one SVG whose every moving attribute comes from the frame.
type Dial struct{ Page *Page }

func (c *Dial) a(id, name string) string { return c.Page.A(id, name) }

func dropID(i int, part string) string { return "drop-" + strconv.Itoa(i) + part }

func gripID(i int, part string) string { return "grip-" + strconv.Itoa(i) + part }

// gripName is a grip's accessible name.
func (c *Dial) gripName(i int) string {
	return c.Page.T([2]words.Key{words.BackupStarts, words.BackupEnds}[i])
}

// viewBox leaves room for the grips beside the rim.
func viewBox() string {
	return "0 0 " + strconv.Itoa(dial.Width) + " " + strconv.Itoa(dial.Height)
}

func hourID(i int) string { return "hour-" + strconv.Itoa(i*3) }

func hourX(i int) string { x, _ := dial.HourAt(i * 3); return x }

func hourY(i int) string { _, y := dial.HourAt(i * 3); return y }

func ringID(i int) string { return "pool-ring-" + strconv.Itoa(i) }
