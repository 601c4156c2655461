// Package year is the place of what the year comes to: by month, by day, where its energy goes, in
// many years, and in money.
package year

import "suncask/ui/page"

//go:generate go tool vugugen -skip-go-mod -skip-main .

// Year is the place.
type Year struct{ Page *page.Page }
