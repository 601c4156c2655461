package parts

import (
	"suncask/ui/page"
	"suncask/ui/words"
)

// Picture is a button that saves the picture of an element.
type Picture struct {
	Page *page.Page
	ID   string
	Name string // of the button, where it is not plain
}

func (c *Picture) save() {
	if c.Page.Host != nil {
		c.Page.Host.Picture(c.ID)
	}
}

func (c *Picture) id() string { return "save-" + c.ID }

func (c *Picture) name() string {
	if c.Name != "" {
		return c.Name
	}
	return c.Page.T(words.SavePicture)
}
