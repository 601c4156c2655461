package day

import (
	"strings"

	"suncask/ui/words"
)

// firstLabel names something of the dial on a first visit, until the first touch: a box with
// two lines of text, and a line to what it names, in the dial's units for the example house.
type firstLabel struct {
	text                        words.Key
	x, y, wide, textX, up, down string
	line                        string
}

var firstLabels = []firstLabel{
	{words.FirstPool, "186", "20", "124", "248", "34", "48", "M236 54L208 106"},
	{words.FirstDrops, "250", "104", "110", "305", "118", "132", "M310 138L288 182"},
	{words.FirstDrag, "0", "56", "176", "88", "70", "84", "M48 90L44 136"},
	{words.FirstSun, "240", "238", "120", "300", "252", "266", "M296 272L284 284"},
}

// first is a line of a label's text.
func (c *Dial) first(l firstLabel, line int) string {
	return strings.Split(c.Page.T(l.text), ";")[line]
}
