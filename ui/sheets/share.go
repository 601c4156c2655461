package sheets

import (
	"rsc.io/qr/coding"

	"suncask/ui/page"
	"suncask/ui/parts"
	"suncask/ui/state"
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
	if page.OnlyHere(c.Page.LinkShown) {
		return c.Page.T(words.LinkOnlyHere)
	}
	return ""
}

// visiting tells whether there are two to share with.
func (c *Share) visiting() bool {
	return c.Page.Store.Entry == state.Visit && c.Page.View.Words.HasVisit()
}

// household shows the link for the people of the house: their own way in, without readings.
func (c *Share) household() { c.show(c.Page.Store.Link()) }

// colleague shows the one for another installer.
func (c *Share) colleague() {
	c.show(state.WithReadings(c.Page.Store.Address(), c.Page.Visit.Readings()))
}

func (c *Share) show(link string) {
	if c.Page.Host == nil {
		return
	}
	c.Page.LinkShown, c.Page.Copied = c.Page.Host.Base()+"#"+link, false
	c.Page.Host.Copy(c.Page.LinkShown, func() { c.Page.Copied = true })
}

func (c *Share) canSend() bool { return c.Page.Host != nil && c.Page.Host.CanSend() }

func (c *Share) send() {
	if c.Page.Host != nil {
		c.Page.Host.Send(c.Page.LinkShown)
	}
}

// code is the link as a QR code.
func (c *Share) code() (path, frame string) { return parts.QR(c.Page.LinkShown, coding.L) }

func (c *Share) dark() string { path, _ := c.code(); return path }

func (c *Share) frame() string { _, frame := c.code(); return frame }
