// Package sheets are what lies over the places: the menu, how the day is read, the link, a figure
// opened, the houses kept, and the questions that make the house somebody's own.
package sheets

import "suncask/ui/page"

//go:generate go tool vugugen -skip-go-mod -skip-main .

// OverHead is the title of a sheet, and what closes it.
type OverHead struct {
	Page  *page.Page
	Title string
}
