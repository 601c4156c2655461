package parts

import (
	"strconv"
	"strings"

	"rsc.io/qr/coding"
)

// quiet is the margin of a QR code, modules (ISO/IEC 18004, from memory).
const quiet = 4

// QR is a text as a QR code: its dark modules as an SVG path and the picture's frame; empty for one
// that is too long.
func QR(text string, level coding.Level) (path, frame string) {
	of, version := coding.String(text), coding.Version(coding.MinVersion)
	for of.Bits(version) > version.DataBytes(level)*8 {
		if version++; version > coding.MaxVersion {
			return "", "0 0 1 1"
		}
	}
	plan, err := coding.NewPlan(version, level, 0)
	if err != nil {
		return "", "0 0 1 1"
	}
	code, err := plan.Encode(of)
	if err != nil {
		return "", "0 0 1 1"
	}
	var b strings.Builder
	for y := range code.Size {
		for x := 0; x < code.Size; x++ {
			from := x
			for x < code.Size && code.Black(x, y) {
				x++
			}
			if n := strconv.Itoa(x - from); x > from {
				b.WriteString("M" + strconv.Itoa(from+quiet) + " " + strconv.Itoa(y+quiet) + "h" + n + "v1h-" + n + "z")
			}
		}
	}
	side := strconv.Itoa(code.Size + 2*quiet)
	return b.String(), "0 0 " + side + " " + side
}
