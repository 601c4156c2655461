package sheets

import (
	"strconv"
	"strings"

	"rsc.io/qr/coding"

	"suncask/ui/page"
	"suncask/ui/words"
)

// Share shows the link of the house: as text, as a QR code, and to be sent.
type Share struct{ Page *page.Page }

func (c *Share) close() { c.Page.LinkShown = "" }

func (c *Share) state() string {
	if c.Page.Copied {
		return c.Page.T(words.LinkCopied)
	}
	return c.Page.T(words.LinkHere)
}

// here says that nobody else can open a link of this machine.
func (c *Share) here() string {
	for _, start := range []string{"http://localhost", "http://127.", "http://[::1]", "file:"} {
		if strings.HasPrefix(c.Page.LinkShown, start) {
			return c.Page.T(words.LinkOnlyHere)
		}
	}
	return ""
}

func (c *Share) canSend() bool { return c.Page.Host != nil && c.Page.Host.CanSend() }

func (c *Share) send() {
	if c.Page.Host != nil {
		c.Page.Host.Send(c.Page.LinkShown)
	}
}

// quiet is the margin of a QR code, modules (ISO/IEC 18004, from memory).
const quiet = 4

// code is the link as a QR code: its dark modules as an SVG path and the picture's frame;
// empty for one that is too long.
func (c *Share) code() (path, frame string) {
	text, version := coding.String(c.Page.LinkShown), coding.Version(coding.MinVersion)
	for text.Bits(version) > version.DataBytes(coding.L)*8 {
		if version++; version > coding.MaxVersion {
			return "", "0 0 1 1"
		}
	}
	plan, err := coding.NewPlan(version, coding.L, 0)
	if err != nil {
		return "", "0 0 1 1"
	}
	code, err := plan.Encode(text)
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

func (c *Share) dark() string { path, _ := c.code(); return path }

func (c *Share) frame() string { _, frame := c.code(); return frame }
