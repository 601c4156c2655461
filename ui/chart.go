package ui

import (
	"suncask/ui/words"
)

// Chart is a chart with its legend, its words for those who cannot see it, and a button
// that saves it as a picture.
type Chart struct {
	Page   *Page
	ID     string
	Legend []legend
	Twin   string
}

// legend names a line or bars of a chart in its colour.
type legend struct{ class, text string }

func (c *Chart) class() string { return "chart chart-" + c.ID }

// Picture is a button that saves the picture of an element.
type Picture struct {
	Page *Page
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
