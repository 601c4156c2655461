// Package ui is the page as vugu components. A component gets plain values, and every value that a
// gesture can change comes from one list of attributes.
package ui

import (
	"suncask/ui/house"
	"suncask/ui/page"
)

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Root is the whole page: the header, what is to be told, the places with their buttons, and what
// lies over them.
type Root struct{ Page *page.Page }

// Compute takes the frame that the templates read, and lets rooms know which card has a field.
func (c *Root) Compute() {
	c.Page.CardOf = house.CardOf
	c.Page.Compute()
}
